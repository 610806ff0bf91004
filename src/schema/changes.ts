import { z } from 'zod';
import { GATE_IDS, LAPSES, LINK_KINDS, NODE_KINDS } from '../study/index.ts';
import { id, kind, number, spread, value, way } from './values.ts';

/** What a study keeps: the same shapes as in src/study, which a test of types holds to. */
const text = z.string();
const takenAt = z.strictObject({ local: text, zone: text.exactOptional() });

export const cellRef = z
  .strictObject({ subject: id, property: id, condition: id, posture: id.exactOptional() })
  .meta({ id: 'CellRef' });

const evidence = z.strictObject({
  blob: text.exactOptional(),
  speech: id.exactOptional(),
  fromS: number.exactOptional(),
  toS: number.exactOptional(),
  words: text.exactOptional(),
});

const reading = z
  .strictObject({
    id,
    of: cellRef,
    value,
    asWritten: text,
    note: text.exactOptional(),
    how: way,
    by: text,
    takenAt,
    instrument: id.exactOptional(),
    evidence: z.array(evidence),
    causes: z.array(z.strictObject({ cause: id, effect: number })),
    source: z.strictObject({ file: text, row: number, column: text }).exactOptional(),
  })
  .meta({ id: 'Reading' });

const causeKind = z.enum(['gain', 'offset', 'frame', 'rate', 'density', 'model', 'specimen']);
const cause = z
  .strictObject({ id, what: causeKind, kind, spread, label: text })
  .meta({ id: 'Cause' });

export const nodeKind = z.enum(NODE_KINDS).meta({ id: 'NodeKind' });
const node = z
  .strictObject({ id, kind: nodeKind, parent: id.nullable(), label: text, name: text })
  .meta({ id: 'Node' });

const link = z
  .strictObject({
    id,
    kind: z.enum(LINK_KINDS),
    from: id,
    to: id.nullable(),
    role: text.exactOptional(),
    words: text.exactOptional(),
  })
  .meta({ id: 'Link' });

const instrument = z
  .strictObject({
    id,
    label: text,
    note: text.exactOptional(),
    kind: kind.exactOptional(),
    u: number.exactOptional(),
    relativeU: number.exactOptional(),
    minutes: number.exactOptional(),
    range: z.strictObject({ low: number, high: number }).exactOptional(),
    resolution: number.exactOptional(),
    accuracyClass: text.exactOptional(),
    calibrated: text.exactOptional(),
    due: text.exactOptional(),
    check: z.strictObject({ nominal: number, u: number, shown: number, at: text }).exactOptional(),
  })
  .meta({ id: 'Instrument' });

const someHeader = z.strictObject({
  title: text.exactOptional(),
  vehicle: text.exactOptional(),
  condition: id.exactOptional(),
  invented: z.boolean().exactOptional(),
  note: text.exactOptional(),
});

const rateCell = z.strictObject({
  cause: id,
  id,
  words: text,
  kind,
  x: number,
  spread,
  how: way,
  source: text,
  match: z.array(text),
  currency: text.exactOptional(),
  expires: text.exactOptional(),
});

const rateBook = z
  .strictObject({
    id,
    version: text,
    region: text,
    date: text,
    currency: text,
    volumePerYear: number,
    years: number,
    invented: z.boolean(),
    cells: z.array(rateCell),
  })
  .meta({ id: 'RateBook' });

export const claim = z
  .strictObject({
    id,
    words: text,
    how: way,
    by: text,
    heard: text,
    about: z.array(id),
    evidence: z.array(evidence),
    kind: text.exactOptional(),
    reason: z
      .strictObject({
        rule: text,
        market: text,
        date: text,
        applies: z.enum(['yes', 'no', 'not known']),
        exemptions: text,
        refutedBy: text,
      })
      .exactOptional(),
  })
  .meta({ id: 'Claim' });

export const tie = z
  .strictObject({
    id,
    claim: id,
    question: id,
    subject: id,
    output: id,
    test: z.strictObject({ is: z.enum(['at least', 'at most']), value: number, asWritten: text }),
  })
  .meta({ id: 'Tie' });

const photo = z.strictObject({
  id,
  blob: text,
  mediaType: text,
  subject: id.nullable(),
  caption: text,
  takenAt,
});

const speech = z
  .strictObject({
    id,
    file: text,
    film: text.exactOptional(),
    cues: z.array(z.strictObject({ fromS: number, toS: number, who: text.exactOptional(), text })),
    startedAt: takenAt,
    by: text,
  })
  .meta({ id: 'Speech' });

const speechDraft = z
  .strictObject({
    id,
    speech: id,
    kind: text,
    fromS: number,
    toS: number,
    who: text.exactOptional(),
    words: text,
    around: text,
    about: z.array(id),
    quantity: z
      .strictObject({
        low: number,
        high: number,
        kind,
        unit: text,
        loose: z.boolean(),
        property: text.exactOptional(),
      })
      .exactOptional(),
    term: text.exactOptional(),
    claim: text.exactOptional(),
    how: way,
  })
  .meta({ id: 'SpeechDraft' });

