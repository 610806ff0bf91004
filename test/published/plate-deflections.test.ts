/**
 * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition, tables 8, 35 and 37,
 * and Young and Budynas, Roark's Formulas for Stress and Strain, table 11.4 (questions
 * plate-under-pressure and plate-under-force), ν 0.3, short side a. Supported plates: 0.00406,
 * 0.0479, the coefficients on E t³ and those of a force at the middle seen and recomputed.
 * Clamped plates: 0.00126 and 0.0231 seen, table 35 from memory; converged values recomputed.
 * Slips printed in such tables are kept as negative cases.
 */
import { describe, expect, it } from 'vitest';
import { asked, codes, detailRow, off, shown } from '../engine/structure/asked.ts';
import { edges, plate } from '../engine/structure/plates.ts';

const pressed = (ratio: number, letters: string) =>
  asked('plate-under-pressure', {
    ...plate(ratio, letters),
    ...{ depth: 'exactly 200 mm', q: 'exactly 0.001 kPa' },
  });
const pushed = (ratio: number, letters: string, more: Record<string, string> = {}) =>
  asked('plate-under-force', {
    ...plate(ratio, letters),
    ...{ depth: 'exactly 200 mm', force: 'exactly 1 N', ...more },
  });
/** c in w = c q a⁴ / (E t³), from that on D: D = E t³ / (12 (1 − ν²)). */
const onCube = (c: number) => 12 * (1 - 0.3 ** 2) * c;

describe('supported on all edges, even pressure', () => {
  it.each([
    [1, 0.0040624, 0.04789, 0.04789],
    [1.5, 0.007724, 0.08116, 0.04984],
    [2, 0.0101287, 0.10168, 0.04635],
    [3, 0.0122328, 0.11886, 0.04063],
  ])('b/a = %f: w %f, Mx %f, My %f', async (ratio, w, mx, my) => {
    const answer = await pressed(ratio, 'SSSS');
    expect(off(shown(answer, 'coefficient'), w)).toBeLessThan(2e-3);
    expect(off(shown(answer, 'w') / 1e3, w)).toBeLessThan(2e-3);
    expect(off(shown(answer, 'Mx'), mx)).toBeLessThan(1e-2);
    expect(off(shown(answer, 'My'), my)).toBeLessThan(1e-2);
    expect(detailRow(answer, 'deflection')[1]).toContain('Navier');
  });

  it('b/a = 1.2: w 0.0056505', async () => {
    expect(off(shown(await pressed(1.2, 'SSSS'), 'coefficient'), 0.0056505)).toBeLessThan(2e-3);
  });

  it.each([
    [1, 0.04436],
    [2, 0.1106],
    [3, 0.13358],
  ])('b/a = %f: %f on E t³', async (ratio, c) => {
    expect(off(onCube(shown(await pressed(ratio, 'SSSS'), 'coefficient')), c)).toBeLessThan(2e-3);
  });

  it.each([
    [1.5, 0.08435, 0.0835],
    [1.4, 0.07737, 0.077],
    [1.2, 0.0617, 0.0616],
  ])('b/a = %f: %f, not %f as some tables print', async (ratio, truly, printed) => {
    const c = onCube(shown(await pressed(ratio, 'SSSS'), 'coefficient'));
    expect(off(c, truly)).toBeLessThan(5e-4);
    expect(off(c, printed)).toBeGreaterThan(1e-3);
  });
});

describe('clamped on all edges, even pressure', () => {
  it.each([
    [1, 0.0012653, -0.05133, 0.02291, 0.02291, 0.00126],
    [1.2, 0.0017249, -0.06389, 0.02997, 0.02284, 0.00172],
    [1.5, 0.0021965, -0.07565, 0.03677, 0.02027, 0.0022],
    [2, 0.002533, -0.08285, 0.04115, 0.01581, 0.00254],
  ])('b/a = %f: w %f, edge %f, middle %f and %f', async (ratio, w, edge, mx, my, printed) => {
    const answer = await pressed(ratio, 'CCCC');
    expect(off(shown(answer, 'coefficient'), w)).toBeLessThan(2e-3);
    expect(off(shown(answer, 'coefficient'), printed)).toBeLessThan(5e-3);
    expect(off(shown(answer, 'edgeMoment'), edge)).toBeLessThan(1e-2);
    expect(off(shown(answer, 'Mx'), mx)).toBeLessThan(1e-2);
    expect(off(shown(answer, 'My'), my)).toBeLessThan(1e-2);
    expect(detailRow(answer, 'deflection')[1]).toContain('Ritz');
  });

  it('the printed moment 0.0231 at the middle of a square is 0.9 % above the converged one', async () => {
    const m = shown(await pressed(1, 'CCCC'), 'Mx');
    expect(0.0231 / m - 1).toBeGreaterThan(7e-3);
    expect(0.0231 / m - 1).toBeLessThan(1e-2);
  });
});

