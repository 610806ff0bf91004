/**
 * R. G. Newcombe, "Two-sided confidence intervals for the single proportion: comparison of seven
 * methods", Statistics in Medicine 17 (1998), 857-872, table I, method 3 (score interval of
 * Wilson without correction). Values from memory, recomputed by the formula.
 */
import { describe, expect, it } from 'vitest';
import { proportion } from '../../src/quantity/index.ts';

describe("Wilson's interval", () => {
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%d of %d', (hits, of, low, high) => {
    const p = proportion(hits, of);
    expect(p.share).toBeCloseTo(hits / of, 12);
    expect(p.low).toBeCloseTo(low, 4);
    expect(p.high).toBeCloseTo(high, 4);
  });

  it('nothing counted says nothing', () => {
    expect(proportion(0, 0)).toMatchObject({ low: 0, high: 1 });
  });

  it('all and none mirror each other', () => {
    expect(proportion(9, 9).low).toBeCloseTo(1 - proportion(0, 9).high, 12);
  });
});
