import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { renderPdf, reportModel } from '../../src/report/index.ts';
import { everything } from './fixture.ts';
import { GLYPHS, LITERAL } from './signs.ts';

const model = reportModel(everything());
const folder = mkdtempSync(join(tmpdir(), 'report-'));
const file = join(folder, 'report.pdf');
let bytes: Uint8Array;
let text = '';

/** A program of poppler-utils, without its remarks on standard error. */
const poppler = (program: string, ...args: string[]): string =>
  execFileSync(program, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });

/** Text of the file by poppler, with every run of white space as one space. */
const pdfText = (): string => poppler('pdftotext', '-raw', file, '-').replace(/\s+/g, ' ');
const pdfInfo = (): string => poppler('pdfinfo', file);
/** Thin spaces within numbers, and breaks behind hyphens and slashes, are not told apart. */
const dense = (words: string): string => words.replace(/\s+/g, '');
const spaced = (words: string): string => words.replace(/\s+/g, ' ').trim();

beforeAll(async () => {
  bytes = await renderPdf(model);
  writeFileSync(file, bytes);
  text = pdfText();
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('the printed report', () => {
  it('is tagged, titled and says that it is PDF/UA-1 (ISO 14289-1, 6.7.11)', () => {
    const info = pdfInfo();
    expect(info).toMatch(/Tagged:\s+yes/);
    expect(info).toMatch(/Title:\s+Teardown report: Cart/);
    expect(Buffer.from(bytes).toString('latin1')).toContain('<pdfuaid:part>1</pdfuaid:part>');
  });

  it('has the same bytes for the same model', async () => {
    expect(Buffer.from(await renderPdf(model)).equals(Buffer.from(bytes))).toBe(true);
  });

  it('prints numbers with their spread, unit and word', () => {
    for (const words of ['1645.3 ± 0.2 kg', '−0.2 ± 1.0 kg', '1618.6', '11.46 ± 0.57 °'])
      expect(dense(text)).toContain(dense(words));
    expect(text).toContain('with second-order terms the spread is ± 0.30 %');
    expect(text).toContain('not distinguishable: different beyond 2 u');
    expect(text).toContain('not complete');
    expect(text).not.toContain('NaN');
  });

  it('sets what people wrote letter by letter', () => {
    const wanted = spaced(LITERAL);
    expect(text.split(wanted).length).toBeGreaterThan(5);
  });

  it('has a glyph for every sign of the trade and names the code of what it has not', () => {
    for (const sign of GLYPHS.split(' ')) expect(text).toContain(sign);
    expect(text).toContain('nut [U+6F22]');
  });

  it('names every finding, gap, caution, claim, source and photograph', () => {
    const said = [
      ...model.findings.flatMap((f) => [f.what, f.next]),
      ...model.unknown.flatMap((u) => [u.what, ...u.items]),
      ...model.cautions.map((c) => c.words),
      ...model.claims.flatMap((c) => [c.words, c.state, c.rule, c.why]),
      ...model.methods.flatMap((m) => [m.wording, ...m.assumptions]),
      ...model.photos.map((p) => p.caption),
      'Made-up source · page 1 · from memory',
      'could not be read as a picture',
    ];
    expect(said.filter((words) => !dense(text).includes(dense(words)))).toEqual([]);
  });

  it('has a title block on each sheet', () => {
    const sheets = Number(/Pages:\s+(\d+)/.exec(pdfInfo())?.[1]);
    expect(sheets).toBeGreaterThan(3);
    for (const label of [`1 / ${sheets}`, `${sheets} / ${sheets}`]) expect(text).toContain(label);
    expect(text.split('R1, 2026-01-01, invented').length - 1).toBe(sheets);
    expect(text.split('kerb, as received').length - 1).toBeGreaterThanOrEqual(sheets);
  });

  it('embeds no font but those of the repository, and for formulas the one the typesetter brings', () => {
    const fonts = poppler('pdffonts', file).split('\n').slice(2);
    const foreign = fonts.filter(
      (line) => line !== '' && !/^[A-Z]{6}\+(Hoistside|NewCMMath)/.test(line),
    );
    expect(foreign).toEqual([]);
  });
});
