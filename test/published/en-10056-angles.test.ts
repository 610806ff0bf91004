/**
 * EN 10056-1:2017, Structural steel equal and unequal leg angles (question angle-section).
 * 60×40×5, 50×30×5 and 65×50×5 with their root and toe radii: values of section tables seen
 * (4.79, 1.96, 0.97, 17.2, 6.11, 19.7, 3.54, 0.43 and so on) and recomputed with more digits;
 * product moments recomputed.
 */
import { describe, expect, it } from 'vitest';
import { asked, exactly, off, shown } from '../engine/structure/asked.ts';

const NAMES = ['area', 'cz', 'cy', 'Iy', 'Iz', 'I1', 'I2', 'tangent', 'Iyz'] as const;

describe.each([
  ['60×40×5', [60, 40, 5, 6, 3], [4.789, 19.55, 9.72, 17.185, 6.106, 19.749, 3.542, 0.4335, 5.914]],
  [
    '50×30×5',
    [50, 30, 5, 5, 2.5],
    [3.777, 17.27, 7.41, 9.361, 2.514, 10.331, 1.544, 0.3522, 2.754],
  ],
  ['65×50×5', [65, 50, 5, 6, 3], [5.539, 19.94, 12.54, 23.18, 11.93, 28.79, 6.323, 0.577, 9.723]],
] as const)('%s', async (_name, [a, b, t, root, toe], expected) => {
  const answer = await asked('angle-section', {
    ...exactly({ a, b, t, root, toe }, 'mm'),
    density: 'exactly 7850 kg/m3',
  });
  it.each(NAMES.map((name, i) => [name, expected[i] ?? 0] as const))(
    'has |%s| = %f within 0.3 %%',
    (name, x) => {
      expect(off(Math.abs(shown(answer, name)), x)).toBeLessThan(3e-3);
    },
  );
});
