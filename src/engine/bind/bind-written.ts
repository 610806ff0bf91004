import { parseQuantity } from '../../quantity/index.ts';
import { type Finding, type Place, type Refusal, RefusalError } from '../../study/index.ts';
import type { BoundInputs } from '../bound-inputs.ts';
import { BoundRow, columnNames } from '../bound-row.ts';
import { FormMaker } from '../forms/form-maker.ts';
import { Variables } from '../forms/variables.ts';
import type {
  Cell,
  Found,
  FoundTerm,
  Question,
  ScalarColumn,
  ScalarInput,
  TableInput,
  TermColumn,
  TermInput,
  WrittenInputs,
} from '../method.ts';
import { implausible, outOfBounds } from './bounds.ts';

/** What bare values are values of. */
export const GIVEN = 'given';

type WrittenRow = Readonly<Record<string, string>>;

/** Reads what people wrote as inputs of one question. */
class WrittenReader {
  readonly findings: Finding[] = [];
  readonly refusals: Refusal[] = [];

  constructor(readonly variables: Variables) {}

  number(
    spec: ScalarInput | ScalarColumn,
    text: string,
    id: string,
    place: Place,
    how: Cell['how'],
  ): Found {
    const parsed = parseQuantity(text, spec.kind, { unit: spec.unit });
    if (!parsed.ok) {
      this.refuse(place, text, parsed.why, parsed.next);
      return { missing: true, place, label: spec.meaning, why: parsed.why };
    }
    const { x, spread } = parsed.value;
    const why = outOfBounds(spec, x);
    if (why) return this.#refuse(spec, text, place, why, `Give another value for ${spec.name}.`);
    const form = new FormMaker(this.variables);
    form.x = x;
    const own = { id, label: spec.meaning, what: 'given', spread, place } as const;
    const known = this.variables.contribute(form, own, x, 1);
    const unknown = known ? {} : { unknownSpread: true as const };
    const cell: Cell = { form: form.done(), how, place, label: spec.meaning, ...unknown };
    const finding = implausible(spec, cell);
    if (finding) this.findings.push(finding);
    return cell;
  }

  #refuse(
    spec: { name: string; meaning: string },
    value: string,
    place: Place,
    why: string,
    next: string,
  ): Found {
    this.refusals.push({ code: 'out-of-range', place, value, why, next });
    return { missing: true, place, label: spec.meaning, why };
  }

  refuse(place: Place, value: string, why: string, next: string): void {
    this.refusals.push({ code: 'bad-value', place, value, why, next });
  }
}

/**
 * Binds inputs as people write them ("12.5 ± 0.2 kg"). An input that is not given takes its
 * assumed value, marked so, or is missing.
 * @throws RefusalError naming every input that can't be read, is unknown or is out of bounds.
 */
export function bindWritten(
  question: Question,
  written: WrittenInputs,
  variables = new Variables(),
): BoundInputs {
  const reader = new WrittenReader(variables);
  refuseUnknown(question, written, reader);
  const scalars: Record<string, Found> = {};
  const terms: Record<string, FoundTerm> = {};
  const tables: Record<string, readonly BoundRow[]> = {};
  for (const input of question.inputs) {
    const given = written[input.name];
    if (input.in === 'table') tables[input.name] = rowsOf(input, given, reader);
    else if (input.in === 'term')
      terms[input.name] = termOf(input, given, { column: input.name }, reader);
    else scalars[input.name] = scalarOf(input, given, reader);
  }
  const [first, ...more] = reader.refusals;
  if (first) throw new RefusalError(first, ...more);
  return {
    of: GIVEN,
    scalars,
    terms,
    tables,
    variables,
    models: new Map(),
    before: {},
    read: () => [],
    findings: reader.findings,
    basis: { conditions: ['as given'] },
  };
}

function refuseUnknown(question: Question, written: WrittenInputs, reader: WrittenReader): void {
  const names = question.inputs.map((i) => i.name);
  for (const name of Object.keys(written))
    if (!names.includes(name))
      reader.refuse(
        { column: name },
        name,
        `the question has no input "${name}"`,
        `Its inputs are: ${names.join(', ')}.`,
      );
}

function scalarOf(
  input: ScalarInput,
  given: WrittenInputs[string] | undefined,
  reader: WrittenReader,
): Found {
  const place = { column: input.name };
  if (typeof given === 'string' && given.trim() !== '')
    return reader.number(input, given, `given:${input.name}`, place, 'supplied');
  if (given !== undefined && typeof given !== 'string')
    reader.refuse(
      place,
      'a list',
      `${input.name} takes one value, not a list`,
      'Write e.g. "12.5 ± 0.2 kg".',
    );
  if (input.assumed !== undefined)
    return reader.number(input, input.assumed, `given:${input.name}`, place, 'assumed');
  return { missing: true, place, label: input.meaning, why: 'not given' };
}

function termOf(
  { name, options }: TermInput | TermColumn,
  given: WrittenInputs[string] | undefined,
  place: Place,
  reader: WrittenReader,
): FoundTerm {
  if (given === undefined || given === '') return { text: '', how: 'missing', place };
  if (typeof given !== 'string')
    reader.refuse(place, 'a list', `${name} takes one word, not a list`, 'Write one word.');
  else if (options && !options.includes(given))
    reader.refuse(
      place,
      given,
      `${name} is none of its words`,
      `Its words are: ${options.join(', ')}.`,
    );
  return { text: String(given), how: 'given', place };
}

function rowsOf(
  input: TableInput,
  given: WrittenInputs[string] | undefined,
  reader: WrittenReader,
): BoundRow[] {
  if (given === undefined) return [];
  if (typeof given === 'string') {
    reader.refuse(
      { column: input.name },
      given,
      `${input.name} takes a list of rows`,
      `Give rows with the columns ${input.columns.map((c) => c.name).join(', ')}.`,
    );
    return [];
  }
  return given.map((row, i) => rowOf(input, row, i, reader));
}

function rowOf(input: TableInput, row: WrittenRow, i: number, reader: WrittenReader): BoundRow {
  const numbers: Found[] = [];
  const words: FoundTerm[] = [];
  const names = input.columns.map((c) => c.name);
  for (const name of Object.keys(row))
    if (!names.includes(name))
      reader.refuse(
        { row: i + 1, column: name },
        name,
        `${input.name} has no column "${name}"`,
        `Its columns are: ${names.join(', ')}.`,
      );
  for (const column of input.columns) {
    const place = { row: i + 1, column: column.name };
    const text = row[column.name] ?? '';
    const id = `given:${input.name}.${i + 1}.${column.name}`;
    if (column.in === 'term') words.push(termOf(column, text, place, reader));
    else if (text.trim() === '')
      numbers.push({ missing: true, place, label: column.meaning, why: 'not given' });
    else numbers.push(reader.number(column, text, id, place, 'supplied'));
  }
  const label = `${input.name} ${i + 1}`;
  return new BoundRow(label, label, columnNames(input), numbers, words);
}
