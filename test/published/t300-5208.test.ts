/**
 * T300/5208 carbon and epoxy (E₁ 181, E₂ 10.3, G₁₂ 7.17 GPa, ν₁₂ 0.28), the ply of Tsai and Hahn,
 * Introduction to Composite Materials, Jones, Mechanics of Composite Materials, and Kaw, Mechanics
 * of Composite Materials, 2nd edition (examples 2.x, 4.2 and 4.3; plies from z = −h/2): questions
 * ply-stiffness, laminate-stiffness, laminate-strain. From memory, recomputed.
 */
import { describe, expect, it } from 'vitest';
import { out } from '../engine/made-question.ts';
import { asked, off, shown } from '../engine/structure/asked.ts';

const T300 = {
  ...{ e1: 'exactly 181 GPa', e2: 'exactly 10.3 GPa', g12: 'exactly 7.17 GPa' },
  nu12: 'exactly 0.28',
};
const BOTTOM = 'first ply at the bottom (-z)';
const TOP = 'first ply at the top (+z)';
const plies = (angles: readonly number[], mm: number) =>
  angles.map((angle) => ({
    ...{ material: 'T300', angle: `exactly ${angle} °`, thickness: `exactly ${mm} mm` },
  }));
const ply = (angle: number) => asked('ply-stiffness', { ...T300, angle: `exactly ${angle} °` });
const laminate = (angles: readonly number[], mm: number, order = BOTTOM) =>
  asked('laminate-stiffness', {
    order,
    materials: [{ material: 'T300', ...T300 }],
    plies: plies(angles, mm),
  });

describe('the ply', async () => {
  const at = { 0: await ply(0), 30: await ply(30), 45: await ply(45), 60: await ply(60) };
  it.each([
    [0, 'Q11', 181.811],
    [0, 'Q22', 10.346],
    [0, 'Q12', 2.897],
    [0, 'Q66', 7.17],
    [45, 'Qbar11', 56.658],
    [45, 'Qbar22', 56.658],
    [45, 'Qbar12', 42.318],
    [45, 'Qbar16', 42.866],
    [45, 'Qbar26', 42.866],
    [45, 'Qbar66', 46.591],
    [30, 'Qbar11', 109.379],
    [30, 'Qbar12', 32.463],
    [30, 'Qbar16', 54.193],
    [30, 'Qbar22', 23.647],
    [30, 'Qbar26', 20.054],
    [30, 'Qbar66', 36.736],
    [60, 'Ex', 12.418],
    [60, 'Ey', 28.78],
    [60, 'Gxy', 8.761],
    [45, 'Ex', 16.737],
    [45, 'Gxy', 9.46],
  ] as const)('at %i° has %s = %f GPa', (angle, name, x) => {
    expect(off(shown(at[angle], name), x)).toBeLessThan(5e-4);
  });

  it('at 60° contracts by 0.0978', () => {
    expect(off(shown(at[60], 'nuxy'), 0.0978)).toBeLessThan(6e-4);
  });

  it('has the invariants U1 76.368, U2 85.732, U3 19.710, U4 22.607, U5 26.880 GPa', () => {
    // Combinations of Q̄ at 0 and 45° that single out each of them.
    const q = (angle: 0 | 45, k: string) => shown(at[angle], `Qbar${k}`);
    const sum = (q(0, '11') + q(0, '22')) / 2;
    const u3 = (sum - (q(45, '11') + q(45, '22')) / 2) / 2;
    expect(off(sum - u3, 76.368)).toBeLessThan(5e-4);
    expect(off((q(0, '11') - q(0, '22')) / 2, 85.732)).toBeLessThan(5e-4);
    expect(off(u3, 19.71)).toBeLessThan(5e-4);
    expect(off((q(0, '12') + q(45, '12')) / 2, 22.607)).toBeLessThan(5e-4);
    expect(off((q(0, '66') + q(45, '66')) / 2, 26.88)).toBeLessThan(5e-4);
  });
});

describe('laminates', () => {
  it('[0/±60] is quasi-isotropic: E 69.676, G 26.880 GPa, ν 0.2960', async () => {
    const answer = await laminate([0, 60, -60, -60, 60, 0], 0.125);
    expect(off(shown(answer, 'Ex'), 69.676)).toBeLessThan(5e-4);
    expect(off(shown(answer, 'Gxy'), 26.88)).toBeLessThan(5e-4);
    expect(off(shown(answer, 'nuxy'), 0.296)).toBeLessThan(5e-4);
  });

  it('[0/90], 0.125 mm each: B11 = −B22 = −1.33957 kN and nothing else; turned over, the sign', async () => {
    const answer = await laminate([0, 90], 0.125);
    expect(off(shown(answer, 'B11'), -1.33957)).toBeLessThan(5e-4);
    expect(off(shown(answer, 'B22'), 1.33957)).toBeLessThan(5e-4);
    for (const k of ['B12', 'B16', 'B26', 'B66'])
      expect(Math.abs(shown(answer, k))).toBeLessThan(1e-12);
    expect(shown(await laminate([0, 90], 0.125, TOP), 'B11')).toBeCloseTo(1.33957, 3);
  });

  it('[45/−45]: only B16 = B26 = −0.66979 kN', async () => {
    const answer = await laminate([45, -45], 0.125);
    expect(off(shown(answer, 'B16'), -0.66979)).toBeLessThan(5e-4);
    expect(off(shown(answer, 'B26'), -0.66979)).toBeLessThan(5e-4);
    for (const k of ['B11', 'B12', 'B22', 'B66'])
      expect(Math.abs(shown(answer, k))).toBeLessThan(1e-12);
  });
});

describe('Kaw, example 4.2: [0/30/−45], 5 mm each', async () => {
  const answer = await laminate([0, 30, -45], 5);
  it.each([
    ['A11', 1.739e9],
    ['A12', 3.884e8],
    ['A16', 5.663e7],
    ['A22', 4.533e8],
    ['A26', -1.141e8],
    ['A66', 4.525e8],
    ['B11', -3.129e6],
    ['B12', 9.855e5],
    ['B66', 9.855e5],
    ['B16', -1.072e6],
    ['B26', -1.072e6],
    ['B22', 1.158e6],
    ['D11', 3.343e4],
    ['D12', 6.461e3],
    ['D16', -5.24e3],
    ['D22', 9.32e3],
    ['D26', -5.596e3],
    ['D66', 7.663e3],
  ])('%s is %f within 0.05 %%', (name, x) => {
    expect(off(out(answer, name).x, x)).toBeLessThan(5e-4);
  });
});

describe('Kaw, example 4.3: the same under Nx = Ny = 1000 N/m', async () => {
  const limit = 'exactly 1 %';
  const answer = await asked('laminate-strain', {
    ...{ nx: 'exactly 1 N/mm', ny: 'exactly 1 N/mm', order: BOTTOM },
    materials: [
      { material: 'T300', ...T300, t1: limit, c1: limit, t2: limit, c2: limit, s12: limit },
    ],
    plies: plies([0, 30, -45], 5),
  });
  it.each([
    ['ex', 3.123e-7],
    ['ey', 3.492e-6],
    ['gxy', -7.598e-7],
    ['kx', 2.971e-5],
    ['ky', -3.285e-4],
    ['kxy', 4.101e-4],
  ])('%s is %f', (name, x) => {
    expect(off(out(answer, name).x, x)).toBeLessThan(5e-4);
  });
});
