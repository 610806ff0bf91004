import { z } from 'zod';
import { finding, kind, refusal, value, way } from '../../schema/index.ts';

/** What an import is told and shows: the same shapes as in src/capture, which a test of types holds to. */
const text = z.string();
const delimiter = z.enum([',', ';', '\t', '|']);
const decimal = z.enum(['.', ',']);

export const tableForm = z
  .enum([
    'parts',
    'joints',
    'bags',
    'precedence',
    'assemblies',
    'modules',
    'removals',
    'readings',
    'claims',
    'element-times',
    'zones',
    'barriers',
    'crossings',
    'lines',
  ])
  .meta({ id: 'TableForm' });

export const overrides = z
  .strictObject({
    columns: z.record(text, text).exactOptional(),
    units: z.record(text, text).exactOptional(),
    delimiter: delimiter.exactOptional(),
    decimal: decimal.exactOptional(),
    instrument: text.exactOptional(),
    how: way.exactOptional(),
    spreads: z.record(text, text).exactOptional(),
    makeAssemblies: z.boolean().exactOptional(),
  })
  .meta({ id: 'Overrides' });

const guessOf = <S extends z.ZodType>(guessed: S) =>
  z.strictObject({
    value: guessed,
    why: text,
    given: z.boolean(),
    others: z.array(z.strictObject({ value: guessed, why: text })),
  });

const field = z.strictObject({
  field: text,
  words: text,
  known: z.array(text),
  holds: z.enum(['word', 'property', 'u', 'instrument']),
  property: text.exactOptional(),
  component: z.literal([0, 1, 2]).exactOptional(),
  kind: kind.exactOptional(),
  of: z.array(text).exactOptional(),
  required: z.literal(true).exactOptional(),
});

const column = z.strictObject({
  index: z.int(),
  column: text,
  field: field.exactOptional(),
  unit: text.exactOptional(),
  why: text,
  given: z.boolean(),
});

const cell = z.strictObject({
  written: text,
  value: value.exactOptional(),
  problem: text.exactOptional(),
});

export const preview = z
  .strictObject({
    form: tableForm,
    file: text,
    encoding: guessOf(z.enum(['utf-8', 'utf-16le', 'utf-16be'])),
    delimiter: guessOf(delimiter),
    decimal: guessOf(decimal),
    columns: z.array(column),
    unmapped: z.array(text),
    assumed: z.array(z.strictObject({ what: text, value: text, why: text, given: z.boolean() })),
    rows: z.array(z.strictObject({ row: z.int(), cells: z.array(cell) })),
    counts: z.record(text, z.int()),
    notes: z.array(finding),
    problems: z.array(refusal),
  })
  .meta({ id: 'Preview' });
