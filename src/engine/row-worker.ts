import type { Partials } from '../quantity/index.ts';
import type { Place } from '../study/index.ts';
import type { BoundRow } from './bound-row.ts';
import type { FlatCells } from './flat-cells.ts';
import type { RowLists, RowWork } from './forms/flat-rows.ts';
import { Multilinear } from './forms/multilinear.ts';
import type { Found, TallyBody } from './method.ts';
import { mixedDifference, slopesInto } from './propagate.ts';

/** A row with a missing number is left out of a sum; one of unknown spread is not. */
export interface RowGaps {
  readonly missing: readonly Place[];
  readonly unknownSpread: readonly Place[];
}

/** What a row lacks, by term. */
export type GapsByTerm = ReadonlyMap<number, RowGaps>;

/** A term of a tally with scratch lists of its own for one row. */
interface TermWork {
  readonly each: TallyBody['terms'][number]['each'];
  readonly derivatives: TallyBody['terms'][number]['derivatives'];
  /** Columns that it takes, as places among the numbers of a row. */
  readonly needs: readonly number[];
  readonly xs: number[];
  readonly us: number[];
  readonly slopes: Partials;
  /** The sum of products that the term is, where it is one. */
  readonly products: Multilinear | undefined;
}

/**
 * Works out what rows add to the sums of a tally: the value of every term (field t), the
 * second-order shift of its mean (field n + t), and the contributions to it (column t). A row
 * costs little more than one evaluation of each term.
 */
export class RowWorker implements RowWork<BoundRow, GapsByTerm> {
  readonly fields: number;
  readonly columns: number;
  /** No row moves with more variables than its cells do. */
  readonly room: number;
  readonly #names: readonly (readonly string[])[];
  readonly #terms: readonly TermWork[];
  readonly #numbers: number;
  /** Columns that some term takes. */
  readonly #needed: readonly number[];
  /** Two cells of the row at hand move with one variable. */
  #isShared = false;

  constructor(
    { terms }: TallyBody,
    private readonly cells: FlatCells,
  ) {
    this.columns = terms.length;
    this.room = cells.vars.length;
    this.fields = 2 * terms.length;
    this.#numbers = cells.fields.length / 3;
    this.#names = terms.map((t) => t.needs);
    const columns = cells.rows[0]?.names.numbers ?? [];
    this.#terms = terms.map(({ each, derivatives, needs }) => ({
      each,
      derivatives,
      needs: needs.map((name) => columns.indexOf(name)),
      xs: needs.map(() => 0),
      us: needs.map(() => 0),
      slopes: { first: new Float64Array(needs.length), second: new Float64Array(needs.length) },
      products: Multilinear.of(each, needs.length),
    }));
    this.#needed = [...new Set(this.#terms.flatMap((t) => t.needs))];
  }

  work(row: BoundRow, i: number, into: RowLists<GapsByTerm>): void {
    this.#isShared = false;
    for (const k of this.#needed) this.#number(i, k, into);
    for (let t = 0; t < this.#terms.length; t++) {
      const term = this.#terms[t];
      if (term && this.#load(term, i)) this.#workTerm(t, term, i, into);
    }
    if (this.cells.gaps.has(i)) into.setGaps(this.#gapsOf(row));
  }

  /** Gives the variables of a cell their places in the row. */
  #number(i: number, k: number, into: RowLists<GapsByTerm>): void {
    const end = this.#endOf(i, k);
    for (let at = this.#startOf(i, k); at < end; at++) {
      const variable = this.cells.vars[at] ?? 0;
      if (into.placeOf(variable) < 0) into.addVariable(variable);
      else this.#isShared = true;
    }
  }

  /** Puts the arguments of a term where its formula finds them; false when one is missing. */
  #load({ needs, xs, us }: TermWork, i: number): boolean {
    for (let k = 0; k < needs.length; k++) {
      const column = needs[k] ?? -1;
      const x = this.cells.fields[column]?.[i] ?? Number.NaN;
      if (Number.isNaN(x)) return false;
      xs[k] = x;
      us[k] = this.cells.fields[this.#numbers + column]?.[i] ?? 0;
    }
    return true;
  }

  #workTerm(t: number, term: TermWork, i: number, into: RowLists<GapsByTerm>): void {
    const { each, needs, xs, us, slopes, products } = term;
    const x = each(...xs);
    if (!products?.slopesInto(slopes, xs, x)) slopesInto(slopes, each, xs, us, x, term.derivatives);
    let curvature = 0;
    for (let k = 0; k < needs.length; k++) {
      const u = us[k] ?? 0;
      if (u === 0) continue;
      curvature += 0.5 * (slopes.second[k] ?? 0) * u * u;
      this.#contribute(t, i, needs[k] ?? -1, slopes.first[k] ?? 0, into);
    }
    into.setField(t, x);
    if (this.#isShared) curvature += this.#sharedCurvature(term, i);
    into.setField(this.columns + t, curvature);
  }

  #contribute(t: number, i: number, k: number, slope: number, into: RowLists<GapsByTerm>): void {
    if (slope === 0) return;
    const { vars, columns } = this.cells;
    const end = this.#endOf(i, k);
    for (let at = this.#startOf(i, k); at < end; at++)
      into.add(t, into.placeOf(vars[at] ?? 0), slope * (columns[0]?.[at] ?? 0));
  }

  /** Σ over i < j of f″ᵢⱼ cov(i, j): only where two cells of the row share variables. */
  #sharedCurvature({ each, needs, xs, us }: TermWork, row: number): number {
    let sum = 0;
    for (let i = 0; i < needs.length; i++)
      for (let j = i + 1; j < needs.length; j++) {
        const cov = this.#covariance(row, needs[i] ?? -1, needs[j] ?? -1);
        if (cov !== 0) sum += mixedDifference(each, xs, us, i, j) * cov;
      }
    return sum;
  }

  #covariance(row: number, k: number, l: number): number {
    const { vars, columns } = this.cells;
    const [endK, startL, endL] = [this.#endOf(row, k), this.#startOf(row, l), this.#endOf(row, l)];
    let sum = 0;
    for (let a = this.#startOf(row, k); a < endK; a++)
      for (let b = startL; b < endL; b++)
        if (vars[a] === vars[b]) sum += (columns[0]?.[a] ?? 0) * (columns[0]?.[b] ?? 0);
    return sum;
  }

  #startOf(i: number, k: number): number {
    return (this.cells.starts[i] ?? 0) + (k === 0 ? 0 : this.#endField(i, k - 1));
  }
  #endOf(i: number, k: number): number {
    return (this.cells.starts[i] ?? 0) + this.#endField(i, k);
  }
  #endField(i: number, k: number): number {
    return this.cells.fields[2 * this.#numbers + k]?.[i] ?? 0;
  }

  #gapsOf({ names, numbers }: BoundRow): GapsByTerm {
    return new Map(
      this.#names.flatMap((needs, t) => {
        const cells = needs.flatMap((name) => numbers[names.numbers.indexOf(name)] ?? []);
        const missing = cells.filter((c) => 'missing' in c).map((c) => c.place);
        const unknownSpread = missing.length > 0 ? [] : cells.filter(isUnknown).map((c) => c.place);
        const lacks = missing.length + unknownSpread.length > 0;
        return lacks ? [[t, { missing, unknownSpread }] as const] : [];
      }),
    );
  }
}

const isUnknown = (cell: Found): boolean => !('missing' in cell) && cell.unknownSpread === true;
