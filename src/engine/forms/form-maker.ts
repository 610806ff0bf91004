import { IndexedForm } from './indexed-form.ts';
import type { Variables } from './variables.ts';

/** Beyond this many variables a number is found by a map. */
const FEW = 8;

/** Adds up a form, variable by variable, in the order in which they come. */
export class FormMaker {
  x = 0;
  readonly #vars: number[] = [];
  readonly #c: number[] = [];
  #places: Map<number, number> | undefined;

  constructor(private readonly variables: Variables) {}

  contribute(variable: number, c: number): void {
    const at = this.#placeOf(variable);
    if (at === undefined) {
      this.#places?.set(variable, this.#vars.length);
      this.#vars.push(variable);
      this.#c.push(c);
    } else this.#c[at] = (this.#c[at] ?? 0) + c;
  }

  add(form: IndexedForm, factor = 1): this {
    this.x += factor * form.x;
    for (let i = 0; i < form.vars.length; i++)
      this.contribute(form.vars[i] ?? -1, factor * (form.c[i] ?? 0));
    return this;
  }

  done(): IndexedForm {
    return new IndexedForm(this.x, this.#vars, this.#c, this.variables);
  }

  #placeOf(variable: number): number | undefined {
    if (this.#vars.length > FEW) this.#places ??= new Map(this.#vars.map((n, place) => [n, place]));
    if (this.#places) return this.#places.get(variable);
    const at = this.#vars.indexOf(variable);
    return at < 0 ? undefined : at;
  }
}
