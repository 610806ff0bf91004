import { IndexedForm, lengthOf } from './indexed-form.ts';
import type { Variables } from './variables.ts';

/**
 * Several numbers over one list of variables: the contributions of each stand in a column of its
 * own, so that numbers which share a variable are correlated by it.
 */
export class Aligned {
  readonly us: Float64Array;
  readonly #covariances = new Map<number, number>();

  constructor(
    readonly variables: Variables,
    /** Numbers of the variables, in the order of their first use. */
    readonly vars: Int32Array,
    /** Nominal values. */
    readonly xs: Float64Array,
    /** Contributions of each number, in the order of `vars`. */
    readonly columns: readonly Float64Array[],
  ) {
    this.us = Float64Array.from(columns, lengthOf);
  }

  static of(forms: readonly IndexedForm[], variables: Variables): Aligned {
    const numbering = variables.numbering();
    for (const { vars } of forms)
      for (let i = 0; i < vars.length; i++) numbering.placeOf(vars[i] ?? 0);
    const columns = forms.map((form) => {
      const column = new Float64Array(numbering.count);
      for (let i = 0; i < form.vars.length; i++)
        column[numbering.placeOf(form.vars[i] ?? 0)] = form.c[i] ?? 0;
      return column;
    });
    const xs = Float64Array.from(forms, (form) => form.x);
    return new Aligned(variables, numbering.met(), xs, columns);
  }

  /** Covariance of two of the numbers, in the product of their units. */
  covariance(i: number, j: number): number {
    const key = Math.min(i, j) * this.columns.length + Math.max(i, j);
    const kept = this.#covariances.get(key);
    if (kept !== undefined) return kept;
    const found = dot(this.columns[i], this.columns[j]);
    this.#covariances.set(key, found);
    return found;
  }

  /** One of the numbers by itself. */
  form(i: number): IndexedForm {
    const column = this.columns[i] ?? new Float64Array(0);
    return new IndexedForm(this.xs[i] ?? Number.NaN, this.vars, column, this.variables);
  }

  /** Σ slopeᵢ × number i about another nominal value. */
  combined(x: number, slopes: ArrayLike<number>): IndexedForm {
    const c = new Float64Array(this.vars.length);
    for (const [i, column] of this.columns.entries()) addTimes(c, column, slopes[i] ?? 0);
    return new IndexedForm(x, this.vars, c, this.variables);
  }
}

function dot(a: Float64Array = new Float64Array(0), b: Float64Array = a): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

function addTimes(into: Float64Array, column: Float64Array, factor: number): void {
  if (factor === 0) return;
  for (let i = 0; i < into.length; i++) into[i] = (into[i] ?? 0) + factor * (column[i] ?? 0);
}
