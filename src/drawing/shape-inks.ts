import type { DrawingShape, Hatch, LineType } from '../engine/index.ts';
import { PlacesBeside } from './beside.ts';
import { type Fill, type Ink, line, type Pen, type Spot, words } from './picture.ts';
import type { Plane } from './plane.ts';

const FILLS: Readonly<Record<Hatch, Fill>> = {
  none: 'none',
  metal: 'lines',
  'metal beside': 'lines back',
  polymer: 'cross',
  rubber: 'dense cross',
  composite: 'short lines',
  foam: 'dots',
  liquid: 'levels',
  solid: 'ink',
};

export const penOf = (type: LineType): Pen => (type === 'continuous' ? 'medium' : type);

/** Reach of a sign about its point, and of an axis beyond the drawing. */
const SIGN = 7;
const ARM = 11;
const BEYOND = 14;

/** Areas and lines of a drawing, axes and signs over them, words last so that they stay readable. */
export function shapeInks(shapes: readonly DrawingShape[], plane: Plane, width: number): Ink[] {
  const places = new PlacesBeside(width);
  for (const s of shapes) if (s.s === 'mark') places.keep(plane.at(s.at), ARM - 2);
  return [
    ...shapes.filter((s) => s.s === 'area').flatMap((s) => bodyInks(s, plane)),
    ...shapes.filter((s) => s.s === 'line' || s.s === 'circle').flatMap((s) => bodyInks(s, plane)),
    ...shapes.flatMap((s) => (s.s === 'axis' ? axisInks(s, plane) : [])),
    ...shapes.flatMap((s) => (s.s === 'mark' ? signInks(s, plane) : [])),
    ...shapes.flatMap((s) => wordInks(s, plane, places)),
  ];
}

function bodyInks(shape: DrawingShape, { at, k }: Plane): Ink[] {
  if (shape.s === 'area') {
    const rings = shape.rings.map((ring) => ring.map(at));
    return [{ i: 'area', rings, pen: 'medium', fill: FILLS[shape.hatch] }];
  }
  if (shape.s === 'line') return [line(penOf(shape.line), ...shape.points.map(at))];
  if (shape.s !== 'circle') return [];
  return [{ i: 'circle', at: at(shape.at), r: k * shape.r, pen: penOf(shape.line), fill: 'none' }];
}

function wordInks(shape: DrawingShape, plane: Plane, places: PlacesBeside): Ink[] {
  if (shape.s === 'mark' && shape.label !== '')
    return [places.put(plane.at(shape.at), shape.label, ARM)];
  if (shape.s !== 'text') return [];
  return [words(plane.at(shape.at), shape.text, { anchor: 'middle', onPaper: true })];
}

type Mark = Extract<DrawingShape, { s: 'mark' }>;

function signInks({ at, sign }: Mark, plane: Plane): Ink[] {
  const spot = plane.at(at);
  const [x, y] = spot;
  if (sign === 'point') return [{ i: 'circle', at: spot, r: 3, pen: 'none', fill: 'ink' }];
  return [
    sign === 'centroid'
      ? { i: 'circle', at: spot, r: SIGN, pen: 'medium', fill: 'paper' }
      : {
          i: 'area',
          rings: [
            [
              [x - SIGN, y - SIGN],
              [x + SIGN, y - SIGN],
              [x + SIGN, y + SIGN],
              [x - SIGN, y + SIGN],
            ],
          ],
          pen: 'medium',
          fill: 'none',
        },
    line('medium', [x - ARM, y], [x + ARM, y]),
    line('medium', [x, y - ARM], [x, y + ARM]),
  ];
}

type Axis = Extract<DrawingShape, { s: 'axis' }>;

/** A chain line from end to end of the field and a little further, its name at its end. */
function axisInks({ at, angle, label }: Axis, plane: Plane): Ink[] {
  const [x, y] = plane.at(at);
  const [dx, dy] = [Math.cos(angle), -Math.sin(angle)];
  const box = [plane.left, plane.right, plane.top, plane.bottom] as const;
  const [from, to] = within([x, y], [dx, dy], box);
  const end: Spot = [x + to * dx, y + to * dy];
  const isLevel = Math.abs(dx) > Math.abs(dy);
  const name: Spot = isLevel
    ? [end[0] + Math.sign(dx) * 5, end[1]]
    : [end[0], end[1] + Math.sign(dy) * 9];
  const anchor = !isLevel ? 'middle' : dx > 0 ? 'start' : 'end';
  return [line('chain', [x + from * dx, y + from * dy], end), words(name, label, { anchor })];
}

/** How far a line may go back and forth from a point until it leaves a field, made a little larger. */
function within(
  [x, y]: Spot,
  [dx, dy]: Spot,
  [left, right, top, bottom]: readonly [number, number, number, number],
): readonly [number, number] {
  const ends = (a: number, b: number, d: number): (readonly [number, number])[] =>
    Math.abs(d) < 1e-9 ? [] : [[a / d, b / d]];
  const sides = [
    ...ends(left - BEYOND - x, right + BEYOND - x, dx),
    ...ends(top - BEYOND - y, bottom + BEYOND - y, dy),
  ];
  return [
    Math.max(...sides.map(([a, b]) => Math.min(a, b))),
    Math.min(...sides.map(([a, b]) => Math.max(a, b))),
  ];
}
