import { z } from 'zod';
import { kind, nodeKind, number } from '../../schema/index.ts';
import { caution, source } from './answers.ts';

/** A question as plain data: the same shape as in src/engine/describe.ts, which a test of types holds to. */
const text = z.string();

const scalarShape = {
  in: z.literal('scalar'),
  name: text,
  symbol: text,
  kind,
  unit: text,
  meaning: text,
  range: z.tuple([number, number]),
  bounds: z
    .strictObject({
      above: number.exactOptional(),
      below: number.exactOptional(),
      atLeast: number.exactOptional(),
    })
    .exactOptional(),
  where: text,
};

const moves = z.enum(['up', 'down']).exactOptional();

const column = z.strictObject({ ...scalarShape, moves, optional: z.literal(true).exactOptional() });

const term = z.strictObject({
  in: z.literal('term'),
  name: text,
  meaning: text,
  options: z.array(text).exactOptional(),
  where: text,
});

const table = z.strictObject({
  in: z.literal('table'),
  name: text,
  meaning: text,
  where: text,
  columns: z.array(z.discriminatedUnion('in', [column, term])),
});

const input = z
  .discriminatedUnion('in', [
    z.strictObject({ ...scalarShape, assumed: text.exactOptional(), moves }),
    term,
    table,
  ])
  .meta({ id: 'InputSpec' });

const output = z
  .strictObject({
    name: text,
    symbol: text,
    kind,
    unit: text,
    meaning: text,
    shown: text,
    step: z.literal(true).exactOptional(),
    decides: z.enum(['difference', 'margin']).exactOptional(),
    directions: z.strictObject({ more: text, less: text }).exactOptional(),
    alike: text.exactOptional(),
  })
  .meta({ id: 'OutputSpec' });

const modelError = z.union([
  z.strictObject({ sharedFraction: number, relative: number }),
  z.strictObject({ sharedFraction: number, absolute: number }),
]);

const checkStatus = z.enum([
  'seen',
  'from memory, recomputed',
  'own inputs, published formula',
  'common practice',
]);

const check = z.strictObject({ what: text, source: text, status: checkStatus, test: text });

/** Inputs as people write them: "12.5 ± 0.2 kg"; tables are lists of rows. */
export const writtenInputs = z
  .record(text, z.union([text, z.array(z.record(text, text))]))
  .meta({ id: 'WrittenInputs' });

export const question = z
  .strictObject({
    id: text,
    version: number,
    wording: text,
    title: text,
    subject: z.union([nodeKind, z.literal('study')]),
    section: z.strictObject({ id: text, title: text, order: number }),
    inputs: z.array(input),
    outputs: z.array(output),
    groupedBy: text.exactOptional(),
    modelError: z.record(text, modelError),
    sources: z.array(source),
    assumptions: z.array(text),
    cautions: z.array(caution),
    checks: z.tuple([check], check),
    example: writtenInputs,
    uses: z.array(text),
  })
  .meta({ id: 'Question' });
