import { eachEdge, type Point, type Ring, type Shape } from './point.ts';

/** Area and second moments of a section about its centroid, axes as drawn; SI. */
export interface AreaMoments {
  readonly area: number;
  readonly centroid: Point;
  /** ∫ y² dA, about the axis x through the centroid. */
  readonly ixx: number;
  /** ∫ x² dA. */
  readonly iyy: number;
  /** ∫ x y dA. */
  readonly ixy: number;
}

/** Sums over the edges of one ring (shoelace), about `from`; signed by its sense of walking. */
function ringSums(ring: Ring, from: Point) {
  const sum = { area: 0, sx: 0, sy: 0, ixx: 0, iyy: 0, ixy: 0 };
  eachEdge(ring, (p, q) => {
    const [ax, ay, bx, by] = [p.x - from.x, p.y - from.y, q.x - from.x, q.y - from.y];
    const cross = ax * by - bx * ay;
    sum.area += cross / 2;
    sum.sx += (cross * (ax + bx)) / 6;
    sum.sy += (cross * (ay + by)) / 6;
    sum.ixx += (cross * (ay * ay + ay * by + by * by)) / 12;
    sum.iyy += (cross * (ax * ax + ax * bx + bx * bx)) / 12;
    sum.ixy += (cross * (ax * by + 2 * ax * ay + 2 * bx * by + bx * ay)) / 24;
  });
  return sum;
}

/** Signed area of a ring: above zero when walked against the clock. */
export const signedArea = (ring: Ring): number => ringSums(ring, ring[0] ?? { x: 0, y: 0 }).area;

/**
 * Area, centroid and second moments of a polygon with holes, exact (shoelace formulas). The sense
 * in which outline and holes are walked does not matter. NaN for an empty section.
 */
export function areaMoments(shape: Shape): AreaMoments {
  // About a corner of its own: a section far from the origin loses no digits.
  const from = shape.outline[0] ?? { x: Number.NaN, y: Number.NaN };
  const total = { area: 0, sx: 0, sy: 0, ixx: 0, iyy: 0, ixy: 0 };
  const add = (ring: Ring, sign: number) => {
    const sums = ringSums(ring, from);
    const factor = sign * Math.sign(sums.area);
    for (const key of Object.keys(total) as (keyof typeof total)[])
      total[key] += factor * sums[key];
  };
  add(shape.outline, 1);
  for (const hole of shape.holes) add(hole, -1);
  const { area, sx, sy } = total;
  return {
    area,
    centroid: { x: from.x + sx / area, y: from.y + sy / area },
    ixx: total.ixx - (sy * sy) / area,
    iyy: total.iyy - (sx * sx) / area,
    ixy: total.ixy - (sx * sy) / area,
  };
}

/** Principal second moments, and the axis of the larger one. */
export interface Principal {
  readonly major: number;
  readonly minor: number;
  /** From x to the axis of the larger moment, against the clock; NaN where every axis is one. */
  readonly angle: number;
}

/**
 * An axis has two directions: the one told is above −3π/8, a bound that no usual section comes
 * near, so that the angle moves evenly with the sizes.
 */
const LOWEST = (-3 * Math.PI) / 8;
/** Share of the mean moment below which the two principal ones are alike. */
const ALIKE = 1e-9;

/** Principal axes of an area. */
export function principal({ ixx, iyy, ixy }: Pick<AreaMoments, 'ixx' | 'iyy' | 'ixy'>): Principal {
  const mean = (ixx + iyy) / 2;
  const half = Math.hypot((ixx - iyy) / 2, ixy);
  const turn = Math.atan2(-2 * ixy, ixx - iyy) / 2;
  const angle = turn < LOWEST ? turn + Math.PI : turn;
  return {
    major: mean + half,
    minor: mean - half,
    angle: half > ALIKE * mean ? angle : Number.NaN,
  };
}

/** Distances from the centroid to the furthest points of the outline, each way along x and y. */
export function reach(shape: Shape, centroid: Point) {
  const xs = shape.outline.map((p) => p.x - centroid.x);
  const ys = shape.outline.map((p) => p.y - centroid.y);
  return {
    x: Math.max(-Math.min(...xs), Math.max(...xs)),
    y: Math.max(-Math.min(...ys), Math.max(...ys)),
  };
}
