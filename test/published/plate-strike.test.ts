/**
 * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition (0.01160 under a
 * point, Navier's series), and Young and Budynas, Roark's Formulas for Stress and Strain, table
 * 11.4, case 1c (β 1.28 on a patch of a fifth of the side), from memory: strike work of a plate
 * (questions plate-strike, floor-options) against the strain energy of the series.
 */
import { describe, expect, it } from 'vitest';
import type { Bars } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';
import { asked, codes, detailRow, off, shown } from '../engine/structure/asked.ts';
import { plate } from '../engine/structure/plates.ts';

const struck = (letters: string, more: Record<string, string> = {}) =>
  asked('plate-strike', {
    ...plate(1, letters),
    ...{ D: 'exactly 100 N.m', depth: 'exactly 20 mm', strain: 'exactly 0.001' },
    ...{ limit: 'first yield', u: 'exactly 200 mm', v: 'exactly 200 mm' },
    ...more,
  });

/** Strain energy of a supported unit square under 1 N on a middle patch, D = 1 N·m, term by term. */
function strainEnergy(patch: number): number {
  let energy = 0;
  for (let m = 1; m < 300; m += 2)
    for (let n = 1; n < 300; n += 2) {
      const spread = (k: number) =>
        (2 * Math.sin((k * Math.PI) / 2) * Math.sin((k * Math.PI * patch) / 2)) /
        (k * Math.PI * patch);
      const load = 4 * spread(m) * spread(n);
      const stiff = Math.PI ** 4 * (m * m + n * n) ** 2;
      energy += ((load / stiff) ** 2 * stiff) / 8;
    }
  return energy;
}

describe('energy balance', () => {
  it.each([50, 200, 600])(
    'work on a patch of %i mm is the strain energy of the plate',
    async (mm) => {
      const answer = await struck('SSSS', { u: `exactly ${mm} mm`, v: `exactly ${mm} mm` });
      const force = out(answer, 'force').x;
      const stored = (force ** 2 * strainEnergy(mm / 1e3)) / 100;
      expect(off(out(answer, 'work').x, stored)).toBeLessThan(1e-3);
    },
  );

  it.each(['SSSS', 'CCCC', 'CSCS'])('%s: under the same force as plate-under-force', async (e) => {
    const small = { u: 'exactly 20 mm', v: 'exactly 20 mm' };
    const answer = await struck(e, small);
    const force = out(answer, 'force').x;
    const pushed = await asked('plate-under-force', {
      ...plate(1, e),
      ...{ D: 'exactly 100 N.m', depth: 'exactly 20 mm', force: `exactly ${force} N`, ...small },
    });
    expect(off(out(answer, 'w').x, out(pushed, 'w').x)).toBeLessThan(2e-3);
    expect(off(out(answer, 'work').x, (force * out(answer, 'w').x) / 2)).toBeLessThan(1e-12);
  });

  it('on a small patch goes with the published 0.01160 P a²/D', async () => {
    const answer = await struck('SSSS', { u: 'exactly 20 mm', v: 'exactly 20 mm' });
    const force = out(answer, 'force').x;
    expect(off(out(answer, 'work').x, (force ** 2 * 0.0116) / 200)).toBeLessThan(5e-3);
  });
});

describe('force at the limit', () => {
  it('first yield, solid plate: σ = β P / t² with β 1.28', async () => {
    // D of a solid plate of E 100/(20 mm)³ · 12 (1 − ν²); σ = E εL in both directions alike.
    const answer = await struck('SSSS');
    const modulus = (100 * 12 * (1 - 0.3 ** 2)) / 0.02 ** 3;
    const beta = (modulus * 0.001 * 0.02 ** 2) / out(answer, 'force').x;
    expect(off(beta, 1.28)).toBeLessThan(2e-2);
    expect(detailRow(answer, 'work')[1]).toContain('first yield, under the load');
  });

  it('largest strain is below first yield’s by 1 − ν under an even bend', async () => {
    const [yielded, strained] = [
      await struck('SSSS'),
      await struck('SSSS', { limit: 'largest strain' }),
    ];
    const ratio = out(yielded, 'force').x / out(strained, 'force').x;
    expect(ratio).toBeCloseTo(1 - 0.3, 6);
  });

  it('moves to the clamped edge as the patch grows: 0.0513 q a² there', async () => {
    const all = { u: 'exactly 1 m', v: 'exactly 1 m' };
    const answer = await struck('CCCC', { ...all, limit: 'largest strain' });
    expect(detailRow(answer, 'work')[1]).toContain('at a clamped edge');
    expect(off(out(answer, 'force').x, (2 * 0.001 * 100) / (0.02 * 0.0513))).toBeLessThan(5e-3);
  });
});

