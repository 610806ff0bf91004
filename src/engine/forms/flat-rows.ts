import type { RowForms, RowGaps } from '../row-forms.ts';

/** Works out one row: what it adds to each of the sums. */
type Work<Row> = (row: Row) => RowForms;

/**
 * What every row of a table adds to the sums over it, laid out flat: contributions of all rows one
 * after the other, so that a sum is one walk through a list. Never changed: a table in which a
 * few rows are new shares nothing with the one before but copies what it had.
 */
export class FlatRows<Row extends object> {
  private constructor(
    readonly rows: readonly Row[],
    /** Where the variables of each row start, and where those of the last one end. */
    readonly starts: Int32Array,
    readonly vars: Int32Array,
    /** Values of each term, row by row. */
    readonly xs: readonly Float64Array[],
    readonly curvatures: readonly Float64Array[],
    /** Contributions to each term, in the order of `vars`. */
    readonly cs: readonly Float64Array[],
    /** What rows lack, by place of the row and of the term: few, as a rule. */
    readonly gaps: ReadonlyMap<number, ReadonlyMap<number, RowGaps>>,
  ) {}

  /** Lays out rows; those that stood in `before` are copied, only the others worked out. */
  static of<Row extends object>(
    rows: readonly Row[],
    terms: number,
    work: Work<Row>,
    before?: FlatRows<Row>,
  ): FlatRows<Row> {
    const from = placesBefore(rows, before);
    const made = rows.map((row, i) => ((from[i] ?? -1) < 0 ? work(row) : undefined));
    const starts = startsOf(made, from, before);
    const total = starts[rows.length] ?? 0;
    const vars = new Int32Array(total);
    const lists = (length: number) => Array.from({ length: terms }, () => new Float64Array(length));
    const [xs, curvatures, cs] = [lists(rows.length), lists(rows.length), lists(total)];
    const gaps = new Map<number, ReadonlyMap<number, RowGaps>>();
    const flat = new FlatRows(rows, starts, vars, xs, curvatures, cs, gaps);
    for (let i = 0; i < rows.length; ) {
      const row = made[i];
      if (row) flat.#put(i, row, gaps);
      i = row || !before ? i + 1 : flat.#copy(i, from, before);
    }
    if (before) copyGaps(from, before, gaps);
    return flat;
  }

  #put(i: number, row: RowForms, gaps: Map<number, ReadonlyMap<number, RowGaps>>): void {
    const [at, n] = [this.starts[i] ?? 0, row.vars.length];
    this.vars.set(row.vars, at);
    for (const [t, cs] of this.cs.entries()) {
      cs.set(row.c.subarray(t * n, t * n + n), at);
      setIn(this.xs[t], i, row.xs[t]);
      setIn(this.curvatures[t], i, row.curvatures[t]);
    }
    if (row.gaps) gaps.set(i, row.gaps);
  }

  /** Copies a run of rows that stood one after the other before; returns the row after it. */
  #copy(i: number, from: Int32Array, before: FlatRows<Row>): number {
    const first = from[i] ?? 0;
    let end = i + 1;
    while (end < from.length && from[end] === first + end - i) end++;
    const last = first + end - i;
    const [at, start, stop] = [this.starts[i] ?? 0, before.starts[first], before.starts[last]];
    this.vars.set(before.vars.subarray(start, stop), at);
    for (const [t, cs] of this.cs.entries()) {
      cs.set(before.cs[t]?.subarray(start, stop) ?? [], at);
      this.xs[t]?.set(before.xs[t]?.subarray(first, last) ?? [], i);
      this.curvatures[t]?.set(before.curvatures[t]?.subarray(first, last) ?? [], i);
    }
    return end;
  }
}

function setIn(list: Float64Array | undefined, i: number, x: number | undefined): void {
  if (list) list[i] = x ?? 0;
}

/** Where each row stood before; −1 for a new one. */
function placesBefore<Row extends object>(
  rows: readonly Row[],
  before: FlatRows<Row> | undefined,
): Int32Array {
  const from = new Int32Array(rows.length).fill(-1);
  if (!before) return from;
  const moved =
    rows.length === before.rows.length
      ? undefined
      : new Map(before.rows.map((row, i) => [row, i] as const));
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i];
    if (before.rows[i] === row) from[i] = i;
    else if (moved && row) from[i] = moved.get(row) ?? -1;
  }
  return from;
}

function startsOf<Row extends object>(
  made: readonly (RowForms | undefined)[],
  from: Int32Array,
  before: FlatRows<Row> | undefined,
): Int32Array {
  const starts = new Int32Array(made.length + 1);
  for (let i = 0; i < made.length; i++) {
    const j = from[i] ?? -1;
    const length = made[i]?.vars.length ?? (before?.starts[j + 1] ?? 0) - (before?.starts[j] ?? 0);
    starts[i + 1] = (starts[i] ?? 0) + length;
  }
  return starts;
}

function copyGaps<Row extends object>(
  from: Int32Array,
  before: FlatRows<Row>,
  gaps: Map<number, ReadonlyMap<number, RowGaps>>,
): void {
  if (before.gaps.size === 0) return;
  for (let i = 0; i < from.length; i++) {
    const own = before.gaps.get(from[i] ?? -1);
    if (own) gaps.set(i, own);
  }
}