describe('supported on all edges, a force at the middle', () => {
  it.each([
    [1, 0.011601],
    [1.5, 0.015333],
    [2, 0.016524],
  ])('b/a = %f: w %f', async (ratio, w) => {
    expect(off(shown(await pushed(ratio, 'SSSS'), 'coefficient'), w)).toBeLessThan(2e-3);
  });

  it.each([
    [1, 0.1267],
    [2, 0.1805],
  ])('b/a = %f: %f on E t³ (Roark, table 11.4, case 1b)', async (ratio, c) => {
    expect(off(onCube(shown(await pushed(ratio, 'SSSS'), 'coefficient')), c)).toBeLessThan(2e-3);
  });
});

describe('clamped on all edges, a force at the middle (table 37, from memory)', () => {
  it.each([
    [1, 0.0056],
    [1.2, 0.00647],
    [1.4, 0.00691],
    [2, 0.00722],
  ])('b/a = %f: w %f', async (ratio, w) => {
    expect(off(shown(await pushed(ratio, 'CCCC'), 'coefficient'), w)).toBeLessThan(3e-3);
  });
});

describe('a patch', () => {
  it('as large as the plate gives way like under an even pressure', async () => {
    const sides = { u: 'exactly 1 m', v: 'exactly 1.5 m' };
    for (const letters of ['SSSS', 'CCCC', 'CSFS']) {
      const patch = await pushed(1.5, letters, sides);
      const even = await pressed(1.5, letters);
      expect(off(shown(patch, 'w') * 1.5, shown(even, 'w')), letters).toBeLessThan(1e-4);
    }
  });

  it('that shrinks nears the point, from below', async () => {
    const at = async (mm: number) =>
      shown(
        await pushed(1, 'CCCC', { u: `exactly ${mm} mm`, v: `exactly ${mm} mm` }),
        'coefficient',
      );
    const point = shown(await pushed(1, 'CCCC'), 'coefficient');
    const [wide, small] = [await at(200), await at(20)];
    expect(wide).toBeLessThan(small);
    expect(small).toBeLessThan(point);
    expect(off(small, point)).toBeLessThan(4e-3);
  });
});

describe('a cantilever wide enough to be a beam', () => {
  it('of Poisson ratio 0 gives way at its end like one: q a⁴ / 8 D', async () => {
    const answer = await asked('plate-under-pressure', {
      ...plate(1, 'CFFF', 0),
      ...{ depth: 'exactly 200 mm', q: 'exactly 0.001 kPa', atX: 'exactly 1' },
    });
    expect(off(shown(answer, 'w'), 1000 / 8)).toBeLessThan(1e-6);
    expect(off(shown(answer, 'edgeMoment'), -1 / 2)).toBeLessThan(1e-6);
  });
});

describe('what does not hold is said', () => {
  it('a plate that its edges do not hold is refused', async () => {
    for (const letters of ['FFFF', 'SFFF', 'FFFS']) {
      const answer = await pressed(1, letters);
      expect(answer.outs, letters).toEqual({});
      expect(codes(answer)).toContain('plate-not-held');
    }
    expect((await pressed(1, 'SFSF')).outs.w).toBeDefined();
  });

  it('an edge that nobody named, and a patch over the edge, are refused', async () => {
    expect(codes(await pressed(1, 'SSS'))).toContain('edge-not-named');
    const over = await pushed(1, 'SSSS', { atX: 'exactly 0.05', u: 'exactly 200 mm' });
    expect(codes(over)).toContain('patch-off-plate');
    expect(codes(await pushed(1, 'SSSS', { atX: 'exactly 0' }))).toContain('patch-off-plate');
  });

  it('a deflection of more than half the thickness is doubted', async () => {
    const thin = {
      ...plate(1, 'SSSS'),
      ...edges('SSSS'),
      depth: 'exactly 1 mm',
      q: 'exactly 1 kPa',
    };
    expect(codes(await asked('plate-under-pressure', thin))).toContain('large-deflection');
  });

  it('a Poisson ratio of 0.6 is refused with a reason', async () => {
    const wrong = asked('plate-under-pressure', {
      ...plate(1, 'SSSS', 0.6),
      q: '1 kPa',
      depth: '1 mm',
    });
    await expect(wrong).rejects.toThrow(/Poisson ratio of an isotropic material must be below 0.5/);
  });
});
