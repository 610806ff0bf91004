import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { navierPlate } from '../../src/engine/structure/navier-series.ts';
import { bentPlate } from '../../src/engine/structure/plate-bending.ts';
import {
  bend,
  bucklingLoad,
  COARSE,
  type Edges,
  plateModes,
  rigidMotions,
  ritzPlate,
} from '../../src/engine/structure/ritz-plate.ts';
import { bendingStiffness, coreExponent, skinExponent } from '../../src/engine/structure/skins.ts';
import type { Edge } from '../../src/engine/structure/strip-functions.ts';
import {
  cholesky,
  congruent,
  eigenvalues,
  type Square,
} from '../../src/engine/structure/symmetric-eigen.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const edge = fc.constantFrom<Edge>('clamped', 'supported', 'free');
const anyEdges = fc.record({ x0: edge, xa: edge, y0: edge, yb: edge });
const held = anyEdges.filter((e) => rigidMotions(e) === 0);
const ALL_SUPPORTED: Edges = { x0: 'supported', xa: 'supported', y0: 'supported', yb: 'supported' };
const near = (a: number, b: number, share: number) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(share * Math.abs(b));

describe('symmetric matrices', () => {
  const symmetric = fc.integer({ min: 1, max: 8 }).chain((n) =>
    fc.array(between(-3, 3), { minLength: n * n, maxLength: n * n }).map((xs): Square => {
      const at = new Float64Array(n * n);
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++) at[i * n + j] = (xs[i * n + j] ?? 0) + (xs[j * n + i] ?? 0);
      return { n, at };
    }),
  );

  test('eigenvalues have the trace and the sum of squares of the matrix', () => {
    fc.assert(
      fc.property(symmetric, ({ n, at }) => {
        const values = [...eigenvalues({ n, at })];
        const trace = Array.from({ length: n }, (_, i) => at[i * n + i] ?? 0).reduce(
          (a, b) => a + b,
        );
        expect(Math.abs(values.reduce((a, b) => a + b) - trace)).toBeLessThan(1e-9);
        const squares = at.reduce((a, b) => a + b * b, 0);
        expect(Math.abs(values.reduce((a, b) => a + b * b, 0) - squares)).toBeLessThan(1e-7);
      }),
    );
  });

  test('taken against itself a positive matrix has eigenvalues of one', () => {
    fc.assert(
      fc.property(symmetric, ({ n, at }) => {
        const positive = at.slice();
        for (let i = 0; i < n; i++) positive[i * n + i] = Math.abs(at[i * n + i] ?? 0) + 7 * n;
        const l = cholesky({ n, at: positive });
        if (!l) throw new Error('not positive');
        for (const x of eigenvalues(congruent(l, { n, at: positive }))) near(x, 1, 1e-9);
      }),
    );
  });
});

