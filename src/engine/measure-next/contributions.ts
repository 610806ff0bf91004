import type { IndexedForm } from '../forms/indexed-form.ts';

/** Contributions to one output, each found at once by the id of its variable. */
export class Contributions {
  readonly #places: Int32Array;

  constructor(readonly form: IndexedForm) {
    this.#places = new Int32Array(form.variables.size).fill(-1);
    for (let i = 0; i < form.vars.length; i++) this.#places[form.vars[i] ?? 0] = i;
  }

  /** Standard uncertainty of the output. */
  get u(): number {
    return this.form.u;
  }

  /** Signed contribution of a variable; 0 when the output does not move with it. */
  of(id: string): number {
    const place = this.#places[this.form.variables.numberOf(id) ?? -1] ?? -1;
    return place < 0 ? 0 : (this.form.c[place] ?? 0);
  }

  /** Standard uncertainty of a variable itself; 0 when there is none of this id. */
  spreadOf(id: string): number {
    return this.form.variables.named(id)?.u ?? 0;
  }
}
