/**
 * Timoshenko and Gere, Theory of Elastic Stability, 2nd edition; Gerard and Becker, NACA TN 3781;
 * EN 1993-1-5, annex A (question plate-buckling): N = k π² D / b², b the loaded width, ν 0.3.
 * From memory, recomputed.
 */
import { describe, expect, it } from 'vitest';
import { asked, codes, detailRow, off, shown } from '../engine/structure/asked.ts';
import { edges, plate } from '../engine/structure/plates.ts';

/** Plate of length a along the compression and width b = 1 m. */
const buckled = (ratio: number, letters: string) =>
  asked('plate-buckling', {
    ...plate(1, letters),
    ...{ a: `exactly ${ratio} m`, depth: 'exactly 10 mm' },
  });

describe('compression along x', () => {
  it.each([
    ['SSSS', 1, 4],
    ['SSSS', 1.5, 4.34],
    ['SSSS', 2, 4],
    ['SSSS', 3, 4],
    ['SSSS', 4, 4],
    ['SSCC', 1, 7.691],
    ['SSCC', 2, 6.972],
    ['SSCC', 4, 6.972],
    ['CCCC', 1, 10.07],
    ['CCCC', 2, 7.867],
    ['CCCC', 3, 7.359],
    ['SSSF', 1, 1.402],
    ['SSSF', 2, 0.668],
    ['SSSF', 3, 0.533],
    ['SSSF', 4, 0.486],
  ])('%s, a/b = %f: k = %f', async (letters, ratio, k) => {
    const answer = await buckled(ratio, letters);
    expect(off(shown(answer, 'k'), k)).toBeLessThan(2e-3);
    expect(detailRow(answer, 'compression along x')[1]).toContain('Ritz');
  });

  it('of a plate with one free edge is about 0.425 + (b/a)²', async () => {
    for (const ratio of [1, 2, 3, 4])
      expect(off(shown(await buckled(ratio, 'SSSF'), 'k'), 0.425 + ratio ** -2)).toBeLessThan(
        0.025,
      );
  });
});

describe('shear', () => {
  it.each([
    ['SSSS', 1, 9.324],
    ['SSSS', 1.5, 7.07],
    ['SSSS', 2, 6.546],
    ['SSSS', 3, 5.84],
    ['CCCC', 1, 14.64],
    ['CCCC', 2, 10.25],
    ['CCCC', 3, 9.53],
  ])('%s, a/b = %f: k = %f', async (letters, ratio, k) => {
    expect(off(shown(await buckled(ratio, letters), 'kShear'), k)).toBeLessThan(2e-3);
  });

  it('the short formula 5.34 + 4 (b/a)² is 3 % low at a/b = 2', async () => {
    const k = shown(await buckled(2, 'SSSS'), 'kShear');
    expect(1 - 6.34 / k).toBeGreaterThan(0.025);
    expect(1 - 6.34 / k).toBeLessThan(0.035);
  });
});

it('steel 0.8 mm, 200 mm wide, supported, long: 12.15 MPa', async () => {
  const d = (210e9 * 0.0008 ** 3) / (12 * (1 - 0.09));
  const answer = await asked('plate-buckling', {
    ...{ a: 'exactly 800 mm', b: 'exactly 200 mm', poisson: 'exactly 0.3', ...edges('SSSS') },
    ...{ D: `exactly ${d} N.m`, depth: 'exactly 0.8 mm' },
  });
  expect(off(shown(answer, 'sigma'), 12.15)).toBeLessThan(1e-3);
});

it('a plate that its edges do not hold is refused', async () => {
  const answer = await buckled(1, 'FFFS');
  expect(answer.outs).toEqual({});
  expect(codes(answer)).toContain('plate-not-held');
});