const settling = z.strictObject({
  draft: id,
  as: z.enum(['accepted', 'corrected', 'split', 'rejected']),
  made: z.array(id),
});

const wordRule = z.strictObject({ id, said: text, means: text, use: z.enum(['part', 'unit']) });

const mark = z.strictObject({
  id,
  at: takenAt,
  by: text,
  how: z.enum(['key', 'word', 'touch']),
  about: id.nullable(),
  speech: id.exactOptional(),
  atS: number.exactOptional(),
});

const photoMark = z.strictObject({
  id,
  photo: id,
  what: z.enum(['pin', 'arrow', 'scale', 'axis', 'length']),
  points: z.array(z.tuple([number, number])),
  words: text,
  lengthM: number.exactOptional(),
  uM: number.exactOptional(),
});
const gateId = z.enum(GATE_IDS).meta({ id: 'GateId' });
const gateRecord = z
  .strictObject({
    id,
    step: id,
    gate: gateId,
    at: text,
    answers: z.array(z.strictObject({ item: text, asWritten: text, x: number.exactOptional() })),
  })
  .meta({ id: 'GateRecord' });
const gateOverride = z.strictObject({ id, step: id, gate: gateId, at: text, who: text, why: text });

const columnIndex = z.int().min(0);
const columnUse = z.discriminatedUnion('use', [
  z.strictObject({ use: z.enum(['label', 'name', 'parent', 'from', 'to', 'skip']) }),
  z.strictObject({
    use: z.literal('property'),
    property: id,
    kind: kind.exactOptional(),
    unit: text.exactOptional(),
    component: z.literal([0, 1, 2]).exactOptional(),
    uColumn: columnIndex.exactOptional(),
    uUnit: text.exactOptional(),
    instrumentColumn: columnIndex.exactOptional(),
    instrument: id.exactOptional(),
    causes: z
      .array(z.strictObject({ cause: id, effect: z.union([number, z.literal('relative')]) }))
      .exactOptional(),
    spreadIfNone: spread.exactOptional(),
  }),
]);

const table = z
  .strictObject({
    id,
    parse: z.literal(1),
    nodeKind: z.enum(['part', 'joint']),
    file: text,
    headings: z.array(text),
    columns: z.array(columnUse),
    firstRow: z.int(),
    rows: z.array(z.array(text)),
    decimal: z.enum(['.', ',']),
    resolved: z.record(text, id),
    root: id,
    condition: id,
    frame: text,
    howWithInstrument: way,
    howWithout: way,
    by: text,
    takenAt,
  })
  .meta({ id: 'TableChunk' });

/** An entry of kind `e` in its version 1. */
const entryOf = <E extends string, S extends z.ZodRawShape>(e: E, shape: S) =>
  z.strictObject({ v: z.literal(1), e: z.literal(e), ...shape });

export const entry = z
  .discriminatedUnion('e', [
    entryOf('study.put', { set: someHeader }),
    entryOf('condition.put', { id, words: text }),
    entryOf('node.add', { node }),
    entryOf('node.move', { id, parent: id }),
    entryOf('node.name', { id, label: text.exactOptional(), name: text.exactOptional() }),
    entryOf('node.retire', { id, why: text }),
    entryOf('link.add', { link }),
    entryOf('link.retire', { id }),
    entryOf('reading.add', { reading }),
    entryOf('reading.withdraw', { id, subject: id, why: text }),
    entryOf('choose', { of: cellRef, reading: id }),
    entryOf('cause.put', { cause }),
    entryOf('instrument.put', { instrument }),
    entryOf('rates.put', { book: rateBook }),
    entryOf('claim.put', { claim }),
    entryOf('claim.withdraw', { id, why: text }),
    entryOf('claim.tie', { tie }),
    entryOf('claim.untie', { id }),
    entryOf('photo.add', { photo }),
    entryOf('speech.add', { speech }),
    entryOf('draft.add', { draft: speechDraft }),
    entryOf('draft.settle', { settling }),
    entryOf('word.put', { rule: wordRule }),
    entryOf('word.drop', { id }),
    entryOf('mark.add', { mark }),
    entryOf('photo.about', { id, subject: id.nullable() }),
    entryOf('photo.mark', { mark: photoMark }),
    entryOf('gate.record', { record: gateRecord }),
    entryOf('gate.override', { override: gateOverride }),
    entryOf('gate.lapse', { lapse: z.strictObject({ id, at: text, why: z.enum(LAPSES) }) }),
    entryOf('step.mark', { mark: z.strictObject({ id, step: id, at: text, done: z.boolean() }) }),
    entryOf('table.add', { table }),
  ])
  .meta({ id: 'Entry' });

export const change = z
  .strictObject({
    id,
    study: id,
    device: id,
    seq: z.int().min(1),
    clock: text,
    by: text,
    gesture: id,
    words: text,
    saw: z.record(text, number),
    undoes: id.exactOptional(),
    entries: z.array(entry),
  })
  .meta({ id: 'Change' });

export const arrived = z
  .strictObject({ at: z.int(), author: text, received: text, change })
  .meta({ id: 'Arrived' });