describe('plates', () => {
  test('as many motions without bending as the edges leave free', () => {
    fc.assert(
      fc.property(anyEdges, between(0.4, 2.5), (edges, b) => {
        const modes = plateModes(ritzPlate(1, b, 0.3, edges));
        const still = modes.filter((lambda) => Math.abs(lambda) < 1e-4).length;
        expect(still).toBe(rigidMotions(edges));
      }),
      { numRuns: 40 },
    );
  });

  test('a tighter edge makes no plate ring lower, buckle earlier or give way further under a force', () => {
    const looser: Readonly<Record<Edge, Edge>> = {
      clamped: 'supported',
      supported: 'free',
      free: 'free',
    };
    fc.assert(
      fc.property(held, between(0.5, 2), (edges, b) => {
        const loose = { ...edges, xa: looser[edges.xa] };
        const rigid = rigidMotions(loose);
        const [tight, free] = [edges, loose].map((e) => plateModes(ritzPlate(1, b, 0.3, e)));
        expect(tight?.[0] ?? 0).toBeGreaterThanOrEqual((free?.[0] ?? 0) * (1 - 1e-6) - 1e-4);
        fc.pre(rigid === 0);
        const [n, m] = [edges, loose].map((e) =>
          bucklingLoad(ritzPlate(1, b, 0.3, e, COARSE), 'shear'),
        );
        expect(n ?? 0).toBeGreaterThanOrEqual((m ?? 0) * (1 - 1e-3));
        // Under the force itself: elsewhere a plate may well give way more beside a tighter edge.
        const force = { on: 'patch', x: 0.5, y: b / 2, u: 0, v: 0 } as const;
        const at = (e: Edges) => bentPlate(1, b, 0.3, e, force)?.at(0.5, b / 2).w ?? 0;
        expect(at(edges)).toBeLessThanOrEqual(at(loose) * (1 + 3e-3));
      }),
      { numRuns: 25 },
    );
  });

  test('turned by a right angle it is the same plate', () => {
    fc.assert(
      fc.property(held, between(0.5, 2), ({ x0, xa, y0, yb }, b) => {
        const one = plateModes(ritzPlate(1, b, 0.3, { x0, xa, y0, yb }));
        const turned = plateModes(ritzPlate(b, 1, 0.3, { x0: y0, xa: yb, y0: x0, yb: xa }));
        near(turned[0] ?? 0, one[0] ?? 1, 1e-9);
      }),
      { numRuns: 25 },
    );
  });

  test('Ritz and Navier agree on a supported plate under an even pressure', () => {
    fc.assert(
      fc.property(between(0.5, 2), between(0.1, 0.9), between(0.1, 0.9), (b, sx, sy) => {
        const plate = ritzPlate(1, b, 0.3, ALL_SUPPORTED);
        const even = { x: plate.x.mean(-1, 1).map((f) => b * f), y: plate.y.mean(-1, 1) };
        const ritz = bend(plate, even)?.at(2 * sx - 1, 2 * sy - 1);
        const navier = navierPlate(1, b, { on: 'all' }, sx, sy * b);
        const middle = navierPlate(1, b, { on: 'all' }, 0.5, b / 2);
        expect(Math.abs((ritz?.w ?? 0) - navier.w)).toBeLessThan(1e-5 * middle.w);
        const most = Math.abs(middle.wxx) + Math.abs(middle.wyy);
        expect(Math.abs((ritz?.wxx ?? 0) - navier.wxx)).toBeLessThan(5e-3 * most);
      }),
      { numRuns: 20 },
    );
  });

  test('what a force here moves there, a force there moves here (Maxwell)', () => {
    const place = between(0.2, 0.8);
    fc.assert(
      fc.property(held, place, place, place, place, (edges, ax, ay, bx, by) => {
        const force = (x: number, y: number) =>
          bentPlate(1, 1, 0.3, edges, { on: 'patch', x, y, u: 0, v: 0 });
        const there = force(ax, ay)?.at(bx, by).w ?? 0;
        const here = force(bx, by)?.at(ax, ay).w ?? 0;
        expect(Math.abs(there - here)).toBeLessThan(2e-3 * Math.abs(here) + 1e-6);
      }),
      { numRuns: 25 },
    );
  });
});

test('exponents of two skins are the logarithmic derivatives, and sum to three', () => {
  const length = between(0.2e-3, 30e-3);
  fc.assert(
    fc.property(length, length, length, (top, bottom, core) => {
      const s = { top, bottom, core, modulus: 70e9, poisson: 0.3 };
      const log = (f: number, g: number) =>
        Math.log(bendingStiffness({ ...s, top: f * top, bottom: f * bottom, core: g * core }));
      const h = 1e-4;
      const over = Math.log((1 + h) / (1 - h));
      expect(skinExponent(s)).toBeCloseTo((log(1 + h, 1) - log(1 - h, 1)) / over, 5);
      expect(coreExponent(s)).toBeCloseTo((log(1, 1 + h) - log(1, 1 - h)) / over, 5);
      expect(skinExponent(s) + coreExponent(s)).toBeCloseTo(3, 9);
    }),
  );
});
