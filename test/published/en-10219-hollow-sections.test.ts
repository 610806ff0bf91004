/**
 * EN 10219-2:2006 and EN 10210-2:2006, rectangular hollow sections, cold formed and hot finished:
 * corner radii and formulas of their annexes (questions standard-hollow-section and
 * hollow-section). 40×20×2, 50×30×3 and 60×40×3: all columns seen in section tables and
 * recomputed; 100×100×4 from memory, recomputed.
 */
import { describe, expect, it } from 'vitest';
import { asked, codes, detailRow, exactly, off, shown } from '../engine/structure/asked.ts';

const COLD = 'EN 10219-2, cold formed';
const HOT = 'EN 10210-2, hot finished';
const NAMES = ['area', 'Iy', 'Wply', 'Iz', 'Wplz', 'It', 'Ct', 'lineMass'] as const;

const standard = (h: number, b: number, t: number, rule: string) =>
  asked('standard-hollow-section', {
    ...exactly({ h, b, t }, 'mm'),
    rule,
    density: 'exactly 7850 kg/m3',
  });

describe.each([
  [40, 20, 2, COLD, [2.137, 4.05, 2.614, 1.343, 1.597, 3.453, 2.356, 1.678]],
  [50, 30, 3, COLD, [4.208, 12.83, 6.568, 5.7, 4.579, 13.53, 6.49, 3.304]],
  [60, 40, 3, COLD, [5.408, 25.38, 10.53, 13.44, 7.944, 29.28, 11.17, 4.246]],
  [100, 100, 4, COLD, [14.948, 226.35, 53.3, 226.35, 53.3, 362.0, 68.1, 11.73]],
  [100, 100, 4, HOT, [15.188, 231.81, 54.44, 231.81, 54.44, 361.1, 68.15, 11.92]],
] as const)('%f × %f × %f, %s', async (h, b, t, rule, expected) => {
  const answer = await standard(h, b, t, rule);
  it.each(NAMES.map((name, i) => [name, expected[i] ?? 0] as const))(
    'has %s = %f within 0.2 %%',
    (name, x) => {
      expect(off(shown(answer, name), x)).toBeLessThan(2e-3);
    },
  );
});

describe('torsion', () => {
  it.each([
    [60, 40, 3, 29.12],
    [40, 20, 2, 3.424],
  ])('of %f × %f × %f by Bredt alone is %f cm⁴, and stands apart', async (h, b, t, bredt) => {
    const answer = await standard(h, b, t, COLD);
    expect(off(shown(answer, 'ItBredt'), bredt)).toBeLessThan(1e-3);
    expect(shown(answer, 'It') / shown(answer, 'ItBredt')).toBeGreaterThan(1.005);
    expect(detailRow(answer, 'torsion')[1]).toContain('rounded corners');
  });

  it('from measured radii is that of the standard when they are its own', async () => {
    const sizes = exactly({ h: 60, b: 40, t: 3, outer: 6, inner: 3 }, 'mm');
    const measured = await asked('hollow-section', { ...sizes, density: 'exactly 7850 kg/m3' });
    expect(off(shown(measured, 'It'), 29.28)).toBeLessThan(2e-3);
    expect(off(shown(measured, 'Wplz'), 7.944)).toBeLessThan(2e-3);
  });

  it('is not given when no standard is named', async () => {
    const answer = await standard(60, 40, 3, '');
    expect(answer.outs).toEqual({});
    expect(codes(answer)).toContain('no-rule');
  });
});
