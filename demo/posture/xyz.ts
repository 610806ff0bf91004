export type Xyz = readonly [x: number, y: number, z: number];

export const minus = (p: Xyz, q: Xyz): Xyz => [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
export const plus = (p: Xyz, q: Xyz): Xyz => [p[0] + q[0], p[1] + q[1], p[2] + q[2]];
export const length = (p: Xyz): number => Math.hypot(...p);

const times = (p: Xyz, k: number): Xyz => [p[0] * k, p[1] * k, p[2] * k];
const dot = (p: Xyz, q: Xyz): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];

/** `p` mirrored in the plane through the origin normal to `n`. */
const mirrored = (p: Xyz, n: Xyz): Xyz => minus(p, times(n, (2 * dot(p, n)) / dot(n, n)));

/** `p` turned about the axes X, then Y, then Z by angles in rad. */
export function turned([x, y, z]: Xyz, [a, b, c]: readonly [number, number, number]): Xyz {
  const [y1, z1] = [y * Math.cos(a) - z * Math.sin(a), y * Math.sin(a) + z * Math.cos(a)];
  const [x2, z2] = [x * Math.cos(b) + z1 * Math.sin(b), -x * Math.sin(b) + z1 * Math.cos(b)];
  return [x2 * Math.cos(c) - y1 * Math.sin(c), x2 * Math.sin(c) + y1 * Math.cos(c), z2];
}

/** `p` turned as `from` is turned onto the direction of `to` by the shortest way: two mirrorings. */
export function carried(p: Xyz, from: Xyz, to: Xyz): Xyz {
  const halfway = plus(times(from, 1 / length(from)), times(to, 1 / length(to)));
  return mirrored(mirrored(p, from), halfway);
}
