import { type Deflected, type NavierLoad, navierPlate } from './navier-series.ts';
import { onAllEdges, ritzForm } from './plate-inputs.ts';
import { remembered } from './remembered.ts';
import {
  bend,
  type Edges,
  type Load,
  type RitzPlate,
  ritzPlate,
  ritzPlateOf,
} from './ritz-plate.ts';
import type { StripFunctions } from './strip-functions.ts';

/** A plate bent by a unit load, D = 1 N·m, and by which method. */
export interface BentPlate {
  /** At a place of the plate, m. */
  readonly at: (x: number, y: number) => Deflected;
  readonly form: string;
}

const NAVIER = 'Navier’s double sine series, 200 × 200 waves';

/** Means of the functions under a load, along one side. */
function under(f: StripFunctions, side: number, middle: number, patch: number): Float64Array {
  const xi = (s: number) => (2 * s) / side - 1;
  if (patch === 0) return f.at(xi(middle))[0];
  return f.mean(xi(middle - patch / 2), xi(middle + patch / 2));
}

function ritzLoad({ a, b, x, y }: RitzPlate, load: NavierLoad): Load {
  if (load.on === 'patch')
    return { x: under(x, a, load.x, load.u), y: under(y, b, load.y, load.v) };
  // A pressure of 1 N/m² is a force of a b, spread over all of the plate.
  return { x: under(x, a, a / 2, a).map((mean) => a * b * mean), y: under(y, b, b / 2, b) };
}

/**
 * Bends a plate by 1 N/m² or 1 N. All edges supported: Navier's series, exact. Else Ritz's method;
 * what its polynomials resolve poorly right under a patch or point does not hang on the edges, so
 * it is taken from the supported plate, worked out both ways with polynomials of the same degree.
 * Undefined when the edges do not hold the plate.
 */
export const bentPlate = remembered(
  (a: number, b: number, nu: number, edges: Edges, load: NavierLoad): BentPlate | undefined => {
    if (onAllEdges(edges, 'supported'))
      return { at: remembered((x, y) => navierPlate(a, b, load, x, y)), form: NAVIER };
    const plate = ritzPlate(a, b, nu, edges);
    const bent = bend(plate, ritzLoad(plate, load));
    if (!bent) return undefined;
    const ritz = (x: number, y: number) => bent.at((2 * x) / a - 1, (2 * y) / b - 1);
    const form = ritzForm(plate.x.count, plate.y.count);
    if (load.on === 'all') return { at: remembered(ritz), form };
    const missed = missedBySupported(plate, load);
    const at = (x: number, y: number) => sum(ritz(x, y), missed(x, y));
    return { at: remembered(at), form: `${form}; right under the load as ${NAVIER}` };
  },
);

/** What Ritz's method misses of the supported plate, with polynomials of the same degree. */
function missedBySupported(plate: RitzPlate, load: NavierLoad) {
  const { a, b, nu } = plate;
  const supported = ritzPlateOf(
    a,
    b,
    nu,
    { x0: 'supported', xa: 'supported', y0: 'supported', yb: 'supported' },
    { x: plate.x.degree - 1, y: plate.y.degree - 1 },
  );
  const bent = bend(supported, ritzLoad(supported, load));
  return (x: number, y: number): Deflected => {
    if (!bent) return { w: 0, wxx: 0, wyy: 0 };
    const coarse = bent.at((2 * x) / a - 1, (2 * y) / b - 1);
    const whole = navierPlate(a, b, load, x, y);
    return {
      w: whole.w - coarse.w,
      wxx: whole.wxx - coarse.wxx,
      wyy: whole.wyy - coarse.wyy,
    };
  };
}

const sum = (p: Deflected, q: Deflected): Deflected => ({
  w: p.w + q.w,
  wxx: p.wxx + q.wxx,
  wyy: p.wyy + q.wyy,
});
