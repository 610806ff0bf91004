import { formatNumber } from '../quantity/index.ts';
import type { MapMark, MapShape, MapView, Point } from './map.ts';
import type { Body, Triple, Wheels } from './map-bodies.ts';

/** White around the drawn parts, mm. */
const MARGIN = 120;
/** Dimension line below the ground, mm. */
const DIMENSION_Y = 230;

/** Y points right in the frame; in plan, seen from above with the front to the left, right is up. */
const PLAN = (at: Triple): Point => [at[0], 0 - at[1]];
const SIDE = (at: Triple): Point => [at[0], 0 - at[2]];

export function planView(
  bodies: readonly Body[],
  items: readonly Body[],
  wheels: Wheels | undefined,
  marks: readonly MapMark[],
): MapView {
  const shapes = [
    ...(wheels ? planWheels(wheels) : []),
    ...bodies.map((b) => boxOf(b, PLAN, b.size[1], false)),
    ...items.map((b, i) => itemOf(b, i, PLAN)),
    ...marks.map((m) => markOf(m, PLAN([1000 * m.x, 1000 * m.y, 0]))),
  ];
  const frame = frameOf(bodies, wheels, shapes);
  return {
    title: 'Plan',
    axes: 'X rearward, Y to the right of the vehicle (up)',
    frame,
    shapes: [axisLine(frame, 0), ...shapes],
  };
}

export function sideView(
  bodies: readonly Body[],
  items: readonly Body[],
  wheels: Wheels | undefined,
  marks: readonly MapMark[],
): MapView {
  const high = marks.flatMap((m) =>
    m.z === undefined ? [] : [markOf(m, SIDE([1000 * m.x, 0, 1000 * m.z]))],
  );
  const shapes: MapShape[] = [
    ...(wheels ? sideWheels(wheels) : []),
    ...bodies.map((b) => boxOf(b, SIDE, b.size[2], b.kind === 'assembly')),
    ...items.map((b, i) => itemOf(b, i, SIDE)),
    ...high,
  ];
  const frame = frameOf(bodies, wheels, shapes);
  const ground = wheels ? [groundLine(frame)] : [];
  return { title: 'Side', axes: 'X rearward, Z up', frame, shapes: [...ground, ...shapes] };
}

function boxOf(b: Body, project: (at: Triple) => Point, height: number, hatch: boolean): MapShape {
  const [x, y] = project(b.at);
  const w = b.size[0];
  return {
    s: 'box',
    x: x - w / 2,
    y: y - height / 2,
    w,
    h: height,
    bold: b.kind === 'assembly',
    hatch,
  };
}

function itemOf(b: Body, i: number, project: (at: Triple) => Point): MapShape {
  const [x, y] = project(b.at);
  return { s: 'item', x, y, item: i + 1 };
}

const markOf = (m: MapMark, [x, y]: Point): MapShape => ({ s: 'mark', x, y, sign: m.sign });

/** Wheels in plan: their width is not recorded, they are drawn 0.6 of the radius wide. */
function planWheels(w: Wheels): MapShape[] {
  const wide = 0.6 * w.radius;
  return w.tracks.flatMap((track, axle) =>
    [-1, 1].map(
      (side): MapShape => ({
        s: 'box',
        x: axle * w.wheelbase - w.radius,
        y: (side * track) / 2 - wide / 2,
        w: 2 * w.radius,
        h: wide,
        bold: false,
        hatch: false,
      }),
    ),
  );
}

function sideWheels(w: Wheels): MapShape[] {
  const text = formatNumber(w.wheelbase, 0);
  return [
    ...[0, w.wheelbase].map((x): MapShape => ({ s: 'circle', x, y: -w.radius, r: w.radius })),
    { s: 'dimension', from: 0, to: w.wheelbase, y: DIMENSION_Y, text },
  ];
}

const axisLine = ([left, , width]: MapView['frame'], y: number): MapShape => ({
  s: 'line',
  from: [left, y],
  to: [left + width, y],
  chain: true,
});
const groundLine = ([left, , width]: MapView['frame']): MapShape => ({
  s: 'line',
  from: [left, 0],
  to: [left + width, 0],
  chain: false,
});

/** Both views share their range along X, so that they stand above each other. */
function frameOf(
  bodies: readonly Body[],
  wheels: Wheels | undefined,
  shapes: readonly MapShape[],
): MapView['frame'] {
  const xs = bodies.flatMap((b) => [b.at[0] - b.size[0] / 2, b.at[0] + b.size[0] / 2]);
  if (wheels) xs.push(-wheels.radius, wheels.wheelbase + wheels.radius);
  const ys = shapes.flatMap(heightsOf);
  const left = Math.min(...xs) - MARGIN;
  const top = Math.min(...ys) - MARGIN / 2;
  return [left, top, Math.max(...xs) + MARGIN - left, Math.max(...ys) + MARGIN / 2 - top];
}

function heightsOf(shape: MapShape): number[] {
  if (shape.s === 'box') return [shape.y, shape.y + shape.h];
  if (shape.s === 'circle') return [shape.y - shape.r, shape.y + shape.r];
  return shape.s === 'line' ? [shape.from[1], shape.to[1]] : [shape.y];
}
