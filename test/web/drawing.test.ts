import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hull } from '../../web/src/map/hull.ts';
import { placeLabels, thatFit } from '../../web/src/map/labels.ts';
import { layOut } from '../../web/src/map/layout.ts';
import { pick } from '../../web/src/map/pick.ts';
import { viewOf } from '../../web/src/map/views.ts';
import type { MapBody, MapModel } from '../../web/src/worker/map-model.ts';

const coordinate = fc.double({ min: -5, max: 5, noNaN: true });

describe('hull', () => {
  it('of a square with a point inside is the square', () => {
    const square = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as const;
    expect(hull([...square, [0.5, 0.5]])).toHaveLength(4);
  });

  it('has every point on it or to one side of each of its edges', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 3 }), (points) => {
        const around = hull(points);
        for (const [i, a] of around.entries()) {
          const b = around[(i + 1) % around.length] ?? a;
          for (const p of points) {
            const side = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
            expect(side).toBeGreaterThan(-1e-9);
          }
        }
      }),
    );
  });
});

describe('labels', () => {
  const label = fc.record({
    id: fc.uuid(),
    text: fc.constant('40-004'),
    at: fc.double({ min: 0, max: 500, noNaN: true }),
    down: fc.double({ min: 20, max: 300, noNaN: true }),
    width: fc.constant(46),
  });

  it('stand side by side without overlap, between their ends', () => {
    fc.assert(
      fc.property(fc.array(label), (wanted) => {
        const placed = placeLabels(thatFit(wanted, 0, 500), 0, 500);
        for (const [i, one] of placed.entries()) {
          expect(one.x - one.width / 2).toBeGreaterThanOrEqual(-1e-9);
          expect(one.x + one.width / 2).toBeLessThanOrEqual(500 + 1e-9);
          const next = placed[i + 1];
          if (next) expect(next.x - one.x).toBeGreaterThanOrEqual(one.width);
        }
      }),
    );
  });

  it('lead to their parts without crossing, also where all parts are on the centre line', () => {
    const onCentre = [40, 90, 20, 150, 60].map((down, i) => ({
      ...{ id: `${i}`, text: '40-004', at: 250, down, width: 46 },
    }));
    const placed = placeLabels(onCentre, 0, 500);
    const across = (l: (typeof placed)[number], depth: number) =>
      l.x + ((l.at - l.x) * depth) / l.down;
    for (const [i, a] of placed.entries())
      for (const b of placed.slice(i + 1)) {
        const depth = Math.min(a.down, b.down);
        expect(across(a, depth)).toBeLessThanOrEqual(across(b, depth) + 1e-6);
      }
  });
});

/** A part of 0.2 m at a place in the vehicle frame. */
const part = (id: string, at: MapBody['at']): MapBody => ({
  ...{ id, label: id, name: id, kind: 'part', parent: null, at, measured: true },
  size: [0.2, 0.2, 0.2],
});

describe('views', () => {
  const model: MapModel = {
    bodies: [part('left', [1, -0.5, 0.5]), part('right', [1, 0.5, 0.5]), part('rear', [3, 0, 1])],
    wheels: { wheelbase: 2.9, radius: 0.3, tracks: [1.5, 1.6] },
    envelope: [4.5, 1.8, 1.8],
    unplaced: [],
  };
  const middle = (view: Parameters<typeof viewOf>[0], id: string) => {
    const box = viewOf(view, model).boxes.find((b) => b.body.id === id);
    return box ? [box.u + box.w / 2, box.v + box.h / 2] : [];
  };

  // ISO 4130 axes as the project has them: X rearward, Y to the right, Z up; v runs down the paper.
  it('has the rear on the right, the right side up in plan, and height up', () => {
    expect((middle('plan', 'rear')[0] ?? 0) > (middle('plan', 'left')[0] ?? 0)).toBe(true);
    expect((middle('plan', 'right')[1] ?? 0) < (middle('plan', 'left')[1] ?? 0)).toBe(true);
    expect((middle('side', 'rear')[1] ?? 0) < (middle('side', 'left')[1] ?? 0)).toBe(true);
  });

  it('seen from the front, the right of the vehicle is on the left; from the rear, on the right', () => {
    expect(middle('front', 'right')[0]).toBeCloseTo(-0.5, 9);
    expect(middle('rear', 'right')[0]).toBeCloseTo(0.5, 9);
  });

  it('to one scale: the envelope is as long in plan as it is from the side, within the paper', () => {
    const rows = [[viewOf('plan', model)], [viewOf('side', model)]];
    const layout = layOut(rows, 900, 500, false);
    const [plan, side] = layout.views;
    expect(plan?.k).toBe(side?.k);
    expect(plan?.x0).toBe(side?.x0);
    expect(layout.height).toBeLessThanOrEqual(500 + 1e-6);
  });

  it('a touch means the part under it, and the nearest one beside it', () => {
    const layout = layOut([[viewOf('plan', model)]], 900, 500, false);
    const [plan] = layout.views;
    if (!plan) throw new Error('the plan is placed');
    const at = (id: string) => {
      const [u = 0, v = 0] = middle('plan', id);
      return [plan.x0 + plan.k * u, plan.y0 + plan.k * v] as const;
    };
    expect(pick(layout, ...at('rear'), undefined)).toBe('rear');
    const [x, y] = at('left');
    expect(pick(layout, x, y + plan.k * 0.1 + 10, undefined)).toBe('left');
    expect(pick(layout, 1, 1, undefined)).toBeUndefined();
  });
});
