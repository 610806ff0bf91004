import { formUncertainty, type LinearForm, type VariableId } from '../../quantity/index.ts';
import type { Variables } from './variables.ts';

/** A linear form whose variables go by number: as dense or as short as it needs to be. */
export class IndexedForm implements LinearForm {
  #by: ReadonlyMap<VariableId, number> | undefined;
  #u: number | undefined;

  constructor(
    readonly x: number,
    /** Numbers of its variables, each once. */
    readonly vars: ArrayLike<number>,
    /** Signed standard contribution of each. */
    readonly c: ArrayLike<number>,
    readonly variables: Variables,
  ) {}

  /** Standard uncertainty. */
  get u(): number {
    this.#u ??= lengthOf(this.c);
    return this.#u;
  }

  get by(): ReadonlyMap<VariableId, number> {
    this.#by ??= this.#named();
    return this.#by;
  }

  #named(): ReadonlyMap<VariableId, number> {
    const by = new Map<VariableId, number>();
    for (let i = 0; i < this.vars.length; i++)
      by.set(this.variables.at(this.vars[i] ?? -1).id, this.c[i] ?? 0);
    return by;
  }
}

/** Root of the sum of squares, in the order of the list. */
export function lengthOf(c: ArrayLike<number>): number {
  if (c.length === 1) return Math.abs(c[0] ?? 0);
  let sum = 0;
  for (let i = 0; i < c.length; i++) sum += (c[i] ?? 0) * (c[i] ?? 0);
  return Math.sqrt(sum);
}

/** Standard uncertainty of a form of either kind. */
export const uncertaintyOf = (form: LinearForm): number =>
  form instanceof IndexedForm ? form.u : formUncertainty(form);
