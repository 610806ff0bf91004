import { signedArea } from './area-moments.ts';
import type { Point, Ring, Shape } from './point.ts';

/** Twice the signed area of a triangle: above zero when c is to the left of the way from a to b. */
const side = (a: Point, b: Point, c: Point): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

const within = (a: Point, b: Point, c: Point): boolean =>
  Math.min(a.x, b.x) <= c.x &&
  c.x <= Math.max(a.x, b.x) &&
  Math.min(a.y, b.y) <= c.y &&
  c.y <= Math.max(a.y, b.y);

/** True when two straight pieces have a point in common, ends included. */
export function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const [sc, sd, sa, sb] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (sc * sd < 0 && sa * sb < 0) return true;
  return (
    (sc === 0 && within(a, b, c)) ||
    (sd === 0 && within(a, b, d)) ||
    (sa === 0 && within(c, d, a)) ||
    (sb === 0 && within(c, d, b))
  );
}

/** Where a ring crosses or touches itself: the two edges by the numbers of their first points, from 1. */
export function selfCrossing(ring: Ring): readonly [number, number] | undefined {
  const n = ring.length;
  const at = (i: number) => ring[i % n] as Point;
  for (let i = 0; i < n; i++)
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      if (meet(at(i), at(i + 1), at(j), at(j + 1))) return [i + 1, j + 1];
    }
  return undefined;
}

const ringsMeet = (one: Ring, other: Ring): boolean =>
  one.some((a, i) =>
    other.some((c, j) =>
      meet(a, one[(i + 1) % one.length] as Point, c, other[(j + 1) % other.length] as Point),
    ),
  );

/** True for a point inside a ring (ray to the right). */
function inside(ring: Ring, p: Point): boolean {
  let odd = false;
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length] as Point;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) * (b.x - a.x)) / (b.y - a.y))
      odd = !odd;
  }
  return odd;
}

/** What is wrong with a section as drawn, in words; undefined when nothing is. */
export function shapeFault({ outline, holes }: Shape): string | undefined {
  for (const [i, ring] of [outline, ...holes].entries()) {
    const name = i === 0 ? 'the outline' : `hole ${i}`;
    if (ring.length < 3) return `${name} has ${ring.length} points; a closed line needs three`;
    const crossing = selfCrossing(ring);
    if (crossing) return `${name} crosses itself: ${crossing.map(edgeWords).join(' and ')}`;
    if (signedArea(ring) === 0) return `${name} encloses no area`;
  }
  for (const [i, hole] of holes.entries()) {
    if (ringsMeet(outline, hole) || !inside(outline, hole[0] as Point))
      return `hole ${i + 1} is not inside the outline`;
    const other = holes.findIndex(
      (h, j) => j < i && (ringsMeet(h, hole) || inside(h, hole[0] as Point)),
    );
    if (other >= 0) return `hole ${i + 1} overlaps hole ${other + 1}`;
  }
  return undefined;
}

const edgeWords = (n: number): string => `the edge after point ${n}`;
