import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import {
  altText,
  figureTable,
  layOut,
  nominalText,
  type Picture,
  pieces,
  type Spot,
} from '../../src/drawing/index.ts';
import { niceScale } from '../../src/drawing/scale.ts';
import { textWidth } from '../../src/drawing/text-width.ts';
import type { Bars, Figure } from '../../src/engine/index.ts';
import { boxOf, offPaper, wordsOf, wordsOverWords } from './on-paper.ts';
import { balance, breakEven, field, options, removal, SAMPLES, say } from './sample-figures.ts';

const WIDTHS = [320, 480, 728, 1000];
const cases = SAMPLES.flatMap((f) => WIDTHS.map((width) => [f.title, width, f] as const));
const picture = (f: Figure, width = 728): Picture => layOut(f, { width, say });

const saidIn = (p: Picture): string[] => wordsOf(p).map((w) => w.text);

describe.each(cases)('%s, %d wide', (_title, width, figure) => {
  const laid = picture(figure, width);

  it('stays on its paper', () => {
    expect(offPaper(laid)).toEqual([]);
  });

  it('sets no words over others', () => {
    expect(wordsOverWords(laid)).toEqual([]);
  });
});

describe('bars', () => {
  const bars = (rows: Bars['rows'], more: Partial<Bars> = {}): Picture =>
    picture({ ...options, lines: [], rows, ...more });
  const areas = (p: Picture) =>
    p.inks.flatMap((i) => (i.i === 'area' && i.fill === 'lines' ? [i] : []));
  const length = (ring: readonly Spot[] = []): number =>
    Math.max(...ring.map((s) => s[0])) - Math.min(...ring.map((s) => s[0]));

  it('without a row are an empty scale, every spot of it a number', () => {
    expect(JSON.stringify(bars([]))).not.toContain('null');
  });

  it('are as long as their numbers, from zero', () => {
    const [a, b] = areas(
      bars([
        { label: 'a', number: { x: 2, u: 0 } },
        { label: 'b', number: { x: 6, u: 0 } },
      ]),
    );
    expect(length(b?.rings[0]) / length(a?.rings[0])).toBeCloseTo(3, 9);
  });

  it('reach to the left of zero where a number is below it', () => {
    const laid = bars([{ label: 'a', number: { x: -2, u: 0 } }]);
    const zero = wordsOf(laid).find((w) => /^0(\.0+)?$/.test(w.text))?.at[0] ?? 0;
    const ring = areas(laid)[0]?.rings[0] ?? [];
    expect(Math.max(...ring.map((s) => s[0]))).toBeCloseTo(zero, 9);
  });

  it('have no length where nothing is known, which is said', () => {
    const laid = bars([{ label: 'a' }, { label: 'b', number: { x: 1, u: 0 } }]);
    expect(areas(laid)).toHaveLength(1);
    expect(wordsOf(laid).find((w) => w.text === 'not known')?.tone).toBe('open');
  });

  it('have the words of a difference on the paper, however narrow it is', () => {
    const gap = { of: 0, less: 1, number: { x: -1.21, u: 1.02 }, word: 'not distinguishable' };
    for (const width of WIDTHS) {
      const said = wordsOf(picture({ ...balance, gap }, width)).find((w) =>
        w.text.startsWith('−1.2'),
      );
      const [left = -1, , right = width + 1] = said ? boxOf(said) : [];
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(width);
    }
  });

  it('of many rows have their scale above and below, and only long labels take two lines', () => {
    const long = 'a label so long that it takes two lines of the room that is there for it';
    const rows = Array.from({ length: 30 }, (_, i) => ({
      label: i === 3 ? long : `row ${i}`,
      number: { x: 10 + i, u: 1 },
    }));
    const laid = bars(rows);
    expect(offPaper(laid)).toEqual([]);
    expect(wordsOf(laid).filter((w) => w.text === '20' && w.tone === 'soft')).toHaveLength(2);
    expect(laid.height).toBeLessThan(30 * 24 + 80);
    expect(pieces(laid, 900)).toHaveLength(1);
  });

  it('of marks have bands of two standard uncertainties to each side', () => {
    const laid = picture(balance);
    const at = (text: string) => wordsOf(laid).find((w) => w.text === text)?.at[0] ?? 0;
    const kg = at('1\u202f645') - at('1\u202f644');
    expect(
      areas(laid)
        .map((a) => length(a.rings[0]) / kg)
        .map((l) => l.toFixed(3)),
    ).toEqual(['0.800', '4.000']);
  });
});

describe('other figures', () => {
  it('say a mark, a demand and each series of a plot', () => {
    const said = saidIn(picture(breakEven));
    for (const words of ['price of today', 'cast', 'folded sheet', 'cost a piece, u'])
      expect(said).toContain(words);
    expect(said.some((t) => t.startsWith('same cost at 6\u202f400 ± 900'))).toBe(true);
  });

  it('print the number of each level on its line', () => {
    const said = saidIn(picture(field));
    for (const level of ['0.5', '1', '1.5', '2']) expect(said).toContain(level);
    expect(said).toContain('1\u202f200 mm');
  });

  it('say all nodes of a graph', () => {
    const said = saidIn(picture(removal)).join(' ');
    for (const { label } of removal.nodes) expect(said).toContain(label);
  });

  it('stand a chain of nodes upright, under the middle of what it waits for', () => {
    const nodes = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ id, label: id }));
    const edges = ['ac', 'bc', 'cd', 'de'].map(([from = '', to = '']) => ({ from, to }));
    const said = wordsOf(picture({ ...removal, nodes, edges }));
    const [a = 0, b = 0, c, d, e] = nodes.map(
      ({ label }) => said.find((w) => w.text === label)?.at[0],
    );
    expect([c, d, e]).toEqual([(a + b) / 2, (a + b) / 2, (a + b) / 2]);
  });

  it('are cut between their rows into pieces that fit a sheet', () => {
    const rows = Array.from({ length: 60 }, (_, i) => ({
      label: `row ${i}`,
      number: { x: i, u: 1 },
    }));
    const whole = picture({ ...options, rows, lines: [] });
    const cut = pieces(whole, 400);
    expect(cut.length).toBeGreaterThan(3);
    expect(Math.max(...cut.map((p) => p.height))).toBeLessThanOrEqual(400);
    expect(cut.reduce((sum, p) => sum + p.height, 0)).toBeCloseTo(whole.height, 9);
    const said = cut.flatMap(saidIn);
    for (const { label } of rows) expect(said.filter((t) => t === label)).toHaveLength(1);
  });
});

