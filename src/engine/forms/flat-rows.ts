/** Works out rows one by one: what stands for each, and what its variables contribute. */
export interface RowWork<Row, Gaps> {
  /** How many numbers every row has, and how many each of its variables. */
  readonly fields: number;
  readonly columns: number;
  /** How many variables all rows together are expected to have; there may be more. */
  readonly room: number;
  /** Puts one row at the end of the lists; `i` is its place in the table. */
  work(row: Row, i: number, into: RowLists<Gaps>): void;
}

/**
 * Rows of a table laid out flat: their numbers field by field, and the contributions of their
 * variables one row after the other, so that whatever goes over all rows walks through lists.
 */
export interface FlatRows<Row, Gaps = never> {
  rows: readonly Row[];
  /** Numbers of each row, field by field. */
  readonly fields: readonly Float64Array[];
  /** Where the variables of each row start, and where those of the last one end. */
  readonly starts: Int32Array;
  readonly vars: Int32Array;
  /** Numbers of each variable, column by column, in the order of `vars`. */
  readonly columns: readonly Float64Array[];
  /** What rows lack, by place; few lack anything. */
  readonly gaps: Map<number, Gaps>;
}

/**
 * Lays out rows. Those that stood in `before`, the same objects, are not worked out again; where
 * only a few differ and move with as many variables as before, `before` itself is brought up to
 * date and handed back.
 */
export function flatRows<Row extends object, Gaps>(
  rows: readonly Row[],
  worker: RowWork<Row, Gaps>,
  before?: FlatRows<Row, Gaps>,
): FlatRows<Row, Gaps> {
  if (before?.rows === rows) return before;
  const from = placesBefore(rows, before);
  if (before && rows.length === before.rows.length && patched(rows, worker, before, from))
    return before;
  const lists = new RowLists<Gaps>(rows.length, worker, worker.room);
  for (let i = 0; i < rows.length; ) {
    const row = rows[i];
    const first = from[i] ?? -1;
    if (before && first >= 0) i += lists.copy(before, first, runOf(from, i));
    else {
      if (row) worker.work(row, i, lists);
      lists.endRow();
      i++;
    }
  }
  return lists.done(rows);
}

/** Puts new rows in the places of old ones; false when one has another count of variables. */
function patched<Row extends object, Gaps>(
  rows: readonly Row[],
  worker: RowWork<Row, Gaps>,
  before: FlatRows<Row, Gaps>,
  from: Int32Array,
): boolean {
  const made: { readonly i: number; readonly one: FlatRows<Row, Gaps> }[] = [];
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i];
    if ((from[i] ?? -1) >= 0 || !row) continue;
    const one = new RowLists<Gaps>(1, worker, 8);
    worker.work(row, i, one);
    one.endRow();
    made.push({ i, one: one.done([row]) });
  }
  const fits = made.every(({ i, one }) => one.vars.length === lengthOf(before, i));
  if (fits) for (const { i, one } of made) overwrite(before, i, one);
  if (fits) before.rows = rows;
  return fits;
}

const lengthOf = (flat: FlatRows<unknown, unknown>, i: number): number =>
  (flat.starts[i + 1] ?? 0) - (flat.starts[i] ?? 0);

function overwrite<Gaps>(
  into: FlatRows<unknown, Gaps>,
  i: number,
  one: FlatRows<unknown, Gaps>,
): void {
  const start = into.starts[i] ?? 0;
  into.vars.set(one.vars, start);
  for (const [k, column] of into.columns.entries()) column.set(one.columns[k] ?? [], start);
  for (const [k, field] of into.fields.entries()) field.set(one.fields[k] ?? [], i);
  const gaps = one.gaps.get(0);
  if (gaps === undefined) into.gaps.delete(i);
  else into.gaps.set(i, gaps);
}

/** Variables of a row of at most so many are found by looking through them. */
const SHORT_ROW = 12;

/** Lists under way: a row is put at their end, then ended. */
export class RowLists<Gaps> {
  readonly #fields: readonly Float64Array[];
  readonly #starts: Int32Array;
  #vars: Int32Array;
  #columns: Float64Array[];
  readonly #gaps = new Map<number, Gaps>();
  /** Places of a row of many variables. */
  #long: Map<number, number> | undefined;
  #row = 0;
  #end = 0;

