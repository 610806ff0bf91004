/** Differences of cost between two results by their causes: they sum to the whole, exactly. */
import { describe, expect, it } from 'vitest';
import {
  AVERAGING,
  type CostSide,
  differenceByCause,
  loadQuestion,
} from '../../../src/engine/index.ts';
import type { RateBook, RateCell } from '../../../src/study/index.ts';
import { mass, node, read, studyOf, text } from '../../study/made-study.ts';

const { question, questions } = await loadQuestion('part-cost');

const cell = (id: string, kind: RateCell['kind'], x: number, match: string): RateCell => ({
  ...{ cause: id, id, words: id, kind, x, spread: { s: 'normal', u: 0.08 * x } },
  ...{ how: 'supplied', source: 'invented', match: [match] },
});
/** Two versions of a made-up book, the later with dearer aluminium and labour in its conversion. */
const book = (version: string, aluminium: number, labour: number): RateBook => ({
  ...{ id: version, version, region: 'none', date: `2026-0${version.slice(1)}-01`, currency: 'u' },
  ...{ volumePerYear: 60_000, years: 5, invented: true },
  cells: [
    cell('factor/overhead', 'ratio', 1.18, 'overhead'),
    cell('material/aluminium', 'moneyPerMass', 4.3 * aluminium, 'aluminium'),
    cell('material/steel', 'moneyPerMass', 1.15, 'steel'),
    cell('process/stamp', 'moneyPerMass', 0.8 * labour, 'stamp'),
    cell('process/bend', 'moneyPerMass', 1.3 * labour, 'bend'),
    cell('tool/stamp', 'money', 220_000, 'stamp'),
    { ...cell('life/stamp', 'count', 1_000_000, 'stamp'), spread: { s: 'exact' } },
  ],
});
const BOOKS = [book('R1', 1, 1), book('R2', 1.09, 1.12)].map(
  (b) => ({ v: 1, e: 'rates.put', book: b }) as const,
);

/** A basket of 200 parts, every third a little heavier in its second state. */
const basket = (heavier: number) =>
  studyOf(
    ...BOOKS,
    ...Array.from({ length: 200 }, (_, i) => i).flatMap((i) => {
      const id = `p${i}`;
      const kg = 0.2 + 0.037 * i + (i % 3 === 0 ? heavier : 0);
      return [
        node(id, 'van'),
        read(id, 'mass', mass(kg, { s: 'normal', u: 0.01 })),
        read(id, 'material', text(i % 2 === 0 ? 'aluminium' : 'steel')),
        read(id, 'process', text(i % 5 === 0 ? 'bend' : 'stamp')),
      ];
    }),
  );
const [was, is] = [{ view: basket(0) }, { view: basket(0.3) }];
const split = (a: CostSide, b: CostSide) => differenceByCause(question, questions, 'cost', [a, b]);
const sum = (d: ReturnType<typeof split>) => d.causes.reduce((s, c) => s + c.d, 0);

describe('a basket of 200 parts', () => {
  it('re-rated from R1 to R2 differs by its rates alone', () => {
    const d = split({ facts: was, rates: 'R1' }, { facts: was, rates: 'R2' });
    expect(d.d).toBeGreaterThan(0);
    expect(d.causes.map((c) => c.d !== 0)).toEqual([false, true, false, false]);
    expect(sum(d)).toBe(d.d);
  });

  it('by all four causes sums to the difference, and says how it is averaged', () => {
    const d = split(
      { facts: was, rates: 'R1', method: { apart: 'exactly 0' } },
      { facts: is, rates: 'R2', volume: '15000', method: { apart: 'exactly 1' } },
    );
    expect(d.causes.map((c) => c.cause)).toEqual(['facts', 'rates', 'volume', 'method']);
    expect(d.causes.every((c) => c.d !== 0)).toBe(true);
    expect(Math.abs(sum(d) - d.d)).toBeLessThanOrEqual(1e-12 * d.second);
    expect(d.second - d.first).toBeCloseTo(d.d, 9);
    expect(d.averaging).toBe(AVERAGING);
    expect(AVERAGING).toContain('Shapley');
  });

  it('by two causes is the mean of both orders, worked by hand', () => {
    const at = (facts: CostSide['facts'], rates: string) =>
      split({ facts, rates }, { facts, rates }).first;
    const d = split({ facts: was, rates: 'R1' }, { facts: is, rates: 'R2' });
    const [a, b, c, e] = [at(was, 'R1'), at(is, 'R1'), at(was, 'R2'), at(is, 'R2')];
    expect(d.causes[0]?.d).toBeCloseTo((b - a + (e - c)) / 2, 9);
    expect(d.causes[1]?.d).toBeCloseTo((c - a + (e - b)) / 2, 9);
  });

  it('against itself has no difference and no spread', () => {
    const d = split({ facts: was, rates: 'R1' }, { facts: was, rates: 'R1' });
    expect([d.d, d.u, sum(d)]).toEqual([0, 0, 0]);
  });

  it('rates are shared causes: what makes a price wrong in R1 makes it wrong in R2', () => {
    const d = split({ facts: was, rates: 'R1' }, { facts: was, rates: 'R2' });
    // Prices of 8 % and the method's 15 % move both sides alike: what is left goes with the difference.
    expect(d.u).toBeLessThan(0.2 * d.d);
    expect(d.word).toBe('different');
  });

  it('a volume of zero is refused with what is wrong', () => {
    const none = () =>
      split({ facts: was }, { facts: was, volume: '0', method: { apart: 'exactly 1' } });
    expect(none).toThrow(/no number of pieces above zero|no number of this name/);
  });
});
