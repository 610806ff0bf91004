import { type Edge, type StripFunctions, stripFunctions } from './strip-functions.ts';
import {
  backward,
  cholesky,
  congruent,
  eigenvalues,
  forward,
  type Square,
  square,
  submatrix,
  uncoupled,
} from './symmetric-eigen.ts';

/** Edges of a rectangular plate: at x = 0 and a, at y = 0 and b. */
export interface Edges {
  readonly x0: Edge;
  readonly xa: Edge;
  readonly y0: Edge;
  readonly yb: Edge;
}

/** A thin plate of even stiffness for Ritz's method; lengths in m, D = 1 N·m. */
export interface RitzPlate {
  readonly a: number;
  readonly b: number;
  readonly nu: number;
  readonly x: StripFunctions;
  readonly y: StripFunctions;
  /** Bending energy, for D = 1 and a quarter of the area: K of K v = λ v. */
  readonly stiffness: Square;
}

/** How many functions a plate takes: along its shorter side, and how many more the longer it is. */
export interface Fineness {
  readonly least: number;
  readonly more: number;
}
/** Frequencies and moments: the published digits. */
const FINE: Fineness = { least: 9, more: 3 };
/** Buckling loads: within 0.1 % of the finer ones. */
export const COARSE: Fineness = { least: 7, more: 2.5 };
const MOST = 20;
/** Keeps the steps of the count off round ratios, where a shift of a side would cross them. */
const OFF = 0.17;

const terms = (own: number, other: number, { least, more }: Fineness): number =>
  Math.min(MOST, least + Math.floor(more * Math.max(0, own / other - 1) + OFF));

/** The plate with as many functions along each side as its shape asks for. */
export const ritzPlate = (
  a: number,
  b: number,
  nu: number,
  edges: Edges,
  fineness = FINE,
): RitzPlate =>
  ritzPlateOf(a, b, nu, edges, { x: terms(a, b, fineness), y: terms(b, a, fineness) });

/** The plate with given counts of functions. */
export function ritzPlateOf(
  a: number,
  b: number,
  nu: number,
  edges: Edges,
  count: { readonly x: number; readonly y: number },
): RitzPlate {
  const x = stripFunctions(edges.x0, edges.xa, count.x);
  const y = stripFunctions(edges.y0, edges.yb, count.y);
  const [sx, sy] = [2 / a, 2 / b];
  const stiffness = square(x.count * y.count);
  addOuter(stiffness, sx ** 4, x.integral(2, 2), y.integral(0, 0));
  addOuter(stiffness, sy ** 4, x.integral(0, 0), y.integral(2, 2));
  addOuter(stiffness, nu * (sx * sy) ** 2, x.integral(2, 0), y.integral(0, 2));
  addOuter(stiffness, nu * (sx * sy) ** 2, x.integral(0, 2), y.integral(2, 0));
  addOuter(stiffness, 2 * (1 - nu) * (sx * sy) ** 2, x.integral(1, 1), y.integral(1, 1));
  return { a, b, nu, x, y, stiffness };
}

/** Adds factor · X ⊗ Y: function (i, j) stands at i · |Y| + j. */
function addOuter(out: Square, factor: number, x: Square, y: Square): void {
  if (factor === 0) return;
  for (let i = 0; i < x.n; i++)
    for (let k = 0; k < x.n; k++) {
      const c = factor * (x.at[i * x.n + k] ?? 0);
      if (c === 0) continue;
      for (let j = 0; j < y.n; j++)
        for (let l = 0; l < y.n; l++) {
          const at = (i * y.n + j) * out.n + k * y.n + l;
          out.at[at] = (out.at[at] ?? 0) + c * (y.at[j * y.n + l] ?? 0);
        }
    }
}

/** How many ways a plate can move without bending: 3 when free, 1 when held at one edge only, else 0. */
export function rigidMotions({ x0, xa, y0, yb }: Edges): number {
  const all = [x0, xa, y0, yb];
  if (all.includes('clamped')) return 0;
  const held = all.filter((e) => e === 'supported').length;
  return held === 0 ? 3 : held === 1 ? 1 : 0;
}

/** λ = ω² m / D of the motions of a plate, ascending, rigid ones first; 1/m⁴. */
export function plateModes(plate: RitzPlate): number[] {
  return uncoupled([plate.stiffness])
    .flatMap((group) => [...eigenvalues(submatrix(plate.stiffness, group))])
    .sort((p, q) => p - q);
}

/** Load under which a plate of D = 1 buckles, N/m for N·m; undefined when it never does. */
export function bucklingLoad(plate: RitzPlate, load: 'along x' | 'shear'): number | undefined {
  const { a, b, x, y, stiffness } = plate;
  const geometric = square(stiffness.n);
  if (load === 'along x') addOuter(geometric, (2 / a) ** 2, x.integral(1, 1), y.integral(0, 0));
  else {
    addOuter(geometric, 4 / (a * b), x.integral(1, 0), y.integral(0, 1));
    addOuter(geometric, 4 / (a * b), x.integral(0, 1), y.integral(1, 0));
  }
  let most = 0;
  for (const group of uncoupled([stiffness, geometric])) {
    const l = cholesky(submatrix(stiffness, group));
    if (!l) return undefined;
    most = Math.max(most, eigenvalues(congruent(l, submatrix(geometric, group))).at(-1) ?? 0);
  }
  return most > 0 ? 1 / most : undefined;
}

/** Where a load presses, by the means of the functions there. */
export interface Load {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Deflection of a plate of D = 1 N·m, and its second derivatives, at a place given by ξ and η. */
export interface Bent {
  readonly at: (
    xi: number,
    eta: number,
  ) => {
    readonly w: number;
    readonly wxx: number;
    readonly wyy: number;
  };
}

/** Bends a plate by 1 N spread as `load` says; undefined when the plate is not held. */
export function bend(plate: RitzPlate, load: Load): Bent | undefined {
  const { a, b, x, y, stiffness } = plate;
  const c = new Float64Array(stiffness.n);
  for (let i = 0; i < x.count; i++)
    for (let j = 0; j < y.count; j++) c[i * y.count + j] = (load.x[i] ?? 0) * (load.y[j] ?? 0);
  for (const group of uncoupled([stiffness])) {
    const l = cholesky(submatrix(stiffness, group));
    if (!l) return undefined;
    const solved = backward(
      l,
      forward(
        l,
        Float64Array.from(group, (i) => c[i] ?? 0),
      ),
    );
    for (const [k, i] of group.entries()) c[i] = solved[k] ?? 0;
  }
  // A quarter of the area had been left out of the stiffness.
  const scale = 4 / (a * b);
  const sum = (f: Float64Array, g: Float64Array) => {
    let s = 0;
    for (const [i, fi] of f.entries())
      for (const [j, gj] of g.entries()) s += (c[i * y.count + j] ?? 0) * fi * gj;
    return scale * s;
  };
  return {
    at: (xi, eta) => {
      const [f, , fxx] = x.at(xi);
      const [g, , gyy] = y.at(eta);
      return {
        w: sum(f, g),
        wxx: (2 / a) ** 2 * sum(fxx, g),
        wyy: (2 / b) ** 2 * sum(f, gyy),
      };
    },
  };
}
