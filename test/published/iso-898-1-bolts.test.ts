/**
 * ISO 898-1: nominal stress areas, proof and least tensile loads of coarse threads M6 to M16 in
 * classes 8.8 and 10.9, tables as printed (seen; printed loads are rounded, within 0.65 %).
 * Question bolt-strength.
 */
import { describe, expect, it } from 'vitest';
import { asked, codes, off, shown } from '../engine/structure/asked.ts';

const TABLE = [
  // d, P, area by formula, printed, proof 8.8, proof 10.9, tensile 8.8, tensile 10.9
  [6, 1, 20.12, 20.1, 11.6, 16.7, 16.1, 20.9],
  [8, 1.25, 36.61, 36.6, 21.2, 30.4, 29.2, 38.1],
  [10, 1.5, 57.99, 58.0, 33.7, 48.1, 46.4, 60.3],
  [12, 1.75, 84.27, 84.3, 48.9, 70.0, 67.4, 87.7],
  [14, 2, 115.44, 115, 66.7, 95.5, 92.0, 120],
  [16, 2, 156.67, 157, 91.0, 130, 125, 163],
] as const;

const bolt = (d: number, P: number, grade: string) =>
  asked('bolt-strength', { d: `exactly ${d} mm`, P: `exactly ${P} mm`, class: grade });

describe.each(TABLE)('M%i', (d, P, area, printed, p88, p109, t88, t109) => {
  it('has its stress area', async () => {
    const found = shown(await bolt(d, P, '8.8'), 'area');
    expect(found).toBeCloseTo(area, 2);
    expect(off(found, printed)).toBeLessThan(0.004);
  });
  it.each([
    ['8.8', p88, t88],
    ['10.9', p109, t109],
  ])('%s: proof %f kN, tensile %f kN', async (grade, proof, tensile) => {
    const answer = await bolt(d, P, grade);
    expect(off(shown(answer, 'proof'), proof)).toBeLessThan(0.0065);
    expect(off(shown(answer, 'tensile'), tensile)).toBeLessThan(0.006);
  });
});

it('8.8 above M16 is of the stronger row', async () => {
  const answer = await bolt(20, 2.5, '8.8');
  expect(shown(answer, 'proof') / shown(answer, 'area')).toBeCloseTo(0.6, 9);
});

it('a class of no table is refused by name', async () => {
  const answer = await asked('bolt-strength', {
    ...{ d: 'exactly 6 mm', P: 'exactly 1 mm', class: '9.9' },
  }).catch((error: Error) => error.message);
  expect(typeof answer === 'string' ? answer : codes(answer).join()).toMatch(/9\.9|unknown-class/);
});
