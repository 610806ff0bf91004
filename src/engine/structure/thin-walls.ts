import type { AreaMoments } from './area-moments.ts';
import type { Point } from './point.ts';

/** A straight thin wall between two nodes, by their place in the list of nodes. */
export interface Wall {
  readonly from: number;
  readonly to: number;
  /** m */
  readonly thickness: number;
}

/** A section of thin walls along their middle lines. */
export interface ThinWalls {
  readonly nodes: readonly Point[];
  readonly walls: readonly Wall[];
}

/** A wall with its ends as points. */
export interface PlacedWall extends Wall {
  readonly a: Point;
  readonly b: Point;
  readonly length: number;
}

export const placedWalls = ({ nodes, walls }: ThinWalls): PlacedWall[] =>
  walls.map((wall) => {
    const [a, b] = [nodes[wall.from] as Point, nodes[wall.to] as Point];
    return { ...wall, a, b, length: Math.hypot(b.x - a.x, b.y - a.y) };
  });

/** Area moments of thin walls, each with its thickness: the exact ones of slanted rectangles. */
export function wallMoments(section: ThinWalls): AreaMoments {
  const walls = placedWalls(section);
  const sum = (f: (w: PlacedWall) => number) => walls.reduce((s, w) => s + f(w), 0);
  const area = sum((w) => w.length * w.thickness);
  const centroid = {
    x: sum((w) => (w.length * w.thickness * (w.a.x + w.b.x)) / 2) / area,
    y: sum((w) => (w.length * w.thickness * (w.a.y + w.b.y)) / 2) / area,
  };
  const second = (u: (p: Point) => number, v: (p: Point) => number, across: number[]) =>
    walls.reduce((s, w, i) => s + w.length * w.thickness * (mean(w, u, v) + (across[i] ?? 0)), 0);
  const x = (p: Point) => p.x - centroid.x;
  const y = (p: Point) => p.y - centroid.y;
  return {
    area,
    centroid,
    ixx: second(
      y,
      y,
      walls.map((w) => acrossWall(w, (dx) => dx * dx)),
    ),
    iyy: second(
      x,
      x,
      walls.map((w) => acrossWall(w, (_dx, dy) => dy * dy)),
    ),
    ixy: second(
      x,
      y,
      walls.map((w) => acrossWall(w, (dx, dy) => -dx * dy)),
    ),
  };
}

/** Mean of u v along a straight wall, for two linear functions of place. */
function mean(w: PlacedWall, u: (p: Point) => number, v: (p: Point) => number): number {
  const [ua, ub, va, vb] = [u(w.a), u(w.b), v(w.a), v(w.b)];
  return (2 * ua * va + 2 * ub * vb + ua * vb + ub * va) / 6;
}

/** t²/12 times a product of the wall's direction: what its thickness adds to a mean square. */
function acrossWall(w: PlacedWall, product: (dx: number, dy: number) => number): number {
  const [dx, dy] = [(w.b.x - w.a.x) / w.length, (w.b.y - w.a.y) / w.length];
  return (product(dx, dy) * w.thickness ** 2) / 12;
}

/** Number of separate pieces, and of independent closed loops, of a section of walls. */
export function connections({ nodes, walls }: ThinWalls): { pieces: number; loops: number } {
  const root = nodes.map((_, i) => i);
  const find = (i: number): number => {
    let at = i;
    while (root[at] !== at) at = root[at] as number;
    return at;
  };
  let loops = 0;
  for (const { from, to } of walls) {
    const [a, b] = [find(from), find(to)];
    if (a === b) loops++;
    else root[a] = b;
  }
  const used = new Set(walls.flatMap((w) => [w.from, w.to]));
  return { pieces: new Set([...used].map(find)).size, loops };
}
