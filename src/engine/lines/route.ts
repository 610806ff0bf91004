/** Points of a route in the vehicle's frame, m. */
export type Place = readonly [x: number, y: number, z: number];
/** A box by its limits along each axis; unlimited where one is not known. */
export type Box = readonly (readonly [low: number | undefined, high: number | undefined])[];

/** "300 -420 800; 660 -210 370" in mm as points in m; undefined where it is no list of points. */
export function routeOf(words: string): readonly Place[] | undefined {
  const points = words
    .split(';')
    .map((point) =>
      point
        .trim()
        .split(/[\s,]+/)
        .map((n) => Number(n.replace('−', '-'))),
    )
    .filter((point) => point.length > 1);
  const isWhole = points.every((p) => p.length === 3 && p.every(Number.isFinite));
  return points.length > 0 && isWhole
    ? points.map(([x = 0, y = 0, z = 0]): Place => [x / 1000, y / 1000, z / 1000])
    : undefined;
}

const between = (a: Place, b: Place, t: number): Place => [
  a[0] + t * (b[0] - a[0]),
  a[1] + t * (b[1] - a[1]),
  a[2] + t * (b[2] - a[2]),
];
const distance = (a: Place, b: Place): number => Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);

const legs = (route: readonly Place[]): (readonly [Place, Place])[] =>
  route.slice(1).map((b, i) => [route[i] ?? b, b]);

/** Length along the points, m: bends cut their corners, slack adds. */
export const routeLength = (route: readonly Place[]): number =>
  legs(route).reduce((sum, [a, b]) => sum + distance(a, b), 0);

/** From a point to a box, m; 0 within it. */
export const toBox = (at: Place, box: Box): number =>
  Math.hypot(
    ...([0, 1, 2] as const).map((i) => {
      const [low = -Infinity, high = Infinity] = box[i] ?? [];
      return Math.max(0, low - at[i], at[i] - high);
    }),
  );

/** From a route to a box, m: least along each leg, where the distance has one dip only. */
export const routeToBox = (route: readonly Place[], box: Box): number =>
  Math.min(
    ...route.map((p) => toBox(p, box)),
    ...legs(route).map(([a, b]) => dip((t) => toBox(between(a, b, t), box))),
  );

/** From one route to another, m. */
export const routeToRoute = (one: readonly Place[], other: readonly Place[]): number =>
  Math.min(
    ...legs(one).flatMap(([a, b]) =>
      legs(other).map(([c, d]) =>
        dip((t) => dip((s) => distance(between(a, b, t), between(c, d, s)))),
      ),
    ),
  );

const THIRDS = 60;
/** The least value of a function of one dip over 0 to 1. */
function dip(f: (t: number) => number): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < THIRDS; i++) {
    const [p, q] = [low + (high - low) / 3, high - (high - low) / 3];
    if (f(p) < f(q)) high = q;
    else low = p;
  }
  return f((low + high) / 2);
}
