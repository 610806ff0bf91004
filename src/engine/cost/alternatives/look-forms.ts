import { FormBuilder, type LinearForm } from '../../../quantity/index.ts';
import { IndexedForm } from '../../forms/indexed-form.ts';
import type { BoundLook, Cell, PlainInputs, PlainRow } from '../../method.ts';

/** Where the number of a cell stands among the plain inputs. */
type Spot = { readonly scalar: string } | { readonly row: number; readonly column: string };
interface Slot {
  readonly cell: Cell;
  readonly spot: Spot;
}

/** Share of a standard uncertainty by which a cell is moved each way. */
const STEP = 1 / 32;

/** Inputs with one table as a look sees them: nominal numbers, and forms of whatever follows. */
export class LookForms {
  readonly plain: PlainInputs;
  readonly #table: string;
  readonly #slots: readonly Slot[];

  constructor(bound: BoundLook, table: string) {
    this.#table = table;
    const rows = bound.tables[table] ?? [];
    const scalars = Object.entries(bound.scalars).flatMap(([scalar, cell]) =>
      'missing' in cell ? [] : [{ cell, spot: { scalar } }],
    );
    const cells = rows.flatMap(({ cells }, row) =>
      Object.entries(cells).flatMap(([column, cell]) =>
        'missing' in cell ? [] : [{ cell, spot: { row, column } }],
      ),
    );
    this.#slots = [...scalars, ...cells];
    this.plain = {
      scalars: Object.fromEntries(scalars.map(({ cell, spot }) => [spot.scalar, cell.form.x])),
      terms: textsOf(bound.terms),
      tables: {
        [table]: rows.map(
          (row): PlainRow => ({
            subject: row.subject,
            ...textsOf(row.terms),
            ...numbersOf(row.cells),
          }),
        ),
      },
    };
  }

  /** Linear forms of several results of the inputs at once, by central differences. */
  of(f: (x: PlainInputs) => readonly number[], at: PlainInputs = this.plain): LinearForm[] {
    const made = f(at).map((x) => {
      const form = new FormBuilder();
      form.x = x;
      return form;
    });
    for (const { cell, spot } of this.#slots) {
      const u = Math.hypot(...cell.form.by.values());
      if (u === 0) continue;
      const above = f(this.#moved(at, spot, STEP * u));
      const below = f(this.#moved(at, spot, -STEP * u));
      for (const [k, form] of made.entries()) {
        const slope = ((above[k] ?? 0) - (below[k] ?? 0)) / (2 * STEP * u);
        if (slope !== 0) for (const [id, c] of cell.form.by) form.contribute(id, slope * c);
      }
    }
    return made.map((form) => form.done());
  }

  /** Mean of a form less its nominal value, for skewed inputs. */
  lean(form: LinearForm): number {
    const indexed = this.#slots.map(({ cell }) => cell.form).find((f) => f instanceof IndexedForm);
    return indexed ? indexed.variables.leanOf(indexed.variables.form(form)) : 0;
  }

  #moved(at: PlainInputs, spot: Spot, by: number): PlainInputs {
    if ('scalar' in spot) {
      const x = (at.scalars[spot.scalar] ?? 0) + by;
      return { ...at, scalars: { ...at.scalars, [spot.scalar]: x } };
    }
    const rows = [...(at.tables[this.#table] ?? [])];
    const row = rows[spot.row] ?? {};
    rows[spot.row] = { ...row, [spot.column]: Number(row[spot.column]) + by };
    return { ...at, tables: { ...at.tables, [this.#table]: rows } };
  }
}

const textsOf = (terms: BoundLook['terms']): Record<string, string> =>
  Object.fromEntries(Object.entries(terms).map(([name, t]) => [name, t.text]));
const numbersOf = (cells: BoundLook['scalars']): Record<string, number> =>
  Object.fromEntries(
    Object.entries(cells).map(([name, c]) => [name, 'missing' in c ? Number.NaN : c.form.x]),
  );
