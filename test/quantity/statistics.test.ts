import { describe, expect, test } from 'vitest';
import {
  normalQuantile,
  studentQuantile,
  studentT,
  welchSatterthwaite,
} from '../../src/quantity/index.ts';

// Published tables are in test/published/nist-tn-1297.test.ts; here are closed forms and edges.

describe('normalQuantile', () => {
  test('symmetric, in the middle and in the tails', () => {
    expect(normalQuantile(0.5)).toBe(0);
    for (const p of [0.4, 0.07, 0.01, 1e-6, 1e-9])
      expect(normalQuantile(p)).toBeCloseTo(-normalQuantile(1 - p), 6);
  });

  test('no probability, no quantile', () => {
    for (const p of [0, 1, -0.1, 1.1, Number.NaN])
      expect(() => normalQuantile(p), `${p}`).toThrow(RangeError);
  });
});

describe('studentQuantile', () => {
  const check = (p: number, dof: number, t: number) =>
    expect(Math.abs(studentQuantile(p, dof) / t - 1), `${p} ${dof}`).toBeLessThan(1e-9);

  test('closed forms: one degree of freedom is Cauchy, two are algebraic', () => {
    for (const p of [0.001, 0.2, 0.6, 0.95, 0.999]) {
      check(p, 1, Math.tan(Math.PI * (p - 0.5)));
      check(p, 2, (2 * p - 1) / Math.sqrt(2 * p * (1 - p)));
    }
  });

  test('many degrees of freedom join the normal distribution without a step', () => {
    for (const p of [0.6, 0.95, 0.9999]) {
      const off = studentQuantile(p, 999_999) - studentQuantile(p, 1_000_000);
      expect(Math.abs(off)).toBeLessThan(1e-8);
      expect(studentQuantile(p, Infinity)).toBe(normalQuantile(p));
    }
    expect(studentQuantile(0.5, 7)).toBe(0);
  });

  test('between whole degrees of freedom it falls', () => {
    expect(studentT(0.99, 16.7)).toBeLessThan(studentT(0.99, 16));
    expect(studentT(0.99, 16.7)).toBeGreaterThan(studentT(0.99, 17));
  });

  test('no degrees of freedom, no quantile', () => {
    for (const dof of [0, -1, Number.NaN]) expect(() => studentT(0.95, dof)).toThrow(RangeError);
    expect(() => studentT(1, 5)).toThrow(RangeError);
  });
});

describe('welchSatterthwaite', () => {
  const check = (contributions: [c: number, dof: number][], dof: number) =>
    expect(welchSatterthwaite(contributions.map(([c, d]) => ({ c, dof: d })))).toBeCloseTo(dof, 9);

  test('one contribution keeps its own, equal ones add theirs', () => {
    check([[3, 5]], 5);
    check([[-3, 5]], 5);
    check(
      [
        [1, 5],
        [1, 5],
      ],
      10,
    );
  });

  test('without finite ones there is no limit', () => {
    expect(welchSatterthwaite([])).toBe(Infinity);
    expect(welchSatterthwaite([{ c: 1, dof: Infinity }])).toBe(Infinity);
    expect(welchSatterthwaite([{ c: 0, dof: 1 }])).toBe(Infinity);
  });
});
