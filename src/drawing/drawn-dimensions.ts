import type { DrawingShape } from '../engine/index.ts';
import { dimension } from './dimension.ts';
import type { KindNumber, Layout } from './layout.ts';
import { type Ink, line, type Spot } from './picture.ts';
import type { Plane } from './plane.ts';

type Dimension = Extract<DrawingShape, { s: 'dimension' }>;

/** Room that one line of dimensions takes. */
const LEVEL = 24;
const FIRST = 20;

/** Dimensions along one direction, each with the line it stands on, the shortest nearest. */
export interface Levels {
  readonly of: readonly { readonly shape: Dimension; readonly level: number }[];
  /** Room they take beside the field, in units. */
  readonly room: number;
}

export function levelsOf(shapes: readonly DrawingShape[], along: 'x' | 'y'): Levels {
  const i = along === 'x' ? 0 : 1;
  const spans = shapes
    .filter((s): s is Dimension => s.s === 'dimension' && s.along === along)
    .map((shape) => ({ shape, ends: [shape.from[i], shape.to[i]].sort((a, b) => a - b) }))
    .sort((a, b) => lengthOf(a.ends) - lengthOf(b.ends));
  const levels: (readonly number[])[][] = [];
  const of = spans.map(({ shape, ends }) => {
    const free = levels.findIndex((held) => held.every((other) => apart(other, ends)));
    const level = free < 0 ? levels.length : free;
    levels[level] = [...(levels[level] ?? []), ends];
    return { shape, level };
  });
  return { of, room: levels.length === 0 ? 0 : FIRST + LEVEL * levels.length };
}

const lengthOf = ([a = 0, b = 0]: readonly number[]): number => b - a;
const apart = ([a = 0, b = 0]: readonly number[], [c = 0, d = 0]: readonly number[]): boolean =>
  b <= c || d <= a;

/** Dimensions below the field (x) and to its left (y), with lines that lead to what they measure. */
export function dimensionInks(
  { of }: Levels,
  along: 'x' | 'y',
  plane: Plane,
  say: Layout['say'],
  unit: Pick<KindNumber, 'kind' | 'unit'>,
): Ink[] {
  return of.flatMap(({ shape, level }) => {
    const [a, b] = [plane.at(shape.from), plane.at(shape.to)];
    const i = along === 'x' ? 0 : 1;
    const { text } = say({ x: Math.abs(shape.to[i] - shape.from[i]), ...unit });
    const off = FIRST + LEVEL * (level + 0.5);
    if (along === 'x') {
      const y = plane.bottom + off;
      const room = { from: 0, to: plane.width };
      return [...leads([a, b], (p) => [p[0], y + 4]), ...dimension(a[0], b[0], y, text, room)];
    }
    const x = plane.left - off;
    const room = { from: -plane.bottom - 30, to: -plane.top + 30 };
    return [
      ...leads([a, b], (p) => [x - 4, p[1]]),
      ...dimension(-a[1], -b[1], x, text, room).map(turned),
    ];
  });
}

const leads = (ends: readonly Spot[], to: (p: Spot) => Spot): Ink[] =>
  ends.map((p) => line('hair', p, to(p)));

/** Turned by a quarter to the left: what ran to the right runs up. */
function turned(ink: Ink): Ink {
  const turn = ([x, y]: Spot): Spot => [y, -x];
  if (ink.i === 'line') return { ...ink, spots: ink.spots.map(turn) };
  if (ink.i === 'area') return { ...ink, rings: ink.rings.map((ring) => ring.map(turn)) };
  const at = turn(ink.at);
  return ink.i === 'words' ? { ...ink, at, turned: true } : { ...ink, at };
}
