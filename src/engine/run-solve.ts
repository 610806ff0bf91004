import type { Place } from '../study/index.ts';
import { type BodyResult, isMissing, placesMissing, placesUnknown } from './body-out.ts';
import type { BoundInputs } from './bound-inputs.ts';
import type { BoundRow } from './bound-row.ts';
import type { Cell, Found, PlainInputs, PlainRow, Question, Run, SolveBody } from './method.ts';
import type { Propagated } from './propagate.ts';
import { type Shift, throughSolve } from './through-solve.ts';

/** Runs a structured body: once as things are, then with every variable shifted. */
export function runSolve(
  question: Question,
  body: SolveBody,
  bound: BoundInputs,
  scalars: readonly Found[],
  run: Run,
): BodyResult {
  const layout = new Layout(bound);
  const nominal = body.solve(layout.plain, run);
  const names = body.outputs.map((o) => o.name);
  const evaluate = (shifts: readonly Shift[]) => {
    const { outputs } = shifts.length === 0 ? nominal : body.solve(layout.shifted(shifts), run);
    return names.map((name) => outputs[name] ?? Number.NaN);
  };
  const forms = layout.cells.map((cell) => bound.variables.form(cell.form));
  const results = throughSolve(evaluate, forms, bound.variables);
  const missing = missingInputs(question, bound, scalars);
  const unknownSpread = placesUnknown(layout.cells);
  return {
    outs: body.outputs.map((spec, i) => {
      return { spec, result: results[i] as Propagated, missing, unknownSpread };
    }),
    findings: nominal.findings ?? [],
    ...(nominal.detail ? { detail: nominal.detail } : {}),
  };
}

function missingInputs(question: Question, bound: BoundInputs, scalars: readonly Found[]): Place[] {
  const cells = question.inputs.flatMap((input) => {
    if (input.in !== 'table') return [];
    const wanted = input.columns.filter((c) => c.in === 'scalar').map((c) => !c.optional);
    return (bound.tables[input.name] ?? []).flatMap(({ numbers }) =>
      numbers.filter((_, k) => wanted[k]),
    );
  });
  return placesMissing([...scalars, ...cells]);
}

/** Where the number of a cell stands among the plain inputs. */
type Spot =
  | { readonly scalar: string }
  | { readonly table: string; readonly row: number; readonly column: string };

/** Every number of the inputs, in a fixed order, and how to put shifted ones in their places. */
export class Layout {
  readonly cells: Cell[] = [];
  readonly plain: PlainInputs;
  readonly #spots: Spot[] = [];

  constructor(bound: BoundInputs) {
    this.plain = plainInputs(bound);
    for (const [name, found] of Object.entries(bound.scalars)) this.#place(found, { scalar: name });
    for (const [table, rows] of Object.entries(bound.tables)) this.#placeRows(table, rows);
  }

  #placeRows(table: string, rows: readonly BoundRow[]): void {
    for (const [row, { names, numbers }] of rows.entries())
      for (const [k, column] of names.numbers.entries())
        this.#place(numbers[k], { table, row, column });
  }

  #place(found: Found | undefined, spot: Spot): void {
    if (!found || isMissing(found)) return;
    this.cells.push(found);
    this.#spots.push(spot);
  }

  /** The plain inputs with these cells moved; whatever is not moved is shared with `plain`. */
  shifted(shifts: readonly Shift[]): PlainInputs {
    const scalars = { ...this.plain.scalars };
    const tables: Record<string, PlainRow[]> = {};
    for (const [i, by] of shifts) {
      const spot = this.#spots[i];
      const x = (this.cells[i]?.form.x ?? Number.NaN) + by;
      if (!spot) continue;
      if ('scalar' in spot) scalars[spot.scalar] = x;
      else {
        const rows = tables[spot.table] ?? [...(this.plain.tables[spot.table] ?? [])];
        tables[spot.table] = rows;
        rows[spot.row] = { ...rows[spot.row], [spot.column]: x };
      }
    }
    return { ...this.plain, scalars, tables: { ...this.plain.tables, ...tables } };
  }
}

/** Nominal values and words as bodies see them; NaN for what is missing. */
export function plainInputs(bound: BoundInputs): PlainInputs {
  const record = <A, B>(of: Readonly<Record<string, A>>, f: (a: A) => B) =>
    Object.fromEntries(Object.entries(of).map(([k, v]) => [k, f(v)]));
  return {
    scalars: record(bound.scalars, (found) => (isMissing(found) ? Number.NaN : found.form.x)),
    terms: record(bound.terms, (t) => t.text),
    tables: record(bound.tables, (rows) => rows.map((row) => row.plain)),
  };
}