  constructor(rows: number, width: { fields: number; columns: number }, capacity: number) {
    const lists = (n: number, length: number) =>
      Array.from({ length: n }, () => new Float64Array(length));
    this.#fields = lists(width.fields, rows);
    this.#columns = lists(width.columns, capacity);
    this.#starts = new Int32Array(rows + 1);
    this.#vars = new Int32Array(capacity);
  }

  /** A further variable of the row at hand, which it does not have yet; returns its place there. */
  addVariable(variable: number): number {
    if (this.#end >= this.#vars.length) this.#grow();
    this.#vars[this.#end] = variable;
    const place = this.#end++ - (this.#starts[this.#row] ?? 0);
    this.#long?.set(variable, place);
    return place;
  }

  /** Place of a variable in the row at hand; −1 when it does not have it. */
  placeOf(variable: number): number {
    const start = this.#starts[this.#row] ?? 0;
    if (this.#end - start > SHORT_ROW) return this.#longPlaces(start).get(variable) ?? -1;
    for (let at = start; at < this.#end; at++) if (this.#vars[at] === variable) return at - start;
    return -1;
  }

  #longPlaces(start: number): Map<number, number> {
    this.#long ??= new Map(
      Array.from(this.#vars.subarray(start, this.#end), (variable, place) => [variable, place]),
    );
    return this.#long;
  }

  setField(field: number, x: number): void {
    const list = this.#fields[field];
    if (list) list[this.#row] = x;
  }

  /** Adds to a number of the row's variable at `place`. */
  add(column: number, place: number, x: number): void {
    const list = this.#columns[column];
    const at = (this.#starts[this.#row] ?? 0) + place;
    if (list) list[at] = (list[at] ?? 0) + x;
  }

  setGaps(gaps: Gaps): void {
    this.#gaps.set(this.#row, gaps);
  }

  endRow(): void {
    this.#long = undefined;
    this.#row++;
    this.#starts[this.#row] = this.#end;
  }

  /** Copies `count` rows that stood one after the other from `first` on; returns their count. */
  copy(before: FlatRows<unknown, Gaps>, first: number, count: number): number {
    const [start, stop] = [before.starts[first] ?? 0, before.starts[first + count] ?? 0];
    while (this.#end + stop - start > this.#vars.length) this.#grow();
    this.#vars.set(before.vars.subarray(start, stop), this.#end);
    for (const [k, column] of this.#columns.entries())
      column.set(before.columns[k]?.subarray(start, stop) ?? [], this.#end);
    for (const [k, field] of this.#fields.entries())
      field.set(before.fields[k]?.subarray(first, first + count) ?? [], this.#row);
    const shift = this.#end - start;
    for (let i = first; i < first + count; i++) {
      const gaps = before.gaps.size === 0 ? undefined : before.gaps.get(i);
      if (gaps !== undefined) this.#gaps.set(this.#row, gaps);
      this.#row++;
      this.#starts[this.#row] = (before.starts[i + 1] ?? 0) + shift;
    }
    this.#end = stop + shift;
    return count;
  }

  done<Row>(rows: readonly Row[]): FlatRows<Row, Gaps> {
    return {
      rows,
      fields: this.#fields,
      starts: this.#starts,
      vars: this.#vars.subarray(0, this.#end),
      columns: this.#columns.map((column) => column.subarray(0, this.#end)),
      gaps: this.#gaps,
    };
  }

  #grow(): void {
    const room = Math.max(2 * this.#vars.length, 16);
    const vars = new Int32Array(room);
    vars.set(this.#vars);
    this.#vars = vars;
    this.#columns = this.#columns.map((old) => {
      const column = new Float64Array(room);
      column.set(old);
      return column;
    });
  }
}

/** How many rows from `i` on stood one after the other before. */
function runOf(from: Int32Array, i: number): number {
  const first = from[i] ?? 0;
  let count = 1;
  while (i + count < from.length && from[i + count] === first + count) count++;
  return count;
}

/** Where each row stood before; −1 for a new one. */
function placesBefore<Row extends object>(
  rows: readonly Row[],
  before: FlatRows<Row, unknown> | undefined,
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
