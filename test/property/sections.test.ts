import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaMoments, principal } from '../../src/engine/structure/area-moments.ts';
import { plasticModulus } from '../../src/engine/structure/plastic-modulus.ts';
import type { Point, Ring, Shape } from '../../src/engine/structure/point.ts';
import { iShape } from '../../src/engine/structure/profiles.ts';
import { selfCrossing, shapeFault } from '../../src/engine/structure/ring-faults.ts';

/** A star around the origin: radii by even steps of angle, so that it never crosses itself. */
const star = fc
  .array(fc.double({ min: 0.2, max: 2, noNaN: true }), { minLength: 3, maxLength: 12 })
  .map(
    (radii): Ring =>
      radii.map((r, i) => {
        const angle = (2 * Math.PI * i) / radii.length;
        return { x: r * Math.cos(angle), y: r * Math.sin(angle) };
      }),
  );
const solid = (outline: Ring): Shape => ({ outline, holes: [] });
const moved = (ring: Ring, f: (p: Point) => Point): Ring => ring.map(f);
const near = (a: number, b: number, scale = Math.abs(b)) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * (scale || 1));

describe('polygons', () => {
  test('a star is a section, and walked backwards the same one', () => {
    fc.assert(
      fc.property(star, (ring) => {
        expect(shapeFault(solid(ring))).toBeUndefined();
        const [one, other] = [areaMoments(solid(ring)), areaMoments(solid([...ring].reverse()))];
        near(other.area, one.area);
        near(other.ixy, one.ixy, one.ixx + one.iyy);
        near(other.ixx, one.ixx);
        expect(one.area).toBeGreaterThan(0);
        expect(one.ixx * one.iyy).toBeGreaterThan(one.ixy ** 2);
      }),
    );
  });

  test('moved and turned, principal moments stay and their axis turns along', () => {
    const turn = fc.double({ min: -1.2, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(star, turn, (ring, a) => {
        const here = areaMoments(solid(ring));
        const there = areaMoments(
          solid(
            moved(ring, ({ x, y }) => ({
              x: 30 + x * Math.cos(a) - y * Math.sin(a),
              y: -7 + x * Math.sin(a) + y * Math.cos(a),
            })),
          ),
        );
        const [p, q] = [principal(here), principal(there)];
        near(q.major, p.major, p.major);
        near(q.minor, p.minor, p.major);
        fc.pre(p.major > 1.05 * p.minor);
        expect(Math.abs(Math.sin(q.angle - p.angle - a))).toBeLessThan(1e-6);
      }),
    );
  });

  test('twice as large, area grows four, moments sixteen, plastic modulus eight times', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const [one, two] = [
          solid(ring),
          solid(moved(ring, ({ x, y }) => ({ x: 2 * x, y: 2 * y }))),
        ];
        near(areaMoments(two).area, 4 * areaMoments(one).area);
        near(areaMoments(two).ixx, 16 * areaMoments(one).ixx);
        near(plasticModulus(two, 'x'), 8 * plasticModulus(one, 'x'));
      }),
    );
  });

  test('the plastic modulus is at least the elastic one', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const { ixx, centroid } = areaMoments(solid(ring));
        const far = Math.max(...ring.map((p) => Math.abs(p.y - centroid.y)));
        expect(plasticModulus(solid(ring), 'x')).toBeGreaterThan(ixx / far);
      }),
    );
  });

  test('two points exchanged make a star of five or more cross itself', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 12 }), (n) => {
        const ring = Array.from({ length: n }, (_, i) => ({
          x: Math.cos((2 * Math.PI * i) / n),
          y: Math.sin((2 * Math.PI * i) / n),
        }));
        const [a, b, ...rest] = ring;
        expect(selfCrossing(ring)).toBeUndefined();
        expect(selfCrossing([b as Point, a as Point, ...rest])).toBeDefined();
      }),
    );
  });
});

/** Closed form of an I-section with its fillets as spandrels: area, and moment about the strong axis. */
function spandrels(h: number, b: number, tw: number, tf: number, r: number) {
  const area = (1 - Math.PI / 4) * r * r;
  const off = (r * (10 - 3 * Math.PI)) / (3 * (4 - Math.PI));
  const own = r ** 4 * (1 / 3 - Math.PI / 16 - 1 / (9 * (4 - Math.PI)));
  const arm = h / 2 - tf - off;
  return {
    area: 2 * b * tf + (h - 2 * tf) * tw + 4 * area,
    ixx: (b * h ** 3 - (b - tw) * (h - 2 * tf) ** 3) / 12 + 4 * (own + area * arm ** 2),
  };
}

test('arcs as chords: an I-section is within 1e-4 of its fillets in closed form', () => {
  const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(share(60, 600), share(0.3, 1), share(0.02, 0.05), share(0.5, 2), (h, b, t, r) => {
      const sizes = { h, b: b * h, tw: t * h, tf: 1.5 * t * h, r: r * t * h };
      const drawn = areaMoments(solid(iShape(sizes).outline));
      const exact = spandrels(sizes.h, sizes.b, sizes.tw, sizes.tf, sizes.r);
      expect(Math.abs(drawn.area / exact.area - 1)).toBeLessThan(1e-4);
      expect(Math.abs(drawn.ixx / exact.ixx - 1)).toBeLessThan(1e-4);
    }),
  );
});
