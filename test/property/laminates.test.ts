import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  engineeringConstants,
  type Ply,
  plyFault,
  plyStrains,
  reducedStiffness,
  turnedStiffness,
} from '../../src/engine/structure/lamina.ts';
import {
  laminateStiffness,
  placedPlies,
  plateStrains,
} from '../../src/engine/structure/laminate.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** A ply of common proportions: not stiffer across than along. */
const ply = fc
  .record({
    e1: between(5e9, 300e9),
    ratio: between(0.05, 1),
    shear: between(0.05, 0.4),
    nu12: between(0.05, 0.45),
  })
  .map(({ e1, ratio, shear, nu12 }): Ply => ({ e1, e2: e1 * ratio, g12: e1 * shear, nu12 }))
  .filter((p) => plyFault(p) === undefined);
const angle = between(-Math.PI / 2, Math.PI / 2);
const laid = fc.record({
  ply,
  angle,
  material: fc.constant('ply'),
  thickness: between(0.05e-3, 1e-3),
});
const stack = fc.array(laid, { minLength: 1, maxLength: 8 });
const KEYS = ['q11', 'q12', 'q16', 'q22', 'q26', 'q66'] as const;

test('turned there and back a stiffness is the same, and its trace never changes', () => {
  fc.assert(
    fc.property(ply, angle, (p, a) => {
      const q = reducedStiffness(p);
      const turned = turnedStiffness(q, a);
      const trace = (t: typeof q) => t.q11 + t.q22 + 2 * t.q66;
      expect(Math.abs(trace(turned) / trace(q) - 1)).toBeLessThan(1e-12);
      expect(turned.q11).toBeGreaterThan(0);
      const { ex } = engineeringConstants(turnedStiffness(q, 0));
      expect(Math.abs(ex / p.e1 - 1)).toBeLessThan(1e-9);
    }),
  );
});

test('strains turned into a ply keep their sum', () => {
  fc.assert(
    fc.property(between(-1, 1), between(-1, 1), between(-1, 1), angle, (x, y, xy, a) => {
      const [e1, e2] = plyStrains([x, y, xy], a);
      expect(Math.abs(e1 + e2 - x - y)).toBeLessThan(1e-12);
    }),
  );
});

test('plies mirrored above their middle couple nothing; turned over, B changes its sign', () => {
  fc.assert(
    fc.property(stack, (plies) => {
      const even = laminateStiffness(placedPlies([...plies, ...[...plies].reverse()], 'top'));
      for (const key of KEYS)
        expect(Math.abs(even.b[key])).toBeLessThan(1e-9 * even.a.q11 * even.height);
      const [up, down] = [
        laminateStiffness(placedPlies(plies, 'top')),
        laminateStiffness(placedPlies(plies, 'bottom')),
      ];
      for (const key of KEYS)
        expect(Math.abs(up.b[key] + down.b[key])).toBeLessThan(1e-9 * up.a.q11 * up.height);
    }),
  );
});

test('strains give back the loads they came from', () => {
  const load = between(-1e5, 1e5);
  fc.assert(
    fc.property(stack, fc.tuple(load, load, load), fc.tuple(load, load, load), (plies, n, m) => {
      const laminate = laminateStiffness(placedPlies(plies, 'bottom'));
      const moment = m.map((x) => x * 1e-3) as [number, number, number];
      const got = plateStrains(laminate, n, moment);
      if (!got) throw new Error('no stiffness');
      const [ex, ey, gxy] = got.strain;
      const [kx, ky, kxy] = got.curvature;
      const { a, b, d, height } = laminate;
      const nx = a.q11 * ex + a.q12 * ey + a.q16 * gxy + b.q11 * kx + b.q12 * ky + b.q16 * kxy;
      const my = b.q12 * ex + b.q22 * ey + b.q26 * gxy + d.q12 * kx + d.q22 * ky + d.q26 * kxy;
      const scale = Math.max(...[...n, ...moment.map((x) => x / height)].map(Math.abs), 1);
      expect(Math.abs(nx - n[0])).toBeLessThan(1e-7 * scale);
      expect(Math.abs(my - moment[1])).toBeLessThan(1e-7 * scale * height);
    }),
  );
});
