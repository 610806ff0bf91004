import type { FigurePoint } from '../engine/index.ts';

/** Values at the crossings of columns x and rows y, one list a row. */
export interface Grid {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly values: readonly (readonly number[])[];
}

/** Names the side of a cell on which a line crosses: h along x, v along y. */
type Side = string;
type Segment = readonly [Side, Side];

/**
 * Lines on which a field over a grid has one value, straight within each cell (marching squares,
 * common practice, no source). A line that ends where it began is closed: its first point comes
 * again at its end. Where two lines could cross in a cell, the mean of its corners decides.
 */
export function contourLines(grid: Grid, level: number): FigurePoint[][] {
  const crossing = crossingOf(grid, level);
  const segments: Segment[] = [];
  for (let j = 0; j + 1 < grid.y.length; j++)
    for (let i = 0; i + 1 < grid.x.length; i++) segments.push(...cellSegments(grid, level, i, j));
  return joined(segments).map((sides) => sides.map(crossing));
}

const valueAt = ({ values }: Grid, i: number, j: number): number => values[j]?.[i] ?? 0;

/** Segments within one cell, by which of its corners reach the level. */
function cellSegments(grid: Grid, level: number, i: number, j: number): Segment[] {
  const corners = [
    valueAt(grid, i, j),
    valueAt(grid, i + 1, j),
    valueAt(grid, i + 1, j + 1),
    valueAt(grid, i, j + 1),
  ];
  const [south, east, north, west] = [
    `h${i},${j}`,
    `v${i + 1},${j}`,
    `h${i},${j + 1}`,
    `v${i},${j}`,
  ];
  const sides = [south, east, north, west];
  const isAbove = corners.map((v) => v >= level);
  const cut = sides.filter((_, s) => isAbove[s] !== isAbove[(s + 1) % 4]);
  const [a, b, c, d] = cut;
  if (a === undefined || b === undefined) return [];
  if (c === undefined || d === undefined) return [[a, b]];
  const middle = corners.reduce((sum, v) => sum + v, 0) / 4 >= level;
  return middle === isAbove[0]
    ? [
        [south, east],
        [north, west],
      ]
    : [
        [west, south],
        [east, north],
      ];
}

/** Where the level lies on a side, between its two ends. */
function crossingOf(grid: Grid, level: number): (side: Side) => FigurePoint {
  return (side) => {
    const [i = 0, j = 0] = side.slice(1).split(',').map(Number);
    const [di, dj] = side.startsWith('h') ? [1, 0] : [0, 1];
    const [a, b] = [valueAt(grid, i, j), valueAt(grid, i + di, j + dj)];
    const t = a === b ? 0.5 : (level - a) / (b - a);
    const between = (xs: readonly number[], n: number, d: number): number =>
      (xs[n] ?? 0) + t * ((xs[n + d] ?? 0) - (xs[n] ?? 0));
    return [between(grid.x, i, di), between(grid.y, j, dj)];
  };
}

/** Segments joined end to end, each used once. */
function joined(segments: readonly Segment[]): Side[][] {
  const at = new Map<Side, Set<Segment>>();
  for (const segment of segments)
    for (const side of segment) at.set(side, (at.get(side) ?? new Set()).add(segment));
  const take = (side: Side): Side | undefined => {
    const [segment] = at.get(side) ?? [];
    if (!segment) return undefined;
    for (const end of segment) at.get(end)?.delete(segment);
    return segment[0] === side ? segment[1] : segment[0];
  };
  const follow = (from: Side): Side[] => {
    const line = [from];
    for (let next = take(from); next !== undefined; next = take(next)) line.push(next);
    return line;
  };
  // Open lines first, from their ends; what is left is closed.
  const ends = [...at].filter(([, own]) => own.size === 1).map(([side]) => side);
  return [...ends, ...at.keys()]
    .filter((side) => (at.get(side)?.size ?? 0) > 0)
    .map(follow)
    .filter((line) => line.length > 1);
}
