import {
  checkSpread,
  degreesOfFreedom,
  type LinearForm,
  meanShift,
  type Spread,
  standardUncertainty,
  type VariableId,
} from '../../quantity/index.ts';
import type { Variable } from '../method.ts';
import { FormMaker } from './form-maker.ts';
import { IndexedForm } from './indexed-form.ts';
import { Numbering } from './numbering.ts';

/** A variable before its spread is looked at. */
export type Draft = Omit<Variable, 'u' | 'dof' | 'shift'>;

/**
 * The independent variables met while inputs are bound, each once and by a number of its own, so
 * that forms are lists of numbers. Numbers are never given up: what is kept by them stays good.
 */
export class Variables {
  readonly #numbers = new Map<VariableId, number>();
  readonly #list: Variable[] = [];
  /** Mean less nominal value in u, and 1/ν, by number: what sums over all variables look at. */
  readonly #shifts: number[] = [];
  readonly #perDof: number[] = [];
  #limited = false;
  #leaning = false;
  readonly #numbering = new Numbering();

  get size(): number {
    return this.#list.length;
  }

  /** @throws RangeError when no variable has this number. */
  at(number: number): Variable {
    const found = this.#list[number];
    if (!found) throw new RangeError(`there is no variable ${number}`);
    return found;
  }

  /**
   * Adds `factor` times a variable of the spread drafted to a form: nothing where it is exact.
   * False when its spread is unknown or impossible.
   */
  contribute(form: FormMaker, draft: Draft, x: number, factor: number): boolean {
    const known = this.#numbers.get(draft.id);
    if (known !== undefined) {
      form.contribute(known, factor * this.at(known).u);
      return true;
    }
    if (checkSpread(draft.spread, x) !== undefined) return false;
    const u = standardUncertainty(draft.spread, x);
    if (u) form.contribute(this.put({ ...draft, u, ...shapeOf(draft.spread, x, u) }), factor * u);
    return u !== undefined;
  }

  /** Number of a variable whose spread is worked out; one of the same id is replaced. */
  put(variable: Variable): number {
    const known = this.#numbers.get(variable.id);
    const number = known ?? this.#list.length;
    this.#list[number] = variable;
    this.#shifts[number] = variable.shift;
    this.#perDof[number] = variable.dof === null ? 0 : 1 / variable.dof;
    this.#limited ||= variable.dof !== null;
    this.#leaning ||= variable.shift !== 0;
    if (known === undefined) this.#numbers.set(variable.id, number);
    return number;
  }

  numberOf(id: VariableId): number | undefined {
    return this.#numbers.get(id);
  }

  /** Number of the variable of this id, made when it is new. */
  numberFor(id: VariableId, make: () => Variable): number {
    return this.#numbers.get(id) ?? this.put(make());
  }

  /** Any linear form by the numbers of its variables. */
  form(form: LinearForm): IndexedForm {
    if (form instanceof IndexedForm && form.variables === this) return form;
    const made = new FormMaker(this);
    made.x = form.x;
    const known = form instanceof IndexedForm ? form.variables : undefined;
    for (const [id, c] of form.by)
      made.contribute(
        this.numberFor(id, () => known?.named(id) ?? ofItsOwn(id, c)),
        c,
      );
    return made.done();
  }

  named(id: VariableId): Variable | undefined {
    return this.#list[this.#numbers.get(id) ?? -1];
  }

  /** Mean less nominal value that skewed inputs bring to a form: Σ cᵢ (mean − mode)/u. */
  leanOf({ vars, c }: IndexedForm): number {
    let sum = 0;
    if (!this.#leaning) return 0;
    for (let i = 0; i < vars.length; i++) sum += (c[i] ?? 0) * (this.#shifts[vars[i] ?? -1] ?? 0);
    return sum;
  }

  /**
   * Effective degrees of freedom u⁴ / Σ(cᵢ⁴/νᵢ) of a form (Welch–Satterthwaite, JCGM 100:2008,
   * equation G.2b); null for unlimited.
   */
  dofOf({ vars, c, u }: IndexedForm): number | null {
    let sum = 0;
    if (!this.#limited) return null;
    for (let i = 0; i < vars.length; i++)
      sum += (c[i] ?? 0) ** 4 * (this.#perDof[vars[i] ?? -1] ?? 0);
    return sum === 0 ? null : u ** 4 / sum;
  }

  /** A fresh numbering of some of the variables; it ends what the one before was good for. */
  numbering(): Numbering {
    this.#numbering.begin(this.size);
    return this.#numbering;
  }
}

/** A variable of which nothing is known but one contribution. */
const ofItsOwn = (id: VariableId, c: number): Variable => ({
  ...{ id, label: id, what: 'given', spread: { s: 'normal', u: Math.abs(c) } },
  ...{ u: Math.abs(c), shift: 0, dof: null, place: {} },
});

function shapeOf(spread: Spread, x: number, u: number): Pick<Variable, 'dof' | 'shift'> {
  const dof = degreesOfFreedom(spread);
  return { dof: Number.isFinite(dof) ? dof : null, shift: meanShift(spread, x) / u };
}
