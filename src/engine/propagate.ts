import {
  centralDifference,
  covariance,
  FormBuilder,
  formUncertainty,
  type LinearForm,
  type Partials,
  partialInto,
} from '../quantity/index.ts';
import type { Aligned } from './forms/aligned.ts';
import type { IndexedForm } from './forms/indexed-form.ts';
import type { Formula } from './method.ts';

/** A formula's partial derivative by each argument, in their order, where a question supplies them. */
export type Derivatives = readonly Formula[] | undefined;

/** A number with its linear form and what first order leaves out. */
export interface Propagated {
  readonly form: IndexedForm;
  /** Mean less the value at nominal inputs by second-order terms, without the lean of skewed inputs. */
  readonly curvature: number;
  /** What second-order terms add to the variance where the inputs are nearly normal. */
  readonly addedVariance: number;
  /** Which arguments it depends on. */
  readonly depends: readonly boolean[];
}

/**
 * First-order propagation through a formula of a few arguments, which may share variables
 * (JCGM 100:2008, 5.2), with the second-order terms of 5.1.2, note.
 */
export function throughFormula(f: Formula, args: Aligned, exact?: Derivatives): Propagated {
  const xs = Array.from(args.xs);
  const x = f(...xs);
  const { first, second } = slopes(f, xs, args.us, x, exact);
  const moving = xs.map((_, i) => i).filter((i) => (args.us[i] ?? 0) > 0);
  const cov = (i: number, j: number) => args.covariance(i, j);
  const bends = new Map<string, number>();
  const bend = (i: number, j: number): number => {
    if (i === j) return second[i] ?? 0;
    const key = i < j ? `${i} ${j}` : `${j} ${i}`;
    const known = bends.get(key) ?? mixedDifference(f, xs, args.us, i, j);
    bends.set(key, known);
    return known;
  };
  return {
    form: args.combined(x, first),
    curvature: meanTerm(moving, bend, cov),
    addedVariance: addedVariance(moving, bend, cov),
    depends: xs.map((_, i) => dependsOn(f, xs, i)),
  };
}

/** Slopes and second derivatives where an argument has a spread; 0 elsewhere. */
export function slopes(
  f: Formula,
  xs: number[],
  us: ArrayLike<number>,
  y: number,
  exact: Derivatives,
): Partials {
  const into = { first: new Float64Array(xs.length), second: new Float64Array(xs.length) };
  slopesInto(into, f, xs, us, y, exact);
  return into;
}

/** As slopes, into lists at hand; `xs` is moved meanwhile and put back. */
export function slopesInto(
  into: Partials,
  f: Formula,
  xs: number[],
  us: ArrayLike<number>,
  y: number,
  exact: Derivatives,
): void {
  for (let i = 0; i < xs.length; i++) {
    const u = us[i] ?? 0;
    const derivative = exact?.[i];
    if (!(u > 0)) {
      into.first[i] = 0;
      into.second[i] = 0;
    } else if (derivative) exactInto(into, derivative, xs, i, u);
    else partialInto(into, f, xs, i, u, y);
  }
}

function exactInto(into: Partials, d: Formula, xs: readonly number[], i: number, u: number): void {
  const along = (x: number) => d(...xs.map((other, k) => (k === i ? x : other)));
  into.first[i] = d(...xs);
  into.second[i] = centralDifference(along, xs[i] ?? 0, u);
}

type ByTwo = (i: number, j: number) => number;

/** ½ Σᵢⱼ f″ᵢⱼ cov(i, j): the second-order term of the mean. */
function meanTerm(moving: readonly number[], bend: ByTwo, cov: ByTwo): number {
  let sum = 0;
  for (const i of moving)
    for (const j of moving) {
      const bent = i <= j ? bend(i, j) : 0;
      if (bent !== 0) sum += (i === j ? 0.5 : 1) * bent * cov(i, j);
    }
  return sum;
}

/**
 * ½ tr(HΣHΣ), H being the second derivatives and Σ the covariance of the arguments: for
 * independent ones ½ ΣΣ f″ᵢⱼ² u²(xᵢ) u²(xⱼ), the first of the terms in JCGM 100:2008, 5.1.2, note.
 */
function addedVariance(moving: readonly number[], bend: ByTwo, cov: ByTwo): number {
  const hessian = moving.map((i) => moving.map((j) => bend(i, j)));
  const times = (h: number, i: number, j: number): number => (h === 0 ? 0 : h * cov(i, j));
  const product = hessian.map((row) =>
    moving.map((j) => row.reduce((sum, h, k) => sum + times(h, moving[k] ?? 0, j), 0)),
  );
  return product.reduce(
    (sum, row, i) => row.reduce((s, a, j) => s + 0.5 * a * (product[j]?.[i] ?? 0), sum),
    0,
  );
}

/** Numbers that are not there come as NaN, which spreads through whatever takes notice of them. */
function dependsOn(f: Formula, xs: readonly number[], i: number): boolean {
  const others = xs.map((x) => (Number.isNaN(x) ? 1 : x));
  return Number.isNaN(f(...others.map((x, k) => (k === i ? Number.NaN : x))));
}

/** Differences of corners below this many spacings of doubles are rounding: nothing is mixed. */
const ROUNDING = 8 * Number.EPSILON;

/** ∂²f/∂xᵢ∂xⱼ by four corners a tenth of a standard uncertainty away. */
export function mixedDifference(
  f: Formula,
  xs: readonly number[],
  us: ArrayLike<number>,
  i: number,
  j: number,
): number {
  const [hi, hj] = [0.1 * (us[i] ?? 0), 0.1 * (us[j] ?? 0)];
  const at = (si: number, sj: number) =>
    f(...xs.map((x, k) => x + (k === i ? si * hi : 0) + (k === j ? sj * hj : 0)));
  const [pp, pm, mp, mm] = [at(1, 1), at(1, -1), at(-1, 1), at(-1, -1)];
  const corner = pp - pm - mp + mm;
  const size = Math.max(Math.abs(pp), Math.abs(pm), Math.abs(mp), Math.abs(mm));
  return Math.abs(corner) <= ROUNDING * size ? 0 : corner / (4 * hi * hj);
}

/** First order with its second-order mean term, of numbers with forms of any kind. */
export function linearised(
  f: Formula,
  args: readonly LinearForm[],
): { readonly form: LinearForm; readonly curvature: number } {
  const xs = args.map((a) => a.x);
  const us = args.map(formUncertainty);
  const out = new FormBuilder();
  out.x = f(...xs);
  const { first, second } = slopes(f, xs, us, out.x, undefined);
  for (const [i, a] of args.entries())
    if (first[i]) for (const [id, c] of a.by) out.contribute(id, (first[i] ?? 0) * c);
  const moving = [...args.keys()].filter((i) => (us[i] ?? 0) > 0);
  const bend = (i: number, j: number) =>
    i === j ? (second[i] ?? 0) : mixedDifference(f, xs, us, i, j);
  const cov = (i: number, j: number) => covariance(args[i] as LinearForm, args[j] as LinearForm);
  return { form: out.done(), curvature: meanTerm(moving, bend, cov) };
}
