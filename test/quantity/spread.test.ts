import { describe, expect, test } from 'vitest';
import {
  checkSpread,
  degreesOfFreedom,
  meanShift,
  type Spread,
  standardUncertainty,
} from '../../src/quantity/index.ts';

const triangle = (low: number, high: number): Spread => ({ s: 'triangular', low, high });

describe('standardUncertainty', () => {
  const check = (spread: Spread, x: number, u: number | undefined) => {
    const found = standardUncertainty(spread, x);
    if (u === undefined) expect(found).toBeUndefined();
    else expect(found).toBeCloseTo(u, 12);
  };

  test('exact is zero, unknown is not a number at all', () => {
    check({ s: 'exact' }, 5, 0);
    check({ s: 'unknown' }, 5, undefined);
    check({ s: 'normal', u: 0.2 }, 5, 0.2);
  });

  test('limits', () => {
    check({ s: 'rectangular', half: 3 }, 0, Math.sqrt(3));
    check({ s: 'arcsine', half: 2 }, 0, Math.SQRT2);
    // (a² + b² + c² − ab − ac − bc)/18 with 0, 6 and mode 0, then mode 3.
    check(triangle(0, 6), 0, Math.sqrt(36 / 18));
    check(triangle(0, 6), 3, Math.sqrt((36 + 9 - 18) / 18));
  });

  test('a narrow triangle far from zero loses no digits', () => {
    check(triangle(1e9 - 1, 1e9 + 1), 1e9, 1 / Math.sqrt(6));
  });

  test('repeats: deviation of their mean', () => {
    check({ s: 'repeats', xs: [1, 2, 3] }, 2, 1 / Math.sqrt(3));
    check({ s: 'repeats', xs: [4, 4] }, 4, 0);
  });
});

test('degreesOfFreedom', () => {
  const check = (spread: Spread, dof: number) => expect(degreesOfFreedom(spread)).toBe(dof);
  check({ s: 'repeats', xs: [1, 2, 3] }, 2);
  check({ s: 'normal', u: 1, dof: 18 }, 18);
  check({ s: 'normal', u: 1 }, Infinity);
  check({ s: 'rectangular', half: 1 }, Infinity);
  check({ s: 'unknown' }, Infinity);
});

test('meanShift: a leaning triangle has its mean off its mode', () => {
  const check = (spread: Spread, x: number, shift: number) =>
    expect(meanShift(spread, x)).toBeCloseTo(shift, 12);
  check(triangle(30, 44), 36, (30 + 36 + 44) / 3 - 36);
  check(triangle(30, 42), 36, 0);
  check({ s: 'rectangular', half: 1 }, 36, 0);
});

describe('checkSpread', () => {
  const check = (spread: Spread, x: number, words: string | undefined) => {
    const found = checkSpread(spread, x);
    if (words === undefined) expect(found).toBeUndefined();
    else expect(found).toContain(words);
  };

  test('nothing to say', () => {
    check({ s: 'exact' }, 5, undefined);
    check({ s: 'unknown' }, 5, undefined);
    check({ s: 'normal', u: 0, dof: 3.5 }, 5, undefined);
    check(triangle(1, 9), 9, undefined);
    check({ s: 'repeats', xs: [0.1, 0.2, 0.3] }, 0.2, undefined);
    check({ s: 'repeats', xs: [0, 0] }, 0, undefined);
  });

  test('what is wrong, in words', () => {
    check({ s: 'exact' }, Number.NaN, 'the value is NaN');
    check({ s: 'normal', u: Number.NaN }, 5, 'the standard uncertainty is NaN');
    check({ s: 'normal', u: Infinity }, 5, 'the standard uncertainty is Infinity');
    check({ s: 'normal', u: -1 }, 5, 'the standard uncertainty -1 is negative');
    check({ s: 'normal', u: 1, dof: 0 }, 5, '0 degrees of freedom');
    check({ s: 'rectangular', half: -2 }, 5, 'the half-width -2 is negative');
    check({ s: 'arcsine', half: Number.NaN }, 5, 'the half-width is NaN');
    check(triangle(9, 1), 5, 'the low limit 9 is above the high limit 1');
    check(triangle(1, 4), 5, 'the value 5 is outside its limits 1 to 4');
    check(triangle(Number.NaN, 4), 5, 'the limits NaN and 4');
    check({ s: 'repeats', xs: [5] }, 5, 'fewer than two repeats');
    check({ s: 'repeats', xs: [5, Number.NaN] }, 5, 'one of the repeats');
    check({ s: 'repeats', xs: [1, 2, 3] }, 2.5, 'the value 2.5 is not the mean 2');
  });
});
