/**
 * Labels of bags: their square codes are read back by a decoder that others wrote (jsqr), from
 * the SVG turned to pixels by resvg and from the PDF turned to pixels by poppler.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import jsQR from 'jsqr';
import { afterAll, describe, expect, it } from 'vitest';
import { bagCode, type LabelSheet, labelsSvg, renderLabels } from '../../src/report/index.ts';

const folder = mkdtempSync(join(tmpdir(), 'labels-'));
afterAll(() => rmSync(folder, { recursive: true }));

const STUDY = '01KAXTP7Y8DEMO0000000000ZZ';

const sheetOf = (...bags: readonly string[]): LabelSheet => ({
  title: 'Bag labels: made up',
  study: 'made up',
  revision: '3 · 5f1c09aa',
  date: '2026-11-25',
  invented: true,
  labels: bags.map((bag) => ({
    bag,
    joint: 'J103',
    holds: '40 pack to 10 sill and torque box',
    spec: 'M12x90 10.9',
    counts: '18 holes, 17 in the bag',
    code: bagCode(STUDY, bag),
  })),
});

/** What the decoder reads in a picture of grey values. */
function decoded(grey: Uint8Array, width: number, height: number): string | undefined {
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (const [i, v] of grey.entries()) rgba.set([v, v, v, 255], 4 * i);
  return jsQR(rgba, width, height)?.data;
}

function fromSvg(svg: string): string | undefined {
  const image = new Resvg(svg, { fitTo: { mode: 'width', value: 1200 } }).render();
  const { pixels, width, height } = image;
  const grey = Uint8Array.from({ length: width * height }, (_, i) => pixels[4 * i] ?? 0);
  return decoded(grey, width, height);
}

/** Portable graymap as poppler writes it: P5, width, height, 255, then a byte a pixel. */
function fromPdf(pdf: Uint8Array): string | undefined {
  const file = join(folder, 'labels.pdf');
  writeFileSync(file, pdf);
  execFileSync('pdftoppm', ['-gray', '-r', '150', '-singlefile', file, join(folder, 'page')], {
    stdio: 'ignore',
  });
  const bytes = readFileSync(join(folder, 'page.pgm'));
  const [head = '', width = '0', height = '0'] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1')) ?? [];
  return decoded(bytes.subarray(head.length), Number(width), Number(height));
}

describe('labels of bags', () => {
  it.each(['B-J103', 'B-stray', 'Beutel 7 / lose Schrauben', 'x'.repeat(60)])(
    'carry a code that a decoder reads back from SVG: %s',
    (bag) => {
      expect(fromSvg(labelsSvg(sheetOf(bag)))).toBe(`hoistside:bag:${STUDY}:${bag}`);
    },
  );

  it('and from the printed page, which is tagged', async () => {
    const pdf = await renderLabels(sheetOf('B-J103'));
    expect(fromPdf(pdf)).toBe(`hoistside:bag:${STUDY}:B-J103`);
    expect(Buffer.from(pdf).toString('latin1')).toContain('<pdfuaid:part>1</pdfuaid:part>');
  });

  it('print the bag, its joint, both counts, and that the study is invented', async () => {
    const file = join(folder, 'text.pdf');
    writeFileSync(file, await renderLabels(sheetOf('B-1', 'B-2')));
    const text = execFileSync('pdftotext', ['-raw', file, '-'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    for (const words of ['B-1', 'B-2', 'joint J103', '18 holes, 17 in the bag', 'invented'])
      expect(text.replace(/\s+/g, ' ')).toContain(words);
  });

  it('keep what people wrote as text', () => {
    const [label] = sheetOf('B-1').labels;
    if (!label) throw new Error('no label');
    const svg = labelsSvg({ ...sheetOf(), labels: [{ ...label, spec: '<b>&"M6"' }] });
    expect(svg).toContain('&lt;b&gt;&amp;&quot;M6&quot;');
    expect(svg).not.toContain('<b>');
  });
});
