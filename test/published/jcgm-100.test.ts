/**
 * JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in
 * measurement (GUM 1995 with minor corrections).
 *
 * - 4.3.7 to 4.3.9 and H.1.3.4: standard uncertainty from limits. Status: formulas from memory,
 *   numbers recomputed.
 * - 7.2.2: four ways of stating a result. Status: the number and its uncertainty seen (also in
 *   the examples of uncertainty statements of NIST, physics.nist.gov/cuu/Uncertainty); the
 *   forms with parentheses from memory.
 * - 7.2.6: rounding. Status: seen, as quoted in full by a calibration house.
 * - H.1, Table H.1, the end gauge. Status: inputs and results seen; shares of variance and the
 *   two second-order terms from memory, recomputed.
 * Tolerance: half of the last printed digit where no other is named.
 */
import { describe, expect, test } from 'vitest';
import {
  centralDifference,
  FormBuilder,
  formUncertainty,
  parseQuantity,
  partials,
  roundToUncertainty,
  type Spread,
  spreadFromSi,
  standardUncertainty,
  studentT,
  welchSatterthwaite,
} from '../../src/quantity/index.ts';

const uOf = (spread: Spread, x = 0): number => standardUncertainty(spread, x) ?? Number.NaN;

describe('4.3.7 to 4.3.9: limits a = 0.5', () => {
  const check = (spread: Spread, u: number) => expect(uOf(spread)).toBeCloseTo(u, 5);
  test('rectangular a/√3', () => check({ s: 'rectangular', half: 0.5 }, 0.28868));
  test('triangular a/√6', () => check({ s: 'triangular', low: -0.5, high: 0.5 }, 0.20412));
  test('arcsine a/√2 (H.1.3.4)', () => check({ s: 'arcsine', half: 0.5 }, 0.35355));
});

describe('7.2.2: m = 100.021 47 g with u = 0.35 mg, as four people write it', () => {
  test.each([
    '100,021 47(35) g',
    '100,021 47(0,000 35) g',
    '(100,021 47 ± 0,000 35) g',
    '100.021 47 g ± 0.35 mg',
  ])('%s', (text) => {
    const parsed = parseQuantity(text, 'mass');
    if (!parsed.ok) throw new Error(parsed.why);
    expect(parsed.value.x).toBeCloseTo(0.10002147, 12);
    expect(parsed.value.spread.s).toBe('normal');
    expect(uOf(parsed.value.spread)).toBeCloseTo(0.35e-6, 12);
  });
});

describe('7.2.6: rounding', () => {
  const check = (x: number, u: number, text: [string, string]) => {
    const rounded = roundToUncertainty(x, u);
    expect([rounded.x, rounded.u]).toEqual(text);
  };
  test('10.057 62 Ω with 27 mΩ is 10.058 Ω', () => check(10.05762, 0.027, ['10.058', '0.027']));
  test('28.05 kHz is 28 kHz', () => check(1000, 28.05, ['1000', '28']));
  // The guide allows 10.47 mΩ to be rounded up to 11 mΩ; the tool rounds to the nearest, 10.
  test('10.47 mΩ, rounded to the nearest', () => check(500, 10.47, ['500', '10']));
});