describe('exponents', () => {
  it('of a solid plate: work goes with the thickness, and with the square of the strain', async () => {
    const answer = await struck('CCCC');
    const of = (row: string) => detailRow(answer, row).slice(2).map(Number);
    for (const [row, thickness, strain] of [
      ['work', 1, 2],
      ['force', 2, 1],
      ['deflection', -1, 1],
    ] as const) {
      expect(of(row)[0], row).toBeCloseTo(thickness, 6);
      expect(of(row)[1], row).toBeCloseTo(strain, 6);
    }
  });
});

describe('what does not hold is said', () => {
  it.each([
    ['u', 'exactly 0 mm', /struck patch along x.*must be above 0/],
    ['depth', 'exactly 0 mm', /thickness.*must be above 0/],
    ['strain', 'exactly 0', /limit strain.*must be above 0/],
    ['poisson', 'exactly 0.6', /Poisson ratio.*must be below 0.5/],
  ])('%s %s is refused', async (name, written, reason) => {
    await expect(struck('SSSS', { [name]: written })).rejects.toThrow(reason);
  });

  it('a patch over the edge, a limit nobody named, a plate that is not held', async () => {
    expect(codes(await struck('SSSS', { u: 'exactly 1.2 m' }))).toContain('patch-off-plate');
    expect(codes(await struck('SSSS', { limit: '' }))).toContain('limit-not-named');
    expect(codes(await struck('FFFF'))).toContain('plate-not-held');
  });

  it('a patch below the thickness and a large deflection are doubted', async () => {
    expect(codes(await struck('SSSS', { u: 'exactly 10 mm' }))).toContain('patch-below-thickness');
    const thin = await struck('SSSS', { depth: 'exactly 1 mm' });
    expect(codes(thin)).toContain('large-deflection');
  });
});

describe('floor options', async () => {
  const row = { core: '', coreMass: '', beside: '', price: '', edge: '', needs: '' };
  const steel = {
    ...{ ...row, design: 'steel', material: 'steel', thickness: '2 ± 0.02 mm' },
    ...{ modulus: 'exactly 210 GPa', poisson: 'exactly 0.3', density: 'exactly 7850 kg/m3' },
    limit: '200 ± 10 MPa',
  };
  const answer = await asked('floor-options', {
    ...{ length: 'exactly 1.5 m', width: 'exactly 1 m' },
    designs: [
      steel,
      { ...steel, design: 'thick', thickness: '4 ± 0.04 mm' },
      { ...steel, design: 'unknown', limit: '' },
    ],
  });
  const bars = (title: string) =>
    (answer.figures ?? []).find((f): f is Bars => f.f === 'bars' && f.title.startsWith(title))
      ?.rows ?? [];

  it('strike work is that of plate-strike', async () => {
    const alone = await asked('plate-strike', {
      ...{ ...plate(1, 'SSSS'), a: 'exactly 1.5 m', b: 'exactly 1 m', depth: 'exactly 2 mm' },
      ...{ D: `exactly ${(210e9 * 0.002 ** 3) / (12 * 0.91)} N.m`, limit: 'first yield' },
      ...{ strain: `exactly ${200e6 / 210e9}`, u: 'exactly 100 mm', v: 'exactly 100 mm' },
    });
    const at = answer.detail?.columns.findIndex((c) => c.name === 'strike work') ?? -1;
    expect(off(Number(detailRow(answer, 'steel')[at]), shown(alone, 'work'))).toBeLessThan(1e-9);
    expect(detailRow(answer, 'unknown')[at]).toBe('');
  });

  it('says which design has none, and which is bent beyond a thin plate’s theory', () => {
    const said = (code: string) => answer.findings.find((f) => f.code === code)?.what;
    expect(said('strike-not-known')).toMatch(/: unknown$/);
    expect(said('strike-large-deflection')).toMatch(/: steel, thick$/);
  });

  it('bars carry it with its spread: once that of the thickness, twice that of the limit', () => {
    const [weak, strong, none] = bars('Strike work');
    expect([weak?.label, strong?.label, none]).toEqual(['steel', 'thick', { label: 'unknown' }]);
    expect(Number(strong?.number?.x) / Number(weak?.number?.x)).toBeCloseTo(2, 6);
    const relative = Number(weak?.number?.u) / Number(weak?.number?.x);
    expect(relative).toBeCloseTo(Math.hypot(0.01, 2 * 0.05), 3);
  });

  it('bars of thermal resistance carry the spread of the table’s conductivity too', () => {
    const [thin] = bars('Thermal resistance');
    const relative = Number(thin?.number?.u) / Number(thin?.number?.x);
    // The table has 50 W/(m·K) with a standard uncertainty of 20 % between steels.
    expect(relative).toBeCloseTo(Math.hypot(0.01, 0.2), 3);
  });
});
