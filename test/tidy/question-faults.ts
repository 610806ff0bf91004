import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../../scripts/root.ts';
import type {
  InputSpec,
  OutputSpec,
  Question,
  RowBody,
  ScalarColumn,
  ScalarInput,
  TableInput,
  TallyBody,
  WrittenInputs,
} from '../../src/engine/index.ts';
import { KINDS, parseQuantity } from '../../src/quantity/index.ts';
import { readText } from './sources.ts';

/** Everything that is wrong with how a question is written down, a line each. */
export function questionFaults(q: Question): readonly string[] {
  return [
    ...wordFaults(q),
    ...nameFaults(q),
    ...numberFaults(q),
    ...formulaFaults(q),
    ...exampleFaults(q),
    ...checkFaults(q),
  ];
}

const when = (wrong: boolean, fault: string): readonly string[] => (wrong ? [fault] : []);
const scalarsOf = (q: Question): readonly ScalarInput[] =>
  q.inputs.filter((i): i is ScalarInput => i.in === 'scalar');
const tablesOf = (q: Question): readonly TableInput[] =>
  q.inputs.filter((i): i is TableInput => i.in === 'table');

function wordFaults(q: Question): readonly string[] {
  return [
    ...when(!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(q.id), `id ${q.id} is not kebab case`),
    ...when(!q.wording.endsWith('?'), 'wording does not end in a question mark'),
    ...when(!(Number.isInteger(q.version) && q.version >= 1), 'version is no count from 1'),
    ...when(q.sources.length === 0, 'names no source'),
    ...when(q.body.outputs.length === 0, 'has no output'),
    ...q.body.outputs.flatMap((o) => when(o.shown === '', `output ${o.name} shows no formula`)),
  ];
}

function nameFaults(q: Question): readonly string[] {
  const outputs = q.body.outputs.map((o) => o.name);
  return [
    ...twice(
      q.inputs.map((i) => i.name),
      'input',
    ),
    ...twice(outputs, 'output'),
    ...tablesOf(q).flatMap((t) =>
      twice(
        t.columns.map((c) => c.name),
        `column of ${t.name}`,
      ),
    ),
    ...Object.keys(q.modelError)
      .filter((name) => !outputs.includes(name))
      .map((name) => `modelError names ${name}, which is no output`),
  ];
}

const twice = (names: readonly string[], what: string): readonly string[] =>
  names.filter((name, i) => names.indexOf(name) !== i).map((name) => `two of ${what} ${name}`);

/** Ranges the right way round, and units that people are offered for the kind. */
function numberFaults(q: Question): readonly string[] {
  const columns = tablesOf(q).flatMap((t) => t.columns.filter((c) => c.in === 'scalar'));
  const numbers: readonly (ScalarInput | ScalarColumn)[] = [...scalarsOf(q), ...columns];
  return [
    ...numbers.flatMap((n) => when(!(n.range[0] < n.range[1]), `range of ${n.name} is empty`)),
    ...[...numbers, ...q.body.outputs].flatMap(unitFaults),
  ];
}

function unitFaults({
  name,
  kind,
  unit,
}: ScalarInput | ScalarColumn | OutputSpec): readonly string[] {
  const units: readonly string[] = [KINDS[kind].si, ...KINDS[kind].show];
  return when(
    !units.includes(unit),
    `unit ${unit} of ${name} is none of ${kind}: ${units.join(', ')}`,
  );
}

function formulaFaults(q: Question): readonly string[] {
  if (q.body.body === 'row') return rowFaults(q.body, scalarsOf(q), q);
  return q.body.body === 'tally' ? tallyFaults(q.body, q) : [];
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
function numberOf({ kind, unit }: ScalarInput, written: WrittenInputs[string] | undefined): number {
  const read = typeof written === 'string' ? parseQuantity(written, kind, { unit }) : undefined;
  return read?.ok ? read.value.x : Number.NaN;
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
    ...columnFaults(body, of('scalar')),
    ...when(
      body.groupBy !== undefined && !of('term').includes(body.groupBy),
      `groups by ${body.groupBy}, which is no column of words`,
    ),
  ];
}

/**
 * Sums that need what is no column, and columns that move no sum. A sum may need a column only
 * to leave out the rows that lack it.
 */
function columnFaults(body: TallyBody, columns: readonly string[]): readonly string[] {
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
      .filter((name) => !moves.includes(name))
      .map((name) => `column ${name} is asked for and moves no sum`),
  ];
}

function exampleFaults(q: Question): readonly string[] {
  return [
    ...q.inputs.flatMap((input) => inputFaults(input, q.example[input.name])),
    ...Object.keys(q.example)
      .filter((name) => !q.inputs.some((input) => input.name === name))
      .map((name) => `the example gives ${name}, which is no input`),
  ];
}

function inputFaults(
  input: InputSpec,
  given: Question['example'][string] | undefined,
): readonly string[] {
  const missing = `the example lacks ${input.name}`;
  if (given === undefined) return when(!('assumed' in input && input.assumed), missing);
  if (input.in !== 'table') return when(typeof given !== 'string' || given === '', missing);
  if (typeof given === 'string' || given.length === 0) return [missing];
  return given.flatMap((row, i) =>
    input.columns
      .filter((column) => row[column.name] === undefined && !('optional' in column))
      .map((column) => `row ${i + 1} of ${input.name} in the example lacks ${column.name}`),
  );
}

function checkFaults(q: Question): readonly string[] {
  return [
    ...when(q.checks.length === 0, 'has no check'),
    ...q.checks.flatMap(({ test }) =>
      existsSync(join(ROOT, test))
        ? when(!readText(test).includes(q.id), `${test} does not mention ${q.id}`)
        : [`check ${test} is no file`],
    ),
  ];
}
