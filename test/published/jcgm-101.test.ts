/**
 * JCGM 101:2008, "Supplement 1 to the GUM: Propagation of distributions using a Monte Carlo
 * method", examples 9.2 and 9.3 (printed figures from memory, recomputed), and 6.4 (distributions).
 * NPL Report DEM-ES-011, 9 (y = ln x; inputs and figures seen).
 */
import { describe, expect, it } from 'vitest';
import type { Sampled, SampledOut } from '../../src/engine/index.ts';
import { shapeOf } from '../../src/engine/monte-carlo/shapes.ts';
import { formula, number } from '../engine/made-question.ts';
import { normal, rectangular, sampledOf, variable } from '../engine/monte-carlo/sampled-of.ts';

const y = ({ outs }: Sampled): SampledOut => {
  const [only] = outs;
  if (!only) throw new Error('nothing was sampled');
  return only;
};
const within = (found: number, wanted: number, tolerance: number) =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(tolerance);

describe('9.2, the sum of four', () => {
  const four = ['a', 'b', 'c', 'd'].map((name) => number(name));
  const sum = formula((a, b, c, d) => a + b + c + d);
  const unit = rectangular(Math.sqrt(3));
  const sumOf = (spreads: Parameters<typeof sampledOf>[2][number][1][]) =>
    sampledOf(
      four,
      sum,
      spreads.map((spread) => [0, spread]),
      { samples: 1_000_000 },
    );

  it('9.2.2: of normal ones has u 2.00 and ± 3.92, and the linear result is validated', () => {
    const all = sumOf([normal(1), normal(1), normal(1), normal(1)]);
    within(y(all).u, 2, 0.005);
    within(y(all).symmetric.low, -3.92, 0.01);
    within(y(all).symmetric.high, 3.92, 0.01);
    expect(y(all).validated.holds).toBe(true);
  });

  it('9.2.3: of rectangular ones has u 2.00 and ± 3.88', () => {
    const all = sumOf([unit, unit, unit, unit]);
    within(y(all).u, 2, 0.005);
    // Exactly 2√3 (2 − (3/5)^(1/4)).
    within(y(all).symmetric.high, 3.8794, 0.01);
    within(y(all).shortest.high - y(all).shortest.low, 2 * 3.8794, 0.02);
  });

  it('9.2.4: with one ten times wider has u 10.1 and ± 17.0, where the linear ± 19.9 is not validated', () => {
    const all = sumOf([unit, unit, unit, rectangular(10 * Math.sqrt(3))]);
    within(y(all).u, 10.149, 0.05);
    within(y(all).symmetric.high, 17, 0.05);
    within(y(all).validated.linear.high, 19.9, 0.05);
    expect(y(all).validated.holds).toBe(false);
  });
});

it('9.3: mass calibration has 1.234 mg, u 0.0755 mg, 95 % from 1.084 to 1.384 mg, and linear is not validated', () => {
  const MG = 1e-6;
  const all = sampledOf(
    [
      number('mR', 'mass', 'kg'),
      number('dmR', 'mass', 'kg'),
      number('ra', 'density', 'kg/m3'),
      number('rW', 'density', 'kg/m3'),
      number('rR', 'density', 'kg/m3'),
    ],
    formula((mR, dmR, ra, rW, rR) => (mR + dmR) * (1 + (ra - 1.2) * (1 / rW - 1 / rR)) - 0.1, {
      kind: 'mass',
      unit: 'g',
    }),
    [
      [0.1, normal(0.05 * MG)],
      [1.234 * MG, normal(0.02 * MG)],
      [1.2, rectangular(0.1)],
      [8000, rectangular(1000)],
      [8000, rectangular(50)],
    ],
    { samples: 1_000_000 },
  );
  within(y(all).mean / MG, 1.234, 0.0005);
  within(y(all).u / MG, 0.0755, 0.0003);
  within(y(all).symmetric.low / MG, 1.084, 0.003);
  within(y(all).symmetric.high / MG, 1.384, 0.003);
  within(y(all).validated.linear.low / MG, 1.1285, 0.0002);
  expect(y(all).validated.holds).toBe(false);
});

it('DEM-ES-011, 9: y = ln x has −0.665, u 0.606 and the shortest interval −1.895 to 0.095', () => {
  const all = sampledOf([number('x')], formula(Math.log), [[0.6, rectangular(0.5)]], {
    samples: 1_000_000,
  });
  within(y(all).mean, -0.665, 0.002);
  within(y(all).u, 0.606, 0.002);
  within(y(all).shortest.low, -1.895, 0.005);
  within(y(all).shortest.high, 0.0953, 0.005);
  expect(y(all).shortest.low).toBeGreaterThan(y(all).symmetric.low);
});

describe('6.4, a distribution', () => {
  const moments = (
    spread: Parameters<typeof variable>[0],
    shift = 0,
    dof: number | null = null,
  ) => {
    const { quantile } = shapeOf(variable(spread, shift, dof));
    const n = 200_000;
    const xs = Array.from({ length: n }, (_, i) => quantile((i + 0.5) / n));
    const mean = xs.reduce((a, b) => a + b, 0) / n;
    return { mean, u: Math.sqrt(xs.reduce((a, x) => a + (x - mean) ** 2, 0) / n) };
  };

  it.each(['rectangular', 'arcsine'] as const)('that is %s has mean 0 and u 1', (s) => {
    const { mean, u } = moments({ s, half: 1 });
    within(mean, 0, 1e-9);
    within(u, 1, 1e-4);
  });

  it('that is a leaning triangle has its mean off its mode, and u 1', () => {
    // Limits −1 and 3 about the mode 0: u² = (1 + 9 + 3)/18, mean 2/3.
    const u = Math.sqrt(13 / 18);
    const found = moments({ s: 'triangular', low: -1, high: 3 }, 2 / 3 / u);
    within(found.mean * u, 2 / 3, 1e-6);
    within(found.u, 1, 1e-4);
  });

  it('of few repeats is Student’s t: with ν = 10 its u is √(10/8)', () => {
    within(moments({ s: 'repeats', xs: [1, 2] }, 0, 10).u, Math.sqrt(10 / 8), 5e-3);
  });
});
