/**
 * Question alternative-costs: sums worked by hand from prices, times and rates of the invented
 * demo; plates of equal bending stiffness by E h³ / (1 − ν²), closed form; break-even volumes
 * against the curves on both sides. Own inputs throughout.
 */
import { describe, expect, it } from 'vitest';
import type { Answer, DetailTable, WrittenInputs } from '../../src/engine/index.ts';
import { asked } from '../engine/cost/asked.ts';
import { demoStudy } from '../engine/joining/demo-study.ts';
import { askRegistered, out } from '../engine/made-question.ts';

const view = await demoStudy('clean');
const lid = await askRegistered('alternative-costs', view, 'LID');
const floor = await askRegistered('alternative-costs', view, 'FLOOR');

const titled = (answer: Answer, words: string): DetailTable => {
  const table = [answer.detail, ...(answer.further ?? [])].find((t) => t?.title.includes(words));
  if (!table) throw new Error(`no table "${words}"`);
  return table;
};
const rowsOf = (answer: Answer, words: string, ...starts: readonly string[]) =>
  titled(answer, words).rows.filter((row) =>
    starts.every((s, i) => s === '' || String(row[i]).startsWith(s)),
  );

describe('the lid of the demo, at the modes and before overhead', () => {
  it.each([
    ['62 screws into rivet nuts', 62 * (0.05 + 0.046 + 0.09 + 0.032), 13.5],
    ['62 screws into tapped', 62 * (0.05 + 0.046 + (3 * 95) / 3600), 10.9],
    ['46 screws into tapped', 46 * (0.05 + 0.046 + (3 * 95) / 3600), 8.06],
    ['58 spring clips', 58 * (0.12 + 0.024), 8.35],
  ])('%s', (design, byHand, about) => {
    const [row] = rowsOf(lid, 'side by side', design);
    expect(row?.[1]).toBeCloseTo(byHand, 9);
    expect(Math.abs(Number(row?.[1]) - about)).toBeLessThan(0.05);
  });

  it('62 screws without a nut side come to 5.95', () => {
    const [screws] = rowsOf(lid, 'Lines of the designs', '62 screws into rivet nuts', 'screws');
    expect(screws?.[3]).toBeCloseTo(5.952, 9);
  });

  it('breaks even with clips at a nut side of 0.04 each, with its interval', () => {
    const against = rowsOf(lid, 'Break-even cost', '62 screws into rivet nuts', 'rivet nuts').find(
      (row) => row[3] === '58 spring clips',
    );
    const [, , now, , each, u, low, high] = against ?? [];
    expect(now).toBeCloseTo(0.122, 9);
    expect(each).toBeCloseTo((58 * 0.144 - 62 * 0.096) / 62, 9);
    // By hand: what both share, the rate of labour, counts by the difference of their times.
    const tenth = 0.1 / Math.sqrt(3);
    const labour = Math.sqrt((6 ** 2 + 8 ** 2 + 6 * 8) / 18) / 3600;
    const byHand = Math.hypot(
      (58 / 62) * 0.12 * tenth,
      (58 / 62) * 0.024 * tenth,
      0.05 * tenth,
      0.046 * tenth,
      labour * ((58 * 2.4) / 62 - 4.6),
    );
    expect(Number(u)).toBeCloseTo(byHand, 4);
    expect(low).toBeCloseTo(Number(each) - 2 * Number(u), 12);
    expect(high).toBeCloseTo(Number(each) + 2 * Number(u), 12);
  });

  it('prints d, u and the word that follows, with the cord of all designs cancelled', () => {
    const [pair] = rowsOf(lid, 'Differences', '62 screws into rivet nuts', '58 spring clips');
    const [, , d, u, word, proven, chance] = pair ?? [];
    expect(d).toBeCloseTo(1.18 * (13.516 - 8.352), 9);
    expect(Math.abs(Number(d)) > 2 * Number(u)).toBe(word === 'different');
    expect(proven).toBe('second is cheaper');
    expect(chance).toBeGreaterThan(0.99);
    const [close] = rowsOf(lid, 'Differences', '46 screws', '58 spring clips');
    expect(close?.[4]).toBe('not distinguishable');
    expect(close?.[5]).toBe('');
  });

  it('has the difference of its outputs and its word', () => {
    const saved = out(lid, 'saved');
    expect(saved.decision?.word).toBe('different');
    expect(saved.x).toBeCloseTo(out(lid, 'built').x - out(lid, 'other').x, 9);
  });
});

