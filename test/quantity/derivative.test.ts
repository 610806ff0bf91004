import { describe, expect, test } from 'vitest';
import { centralDifference, partials, secondDifference } from '../../src/quantity/index.ts';

type F = (x: number) => number;

describe('against the exact derivatives', () => {
  const check = (f: F, first: F, second: F, x: number, scale: number) => {
    const off = (a: number, b: number) => Math.abs(a - b) / Math.max(1, Math.abs(b));
    // Truncation grows with the square of the step, which is a share of the scale.
    const [a, b] = [1e-8 + 1e-6 * scale ** 2, 1e-5 + 1e-4 * scale ** 2];
    expect(off(centralDifference(f, x, scale), first(x)), `f'(${x})`).toBeLessThan(a);
    expect(off(secondDifference(f, x, scale), second(x)), `f''(${x})`).toBeLessThan(b);
  };

  test('smooth functions', () => {
    for (const x of [-3, -0.1, 0, 0.2, 1, 7]) {
      check(Math.sin, Math.cos, (t) => -Math.sin(t), x, 0.01);
      check(Math.exp, Math.exp, Math.exp, x, 0);
      check(
        (t) => t ** 3,
        (t) => 3 * t ** 2,
        (t) => 6 * t,
        x,
        0.5,
      );
    }
  });

  test('large and small arguments', () => {
    check(
      Math.log,
      (x) => 1 / x,
      (x) => -1 / x ** 2,
      1e9,
      1,
    );
    expect(centralDifference((x) => 1 / x, 1e-6, 1e-8)).toBeCloseTo(-1e12, -5);
  });

  test('at zero the step comes from the standard uncertainty', () => {
    // sin(1e9 x) has its first turning point at 1.6e-9: a step of 1e-6 would see noise.
    expect(centralDifference((x) => Math.sin(1e9 * x), 0, 1e-11) / 1e9).toBeCloseTo(1, 6);
  });

  test('a small correction to a large number keeps its digits', () => {
    // 50 mm in nm, and an expansion of (0 ± 0.6)e-6 per kelvin over 0.1 K.
    const f: F = (da) => 50_000_838 - 50_000_623 * da * 0.1;
    expect(centralDifference(f, 0, 0.6e-6) / -5_000_062.3).toBeCloseTo(1, 5);
    expect(Math.abs(secondDifference(f, 0, 0.6e-6) * 0.36e-12)).toBeLessThan(1e-3);
  });

  test('a straight line has no curvature', () => {
    expect(secondDifference((x) => 3 * x + 1, 0, 1)).toBeCloseTo(0, 9);
    expect(centralDifference((x) => 3 * x + 1, 0, 1)).toBeCloseTo(3, 11);
  });

  test('at the edge of the domain the other side is taken', () => {
    const half: F = (x) => (x < 0 ? Number.NaN : x ** 2 + x);
    expect(centralDifference(half, 0, 1)).toBeCloseTo(1, 9);
    expect(secondDifference(half, 0, 1)).toBeCloseTo(2, 4);
    expect(centralDifference((x) => half(-x), 0, 1)).toBeCloseTo(-1, 9);
  });
});

describe('partials', () => {
  test('each argument alone, none moved for good', () => {
    const f = (x: number, y: number, z: number) => x * y ** 2 + 5 * z;
    const { first, second } = partials(f, [2, 3, 4], [0.1, 0.1, 0]);
    [9, 12, 5].forEach((d, i) => {
      expect(first[i]).toBeCloseTo(d, 8);
    });
    [0, 4, 0].forEach((d, i) => {
      expect(second[i]).toBeCloseTo(d, 4);
    });
  });

  test('lists of different length are refused', () => {
    expect(() => partials(Math.max, [1, 2], [1])).toThrow(RangeError);
  });
});
