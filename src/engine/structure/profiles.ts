import { arc, type Point, type Ring, type Shape } from './point.ts';

const QUARTER = Math.PI / 2;

const mirrorX = (ring: Ring): Point[] => ring.map(({ x, y }) => ({ x: -x, y })).reverse();
const mirrorY = (ring: Ring): Point[] => ring.map(({ x, y }) => ({ x, y: -y })).reverse();

/** Rectangle about the origin, its corners rounded with radius r. */
export function roundedRectangle(width: number, height: number, r: number): Ring {
  const [x, y] = [width / 2 - r, height / 2 - r];
  return [
    ...arc(x, y, r, 0, QUARTER),
    ...arc(-x, y, r, QUARTER, 2 * QUARTER),
    ...arc(-x, -y, r, 2 * QUARTER, 3 * QUARTER),
    ...arc(x, -y, r, 3 * QUARTER, 4 * QUARTER),
  ];
}

/** Sizes of an I-section, m: depth, width of the flanges, web, flanges, root fillet. */
export interface ISizes {
  readonly h: number;
  readonly b: number;
  readonly tw: number;
  readonly tf: number;
  readonly r: number;
}

/** Doubly symmetric I-section with root fillets (shape of EN 10365), about its centroid. */
export function iShape({ h, b, tw, tf, r }: ISizes): Shape {
  const inner = h / 2 - tf;
  const quarter = [
    ...arc(tw / 2 + r, inner - r, r, 2 * QUARTER, QUARTER),
    { x: b / 2, y: inner },
    { x: b / 2, y: h / 2 },
  ];
  const right = [...mirrorY(quarter), ...quarter];
  return { outline: [...right, ...mirrorX(right)], holes: [] };
}

/** Sizes of a rectangular hollow section, m: depth, width, wall, radii of the corners. */
export interface HollowSizes {
  readonly h: number;
  readonly b: number;
  readonly t: number;
  readonly outer: number;
  readonly inner: number;
}

/** Rectangular hollow section with rounded corners, about its centroid. */
export const hollowShape = ({ h, b, t, outer, inner }: HollowSizes): Shape => ({
  outline: roundedRectangle(b, h, outer),
  holes: [roundedRectangle(b - 2 * t, h - 2 * t, inner)],
});

/** Sizes of an angle, m: upright leg, foot, thickness, root fillet, radius of the toes. */
export interface AngleSizes {
  readonly a: number;
  readonly b: number;
  readonly t: number;
  readonly root: number;
  readonly toe: number;
}

/** Angle with its heel at the origin, upright leg along y, foot along x (shape of EN 10056-1). */
export function angleShape({ a, b, t, root, toe }: AngleSizes): Shape {
  const outline = [
    { x: 0, y: 0 },
    { x: b, y: 0 },
    ...arc(b - toe, t - toe, toe, 0, QUARTER),
    ...arc(t + root, t + root, root, 3 * QUARTER, 2 * QUARTER),
    ...arc(t - toe, a - toe, toe, 0, QUARTER),
    { x: 0, y: a },
  ];
  return { outline, holes: [] };
}

/** Flanges of a channel point one way, those of a Z-section opposite ways. */
export type FlangeSides = 'same' | 'opposite';

/** Channel or Z-section, the middle of its web at the origin; upper flange to the right. */
export function channelShape({ h, b, tw, tf, r }: ISizes, sides: FlangeSides): Shape {
  const inner = h / 2 - tf;
  // From the web's right face at mid-depth around the upper flange to its left face at the top.
  const upper = [
    ...arc(tw / 2 + r, inner - r, r, 2 * QUARTER, QUARTER),
    { x: b - tw / 2, y: inner },
    { x: b - tw / 2, y: h / 2 },
    { x: -tw / 2, y: h / 2 },
  ];
  const lower = sides === 'same' ? mirrorY(upper) : upper.map(({ x, y }) => ({ x: -x, y: -y }));
  return { outline: [...upper, ...lower], holes: [] };
}
