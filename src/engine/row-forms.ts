import type { Partials } from '../quantity/index.ts';
import type { Place } from '../study/index.ts';
import type { IndexedForm } from './forms/indexed-form.ts';
import type { Numbering } from './forms/numbering.ts';
import type { Variables } from './forms/variables.ts';
import type { Found, FoundRow, TallyBody } from './method.ts';
import { mixedDifference, slopesInto } from './propagate.ts';

/** What one row adds to each sum of a tally, in the order of its terms. */
export interface RowForms {
  /** Numbers of the variables that its cells move with, in the order of the columns needed. */
  readonly vars: Int32Array;
  /** Values of the terms. */
  readonly xs: Float64Array;
  /** Second-order shift of the mean of each term. */
  readonly curvatures: Float64Array;
  /** Contributions, term by term: that of variable v to term t stands at t · vars.length + v. */
  readonly c: Float64Array;
  /** What each term lacks, in a row that lacks anything. */
  readonly gaps: ReadonlyMap<number, RowGaps> | undefined;
}

/** A row with a missing number is left out of the sum; one of unknown spread is not. */
export interface RowGaps {
  readonly missing: readonly Place[];
  readonly unknownSpread: readonly Place[];
}

type Term = TallyBody['terms'][number];

/**
 * Works out rows of one body; holds its scratch lists, so that a row costs little more than the
 * evaluations of its terms.
 */
export class RowWorker {
  readonly #terms: readonly Term[];
  readonly #columns: readonly string[];
  /** Columns of each term, as places among `#columns`. */
  readonly #needs: readonly (readonly number[])[];
  readonly #scratch: readonly { xs: number[]; us: number[]; slopes: Partials }[];
  readonly #cells: (IndexedForm | undefined)[];

  constructor(
    { terms }: TallyBody,
    private readonly variables: Variables,
  ) {
    this.#terms = terms;
    this.#columns = [...new Set(terms.flatMap((t) => t.needs))];
    this.#needs = terms.map((t) => t.needs.map((name) => this.#columns.indexOf(name)));
    this.#cells = this.#columns.map(() => undefined);
    this.#scratch = terms.map(({ needs: { length } }) => ({
      xs: new Array<number>(length).fill(0),
      us: new Array<number>(length).fill(0),
      slopes: { first: new Float64Array(length), second: new Float64Array(length) },
    }));
  }

  work(row: FoundRow): RowForms {
    const places = this.variables.numbering();
    this.#gather(row, places);
    const vars = places.met();
    const n = this.#terms.length;
    const forms = {
      vars,
      xs: new Float64Array(n),
      curvatures: new Float64Array(n),
      c: new Float64Array(n * vars.length),
    };
    for (let t = 0; t < n; t++) if (this.#load(t)) this.#workTerm(t, places, forms);
    return { ...forms, gaps: this.#gapsOf(row) };
  }

  /** Reads the cells of a row, and numbers the variables they move with. */
  #gather(row: FoundRow, places: Numbering): void {
    for (let k = 0; k < this.#columns.length; k++) {
      const cell = row.cells[this.#columns[k] ?? ''];
      const form = cell && !('missing' in cell) ? this.variables.form(cell.form) : undefined;
      this.#cells[k] = form;
      for (let i = 0; form && i < form.vars.length; i++) places.placeOf(form.vars[i] ?? 0);
    }
  }

  /** Puts the arguments of a term where its formula finds them; false when one is missing. */
  #load(t: number): boolean {
    const { xs, us } = this.#scratch[t] ?? EMPTY;
    const needs = this.#needs[t] ?? [];
    for (let k = 0; k < needs.length; k++) {
      const form = this.#cells[needs[k] ?? -1];
      if (!form) return false;
      xs[k] = form.x;
      us[k] = form.u;
    }
    return true;
  }

  #workTerm(t: number, places: Numbering, into: Omit<RowForms, 'gaps'>): void {
    const { xs, us, slopes } = this.#scratch[t] ?? EMPTY;
    const needs = this.#needs[t] ?? [];
    const term = this.#terms[t];
    if (!term) return;
    const x = term.each(...xs);
    slopesInto(slopes, term.each, xs, us, x, term.derivatives);
    into.xs[t] = x;
    let curvature = 0;
    for (let k = 0; k < needs.length; k++) {
      const u = us[k] ?? 0;
      if (u === 0) continue;
      curvature += 0.5 * (slopes.second[k] ?? 0) * u * u;
      const offset = t * into.vars.length;
      addForm(into.c, offset, places, this.#cells[needs[k] ?? -1], slopes.first[k] ?? 0);
    }
    into.curvatures[t] = curvature + this.#sharedCurvature(t, needs, xs, us);
  }

  /** Σ over i < j of f″ᵢⱼ cov(i, j): only where two cells of the row share variables. */
  #sharedCurvature(
    t: number,
    needs: readonly number[],
    xs: readonly number[],
    us: readonly number[],
  ): number {
    let sum = 0;
    const each = this.#terms[t]?.each;
    for (let i = 0; each && i < needs.length; i++)
      for (let j = i + 1; j < needs.length; j++) {
        const cov = sharedBy(this.#cells[needs[i] ?? -1], this.#cells[needs[j] ?? -1]);
        if (cov !== 0) sum += mixedDifference(each, xs, us, i, j) * cov;
      }
    return sum;
  }

  #gapsOf(row: FoundRow): ReadonlyMap<number, RowGaps> | undefined {
    if (!this.#columns.some((name) => lacksSomething(row.cells[name]))) return undefined;
    return new Map(
      this.#terms.flatMap((term, t) => {
        const cells = term.needs.flatMap((name) => row.cells[name] ?? []);
        const missing = cells.filter((c) => 'missing' in c).map((c) => c.place);
        const unknownSpread = missing.length > 0 ? [] : cells.filter(isUnknown).map((c) => c.place);
        return missing.length + unknownSpread.length > 0
          ? [[t, { missing, unknownSpread }] as const]
          : [];
      }),
    );
  }
}

const EMPTY = {
  xs: [],
  us: [],
  slopes: { first: new Float64Array(0), second: new Float64Array(0) },
};

const isUnknown = (cell: Found): boolean => !('missing' in cell) && cell.unknownSpread === true;
const lacksSomething = (cell: Found | undefined): boolean =>
  cell !== undefined && ('missing' in cell || isUnknown(cell));

function addForm(
  into: Float64Array,
  offset: number,
  places: Numbering,
  form: IndexedForm | undefined,
  slope: number,
): void {
  if (slope === 0 || !form) return;
  for (let i = 0; i < form.vars.length; i++) {
    const at = offset + places.placeOf(form.vars[i] ?? 0);
    into[at] = (into[at] ?? 0) + slope * (form.c[i] ?? 0);
  }
}

/** Covariance of two cells. */
function sharedBy(a: IndexedForm | undefined, b: IndexedForm | undefined): number {
  if (!a || !b) return 0;
  if (a.vars.length > b.vars.length) return sharedBy(b, a);
  let sum = 0;
  for (let i = 0; i < a.vars.length; i++) {
    const j = indexIn(b.vars, a.vars[i] ?? -1);
    if (j >= 0) sum += (a.c[i] ?? 0) * (b.c[j] ?? 0);
  }
  return sum;
}

function indexIn(list: ArrayLike<number>, n: number): number {
  for (let i = 0; i < list.length; i++) if (list[i] === n) return i;
  return -1;
}
