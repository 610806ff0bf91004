import type { DrawingShape, FigurePoint } from '../engine/index.ts';
import type { Spot } from './picture.ts';

/** Left, low, right and high end of what is drawn, in its own numbers. */
export type Bounds = readonly [left: number, low: number, right: number, high: number];

/** A plane on paper, to one scale in both directions. */
export interface Plane {
  readonly at: (p: FigurePoint) => Spot;
  /** Units a number of the plane. */
  readonly k: number;
  /** The field that is drawn on. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Width of the whole paper. */
  readonly width: number;
}

/** Paper left free around the field, in units. */
export interface Margins {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** No drawing is higher than this without its margins. */
const HIGHEST = 330;

export function boundsOf(points: readonly FigurePoint[]): Bounds {
  if (points.length === 0) return [0, 0, 1, 1];
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return [least(xs), least(ys), most(xs), most(ys)];
}

const least = (xs: readonly number[]): number => xs.reduce((a, b) => Math.min(a, b));
const most = (xs: readonly number[]): number => xs.reduce((a, b) => Math.max(a, b));

/** Puts a field of numbers in the middle of a paper, as large as width and height allow. */
export function planeOf([x1, y1, x2, y2]: Bounds, width: number, margins: Margins): Plane {
  const room = Math.max(width - margins.left - margins.right, 40);
  const [w, h] = [x2 - x1, y2 - y1];
  const k = Math.min(w > 0 ? room / w : Infinity, h > 0 ? HIGHEST / h : Infinity);
  const scale = Number.isFinite(k) ? k : 1;
  const left = margins.left + (room - scale * w) / 2;
  const bottom = margins.top + scale * h;
  return {
    at: ([x, y]) => [left + scale * (x - x1), bottom - scale * (y - y1)],
    k: scale,
    left,
    top: margins.top,
    right: left + scale * w,
    bottom,
    width,
  };
}

/** Points that a shape reaches. */
export function pointsOf(shape: DrawingShape): readonly FigurePoint[] {
  if (shape.s === 'area') return shape.rings.flat();
  if (shape.s === 'line') return shape.points;
  if (shape.s === 'dimension') return [shape.from, shape.to];
  const [x, y] = shape.at;
  if (shape.s !== 'circle') return [shape.at];
  return [
    [x - shape.r, y - shape.r],
    [x + shape.r, y + shape.r],
  ];
}
