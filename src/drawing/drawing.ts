import type { Drawing, DrawingShape } from '../engine/index.ts';
import { fromSi, niceStep, toSi } from '../quantity/index.ts';
import { dimensionInks, levelsOf } from './drawn-dimensions.ts';
import type { Layout } from './layout.ts';
import { arrowHead, type Ink, line, type Picture, type Spot, words } from './picture.ts';
import { boundsOf, type Plane, planeOf, pointsOf } from './plane.ts';
import { shapeInks } from './shape-inks.ts';
import { textWidth } from './text-width.ts';

type Vector = Extract<DrawingShape, { s: 'vector' }>;

/** Paper around a drawing for names at the ends of its axes. */
const AROUND = 30;
const NOTE = 26;
/** The longest arrow, of the width of the field. */
const LONGEST = 0.16;

/** A drawing to scale with its dimensions, and below it what its directions and arrows are. */
export function drawingPicture(f: Drawing, { width, say }: Layout): Picture {
  const [along, up] = [levelsOf(f.shapes, 'x'), levelsOf(f.shapes, 'y')];
  const names = f.shapes.flatMap((s) => (s.s === 'axis' ? [textWidth(s.label)] : []));
  const vectors = f.shapes.filter((s): s is Vector => s.s === 'vector');
  const arm = (d: 0 | 1, way: 1 | -1): number =>
    AROUND + (vectors.some((v) => way * v.by[d] > 0) ? (LONGEST * width) / (1 + 2 * LONGEST) : 0);
  const plane = planeOf(boundsOf(f.shapes.flatMap(pointsOf)), width, {
    left: arm(0, -1) + up.room,
    right: Math.max(arm(0, 1), ...names.map((w) => w + AROUND)),
    top: arm(1, 1),
    bottom: 0,
  });
  const foot = plane.bottom + arm(1, -1) + along.room;
  const arrows = vectorScale(vectors, plane);
  const notes = f.axes || vectors.length > 0;
  return {
    width,
    height: foot + (notes ? NOTE : 0),
    inks: [
      ...shapeInks(f.shapes, plane, width),
      ...dimensionInks(along, 'x', plane, say, f),
      ...dimensionInks(up, 'y', plane, say, f),
      ...vectors.flatMap((v) => vectorInks(v, plane, arrows)),
      ...axesInks(f.axes, foot + NOTE / 2),
      ...sampleInks(f, vectors, arrows, foot + NOTE / 2, width, say),
    ],
    cuts: [],
  };
}

/** Units of paper a number of the vectors. */
function vectorScale(vectors: readonly Vector[], plane: Plane): number {
  const longest = vectors.reduce((most, { by }) => Math.max(most, Math.hypot(...by)), 0);
  return longest === 0 ? 0 : (LONGEST * Math.max(plane.right - plane.left, 120)) / longest;
}

function vectorInks({ at, by, label }: Vector, plane: Plane, k: number): Ink[] {
  const from = plane.at(at);
  const to: Spot = [from[0] + k * by[0], from[1] - k * by[1]];
  const way: Spot = [to[0] - from[0], to[1] - from[1]];
  const beyond = way[0] < 0 ? 'end' : 'start';
  return [
    { i: 'circle', at: from, r: 2, pen: 'none', fill: 'ink' },
    line('medium', from, to),
    ...(Math.hypot(...way) > 3 ? [arrowHead(to, way)] : []),
    ...(label
      ? [words([to[0] + (way[0] < 0 ? -5 : 5), to[1]], label, { anchor: beyond, onPaper: true })]
      : []),
  ];
}

/** Names of the directions behind small arrows that show which way they go. */
export function axesInks(axes: Drawing['axes'], y: number): Ink[] {
  if (!axes) return [];
  const second = 32 + textWidth(axes.x, 'small') + 22;
  return [
    line('narrow', [0, y], [22, y]),
    arrowHead([26, y], [1, 0], 8),
    words([32, y], axes.x, { size: 'small', tone: 'soft' }),
    line('narrow', [second, y + 9], [second, y - 5]),
    arrowHead([second, y - 9], [0, -1], 8),
    words([second + 8, y], axes.y, { size: 'small', tone: 'soft' }),
  ];
}

/** An arrow of a round number, by which the others are read. */
function sampleInks(
  f: Drawing,
  vectors: readonly Vector[],
  k: number,
  y: number,
  width: number,
  say: Layout['say'],
): Ink[] {
  if (!f.vectors || k === 0) return [];
  const { kind, unit } = f.vectors;
  const longest = vectors.reduce((most, { by }) => Math.max(most, Math.hypot(...by)), 0);
  const sample = toSi(niceStep(fromSi(longest, unit, kind) / 2), unit, kind);
  const { text } = say({ x: sample, u: 0, kind, unit });
  const from = width - textWidth(text, 'small') - 12 - k * sample;
  return [
    line('medium', [from, y], [from + k * sample, y]),
    arrowHead([from + k * sample, y], [1, 0]),
    words([width, y], text, { anchor: 'end', size: 'small' }),
  ];
}