describe('what stands behind a figure', () => {
  it('is a table of its numbers', () => {
    const { rows, columns } = figureTable(options, say);
    expect(columns.map((c) => c.head)).toEqual(['', 'value', '']);
    expect(rows.map((r) => r[1])).toEqual([
      '4.21 ± 0.12 kg',
      '6.05 ± 0.31 kg',
      '5.20 ± 0.90 kg, not complete',
      '4.600 kg',
      '–',
      '5.5 kg',
    ]);
  });

  it('is what comes before each node of a graph', () => {
    const { rows } = figureTable(removal, say);
    expect(rows.find(([label]) => label === 'Pack')).toEqual([
      'Pack',
      '15.0 ± 1.5 min',
      'Carpet; Service plug (10 min wait); Underbody shield',
    ]);
  });

  it('speaks of whiskers only where there are some', () => {
    const rows = [{ label: 'a', number: { x: 1 } }];
    expect(altText({ ...options, rows, lines: [] }, say)).not.toContain('Whiskers');
  });

  it('is said in sentences', () => {
    expect(altText(balance, say)).toBe(
      'Balance: gap. Parts and scales on one scale. mass of the parts 1\u202f645.29 ± 0.20 kg; ' +
        'mass on the scales 1\u202f646.5 ± 1.0 kg; difference −1.2 ± 1.0 kg. ' +
        'Whiskers of two standard uncertainties.',
    );
  });
});

describe('numbers', () => {
  it('of which only the nominal value is known have at most four digits and no idle zeros', () => {
    const mm = (x: number) => nominalText({ x, kind: 'length', unit: 'mm' });
    expect([mm(0.12), mm(0.0041234567), mm(1.2345678), mm(0)]).toEqual([
      '120 mm',
      '4.123 mm',
      '1\u202f235 mm',
      '0 mm',
    ]);
  });

  it('of a scale are round and hold what is shown', () => {
    for (const [low, high] of [
      [0, 7.3],
      [-3.1, 0.9],
      [1644.2, 1648.1],
      [5, 5],
      [-2e-9, 3e-9],
    ] as const) {
      const scale = niceScale(low, high);
      expect(scale.low).toBeLessThanOrEqual(low);
      expect(scale.high).toBeGreaterThanOrEqual(high);
      expect(scale.ticks.length).toBeGreaterThan(2);
      expect(scale.ticks.length).toBeLessThan(9);
    }
    expect(niceScale(0, 7.3).ticks.map((t) => t.text)).toEqual(['0', '2', '4', '6', '8']);
  });
});

/** Advance widths by the table "hmtx" of a font file, in hundredths of its size (OpenType 1.9). */
function widthsOf(file: string): (letter: string) => number {
  const font = readFileSync(join(ROOT, 'src/report/fonts', file));
  const table = (tag: string): number => {
    for (let i = 0; i < font.readUInt16BE(4); i++)
      if (font.toString('latin1', 12 + 16 * i, 16 + 16 * i) === tag)
        return font.readUInt32BE(20 + 16 * i);
    throw new Error(`no table ${tag}`);
  };
  const glyph = glyphOf(font, table('cmap'));
  return (letter) =>
    Math.round(
      (100 * font.readUInt16BE(table('hmtx') + 4 * glyph(letter))) /
        font.readUInt16BE(table('head') + 18),
    );
}

/** Glyph of a letter by the first subtable of format 4. */
function glyphOf(font: Buffer, cmap: number): (letter: string) => number {
  const subtables = Array.from(
    { length: font.readUInt16BE(cmap + 2) },
    (_, i) => cmap + font.readUInt32BE(cmap + 8 + 8 * i),
  );
  const at = subtables.find((s) => font.readUInt16BE(s) === 4) ?? 0;
  const doubled = font.readUInt16BE(at + 6);
  return (letter) => {
    const code = letter.codePointAt(0) ?? 0;
    let i = 0;
    while (font.readUInt16BE(at + 14 + 2 * i) < code) i++;
    const delta = font.readInt16BE(at + 16 + 2 * doubled + 2 * i);
    const offsetAt = at + 16 + 3 * doubled + 2 * i;
    const offset = font.readUInt16BE(offsetAt);
    if (offset === 0) return (code + delta) & 0xffff;
    const first = font.readUInt16BE(at + 16 + doubled + 2 * i);
    return (font.readUInt16BE(offsetAt + offset + 2 * (code - first)) + delta) & 0xffff;
  };
}

it('text is as wide as the font file has it', () => {
  const width = widthsOf('BarlowSemiCondensed-Medium.ttf');
  for (let code = 32; code < 127; code++) {
    const letter = String.fromCodePoint(code);
    // Figures are set to one width.
    if (/\d/.test(letter)) continue;
    expect(textWidth(letter) / (13 * 1.03)).toBeCloseTo(width(letter) / 100, 9);
  }
});
