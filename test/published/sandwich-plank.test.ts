/**
 * Allen, Analysis and Design of Structural Sandwich Panels, 1969, and Gibson and Ashby, Cellular
 * Solids: bending and core shear of a sandwich beam, S = G b d²/c (question sandwich-plank), from
 * memory; each case recomputed by numerical integration of Timoshenko's beam equations.
 */
import { describe, expect, it } from 'vitest';
import { asked, codes, detailRow, off, shown } from '../engine/structure/asked.ts';

const PLANK = {
  ...{ l: 'exactly 1 m', b: 'exactly 200 mm', t: 'exactly 2 mm', core: 'exactly 20 mm' },
  ...{ modulus: 'exactly 70 GPa', poisson: 'exactly 0', coreShear: 'exactly 20 MPa' },
  force: 'exactly 100 N',
};
type Ends = 'supported' | 'clamped';
type Lies = 'central' | 'even';
const plank = (ends: Ends, load: Lies, more: Record<string, string> = {}) =>
  asked('sandwich-plank', { ...PLANK, ends, load, ...more });

const [L, P, D, S] = [
  1,
  100,
  70e9 * 0.2 * (0.002 ** 3 / 6 + (0.002 * 0.022 ** 2) / 2),
  (20e6 * 0.2 * 0.022 ** 2) / 0.02,
];

/**
 * Deflection at mid-span by small steps from one end: D ψ′ = −M, M′ = V, w′ = ψ + V / S. By
 * symmetry V is half the load at the end and ψ = 0 at the middle; a clamped end has ψ = 0 too,
 * which gives its moment.
 */
function byDifferences(ends: Ends, load: Lies, d: number, s: number, n = 4000): number {
  const h = L / 2 / n;
  // Half of the span, from the end: ψ(middle) = 0.
  const shearAt = (x: number) => (load === 'central' ? P / 2 : P / 2 - (P / L) * x);
  const turn = (endMoment: number) => {
    const psi = [0];
    let moment = endMoment;
    for (let i = 0; i < n; i++) {
      const middle = moment + (shearAt((i + 0.5) * h) * h) / 2;
      psi.push((psi[i] ?? 0) - (middle * h) / d);
      moment += shearAt((i + 0.5) * h) * h;
    }
    return psi;
  };
  const [loose, unit] = [turn(0), turn(1)];
  const last = (of: number[]) => of.at(-1) ?? Number.NaN;
  const slope = last(unit) - last(loose);
  const psi = ends === 'clamped' ? turn(-last(loose) / slope) : loose;
  const start = ends === 'clamped' ? 0 : -last(loose);
  let w = 0;
  for (let i = 0; i < n; i++) {
    const turned = start + ((psi[i] ?? 0) + (psi[i + 1] ?? 0)) / 2;
    w += (turned + shearAt((i + 0.5) * h) / s) * h;
  }
  return w;
}

const EACH = [
  ['supported', 'central', 48, 4],
  ['supported', 'even', 384 / 5, 8],
  ['clamped', 'central', 192, 4],
  ['clamped', 'even', 384, 8],
] as const;

describe.each(EACH)('%s, %s load', (ends, load, bending, shear) => {
  it('bends and shears by the textbook coefficients', async () => {
    const answer = await plank(ends, load);
    expect(off(shown(answer, 'bending') / 1e3, (P * L ** 3) / (bending * D))).toBeLessThan(1e-12);
    expect(off(shown(answer, 'shear') / 1e3, (P * L) / (shear * S))).toBeLessThan(1e-12);
    expect(off(shown(answer, 'coreStress'), 50 / (200 * 22))).toBeLessThan(1e-12);
  });

  it('gives way as the beam equations do by numbers', async () => {
    const answer = await plank(ends, load);
    expect(off(shown(answer, 'w') / 1e3, byDifferences(ends, load, D, S))).toBeLessThan(1e-5);
  });

  it('nears bending alone as the core gets stiff', async () => {
    const stiff = await plank(ends, load, { coreShear: 'exactly 20000 GPa' });
    expect(off(shown(stiff, 'w') / 1e3, (P * L ** 3) / (bending * D))).toBeLessThan(1e-4);
    expect(shown(stiff, 'shearShare')).toBeLessThan(0.01);
  });
});

describe('what the answer says', () => {
  it('half the core’s stiffness doubles the shear part alone', async () => {
    const [one, soft] = [
      await plank('supported', 'central'),
      await plank('supported', 'central', { coreShear: 'exactly 10 MPa' }),
    ];
    expect(off(shown(soft, 'shear'), 2 * shown(one, 'shear'))).toBeLessThan(1e-12);
    expect(off(shown(soft, 'bending'), shown(one, 'bending'))).toBeLessThan(1e-12);
  });

  it('exponents: ln of b d²/c by the core, −c/d of the stress', async () => {
    const row = detailRow(await plank('supported', 'central'), 'shear');
    expect(row[1]).toBe('ends supported, load central');
    expect(Number(row[2])).toBeCloseTo((-2 * 2) / 22, 6);
    expect(Number(row[3])).toBeCloseTo(1 - (2 * 20) / 22, 6);
    expect(Number(detailRow(await plank('clamped', 'even'), 'core stress')[3])).toBeCloseTo(
      -20 / 22,
      6,
    );
  });

  it('a wide plank is stiffer in bending by 1/(1 − ν²)', async () => {
    const [beam, wide] = [
      await plank('clamped', 'central'),
      await plank('clamped', 'central', { poisson: 'exactly 0.3' }),
    ];
    expect(shown(wide, 'D') / shown(beam, 'D')).toBeCloseTo(1 / 0.91, 10);
  });

  it('thick skins are noted', async () => {
    expect(codes(await plank('supported', 'central'))).not.toContain('thick-skins');
    const thick = await plank('supported', 'central', { t: 'exactly 8 mm' });
    expect(codes(thick)).toContain('thick-skins');
  });
});

describe('what does not hold is refused', () => {
  it.each([
    ['core', 'exactly 0 mm', /height of the core.*must be above 0/],
    ['t', 'exactly 0 mm', /thickness of each skin.*must be above 0/],
    ['coreShear', 'exactly 0 MPa', /shear modulus of the core.*must be above 0/],
    ['poisson', 'exactly 0.6', /Poisson ratio.*must be below 0.5/],
  ])('%s %s', async (name, written, reason) => {
    await expect(plank('supported', 'central', { [name]: written })).rejects.toThrow(reason);
  });

  it('ends or a load that nobody named', async () => {
    const ends = await plank('supported', 'central', { ends: '' });
    expect(ends.outs).toEqual({});
    expect(codes(ends)).toContain('ends-not-named');
    expect(codes(await plank('supported', 'central', { load: '' }))).toContain('load-not-named');
  });
});
