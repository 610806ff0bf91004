/** A load of 1 N/m² on all of a plate, or of 1 N on a patch; lengths in m. */
export type NavierLoad =
  | { readonly on: 'all' }
  | {
      readonly on: 'patch';
      /** Middle of the patch and its sides; sides of 0 make it a point. */
      readonly x: number;
      readonly y: number;
      readonly u: number;
      readonly v: number;
    };

/** Deflection for D = 1 N·m and its second derivatives. */
export interface Deflected {
  readonly w: number;
  readonly wxx: number;
  readonly wyy: number;
}

/** Waves along each side: the deflection under a point is then within 1e-5 of the whole series. */
const WAVES = 200;

/** sin(n π s) for n = 1 … WAVES. */
const sines = (s: number): Float64Array =>
  Float64Array.from({ length: WAVES }, (_, n) => Math.sin((n + 1) * Math.PI * s));

/** Share of a load in each wave along one side, so that the whole is 4 × the product of two. */
function waves(load: NavierLoad, side: number, middle: 'x' | 'y', patch: 'u' | 'v'): Float64Array {
  return Float64Array.from({ length: WAVES }, (_, i) => {
    const n = i + 1;
    if (load.on === 'all') return n % 2 === 1 ? 2 / (n * Math.PI) : 0;
    const half = (n * Math.PI * load[patch]) / (2 * side);
    const spread = half === 0 ? 1 : Math.sin(half) / half;
    return (Math.sin((n * Math.PI * load[middle]) / side) * spread) / side;
  });
}

/** Navier's double sine series for a plate supported on all edges, at a place (x, y) of it. */
export function navierPlate(
  a: number,
  b: number,
  load: NavierLoad,
  x: number,
  y: number,
): Deflected {
  const [px, py] = [waves(load, a, 'x', 'u'), waves(load, b, 'y', 'v')];
  const [sx, sy] = [sines(x / a), sines(y / b)];
  let [w, wxx, wyy] = [0, 0, 0];
  for (let m = 0; m < WAVES; m++) {
    const fx = (px[m] ?? 0) * (sx[m] ?? 0);
    if (fx === 0) continue;
    const alpha = (((m + 1) * Math.PI) / a) ** 2;
    for (let n = 0; n < WAVES; n++) {
      const beta = (((n + 1) * Math.PI) / b) ** 2;
      const term = (4 * fx * (py[n] ?? 0) * (sy[n] ?? 0)) / (alpha + beta) ** 2;
      w += term;
      wxx -= alpha * term;
      wyy -= beta * term;
    }
  }
  return { w, wxx, wyy };
}
