import {
  covariance,
  FormBuilder,
  formUncertainty,
  type LinearForm,
  partials,
  type VariableId,
} from '../quantity/index.ts';
import type { Variable } from './method.ts';

/** A number with its linear form and what first order leaves out. */
export interface Propagated {
  readonly form: LinearForm;
  /** Mean less the value at nominal inputs by second-order terms, without the lean of skewed inputs. */
  readonly curvature: number;
  /** What second-order terms add to the variance where the inputs are nearly normal. */
  readonly addedVariance: number;
  /** Which arguments it depends on. */
  readonly depends: readonly boolean[];
}

type Formula = (...x: number[]) => number;

/** First order with its second-order mean term: what a sum over many rows needs of each. */
export type Linearised = Pick<Propagated, 'form' | 'curvature'>;

/**
 * First-order propagation through a formula of a few arguments, which may share variables
 * (JCGM 100:2008, 5.2), with the second-order terms of 5.1.2, note.
 */
export function throughFormula(f: Formula, args: readonly LinearForm[]): Propagated {
  const xs = args.map((a) => a.x);
  const us = args.map(formUncertainty);
  const { second } = partials(f, xs, us);
  return {
    ...linearised(f, args),
    addedVariance: addedVariance(f, xs, us, second, args),
    depends: xs.map((_, i) => dependsOn(f, xs, i)),
  };
}

/** As throughFormula, without what second-order terms add to the variance. */
export function linearised(f: Formula, args: readonly LinearForm[]): Linearised {
  const xs = args.map((a) => a.x);
  const us = args.map(formUncertainty);
  const { first, second } = partials(f, xs, us);
  const out = new FormBuilder();
  out.x = f(...xs);
  let curvature = crossTerms(f, xs, us, args);
  for (const [i, a] of args.entries()) {
    const [slope, u] = [first[i] ?? 0, us[i] ?? 0];
    if (u === 0) continue;
    if (slope !== 0) for (const [id, c] of a.by) out.contribute(id, slope * c);
    curvature += 0.5 * (second[i] ?? 0) * u * u;
  }
  return { form: out.done(), curvature };
}

/** Numbers that are not there come as NaN, which spreads through whatever takes notice of them. */
function dependsOn(f: Formula, xs: readonly number[], i: number): boolean {
  const others = xs.map((x) => (Number.isNaN(x) ? 1 : x));
  return Number.isNaN(f(...others.map((x, k) => (k === i ? Number.NaN : x))));
}

/** Σ over i < j of f″ᵢⱼ cov(i, j): only where two arguments share variables. */
function crossTerms(
  f: Formula,
  xs: readonly number[],
  us: readonly number[],
  args: readonly LinearForm[],
): number {
  let sum = 0;
  for (let i = 0; i < args.length; i++)
    for (let j = i + 1; j < args.length; j++) {
      const shared = covariance(args[i] as LinearForm, args[j] as LinearForm);
      if (shared !== 0) sum += mixedDifference(f, xs, us, i, j) * shared;
    }
  return sum;
}

/**
 * ½ tr(HΣHΣ), H being the second derivatives and Σ the covariance of the arguments: for
 * independent ones ½ ΣΣ f″ᵢⱼ² u²(xᵢ) u²(xⱼ), the first of the terms in JCGM 100:2008, 5.1.2, note.
 */
function addedVariance(
  f: Formula,
  xs: readonly number[],
  us: readonly number[],
  second: ArrayLike<number>,
  args: readonly LinearForm[],
): number {
  const moving = [...args.keys()].filter((i) => (us[i] ?? 0) > 0);
  const bend = (i: number, j: number) =>
    i === j ? (second[i] ?? 0) : mixedDifference(f, xs, us, i, j);
  const hessian = moving.map((i) => moving.map((j) => bend(i, j)));
  const cov = moving.map((i) =>
    moving.map((j) => covariance(args[i] as LinearForm, args[j] as LinearForm)),
  );
  const product = hessian.map((row) =>
    moving.map((_, j) => row.reduce((sum, h, k) => sum + h * (cov[k]?.[j] ?? 0), 0)),
  );
  return product.reduce(
    (sum, row, i) => row.reduce((s, a, j) => s + 0.5 * a * (product[j]?.[i] ?? 0), sum),
    0,
  );
}

/** ∂²f/∂xᵢ∂xⱼ by four corners a tenth of a standard uncertainty away. */
function mixedDifference(
  f: Formula,
  xs: readonly number[],
  us: readonly number[],
  i: number,
  j: number,
): number {
  const [hi, hj] = [0.1 * (us[i] ?? 0), 0.1 * (us[j] ?? 0)];
  const at = (si: number, sj: number) =>
    f(...xs.map((x, k) => x + (k === i ? si * hi : 0) + (k === j ? sj * hj : 0)));
  const corner = at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1);
  return corner / (4 * hi * hj);
}

/** One number that a structured body reads, and how to put a shifted one in its place. */
export interface Shiftable {
  readonly form: LinearForm;
}

/**
 * First-order propagation through a structured body: every variable in turn shifts all the
 * numbers that share it, and the outputs are differenced (JCGM 100:2008, 5.1.3 note 2), with
 * steps of 1/8 and 1/16 of a standard uncertainty and Richardson's extrapolation. Second-order
 * terms are those of each variable alone.
 * `evaluate` takes the shift of each cell and returns the outputs in a fixed order.
 */
export function throughSolve(
  evaluate: (shift: Float64Array) => readonly number[],
  cells: readonly Shiftable[],
): Propagated[] {
  const zero = new Float64Array(cells.length);
  const nominal = evaluate(zero);
  const outs = nominal.map((x) => {
    const form = new FormBuilder();
    form.x = x;
    return { form, curvature: 0, addedVariance: 0 };
  });
  for (const [id, shifts] of byVariable(cells)) {
    const at = (t: number) => evaluate(shifted(zero, shifts, t));
    const [p8, m8, p16, m16] = [at(1 / 8), at(-1 / 8), at(1 / 16), at(-1 / 16)];
    for (const [k, out] of outs.entries()) {
      const coarse = ((p8[k] ?? 0) - (m8[k] ?? 0)) * 4;
      const fine = ((p16[k] ?? 0) - (m16[k] ?? 0)) * 8;
      const slope = (4 * fine - coarse) / 3;
      if (slope !== 0) out.form.contribute(id, slope);
      const bend = 64 * ((p8[k] ?? 0) - 2 * (nominal[k] ?? 0) + (m8[k] ?? 0));
      out.curvature += bend / 2;
      out.addedVariance += (bend * bend) / 2;
    }
  }
  return outs.map((o) => ({ ...o, form: o.form.done(), depends: [] }));
}

type Shift = readonly [cell: number, c: number];

function byVariable(cells: readonly Shiftable[]): Map<VariableId, Shift[]> {
  const found = new Map<VariableId, Shift[]>();
  for (const [i, cell] of cells.entries())
    for (const [id, c] of cell.form.by) {
      const list = found.get(id);
      if (list) list.push([i, c]);
      else found.set(id, [[i, c]]);
    }
  return found;
}

function shifted(zero: Float64Array, shifts: readonly Shift[], t: number): Float64Array {
  const out = zero.slice();
  for (const [i, c] of shifts) out[i] = t * c;
  return out;
}

/** Mean less nominal that skewed inputs bring: Σ cᵢ (mean − mode)/u. */
export function leanOf(form: LinearForm, variables: ReadonlyMap<VariableId, Variable>): number {
  let sum = 0;
  for (const [id, c] of form.by) sum += c * (variables.get(id)?.shift ?? 0);
  return sum;
}
