/** A point of a cross-section, m: x to the right, y up. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A closed line without its first point repeated, walked either way round. */
export type Ring = readonly Point[];

/** A cross-section: its outline, less its holes. */
export interface Shape {
  readonly outline: Ring;
  readonly holes: readonly Ring[];
}

/** Calls `visit` with both ends of every edge of a ring. */
export function eachEdge(ring: Ring, visit: (from: Point, to: Point) => void): void {
  let from = ring.at(-1);
  for (const to of ring) {
    if (from) visit(from, to);
    from = to;
  }
}

/** Chords that stand for a quarter of a circle: the area beside it is off by 1.4e-4 of r². */
const CHORDS = 48;

/** Points along an arc about (x, y), from one angle to another in radians, both ends included. */
export function arc(x: number, y: number, r: number, from: number, to: number): Point[] {
  if (r === 0) return [{ x, y }];
  return Array.from({ length: CHORDS + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / CHORDS;
    return { x: x + r * Math.cos(angle), y: y + r * Math.sin(angle) };
  });
}
