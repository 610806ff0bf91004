export type Point = readonly [u: number, v: number];

/** The convex outline of points, by Andrew's monotone chain; the points themselves below three. */
export function hull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort(([a, b], [c, d]) => a - c || b - d);
  if (sorted.length < 3) return sorted;
  const lower = half(sorted);
  const upper = half(sorted.reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function half(sorted: readonly Point[]): Point[] {
  const chain: Point[] = [];
  for (const p of sorted) {
    while (chain.length >= 2 && turn(chain.at(-2), chain.at(-1), p) <= 0) chain.pop();
    chain.push(p);
  }
  return chain;
}

function turn(a: Point | undefined, b: Point | undefined, c: Point): number {
  if (!a || !b) return 1;
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}
