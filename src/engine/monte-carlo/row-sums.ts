import type { FlatCells } from '../flat-cells.ts';
import { Multilinear } from '../forms/multilinear.ts';
import type { Formula, TallyBody } from '../method.ts';
import { addApplied } from './columns.ts';
import type { Drawn } from './draws.ts';

/** Of the samples of each row one in so many is worked out by the formula itself as a check. */
const CHECKED = 997;
/** Rows between two words of progress. */
const TOLD = 256;

interface Term {
  readonly each: Formula;
  /** Columns that it takes, as places among the numbers of a row. */
  readonly needs: readonly number[];
  /** The sum of products that the formula was found to be; undefined once a check failed. */
  products: Multilinear | undefined;
}

/**
 * Sums of a tally's terms over the rows, sample by sample. A row's numbers are laid out as columns
 * of samples, then each term is added over all samples at once. Most terms are sums of products,
 * found by asking the formula itself: those go as loops over columns, and are checked against the
 * formula at samples of every row. Where that fails once the formula itself is called throughout.
 */
export class RowSums {
  readonly #terms: readonly Term[];
  readonly #numbers: number;

  constructor(
    body: TallyBody,
    private readonly cells: FlatCells,
  ) {
    const columns = cells.rows[0]?.names.numbers ?? [];
    this.#numbers = cells.fields.length / 3;
    this.#terms = body.terms.map(({ each, needs }) => ({
      each,
      needs: needs.map((name) => columns.indexOf(name)),
      products: Multilinear.of(each, needs.length),
    }));
  }

  *sample(drawn: Drawn): Generator<number, Float64Array[], undefined> {
    for (;;) {
      const sums = yield* this.#once(drawn);
      if (sums) return sums;
    }
  }

  /** Undefined when a term was found to be no sum of products after all: begin again. */
  *#once(drawn: Drawn): Generator<number, Float64Array[] | undefined, undefined> {
    const { size } = drawn;
    const sums = this.#terms.map(() => new Float64Array(size));
    const needed = [...new Set(this.#terms.flatMap((t) => t.needs))];
    const columns = Array.from({ length: this.#numbers }, () => new Float64Array(size));
    for (let i = 0; i < this.cells.rows.length; i++) {
      if (i % TOLD === 0) yield i / this.cells.rows.length;
      for (const k of needed) this.#fill(columns[k], i, k, drawn);
      for (const [t, term] of this.#terms.entries())
        if (!this.#add(sums[t], term, columns, i)) return undefined;
    }
    return sums;
  }

  #fill(column: Float64Array | undefined, i: number, k: number, drawn: Drawn): void {
    if (!column) return;
    const { vars, columns } = this.cells;
    const x = this.#nominal(i, k);
    const start = k === 0 ? this.#startOf(i) : this.#endOf(i, k - 1);
    const end = this.#endOf(i, k);
    if (start === end) column.fill(x);
    else drawn.setTo(column, x, vars[start] ?? -1, columns[0]?.[start] ?? 0);
    for (let at = start + 1; at < end; at++)
      drawn.addTo(column, vars[at] ?? -1, columns[0]?.[at] ?? 0);
  }

  /** Adds one row; it has no part in a term that needs a number which it lacks. */
  #add(sum: Float64Array | undefined, term: Term, columns: readonly Float64Array[], i: number) {
    const { each, needs, products } = term;
    if (!sum || needs.some((k) => Number.isNaN(this.#nominal(i, k)))) return true;
    const args = needs.map((k) => columns[k] ?? sum);
    if (!products) addApplied(sum, each, args);
    else if (isSum(products, each, args, i % CHECKED)) products.addTo(sum, args);
    else term.products = undefined;
    return term.products === products;
  }

  #nominal(i: number, k: number): number {
    return this.cells.fields[k]?.[i] ?? Number.NaN;
  }
  #startOf(i: number): number {
    return this.cells.starts[i] ?? 0;
  }
  #endOf(i: number, k: number): number {
    return this.#startOf(i) + (this.cells.fields[2 * this.#numbers + k]?.[i] ?? 0);
  }
}

/** Whether formula and sum of products agree at every so many samples. */
function isSum(
  products: Multilinear,
  each: Formula,
  args: readonly Float64Array[],
  from: number,
): boolean {
  const size = args[0]?.length ?? 0;
  const xs = args.map(() => 0);
  for (let s = from; s < size; s += CHECKED) {
    for (let k = 0; k < args.length; k++) xs[k] = args[k]?.[s] ?? Number.NaN;
    if (!products.isAt(xs, each(...xs))) return false;
  }
  return true;
}
