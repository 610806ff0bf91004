import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../../scripts/root.ts';
import type {
  InputSpec,
  OutputSpec,
  Question,
  ScalarColumn,
  ScalarInput,
} from '../../src/engine/index.ts';
import { KINDS } from '../../src/quantity/index.ts';
import { formulaFaults } from './formula-faults.ts';
import { scalarsOf, tablesOf, when } from './question-parts.ts';
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