describe('H.1: calibration of an end gauge', () => {
  // l = ls + d − ls (δα θ + αs δθ); lengths in nm, expansion in 1/K, temperatures in K.
  const length = (ls: number, d: number, da: number, th: number, as: number, dt: number) =>
    ls + d - ls * (da * th + as * dt);
  const xs = [50_000_623, 215, 0, -0.1, 11.5e-6, 0];
  const readings = uOf({ s: 'normal', u: 5.8 });
  const random = 10 / studentT(0.95, 5);
  const systematic = 20 / 3;
  const us = [
    75 / 3,
    Math.hypot(readings, random, systematic),
    uOf({ s: 'rectangular', half: 1e-6 }),
    Math.hypot(0.2, uOf({ s: 'arcsine', half: 0.5 })),
    uOf({ s: 'rectangular', half: 2e-6 }),
    uOf({ s: 'rectangular', half: 0.05 }),
  ];
  const dofOfD = welchSatterthwaite([
    { c: readings, dof: 24 },
    { c: random, dof: 5 },
    { c: systematic, dof: 8 },
  ]);
  const { first } = partials(length, xs, us);
  const contributions = us.map((u, i) => u * (first[i] ?? Number.NaN));
  const share = (i: number) => ((contributions[i] ?? Number.NaN) / uc) ** 2 * 100;

  const form = new FormBuilder();
  form.x = length(...(xs as [number, number, number, number, number, number]));
  contributions.forEach((c, i) => {
    form.contribute(`x${i}`, c);
  });
  const uc = formUncertainty(form.done());
  const dof = welchSatterthwaite([
    { c: contributions[0] ?? Number.NaN, dof: 18 },
    { c: contributions[1] ?? Number.NaN, dof: dofOfD },
    { c: contributions[2] ?? Number.NaN, dof: 50 },
    { c: contributions[5] ?? Number.NaN, dof: 2 },
  ]);

  test('length 50 000 838 nm', () => expect(form.x).toBeCloseTo(50_000_838, 6));

  test('parts of d: 3.9 and 6.7 nm, 25.6 degrees of freedom', () => {
    expect(random).toBeCloseTo(3.9, 1);
    expect(systematic).toBeCloseTo(6.7, 1);
    expect(us[3]).toBeCloseTo(0.41, 2);
    expect(dofOfD).toBeGreaterThan(25.3);
    expect(dofOfD).toBeLessThan(25.9);
  });

  test('contributions 25, 9.7, 2.9, 0, 0 and 16.6 nm', () => {
    const printed = [25, 9.7, 2.9, 0, 0, 16.6];
    printed.forEach((c, i) => {
      expect(Math.abs(Math.abs(contributions[i] ?? Number.NaN) - c), `${i}`).toBeLessThan(0.05);
    });
  });

  test('combined 32 nm; shares of variance 62.3, 9.3, 0.8 and 27.5 %', () => {
    expect(Math.abs(uc - 31.66)).toBeLessThan(0.4);
    for (const [i, percent] of [
      [0, 62.3],
      [1, 9.3],
      [2, 0.8],
      [5, 27.5],
    ] as const)
      expect(Math.abs(share(i) - percent), `${i}`).toBeLessThan(0.2);
  });

  test('16 effective degrees of freedom, t99 2.92, expanded 93 nm', () => {
    expect(Math.abs(dof - 16.7)).toBeLessThan(0.3);
    expect(studentT(0.99, Math.floor(dof))).toBeCloseTo(2.92, 2);
    expect(Math.abs(studentT(0.99, Math.floor(dof)) * uc - 93)).toBeLessThan(1);
  });

  test('H.1.7: two second-order terms, 11.7 and 1.7 nm, make it 34 nm', () => {
    /** |∂²l/∂xᵢ∂xⱼ| uᵢ uⱼ. */
    const mixed = (i: number, j: number): number => {
      const at = (xi: number, xj: number) => {
        const moved = xs.map((x, k) => (k === i ? xi : k === j ? xj : x));
        return length(...(moved as [number, number, number, number, number, number]));
      };
      const [ui = 0, uj = 0] = [us[i], us[j]];
      const slope = (xj: number) => centralDifference((xi) => at(xi, xj), xs[i] ?? 0, ui);
      return Math.abs(centralDifference(slope, xs[j] ?? 0, uj)) * ui * uj;
    };
    const [first, second] = [mixed(2, 3), mixed(4, 5)];
    expect(first).toBeCloseTo(11.7, 1);
    expect(second).toBeCloseTo(1.7, 1);
    expect(Math.hypot(uc, first, second)).toBeCloseTo(33.8, 1);
  });
});

test('a length in nm is the same in SI', () => {
  expect(spreadFromSi(31.66e-9, 'nm', 'length')).toBeCloseTo(31.66, 9);
});
