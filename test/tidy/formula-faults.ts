import {
  askWritten,
  type InputSpec,
  type PlainInputs,
  type Question,
  type RowBody,
  type ScalarColumn,
  type ScalarInput,
  type SolveBody,
  type TallyBody,
  type TermColumn,
  type WrittenInputs,
} from '../../src/engine/index.ts';
import { parseQuantity } from '../../src/quantity/index.ts';
import { scalarsOf, tablesOf, when } from './question-parts.ts';

/** What is wrong with a question's formulas: too many arguments, and inputs that change nothing. */
export function formulaFaults(q: Question): readonly string[] {
  if (q.body.body === 'row') return rowFaults(q.body, scalarsOf(q), q);
  return q.body.body === 'tally' ? tallyFaults(q.body, q) : solveFaults(q.body, q);
}

type Formula = (...x: number[]) => number;

/** A formula takes at most what is declared for it. */
const arity = (name: string, f: Formula, most: number): readonly string[] =>
  when(f.length > most, `formula ${name} takes ${f.length} arguments, declared are ${most}`);

/** Names of arguments that move none of the formulas at a point: asked for and then not used. */
function unused(
  formulas: readonly Formula[],
  names: readonly string[],
  at: readonly number[] = somewhere(names.length),
): readonly string[] {
  return names.filter((_, i) => {
    const shifted = at.map((x, j) => (j === i ? 1.01 * x + 1e-9 : x));
    return formulas.every((f) => Object.is(f(...shifted), f(...at)));
  });
}

/** Numbers that have nothing to do with one another. */
const somewhere = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => 1 + 0.13 * (i + 1) ** 1.3);

const unusedFaults = (names: readonly string[]): readonly string[] =>
  names.map((name) => `${name} is asked for and used by no formula`);

/** At the example's own numbers, since formulas may hold nowhere else. */
function rowFaults(body: RowBody, scalars: readonly ScalarInput[], q: Question): readonly string[] {
  const at = scalars.map((s) => numberOf(s, q.example[s.name] ?? s.assumed));
  const names = scalars.map((s) => s.name);
  return [
    ...body.outputs.flatMap((o) => arity(o.name, o.of, scalars.length)),
    ...body.outputs.flatMap((o) =>
      when(Number.isNaN(o.of(...at)), `formula ${o.name} gives no number for the example`),
    ),
    ...unusedFaults(
      unused(
        body.outputs.map((o) => o.of),
        names,
        at,
      ),
    ),
  ];
}

/** SI value of a number as written; NaN when it is none. */
function numberOf(
  { kind, unit }: Pick<ScalarInput, 'kind' | 'unit'>,
  written: WrittenInputs[string] | undefined,
): number {
  const read = typeof written === 'string' ? parseQuantity(written, kind, { unit }) : undefined;
  return read?.ok ? read.value.x : Number.NaN;
}

/** Each number of the example, moved a little, must show somewhere in what is solved. */
function solveFaults(body: SolveBody, q: Question): readonly string[] {
  const solved = (moved: string): string => {
    const { outputs, findings, detail } = body.solve(plainExample(q, moved), { tick: () => {} });
    return JSON.stringify([outputs, findings, detail]);
  };
  const columns = tablesOf(q).flatMap((t) =>
    t.columns.filter((c) => c.in === 'scalar').map((c) => `${t.name}.${c.name}`),
  );
  const still = solved('');
  return unusedFaults(
    [...scalarsOf(q).map((s) => s.name), ...columns].filter((name) => solved(name) === still),
  );
}

/** The example as a structured body sees it, one input or `table.column` moved by a hundredth. */
function plainExample(q: Question, moved: string): PlainInputs {
  const shift = (name: string, x: number): number => (name === moved ? 1.01 * x : x);
  const scalars = scalarsOf(q).map(
    (s) => [s.name, shift(s.name, numberOf(s, q.example[s.name] ?? s.assumed))] as const,
  );
  const terms = q.inputs.filter((i) => i.in === 'term').map((i) => [i.name, q.example[i.name]]);
  const tables = tablesOf(q).map((t) => {
    const rows = q.example[t.name];
    const cell = (c: ScalarColumn | TermColumn, written: string | undefined) =>
      c.in === 'term' ? (written ?? '') : shift(`${t.name}.${c.name}`, numberOf(c, written));
    const plain = (typeof rows === 'object' ? rows : []).map((row) =>
      Object.fromEntries(t.columns.map((c) => [c.name, cell(c, row[c.name])])),
    );
    return [t.name, plain] as const;
  });
  return {
    scalars: Object.fromEntries(scalars),
    terms: Object.fromEntries(terms),
    tables: Object.fromEntries(tables),
  };
}

function tallyFaults(body: TallyBody, q: Question): readonly string[] {
  const columns = tablesOf(q).find((t) => t.name === body.table)?.columns;
  if (columns === undefined) return [`tallies ${body.table}, which is no table input`];
  const of = (kind: InputSpec['in']) => columns.filter((c) => c.in === kind).map((c) => c.name);
  const taken = [...body.terms, ...scalarsOf(q)].map((t) => t.name);
  return [
    ...body.outputs.flatMap((o) => arity(o.name, o.of, taken.length)),
    ...unusedFaults(
      unused(
        body.outputs.map((o) => o.of),
        taken,
      ),
    ),
    ...body.terms.flatMap((t) => arity(t.name, t.each, t.needs.length)),
    ...columnFaults(body, of('scalar'), q),
    ...when(
      body.groupBy !== undefined && !of('term').includes(body.groupBy),
      `groups by ${body.groupBy}, which is no column of words`,
    ),
  ];
}

/**
 * Sums that need what is no column, and columns that move no sum and are not looked at either. A
 * sum may need a column only to leave out the rows that lack it.
 */
function columnFaults(body: TallyBody, columns: readonly string[], q: Question): readonly string[] {
  const moves = body.terms.flatMap((t) => {
    const idle = unused([t.each], t.needs);
    return t.needs.filter((name) => !idle.includes(name));
  });
  return [
    ...body.terms
      .flatMap((t) => t.needs)
      .filter((name) => !columns.includes(name))
      .map((name) => `a sum needs ${name}, which is no column of numbers`),
    ...columns
      .filter((name) => !moves.includes(name) && !isLookedAt(q, body.table, name))
      .map((name) => `column ${name} is asked for and moves no sum`),
  ];
}

/** Whether what a question finds by looking changes when a column of the example is left empty. */
function isLookedAt(q: Question, table: string, column: string): boolean {
  const rows = q.example[table];
  if (!q.look || typeof rows !== 'object') return false;
  const said = (example: WrittenInputs): string => {
    const { detail, findings } = askWritten(q, example);
    return JSON.stringify([detail, findings]);
  };
  const without = rows.map((row) => ({ ...row, [column]: '' }));
  return said(q.example) !== said({ ...q.example, [table]: without });
}
