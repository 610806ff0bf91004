import type { LinearForm } from '../quantity/index.ts';
import type { BoundRow } from './bound-row.ts';
import { type FlatRows, flatRows, type RowLists, type RowWork } from './forms/flat-rows.ts';
import type { Variables } from './forms/variables.ts';
import type { Cell, Found } from './method.ts';

/**
 * The numbers of a table's rows: for each column k of n its nominal value (field k; NaN when
 * missing), its standard uncertainty (field n + k), and where its contributions end among those
 * of the row (field 2 n + k). Rows that lack a number or a spread are noted among the gaps.
 */
export type FlatCells = FlatRows<BoundRow, true>;

/** Lays out the numbers of rows, of which all have the same columns. */
export const flatCells = (
  rows: readonly BoundRow[],
  variables: Variables,
  before?: FlatCells,
): FlatCells =>
  flatRows(rows, new CellWork(rows[0]?.numbers.length ?? 0, variables, rows.length), before);

class CellWork implements RowWork<BoundRow, true> {
  readonly fields: number;
  readonly columns = 1;
  readonly room: number;

  constructor(
    private readonly numbers: number,
    private readonly variables: Variables,
    rows: number,
  ) {
    this.fields = 3 * numbers;
    this.room = numbers * rows;
  }

  work({ numbers }: BoundRow, _i: number, into: RowLists<true>): void {
    const n = this.numbers;
    let end = 0;
    let isWhole = true;
    for (let k = 0; k < n; k++) {
      const cell = numbers[k];
      const form = formIn(cell);
      const own = form && this.variables.form(form);
      isWhole &&= own !== undefined && (cell as Partial<Cell>).unknownSpread !== true;
      into.setField(k, own?.x ?? Number.NaN);
      into.setField(n + k, own?.u ?? 0);
      for (let i = 0; own && i < own.vars.length; i++) {
        into.add(0, into.addVariable(own.vars[i] ?? 0), own.c[i] ?? 0);
        end++;
      }
      into.setField(2 * n + k, end);
    }
    if (!isWhole) into.setGaps(true);
  }
}

/** The form of a cell; nothing when it is missing. */
const formIn = (cell: Found | undefined): LinearForm | undefined =>
  (cell as Partial<Cell> | undefined)?.form;
