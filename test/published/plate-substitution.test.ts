/**
 * Ashby, Materials Selection in Mechanical Design: indices E/ρ, E^½/ρ, E^⅓/ρ for stiffness at
 * least mass (question stiffness-substitution), from memory; ratios worked out by closed form.
 * Shear stiffness G t (shear-panel, plate-stiffness) and two skins on a core (two-skin-stiffness,
 * floor-options) by closed form, own inputs.
 */
import { describe, expect, it } from 'vitest';
import { out, share } from '../engine/made-question.ts';
import { asked, codes, detailRow, off, shown } from '../engine/structure/asked.ts';

const substituted = (modulus: number, density: number) =>
  asked('stiffness-substitution', {
    ...{ t: 'exactly 1 mm', modulus: '210 ± 2 GPa', density: '7850 ± 20 kg/m3' },
    ...{ otherModulus: `${modulus} ± ${modulus / 100} GPa`, otherDensity: `${density} ± 5 kg/m3` },
  });

describe('from steel (210 GPa, 7850 kg/m³) at equal stiffness', () => {
  it.each([
    ['aluminium', 70, 2700, 1.4422, 0.4961, 0.5957, 1.0318, 1.526],
    ['magnesium', 45, 1780, 1.6711, 0.3789, 0.4898, 1.0582, 1.998],
    ['glass-fibre', 15, 1800, 2.4101, 0.5526, 0.858, 3.2102, 1.37],
    ['carbon laminate', 69.7, 1600, 1.4443, 0.2944, 0.3538, 0.6141, 2.572],
  ])('%s (%f GPa, %f kg/m³)', async (_name, e, rho, ratio, panel, beam, tie, index) => {
    const answer = await substituted(e, rho);
    expect(off(shown(answer, 'ratio'), ratio)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'thickness'), ratio)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'panelMass'), panel)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'beamMass'), beam)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'tieMass'), tie)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'otherIndex'), index)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'index'), 0.757)).toBeLessThan(1e-3);
  });

  it('promises no saving where there is none: ties of aluminium and glass-fibre', async () => {
    const aluminium = out(await substituted(70, 2700), 'tieSaving');
    expect(aluminium.x).toBeLessThan(0);
    const glass = out(await substituted(15, 1800), 'tieSaving');
    expect(glass.x).toBeLessThan(-2);
    expect(glass.decision?.word).toBe('different');
    expect(aluminium.decision?.word).not.toBe('holds');
  });
});

describe('G t', () => {
  it.each([
    ['steel', 0.8, 80.8, 0.3, 64.64],
    ['aluminium', 1.2, 26.3, 0.33, 31.56],
  ])('of %s, %f mm, G %f GPa, is %f kN/mm', async (_name, t, g, nu, gt) => {
    const material = {
      t: `exactly ${t} mm`,
      modulus: `exactly ${2 * g * (1 + nu)} GPa`,
      poisson: `exactly ${nu}`,
    };
    const panel = await asked('shear-panel', {
      ...material,
      ...{ length: 'exactly 1200 mm', height: 'exactly 800 mm' },
    });
    expect(off(shown(panel, 'Gt'), gt)).toBeLessThan(1e-4);
    expect(off(shown(panel, 'K'), (gt * 1200) / 800)).toBeLessThan(1e-4);
    const plate = await asked('plate-stiffness', { ...material, density: 'exactly 2700 kg/m3' });
    expect(off(shown(plate, 'Gt'), gt)).toBeLessThan(1e-4);
  });
});

/** Relative standard uncertainty that one input brings to D, in per cent. */
const percent = (from: ReturnType<typeof out>, ...ids: string[]) =>
  (100 * share(from, ...ids)) / from.x;

describe('a thickness guessed by eye shows its price', () => {
  it('on a solid plate: three times its relative spread in D, once in mass and G t', async () => {
    const answer = await asked('plate-stiffness', {
      ...{ t: '2.5 ± 0.25 mm', modulus: '70 ± 1 GPa', poisson: '0.33 ± 0.01' },
      density: '2700 ± 20 kg/m3',
    });
    expect(shown(answer, 'exponent')).toBeCloseTo(3, 12);
    expect(percent(out(answer, 'D'), ':t')).toBeCloseTo(30, 5);
    expect(percent(out(answer, 'Gt'), ':t')).toBeCloseTo(10, 6);
    expect(percent(out(answer, 'arealMass'), ':t')).toBeCloseTo(10, 6);
  });

  it('on two skins of 2 mm, core of 10 mm held: about 1.35 times', async () => {
    const answer = await asked('two-skin-stiffness', {
      ...{ top: '2 ± 0.05 mm', bottom: '2 ± 0.05 mm', core: 'exactly 10 mm' },
      ...{ modulus: '70 ± 1 GPa', poisson: '0.33 ± 0.01', density: '2700 ± 20 kg/m3' },
      coreMass: '2.1 ± 0.2 kg/m2',
    });
    // d ln((c + 2 t)³ − c³) / d ln t = 6 t (c + 2 t)² / ((c + 2 t)³ − c³)
    const exponent = (6 * 2 * 14 ** 2) / (14 ** 3 - 10 ** 3);
    expect(exponent).toBeCloseTo(1.35, 2);
    expect(shown(answer, 'skinExponent')).toBeCloseTo(exponent, 9);
    expect(shown(answer, 'skinExponent') + shown(answer, 'coreExponent')).toBeCloseTo(3, 9);
    const d = (70e9 / (1 - 0.33 ** 2)) * ((0.014 ** 3 - 0.01 ** 3) / 12);
    expect(off(out(answer, 'D').x, d)).toBeLessThan(1e-12);
    // Each skin alone brings half: 1.35 / 2 × 2.5 %; both read by one gauge would bring 1.35 × 2.5 %.
    expect(percent(out(answer, 'D'), ':top')).toBeCloseTo((exponent / 2) * 2.5, 2);
  });
});

