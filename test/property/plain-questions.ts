import type {
  InputSpec,
  PlainInputs,
  PlainRow,
  Question,
  ScalarColumn,
  ScalarInput,
  TallyBody,
} from '../../src/engine/index.ts';
import { type Dimension, kindDef, parseQuantity } from '../../src/quantity/index.ts';

/** A place among a question's inputs at which a number stands. */
export interface Slot {
  readonly input: string;
  /** Row and column in a table. */
  readonly at?: { readonly row: number; readonly column: string };
  readonly spec: ScalarInput | ScalarColumn;
  /** SI. */
  readonly x: number;
  /** Id of its variable in an answer. */
  readonly variable: string;
}

/** Outputs by name, in SI, without any propagation. */
export type PlainOutputs = Readonly<Record<string, number>>;

/** Every number of a question's example, in the order of its inputs. */
export function slotsOf(q: Question): readonly Slot[] {
  return q.inputs.flatMap((input) => {
    const written = q.example[input.name];
    if (input.in === 'scalar') return slot(input, input.name, written ?? input.assumed ?? '');
    if (input.in !== 'table' || !Array.isArray(written)) return [];
    const rows: readonly Readonly<Record<string, string>>[] = written;
    return rows.flatMap((row, i) =>
      input.columns.flatMap((c) =>
        c.in === 'scalar' ? slot(c, input.name, row[c.name] ?? '', i) : [],
      ),
    );
  });
}

function slot(
  spec: ScalarInput | ScalarColumn,
  input: string,
  written: unknown,
  row?: number,
): Slot[] {
  const parsed = parseQuantity(String(written), spec.kind, { unit: spec.unit });
  if (!parsed.ok) return [];
  const { x } = parsed.value;
  if (row === undefined) return [{ input, spec, x, variable: `given:${input}` }];
  const variable = `given:${input}.${row + 1}.${spec.name}`;
  return [{ input, at: { row, column: spec.name }, spec, x, variable }];
}

/** Runs a question's formulas on numbers in the slots of its example, words as in the example. */
export function runPlain(q: Question, numbers: readonly number[]): PlainOutputs {
  const plain = plainInputs(q, numbers);
  const scalars = q.inputs.flatMap((i) =>
    i.in === 'scalar' ? (plain.scalars[i.name] ?? Number.NaN) : [],
  );
  const { body } = q;
  if (body.body === 'solve') return body.solve(plain, { tick: () => undefined }).outputs;
  const args = body.body === 'row' ? scalars : [...sumsOf(body, plain), ...scalars];
  return Object.fromEntries(body.outputs.map((o) => [o.name, o.of(...args)]));
}

const sumsOf = (body: TallyBody, plain: PlainInputs): number[] =>
  body.terms.map((term) =>
    (plain.tables[body.table] ?? [])
      .map((row) => term.needs.map((name) => Number(row[name])))
      .reduce((sum, needed) => sum + term.each(...needed), 0),
  );

function plainInputs(q: Question, numbers: readonly number[]): PlainInputs {
  const slots = slotsOf(q);
  const scalars: Record<string, number> = {};
  const tables: Record<string, Record<string, number | string>[]> = {};
  for (const input of q.inputs) if (input.in === 'table') tables[input.name] = wordsOf(q, input);
  slots.forEach((s, i) => {
    const x = numbers[i] ?? Number.NaN;
    const row = s.at && tables[s.input]?.[s.at.row];
    if (s.at && row) row[s.at.column] = x;
    else scalars[s.input] = x;
  });
  return { scalars, terms: termsOf(q), tables };
}

/** Words of a question's example, by input. */
const termsOf = (q: Question): Record<string, string> =>
  Object.fromEntries(
    q.inputs.flatMap((i) => (i.in === 'term' ? [[i.name, String(q.example[i.name] ?? '')]] : [])),
  );

/** Rows of a table with their words; numbers are NaN until they are put there. */
function wordsOf(
  q: Question,
  input: Extract<InputSpec, { in: 'table' }>,
): Record<string, number | string>[] {
  const rows = (q.example[input.name] ?? []) as readonly Readonly<Record<string, string>>[];
  return rows.map(
    (row, i): PlainRow => ({
      subject: `${input.name} ${i + 1}`,
      ...Object.fromEntries(
        input.columns.map((c) => [c.name, c.in === 'term' ? (row[c.name] ?? '') : Number.NaN]),
      ),
    }),
  );
}

/** Factor by which a quantity of this kind grows when the base units shrink by `factors`. */
export function scaleOf(kind: Parameters<typeof kindDef>[0], factors: readonly number[]): number {
  const dim: Dimension = kindDef(kind).dim;
  return dim.reduce((product, power, i) => product * (factors[i] ?? 1) ** power, 1);
}
