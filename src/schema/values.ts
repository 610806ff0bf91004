import { z } from 'zod';
import { KIND_NAMES, WAYS } from '../quantity/index.ts';
import { REFUSALS, type RefusalCode } from '../study/index.ts';

/** Number in the coherent SI unit of its kind unless a field says otherwise; JSON has no other than finite ones. */
export const number = z.number();
export const id = z.string().min(1);
export const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

export const kind = z.enum(KIND_NAMES).meta({ id: 'Kind' });
export const way = z.enum(WAYS).meta({ id: 'Way' });

export const spread = z
  .discriminatedUnion('s', [
    z.strictObject({ s: z.literal('exact') }),
    z.strictObject({ s: z.literal('unknown') }),
    z.strictObject({ s: z.literal('normal'), u: number, dof: number.exactOptional() }),
    z.strictObject({ s: z.enum(['rectangular', 'arcsine']), half: number }),
    z.strictObject({ s: z.literal('triangular'), low: number, high: number }),
    z.strictObject({ s: z.literal('repeats'), xs: z.array(number) }),
  ])
  .meta({ id: 'Spread' });

export const value = z
  .discriminatedUnion('t', [
    z.strictObject({ t: z.literal('scalar'), kind, x: number, spread }),
    z.strictObject({
      t: z.literal('vector'),
      kind,
      x: z.array(number),
      cov: z.array(number),
      frame: z.string(),
    }),
    z.strictObject({ t: z.literal('count'), n: number, spread }),
    z.strictObject({ t: z.literal('term'), scheme: z.string(), code: z.string() }),
    z.strictObject({ t: z.literal('text'), text: z.string() }),
    z.strictObject({ t: z.literal('flag'), on: z.boolean() }),
    z.strictObject({ t: z.literal('ref'), to: z.string() }),
    z.strictObject({ t: z.literal('blob'), hash: z.string() }),
    z.strictObject({
      t: z.literal('absent'),
      why: z.enum(['not taken', 'destroyed', 'not applicable']),
    }),
  ])
  .meta({ id: 'Value' });

export const place = z
  .strictObject({
    study: z.string().exactOptional(),
    subject: z.string().exactOptional(),
    property: z.string().exactOptional(),
    reading: z.string().exactOptional(),
    file: z.string().exactOptional(),
    row: number.exactOptional(),
    column: z.string().exactOptional(),
  })
  .meta({ id: 'Place' });

export const finding = z
  .strictObject({
    code: z.string(),
    level: z.enum(['note', 'doubt', 'gap']),
    place,
    value: z.string().exactOptional(),
    what: z.string(),
    next: z.string(),
  })
  .meta({ id: 'Finding' });

const refusalCodes = Object.keys(REFUSALS) as RefusalCode[];

export const refusal = z
  .strictObject({
    code: z.enum(refusalCodes),
    place,
    value: z.string().exactOptional(),
    why: z.string(),
    next: z.string(),
  })
  .meta({ id: 'Refusal' });