describe('floor options', async () => {
  const al = { modulus: '70 ± 1 GPa', poisson: '0.33 ± 0.01', density: '2700 ± 20 kg/m3' };
  const none = { core: '', coreMass: '', beside: '', price: '', edge: '', limit: '' };
  const designs = [
    {
      ...{ ...none, design: 'planks', material: 'Al 6005A-T6', needs: '', thickness: '4 ± 0.1 mm' },
      ...{ ...al, core: '10 ± 0.1 mm', coreMass: '2.12 ± 0.1 kg/m2' },
    },
    {
      ...{ ...none, ...al, design: 'stamped aluminium', material: 'aluminium' },
      ...{
        needs: 'stone shield',
        thickness: '2.5 ± 0.05 mm',
        beside: '11 ± 1.73 kg',
        price: '35 ± 5.8 {u}',
      },
    },
    {
      ...{ ...none, design: 'moulded', material: 'glass-fibre', needs: 'edge trimmed and sealed' },
      ...{ thickness: '5.2 ± 0.1 mm', modulus: '20 ± 2 GPa', poisson: '0.3333 ± 0.01' },
      ...{ density: '1900 ± 40 kg/m3', edge: '5.54 ± 0.02 m' },
    },
  ];
  const floor = { length: '1520 ± 1 mm', width: '1250 ± 1 mm' };
  const answer = await asked('floor-options', { ...floor, designs });

  it('D, G t and masses by closed form', () => {
    const d = (70e9 / (1 - 0.33 ** 2)) * ((0.014 ** 3 - 0.01 ** 3) / 12);
    expect(off(out(answer, 'D').x, d)).toBeLessThan(1e-12);
    expect(off(shown(answer, 'mass'), (4 * 2.7 + 2.12) * 1.9)).toBeLessThan(1e-9);
    const [, , , moulded] = [0, ...designs.map((x) => x.design)].map(String);
    const row = detailRow(answer, moulded ?? '');
    expect(off(Number(row[1]), (20e9 * 0.0052 ** 3) / (12 * (1 - 0.3333 ** 2)))).toBeLessThan(1e-9);
    expect(off(Number(row[4]), 0.0052 * 7.5e9)).toBeLessThan(1e-4);
    expect(off(Number(row[6]), 1900 * 0.0052 * 1.9)).toBeLessThan(1e-9);
  });

  it('counts what a design needs beside it, and says what that is', () => {
    const row = detailRow(answer, 'stamped aluminium');
    expect(off(Number(row[6]), 2.5 * 2.7 * 1.9 + 11)).toBeLessThan(1e-9);
    expect(row.slice(7, 9)).toEqual(['stone shield', 35]);
    const note = answer.findings.find((f) => f.code === 'lightest-alternative');
    expect(note?.what).toContain('moulded; it needs: edge trimmed and sealed');
  });

  it('decides the saving against zero: the planks and the moulded plate can be told apart', () => {
    const saved = out(answer, 'saved');
    expect(off(saved.x, (4 * 2.7 + 2.12) * 1.9 - 1900 * 0.0052 * 1.9)).toBeLessThan(1e-9);
    expect(saved.decision?.word).toBe('different');
    expect(shown(answer, 'stiffnessRatio')).toBeLessThan(0.1);
  });

  it('leaves heat and growth empty for a material the table does not know', async () => {
    const [built, other] = designs;
    const odd = await asked('floor-options', {
      ...floor,
      designs: [
        { ...built, material: 'unheard of' },
        { ...other, material: 'aluminium' },
      ] as never,
    });
    expect(detailRow(odd, 'planks').slice(-2)).toEqual(['', '']);
    expect(off(Number(detailRow(odd, 'stamped aluminium').at(-2)), 0.0025 / 160)).toBeLessThan(
      1e-9,
    );
  });

  it('of one design alone is refused: there is nothing to compare', async () => {
    const alone = await asked('floor-options', { ...floor, designs: designs.slice(0, 1) });
    expect(codes(alone)).toContain('too-few-designs');
  });
});
