/**
 * Nettles, Basic Mechanics of Laminated Composite Plates, NASA Reference Publication 1351,
 * October 1994 (questions ply-stiffness and laminate-stiffness): Q and Q̄ (PDF pp. 46, 84),
 * examples 9 (p. 84) and 2 (p. 46), in psi, inches and pounds, seen and recomputed. The report
 * goes on with a minor Poisson ratio rounded to 0.02. A quasi-isotropic laminate: A and D seen,
 * moduli recomputed.
 */
import { describe, expect, it } from 'vitest';
import { reducedStiffness, turnedStiffness } from '../../src/engine/structure/lamina.ts';
import { fromSi, type Kind } from '../../src/quantity/index.ts';
import { out } from '../engine/made-question.ts';
import { asked, off } from '../engine/structure/asked.ts';

const PSI = 6894.757293168361;
const REPORT = { e1: 20.01e6, e2: 1.301e6, g12: 1.001e6, nu12: 0.3 };
const TOP = 'first ply at the top (+z)';
const BOTTOM = 'first ply at the bottom (-z)';

const written = ({ e1, e2, g12, nu12 }: typeof REPORT) => ({
  ...{ e1: `exactly ${e1} psi`, e2: `exactly ${e2} psi`, g12: `exactly ${g12} psi` },
  nu12: `exactly ${nu12}`,
});
const laminate = (of: typeof REPORT, angles: readonly number[], inches: number, order = TOP) =>
  asked('laminate-stiffness', {
    order,
    materials: [{ material: 'ply', ...written(of) }],
    plies: angles.map((angle) => ({
      ...{ material: 'ply', angle: `exactly ${angle} °` },
      thickness: `exactly ${inches} in`,
    })),
  });
type Answer = Awaited<ReturnType<typeof laminate>>;

const UNIT: Readonly<Record<string, readonly [unit: string, kind: Kind]>> = {
  A: ['[lbf_av]/[in_i]', 'stiffness'],
  B: ['[lbf_av]', 'force'],
  D: ['[lbf_av].[in_i]', 'flexuralRigidity'],
};
/** A term in pounds and inches. */
function term(answer: Answer, name: string): number {
  const [unit, kind] = UNIT[name.charAt(0)] ?? ['1', 'ratio'];
  return fromSi(out(answer, name).x, unit, kind);
}

describe('Q of the ply', () => {
  it('with the rounded minor Poisson ratio is what the report prints, to 1 psi', () => {
    const q = reducedStiffness(REPORT, 0.02);
    expect(Math.abs(q.q11 - 20_130_785)).toBeLessThan(1);
    expect(Math.abs(q.q12 - 392_656)).toBeLessThan(1);
    expect(Math.abs(q.q22 - 1_308_853)).toBeLessThan(1);
    expect(q.q66).toBe(1_001_000);
  });

  it('by reciprocity has Q11 20 127 779 psi: the rounding is 0.015 %', async () => {
    const answer = await asked('ply-stiffness', { ...written(REPORT), angle: 'exactly 0 °' });
    const q11 = out(answer, 'Q11').x / PSI;
    expect(Math.abs(q11 - 20_127_779)).toBeLessThan(1);
    expect(off(20_130_785, q11)).toBeGreaterThan(1.4e-4);
  });

  it('turned by 45° is what the report prints, to 1 psi', () => {
    const q = turnedStiffness(reducedStiffness(REPORT, 0.02), Math.PI / 4);
    const expected = {
      ...{ q11: 6_557_237, q22: 6_557_237, q12: 4_555_238 },
      ...{ q16: 4_705_483, q26: 4_705_483, q66: 5_163_582 },
    };
    for (const [key, x] of Object.entries(expected))
      expect(Math.abs(q[key as keyof typeof q] - x), key).toBeLessThan(1);
  });
});

describe('example 9: plies 45 above, 0 in the middle, 90 below', async () => {
  const answer = await laminate(REPORT, [45, 0, 90], 0.005);
  it.each([
    ['A11', 139_984],
    ['A22', 139_984],
    ['A12', 26_703],
    ['A16', 23_527],
    ['A26', 23_527],
    ['A66', 35_828],
    ['B11', 131.2],
    ['B12', 104],
    ['B22', -339.4],
    ['B16', 117.6],
    ['B26', 117.6],
    ['B66', 104],
  ])('%s is %f within 0.1 %%', (name, x) => {
    expect(off(term(answer, name), x)).toBeLessThan(1e-3);
  });

  it('says where the first ply lies; the other order turns the sign of B and no other', async () => {
    expect(answer.detail?.title).toContain('from the top (+z) down');
    const other = await laminate(REPORT, [45, 0, 90], 0.005, BOTTOM);
    for (const k of ['11', '12', '16', '22', '26', '66']) {
      expect(term(other, `B${k}`)).toBeCloseTo(-term(answer, `B${k}`), 6);
      expect(off(term(other, `A${k}`), term(answer, `A${k}`))).toBeLessThan(1e-12);
      expect(term(other, `D${k}`)).toBeCloseTo(term(answer, `D${k}`), 9);
    }
  });

  it('is told to curl when pulled', () => {
    expect(answer.findings.map((f) => f.code)).toContain('stretching-bends');
  });
});

describe('example 2: plies 0 above, 45 below', async () => {
  const answer = await laminate(REPORT, [0, 45], 0.005);
  it.each([
    ['B11', 170, 169.67],
    ['B12', -52, -52.03],
    ['B22', -66, -65.6],
    ['B16', -59, -58.82],
    ['B26', -59, -58.82],
    ['B66', -52, -52.03],
  ])('%s is %f lb as printed, %f recomputed', (name, printed, x) => {
    expect(Math.abs(term(answer, name) - printed)).toBeLessThan(0.5);
    expect(Math.abs(term(answer, name) - x)).toBeLessThan(0.03);
  });
});

describe('a quasi-isotropic laminate [0/45/90/−45]s', async () => {
  const of = { e1: 20e6, e2: 1.5e6, g12: 1.0e6, nu12: 0.34 };
  const answer = await laminate(of, [0, 45, 90, -45, -45, 90, 45, 0], 0.0075);
  it.each([
    ['A11', 525_698],
    ['A22', 525_698],
    ['A12', 155_811],
    ['A66', 184_943],
    ['D11', 250.495],
    ['D12', 32.687],
    ['D22', 93.036],
    ['D16', 23.619],
    ['D26', 23.619],
    ['D66', 41.427],
  ])('%s is %f within 0.01 %%', (name, x) => {
    expect(off(term(answer, name), x)).toBeLessThan(1e-4);
  });

  it('couples nothing, and is alike every way in its plane', () => {
    for (const k of ['11', '12', '16', '22', '26', '66']) expect(term(answer, `B${k}`)).toBe(0);
    expect(answer.findings).toEqual([]);
    expect(off(out(answer, 'Ex').x / PSI, 7.992e6)).toBeLessThan(2e-4);
    expect(off(out(answer, 'Ey').x / PSI, 7.992e6)).toBeLessThan(2e-4);
    expect(off(out(answer, 'Gxy').x / PSI, 3.0824e6)).toBeLessThan(1e-4);
    expect(off(out(answer, 'nuxy').x, 0.2964)).toBeLessThan(3e-4);
  });
});
