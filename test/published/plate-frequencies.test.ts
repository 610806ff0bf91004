/**
 * Leissa, The free vibration of rectangular plates, J. Sound Vib. 31, 1973, ν 0.3: ω a² √(m/D) of
 * plates supported, clamped, cantilevered and free; converged values from memory, recomputed.
 * NAFEMS, Selected Benchmarks for Natural Frequency Analysis, FV12: free square plate of 10 m,
 * 50 mm thick, E 200 GPa, ν 0.3, ρ 8000 kg/m³, in Hz, seen and recomputed (questions
 * plate-frequencies and plate-stiffness). Older lists are up to 1 % high and kept as negative cases.
 */
import { describe, expect, it } from 'vitest';
import { out } from '../engine/made-question.ts';
import { asked, codes, off, shown } from '../engine/structure/asked.ts';
import { edges, plate } from '../engine/structure/plates.ts';

const ringing = (ratio: number, letters: string) =>
  asked('plate-frequencies', { ...plate(ratio, letters), mass: 'exactly 1 kg/m2' });
/** ω a² √(m/D) for a = 1 m, D = 1 N·m, m = 1 kg/m². */
const omega = async (ratio: number, letters: string, mode: number) =>
  shown(await ringing(ratio, letters), `f${mode}`) * 2 * Math.PI;

describe('ω a² √(m/D)', () => {
  it.each([
    ['SSSS', 1, [19.7392, 49.348, 49.348, 78.957, 98.696]],
    ['SSSS', 1.5, [14.256]],
    ['CCCC', 1, [35.985, 73.394, 73.394, 108.22, 131.58, 132.2]],
    ['CCCC', 1.5, [27.005]],
    ['CCCC', 2, [24.578]],
    ['CCSS', 1, [28.951, 54.743, 69.327]],
    ['CFFF', 1, [3.471, 8.507, 21.285, 27.199, 30.956]],
    ['FFFF', 1, [13.468, 19.596, 24.27, 34.801, 34.801, 61.093]],
  ] as const)('%s, b/a = %f: %j within 0.1 %%', async (letters, ratio, expected) => {
    for (const [i, w] of expected.entries())
      expect(off(await omega(ratio, letters, i + 1), w), `mode ${i + 1}`).toBeLessThan(1e-3);
  });

  it.each([
    ['CFFF', [3.492, 8.525, 21.43, 27.33, 31.11]],
    ['FFFF', [13.49, 19.79, 24.43, 35.02]],
  ] as const)('%s: an older list %j is high', async (letters, older) => {
    for (const [i, w] of older.entries())
      expect(w / (await omega(1, letters, i + 1)), `mode ${i + 1}`).toBeGreaterThan(1.001);
  });
});

describe('NAFEMS FV12', async () => {
  const stiffness = await asked('plate-stiffness', {
    ...{ t: 'exactly 0.05 m', modulus: 'exactly 200 GPa', poisson: 'exactly 0.3' },
    density: 'exactly 8000 kg/m3',
  });
  const answer = await asked('plate-frequencies', {
    ...{ a: 'exactly 10 m', b: 'exactly 10 m', poisson: 'exactly 0.3', ...edges('FFFF') },
    D: `exactly ${out(stiffness, 'D').x} N.m`,
    mass: `exactly ${out(stiffness, 'arealMass').x} kg/m2`,
  });
  it.each([1.622, 2.36, 2.922, 4.19, 4.19, 7.356, 7.356, 7.668].map((f, i) => [i + 1, f] as const))(
    'frequency %i after the three bodily motions is %f Hz',
    (mode, f) => {
      expect(off(shown(answer, `f${mode}`), f)).toBeLessThan(1e-3);
    },
  );

  it('says that bodily motions are left out, and by which method it was done', () => {
    expect(codes(answer)).toContain('bodily-motion');
    expect(answer.detail?.title).toContain('Ritz');
  });
});

describe('a clamped square steel plate, 1 m, 10 mm', () => {
  it('rings at 565.0 rad/s, not at 560.1 as a sheet prints for the same data', async () => {
    const d = (2.1e11 * 0.01 ** 3) / (12 * (1 - 0.09));
    const answer = await asked('plate-frequencies', {
      ...plate(1, 'CCCC'),
      ...{ D: `exactly ${d} N.m`, mass: 'exactly 78 kg/m2' },
    });
    const rate = shown(answer, 'f1') * 2 * Math.PI;
    expect(off(rate, 565)).toBeLessThan(1e-3);
    expect(off(rate, 560.1)).toBeGreaterThan(5e-3);
  });
});