describe('the floor of the demo', () => {
  it('carries what a thin floor needs beside it', () => {
    const shields = rowsOf(floor, 'Lines of the designs', '', 'stone shield');
    expect(shields.map((row) => row[0])).toEqual(['stamped aluminium', 'stamped steel']);
    expect(shields.every((row) => row[3] === 35)).toBe(true);
    const [aluminium] = rowsOf(floor, 'side by side', 'stamped aluminium');
    expect(aluminium?.[6]).toBeCloseTo(0.0025 * 1.9 * 2700 + 11, 6);
  });

  it('saves the nine seams: nine leak crossings', () => {
    expect(out(floor, 'crossingsSaved').x).toBe(9);
  });

  it('has another order at 5,000 a year than at 60,000, where tools weigh', async () => {
    const costs = async (volume: string) => {
      const answer = await askRegistered('alternative-costs', view, 'FLOOR', { volume });
      return new Map(titled(answer, 'side by side').rows.map((r) => [String(r[0]), Number(r[4])]));
    };
    const moulded = 'moulded glass-fibre plate, edge trimmed and sealed';
    const [few, many] = [await costs('exactly 5000'), await costs('exactly 500000')];
    const less = (c: Map<string, number>) =>
      (c.get(moulded) ?? 0) < (c.get('stamped aluminium') ?? 0);
    expect([less(few), less(many)]).toEqual([true, false]);
    const rows = rowsOf(floor, 'Break-even volumes', 'stamped aluminium', 'moulded');
    expect(rows.length).toBe(1);
    const at = Number(rows[0]?.[2]);
    const [below, above] = [
      await costs(`exactly ${Math.floor(0.999 * at)}`),
      await costs(`exactly ${Math.ceil(1.001 * at)}`),
    ];
    const d = (c: Map<string, number>) => (c.get('stamped aluminium') ?? 0) - (c.get(moulded) ?? 0);
    expect(d(below)).toBeGreaterThan(0);
    expect(d(above)).toBeLessThan(0);
    // The break-even volume by hand: what tools cost more over what a piece costs less.
    const far = await costs('exactly 1e9');
    const byHand =
      ((1_300_000 - 380_000) /
        5 /
        ((far.get(moulded) ?? 0) - (far.get('stamped aluminium') ?? 0))) *
      1.18;
    expect(at / byHand).toBeGreaterThan(0.5);
    expect(at / byHand).toBeLessThan(2);
  });
});

describe('plates of equal bending stiffness', () => {
  const two = (sizing: string): WrittenInputs => ({
    sizing,
    lines: [
      {
        ...{ design: 'a', line: 'plate', mass: 'exactly 10 kg', materialPrice: 'exactly 1 {u}/kg' },
        ...{ thickness: 'exactly 2 mm', modulus: 'exactly 210 GPa', poisson: 'exactly 0.3' },
      },
      {
        ...{ design: 'b', line: 'plate', density: 'exactly 2700 kg/m3', face: 'exactly 1 m2' },
        ...{ thickness: 'exactly 2 mm', modulus: 'exactly 70 GPa', poisson: 'exactly 0.3' },
        materialPrice: 'exactly 1 {u}/kg',
      },
    ],
    overhead: 'exactly 1',
  });

  it('the other grows by the cube root of the moduli', async () => {
    expect(out(await asked('alternative-costs', two('as designed')), 'other').x).toBeCloseTo(
      5.4,
      9,
    );
    const sized = out(await asked('alternative-costs', two('equal bending stiffness')), 'other').x;
    expect(sized).toBeCloseTo(5.4 * Math.cbrt(3), 9);
  });
});
