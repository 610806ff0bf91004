/**
 * JCGM 100:2008 (GUM), Annex H.1, Table H.1: end-gauge calibration, asked as a made-up question.
 * Inputs and results l, u_c, contributions, 16.7 degrees of freedom: seen in the source and
 * recomputed. Second-order terms of H.1.7 and shares of variance: from memory, recomputed.
 *
 * JCGM 101:2008, 9.3, calibration of a mass: inputs and results from memory, recomputed.
 * NPL Report DEM-ES-011, 9, y = ln x: seen in the source and recomputed.
 * The last two are cases in which linear propagation alone misleads: it must say so.
 */
import { describe, expect, it } from 'vitest';
import type { Spread } from '../../src/quantity/index.ts';
import { ask, formula, madeQuestion, number, out, share } from '../engine/made-question.ts';
import { read, scalar, studyOf } from '../study/made-study.ts';

const NM = 1e-9;
const normal = (u: number, dof?: number): Spread => ({
  s: 'normal',
  u,
  ...(dof === undefined ? {} : { dof }),
});
const rectangular = (half: number): Spread => ({ s: 'rectangular', half });
const arcsine = (half: number): Spread => ({ s: 'arcsine', half });

/** Readings of the vehicle node: name, kind, value, spread. */
const given = (
  rows: readonly (readonly [string, 'length' | 'ratio' | 'mass' | 'density', number, Spread])[],
) => studyOf(...rows.map(([id, kind, x, s]) => read('van', id, scalar(kind, x, s), { id })));

describe('JCGM 100:2008, H.1, end gauge', () => {
  const names = ['ls', 'd', 'd1', 'd2', 'as', 'da', 'th', 'thCycle', 'dt'] as const;
  const lengths = new Set(['ls', 'd', 'd1', 'd2']);
  const question = madeQuestion(
    names.map((name) => (lengths.has(name) ? number(name, 'length', 'm') : number(name))),
    formula(
      (ls, d, d1, d2, as, da, th, thCycle, dt) =>
        ls + d + d1 + d2 - ls * (da * (th + thCycle) + as * dt),
      { kind: 'length', unit: 'um' },
    ),
  );
  const view = given([
    ['ls', 'length', 50_000_623 * NM, normal(25 * NM, 18)],
    ['d', 'length', 215 * NM, normal(5.8 * NM, 24)],
    ['d1', 'length', 0, normal(3.9 * NM, 5)],
    ['d2', 'length', 0, normal(6.7 * NM, 8)],
    ['as', 'ratio', 11.5e-6, rectangular(2e-6)],
    ['da', 'ratio', 0, normal(1e-6 / Math.sqrt(3), 50)],
    ['th', 'ratio', -0.1, normal(0.2)],
    ['thCycle', 'ratio', 0, arcsine(0.5)],
    ['dt', 'ratio', 0, normal(0.05 / Math.sqrt(3), 2)],
  ]);
  const y = out(ask(question, view), 'y');

  it('gives the length and its combined standard uncertainty', () => {
    expect(y.x / NM).toBeCloseTo(50_000_838, 0);
    expect(y.knownU).toBe(y.u);
    expect(y.knownU / NM).toBeGreaterThan(31.66 - 0.4);
    expect(y.knownU / NM).toBeLessThan(31.66 + 0.4);
  });

  it.each([
    [25, 0.05, ['ls']],
    [9.7, 0.05, ['d', 'd1', 'd2']],
    [2.9, 0.05, ['da']],
    [16.6, 0.05, ['dt']],
    [0, 1e-3, ['as', 'th', 'thCycle']],
  ] as const)('has a contribution of %f nm', (nm, within, ids) => {
    expect(Math.abs(share(y, ...ids) / NM - nm)).toBeLessThan(within);
  });

  it.each([
    ['ls', 62.3, ['ls']],
    ['d', 9.3, ['d', 'd1', 'd2']],
    ['da', 0.8, ['da']],
    ['dt', 27.5, ['dt']],
  ] as const)('has the share of variance of %s', (_, percent, ids) => {
    const found = (100 * share(y, ...ids) ** 2) / y.knownU ** 2;
    expect(Math.abs(found - percent)).toBeLessThan(0.2);
  });

  it('has 16.7 effective degrees of freedom', () => {
    expect(Math.abs((y.dof ?? 0) - 16.7)).toBeLessThan(0.3);
  });

  it('has 34 nm with the second-order terms of H.1.7, and says that they matter', () => {
    expect(Math.abs((y.secondOrderU ?? 0) / NM - 33.8)).toBeLessThan(0.1);
    expect(y.doubts.join()).toContain('second-order');
  });
});

describe('JCGM 101:2008, 9.3, mass calibration', () => {
  const question = madeQuestion(
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
  );
  const MG = 1e-6;
  const y = out(
    ask(
      question,
      given([
        ['mR', 'mass', 0.1, normal(0.05 * MG)],
        ['dmR', 'mass', 1.234 * MG, normal(0.02 * MG)],
        ['ra', 'density', 1.2, rectangular(0.1)],
        ['rW', 'density', 8000, rectangular(1000)],
        ['rR', 'density', 8000, rectangular(50)],
      ]),
    ),
    'y',
  );

  it('to first order is 1.2340 mg with 0.0539 mg', () => {
    expect(y.x / MG).toBeCloseTo(1.234, 4);
    expect(y.knownU / MG).toBeCloseTo(0.0539, 4);
  });

  it('is 0.0750 mg with the higher-order terms, and linear propagation is doubted', () => {
    expect((y.secondOrderU ?? 0) / MG).toBeCloseTo(0.075, 4);
    expect(y.doubts.join()).toContain('second-order');
  });
});

describe('NPL DEM-ES-011, 9, y = ln x', () => {
  const question = madeQuestion([number('x')], formula(Math.log));
  const y = out(ask(question, given([['x', 'ratio', 0.6, rectangular(0.5)]])), 'y');

  it('by the law of propagation is −0.511 with 0.481', () => {
    expect(Math.abs(y.x + 0.511)).toBeLessThan(0.002);
    expect(Math.abs(y.knownU - 0.481)).toBeLessThan(0.002);
  });

  it('is doubted: the mean is at −0.665, the spread not normal', () => {
    expect(y.doubts.length).toBeGreaterThanOrEqual(2);
    expect(y.meanShift).toBeLessThan(-0.1);
  });
});
