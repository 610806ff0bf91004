import type { Isolines } from '../engine/index.ts';
import { formatQuantity, unitSymbol } from '../quantity/index.ts';
import { contourLines } from './contours.ts';
import { axesInks } from './drawing.ts';
import { dimensionInks, levelsOf } from './drawn-dimensions.ts';
import type { Layout } from './layout.ts';
import { type Ink, line, type Picture, type Spot, words } from './picture.ts';
import { boundsOf, type Plane, planeOf, pointsOf } from './plane.ts';
import { shapeInks } from './shape-inks.ts';
import { textWidth } from './text-width.ts';

const AROUND = 24;
const NOTE = 26;
/** Lines shorter than this, in units, bear no number. */
const SHORT = 50;

/** A field over a plane as lines of equal value, each with its number. */
export function isolinesPicture(f: Isolines, { width, say }: Layout): Picture {
  const shapes = f.shapes ?? [];
  const [along, up] = [levelsOf(shapes, 'x'), levelsOf(shapes, 'y')];
  const ends = [f.x[0] ?? 0, f.x.at(-1) ?? 0].flatMap((x) =>
    [f.y[0] ?? 0, f.y.at(-1) ?? 0].map((y) => [x, y] as const),
  );
  const plane = planeOf(boundsOf([...ends, ...shapes.flatMap(pointsOf)]), width, {
    left: AROUND + up.room,
    right: AROUND,
    top: AROUND,
    bottom: 0,
  });
  const foot = plane.bottom + AROUND + along.room;
  const unit = { kind: 'length', unit: f.lengthUnit } as const;
  return {
    width,
    height: foot + NOTE,
    inks: [
      ...levelInks(f, plane),
      ...shapeInks(shapes, plane, width),
      ...dimensionInks(along, 'x', plane, say, unit),
      ...dimensionInks(up, 'y', plane, say, unit),
      ...axesInks(f.axes, foot + NOTE / 2),
      ...noteInks(f, foot + NOTE / 2, width),
    ],
    cuts: [],
  };
}

function noteInks({ unit }: Isolines, y: number, width: number): Ink[] {
  const symbol = unitSymbol(unit);
  const text = symbol === '' ? 'lines of equal value' : `lines of equal value, in ${symbol}`;
  return [words([width, y], text, { anchor: 'end', size: 'small', tone: 'soft' })];
}

/** All lines, the one of zero wide; then their numbers, as far from one another as they go. */
function levelInks(f: Isolines, plane: Plane): Ink[] {
  const { kind, unit } = f;
  const drawn = f.levels.flatMap((level) =>
    contourLines(f, level).map((points) => ({ level, spots: points.map(plane.at) })),
  );
  const taken: Spot[] = [];
  const numbers = drawn
    .filter(({ spots }) => lengthOf(spots) > SHORT)
    .map(({ level, spots }) => {
      const at = furthest(spots, taken);
      taken.push(at);
      const text = formatQuantity({ x: level, u: 0, kind, unit }, { withUnit: false });
      return words(at, text, { anchor: 'middle', size: 'small', onPaper: true });
    });
  return [
    ...drawn.map(({ level, spots }) => line(level === 0 ? 'wide' : 'narrow', ...spots)),
    ...numbers,
  ];
}

function lengthOf(spots: readonly Spot[]): number {
  return spots.reduce((sum, [x, y], i) => {
    const [px, py] = spots[i - 1] ?? [x, y];
    return sum + Math.hypot(x - px, y - py);
  }, 0);
}

/** The spot of a line with the most room around it: across counts less, as numbers are wide. */
function furthest(spots: readonly Spot[], taken: readonly Spot[]): Spot {
  const wide = textWidth('0000') / 14;
  const room = ([x, y]: Spot): number =>
    taken.reduce((least, [a, b]) => Math.min(least, Math.hypot((x - a) / wide, y - b)), Infinity);
  const [first = [0, 0] as const] = spots;
  const middle = spots[Math.floor(spots.length / 2)] ?? first;
  if (taken.length === 0) return middle;
  // Not at its very ends, where lines meet the edge.
  const inner = spots.length > 4 ? spots.slice(1, -1) : spots;
  return inner.reduce((best, spot) => (room(spot) > room(best) + 1e-6 ? spot : best), middle);
}
