import type { Drawing, DrawingShape, Figure, FigurePoint } from '../figure.ts';
import type { DetailTable, Out, PlainInputs } from '../method.ts';

/** A place of the centre of gravity, by what stands then. */
export interface CentreAt {
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Where the pads are and which margin is asked for, in m. */
export interface PadFrame {
  readonly front: number;
  readonly rear: number;
  readonly left: number;
  readonly right: number;
  readonly limitX: number;
  readonly limitY: number;
}

/** Half the side of a pad as drawn, m. */
const PAD = 0.06;

const square = ([x, y]: FigurePoint): DrawingShape => ({
  s: 'area',
  hatch: 'solid',
  rings: [
    [
      [x - PAD, y - PAD],
      [x + PAD, y - PAD],
      [x + PAD, y + PAD],
      [x - PAD, y + PAD],
    ],
  ],
});

const box = (low: FigurePoint, high: FigurePoint, line: 'chain' | 'dashed'): DrawingShape => ({
  s: 'line',
  line,
  points: [low, [high[0], low[1]], high, [low[0], high[1]], low],
});

/** The way of the centre, and a mark for the first, the last and each by its number. */
function path(centres: readonly CentreAt[], at: (c: CentreAt) => FigurePoint): DrawingShape[] {
  const last = centres.at(-1);
  return [
    ...(centres.length > 1
      ? [{ s: 'line', line: 'continuous', points: centres.map(at) } as const]
      : []),
    ...centres.map(
      (c): DrawingShape => ({
        s: 'mark',
        at: at(c),
        sign: c === last ? 'centroid' : 'point',
        label: c.label,
      }),
    ),
  ];
}

/** Seen from above: pads, the lines that the margin leaves, and where the centre goes. To the right of the vehicle is up. */
export function planView(frame: PadFrame, centres: readonly CentreAt[]): Drawing {
  const { front, rear, left, right, limitX, limitY } = frame;
  const pads: FigurePoint[] = [
    [front, left],
    [front, right],
    [rear, left],
    [rear, right],
  ];
  return {
    f: 'drawing',
    title: 'On the pads, seen from above',
    alt: 'The four pads, chain lines between them, dashed lines at the margin asked for, and the centre of gravity step by step.',
    kind: 'length',
    unit: 'mm',
    axes: { x: 'X, rearward', y: 'Y, to the right' },
    shapes: [
      ...pads.map(square),
      box([front, left], [rear, right], 'chain'),
      box([front + limitX, left + limitY], [rear - limitX, right - limitY], 'dashed'),
      ...path(centres, (c) => [c.x, c.y]),
    ],
  };
}

/** Seen from the left: the pad lines, the margin asked for, and where the centre goes. */
export function sideView(frame: PadFrame, centres: readonly CentreAt[]): Drawing {
  const { front, rear, limitX } = frame;
  const top = Math.max(...centres.map((c) => c.z)) + 0.15;
  const upright = (x: number, line: 'chain' | 'dashed'): DrawingShape => ({
    s: 'line',
    line,
    points: [
      [x, 0],
      [x, top],
    ],
  });
  return {
    f: 'drawing',
    title: 'On the pads, seen from the left',
    alt: 'The two pad lines as chain lines, the margin asked for as dashed lines, and the centre of gravity step by step. Heights are those of the vehicle at kerb load.',
    kind: 'length',
    unit: 'mm',
    axes: { x: 'X, rearward', y: 'Z, up' },
    shapes: [
      square([front, 0]),
      square([rear, 0]),
      upright(front, 'chain'),
      upright(rear, 'chain'),
      upright(front + limitX, 'dashed'),
      upright(rear - limitX, 'dashed'),
      ...path(centres, (c) => [c.x, c.z]),
    ],
  };
}

const isDrawn = (frame: PadFrame, centres: readonly CentreAt[]): boolean =>
  [...Object.values(frame), ...centres.flatMap((c) => [c.x, c.y, c.z])].every(Number.isFinite);

/** Both views, where every number is there. */
export const padViews = (frame: PadFrame, centres: readonly CentreAt[]): readonly Figure[] =>
  isDrawn(frame, centres) ? [planView(frame, centres), sideView(frame, centres)] : [];

/** The centre after one step. */
export function hoistFigures(
  { scalars }: PlainInputs,
  outs: Readonly<Record<string, Out>>,
  _detail: DetailTable | undefined,
): readonly Figure[] {
  const at = (name: string): number => outs[name]?.x ?? Number.NaN;
  const scalar = (name: string): number => scalars[name] ?? Number.NaN;
  const [front, rear] = [scalar('front'), scalar('rear')];
  const [left, right] = [scalar('left'), scalar('right')];
  const frame = { front, rear, left, right, limitX: at('limitX'), limitY: at('limitY') };
  return padViews(frame, [{ label: 'centre', x: at('x'), y: at('y'), z: at('z') }]);
}
