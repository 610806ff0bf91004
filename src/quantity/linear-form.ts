/**
 * The linear form of a number: y = x + Σ cᵢ, one signed standard contribution cᵢ (in the unit
 * of y) for each independent variable of unit variance. Numbers that share a variable are
 * correlated by it, so sums and differences come out right (JCGM 100:2008, 5.2).
 */
export type VariableId = string;

export interface LinearForm {
  readonly x: number;
  /** Signed standard contributions, in the unit of x. */
  readonly by: ReadonlyMap<VariableId, number>;
}

/** Mutable accumulator behind the functions here: adds contributions in a fixed order. */
export class FormBuilder {
  x = 0;
  readonly by = new Map<VariableId, number>();

  add(form: LinearForm, factor = 1): this {
    this.x += factor * form.x;
    for (const [id, c] of form.by) this.contribute(id, factor * c);
    return this;
  }

  contribute(id: VariableId, c: number): this {
    this.by.set(id, (this.by.get(id) ?? 0) + c);
    return this;
  }

  done(): LinearForm {
    return { x: this.x, by: this.by };
  }
}

export const exactForm = (x: number): LinearForm => ({ x, by: new Map() });

/** Standard uncertainty of a linear form. */
export function formUncertainty(form: LinearForm): number {
  let sum = 0;
  for (const c of form.by.values()) sum += c * c;
  return Math.sqrt(sum);
}

/** a − b with every shared variable cancelling; x − x has no spread. */
export const differenceOf = (a: LinearForm, b: LinearForm): LinearForm =>
  new FormBuilder().add(a).add(b, -1).done();

/** Covariance of two linear forms, in the product of their units. */
export function covariance(a: LinearForm, b: LinearForm): number {
  let sum = 0;
  for (const [id, c] of a.by) sum += c * (b.by.get(id) ?? 0);
  return sum;
}
