/**
 * Agreement of repeated results. Formulas from memory of ISO/IEC 17043 (E_n), Birge (1932) and
 * ISO 5725-2 (precision), recomputed here another way: by definition for E_n and the Birge ratio,
 * by variances of lists of equal length (s_r² their mean, s_L² = s_d² − s_r²/n) for the rest.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { birgeRatio, enNumber, precisionOf } from '../../src/quantity/index.ts';

const variance = (xs: readonly number[]): number => {
  const m = xs.reduce((a, b) => a + b, 0) / xs.length;
  return xs.reduce((sum, x) => sum + (x - m) ** 2, 0) / (xs.length - 1);
};

describe('agreement of two', () => {
  it('E_n is 1 where the difference is twice its standard uncertainty', () => {
    expect(enNumber(10, 3, 4)).toBe(1);
    expect(enNumber(-5, 3, 4)).toBe(0.5);
  });

  it('the Birge ratio of two is twice their E_n over √… of one degree of freedom', () => {
    // χ² of two results is (d/u_d)², with one degree of freedom.
    expect(birgeRatio([0, 10], [3, 4])).toBeCloseTo(10 / 5, 12);
    expect(birgeRatio([0, 10], [3, 4])).toBeCloseTo(2 * enNumber(10, 3, 4), 12);
  });

  it('of alike spreads the Birge ratio is their standard deviation over that spread', () => {
    const xs = [1.1, 1.4, 0.8, 1.2];
    expect(
      birgeRatio(
        xs,
        xs.map(() => 0.1),
      ),
    ).toBeCloseTo(Math.sqrt(variance(xs)) / 0.1, 12);
  });

  it('needs two results with spreads', () => {
    expect(() => birgeRatio([1], [0.1])).toThrow(RangeError);
    expect(() => birgeRatio([1, 2], [0.1, 0])).toThrow(RangeError);
  });
});

describe('two people', () => {
  it('are told apart from the repeats of each', () => {
    const found = precisionOf([
      [2.01, 2.03, 2.02],
      [2.07, 2.08, 2.06],
    ]);
    const within = (variance([2.01, 2.03, 2.02]) + variance([2.07, 2.08, 2.06])) / 2;
    const between = variance([2.02, 2.07]) - within / 3;
    expect(found?.repeatability).toBeCloseTo(Math.sqrt(within), 12);
    expect(found?.between).toBeCloseTo(Math.sqrt(between), 12);
    expect(found?.reproducibility).toBeCloseTo(Math.sqrt(within + between), 12);
    expect(found?.dof).toBe(4);
  });

  it('who agree better than their repeats have nothing between them', () => {
    const found = precisionOf([
      [1, 3],
      [1, 3],
    ]);
    expect(found).toMatchObject({ between: 0, repeatability: expect.closeTo(Math.SQRT2, 12) });
  });

  it('of lists of equal length of any number give the balanced formulas', () => {
    const x = fc.double({ min: -10, max: 10, noNaN: true });
    const lists = fc
      .integer({ min: 2, max: 4 })
      .chain((n) =>
        fc.array(fc.array(x, { minLength: n, maxLength: n }), { minLength: 2, maxLength: 5 }),
      );
    fc.assert(
      fc.property(lists, (by) => {
        const n = by[0]?.length ?? 0;
        const within = by.reduce((sum, xs) => sum + variance(xs), 0) / by.length;
        const means = by.map((xs) => xs.reduce((a, b) => a + b, 0) / n);
        const between = Math.max(0, variance(means) - within / n);
        const found = precisionOf(by);
        expect(found?.repeatability).toBeCloseTo(Math.sqrt(within), 9);
        expect((found?.between ?? 0) ** 2).toBeCloseTo(between, 6);
      }),
    );
  });

  it('one person, or no repeats, say nothing of it', () => {
    expect(precisionOf([[1, 2, 3]])).toBeUndefined();
    expect(precisionOf([[1], [2]])).toBeUndefined();
  });
});
