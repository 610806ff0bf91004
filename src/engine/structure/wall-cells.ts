import { signedArea } from './area-moments.ts';
import { eachEdge, type Point, type Ring } from './point.ts';
import type { ThinWalls } from './thin-walls.ts';

/** The closed cells that walls enclose, and the cells at the sides of each wall. */
export interface TracedCells {
  readonly rings: readonly Ring[];
  /** m² */
  readonly areas: readonly number[];
  /** For each wall the cells to its left and right, −1 outside; alike for a wall that ends free. */
  readonly sides: readonly (readonly [number, number])[];
}

/** Share of its squared length below which what a ring encloses is rounding. */
const NOTHING = 1e-12;

function squaredLength(ring: Ring): number {
  let length = 0;
  eachEdge(ring, (a, b) => {
    length += Math.hypot(b.x - a.x, b.y - a.y);
  });
  return length * length;
}

/**
 * Walks along the walls, always taking the sharpest turn to the left, and so around each face
 * once: faces walked against the clock are cells. Walls may meet only at nodes.
 */
export function traceCells({ nodes, walls }: ThinWalls): TracedCells {
  const ways = walls.flatMap((w, wall) => [
    { wall, back: false, from: w.from, to: w.to },
    { wall, back: true, from: w.to, to: w.from },
  ]);
  const heading = ({ from, to }: { from: number; to: number }) => {
    const [a, b] = [nodes[from] as Point, nodes[to] as Point];
    return Math.atan2(b.y - a.y, b.x - a.x);
  };
  const leaving = nodes.map((_, node) =>
    ways
      .map((way, i) => ({ ...way, i, heading: heading(way) }))
      .filter((way) => way.from === node)
      .sort((a, b) => a.heading - b.heading),
  );
  /** The next way with the face on the left: the one before the way back, against the clock. */
  const next = (i: number): number => {
    const way = ways[i];
    const around = leaving[way?.to ?? 0] ?? [];
    const back = around.findIndex((o) => o.wall === way?.wall && o.back !== way.back);
    return around[(back + around.length - 1) % around.length]?.i ?? i;
  };
  const face = new Array<number>(ways.length).fill(-2);
  const rings: Ring[] = [];
  for (const start of ways.keys()) {
    if (face[start] !== -2) continue;
    const loop: number[] = [];
    for (let i = start; face[i] === -2; i = next(i)) {
      face[i] = -1;
      loop.push(i);
    }
    const ring = loop.map((i) => nodes[ways[i]?.from ?? 0] as Point);
    if (!(signedArea(ring) > NOTHING * squaredLength(ring))) continue;
    for (const i of loop) face[i] = rings.length;
    rings.push(ring);
  }
  return {
    rings,
    areas: rings.map(signedArea),
    sides: walls.map((_, i) => [face[2 * i] ?? -1, face[2 * i + 1] ?? -1]),
  };
}
