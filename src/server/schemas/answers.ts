import { z } from 'zod';
import {
  cellRef,
  claim,
  finding,
  kind,
  number,
  place,
  spread,
  tie,
  way,
} from '../../schema/index.ts';
import { figure } from './figures.ts';

/** What a question answers: the same shapes as in src/engine, which a test of types holds to. */
const text = z.string();
const uncertainty = z.union([number, z.literal('incomplete')]);
const howKnown = z.union([way, z.enum(['assumed', 'exact'])]);

const decisionWords = [
  'different',
  'indicated',
  'not distinguishable',
  'holds',
  'not proven',
  'fails',
] as const;

export const decision = z
  .strictObject({
    word: z.enum(decisionWords),
    d: number,
    u: number,
    dof: number.nullable(),
    rule: text,
    direction: text.exactOptional(),
  })
  .meta({ id: 'Decision' });

const out = z
  .strictObject({
    name: text,
    symbol: text,
    meaning: text,
    kind,
    unit: text,
    x: number,
    u: uncertainty,
    knownU: number,
    dof: number.nullable(),
    meanShift: number,
    linear: z.array(z.tuple([text, number])),
    decision: decision.exactOptional(),
    missing: z.array(place),
    unknownSpread: z.array(place),
    secondOrderU: number.exactOptional(),
    doubts: z.array(text),
  })
  .meta({ id: 'Out' });

const step = z
  .strictObject({
    symbol: text,
    meaning: text,
    shown: text,
    kind,
    unit: text,
    x: number,
    u: uncertainty,
    how: howKnown.exactOptional(),
    place: place.exactOptional(),
  })
  .meta({ id: 'StepRow' });

const group = z.strictObject({
  group: text,
  terms: z.record(
    text,
    z.strictObject({ x: number, u: number, missing: number, unknownSpread: number }),
  ),
  rows: number,
  missing: number,
});

const detail = z.strictObject({
  title: text,
  columns: z.array(
    z.strictObject({ name: text, unit: text.exactOptional(), kind: kind.exactOptional() }),
  ),
  rows: z.array(z.array(z.union([text, number]))),
});

const basis = z.strictObject({
  study: text.exactOptional(),
  revision: text.exactOptional(),
  subject: text.exactOptional(),
  conditions: z.array(text),
  rates: text.exactOptional(),
  currency: text.exactOptional(),
  invented: z.boolean().exactOptional(),
});

const variableKinds = [
  'reading',
  'given',
  'gain',
  'offset',
  'frame',
  'rate',
  'density',
  'model',
  'specimen',
] as const;

const variable = z
  .strictObject({
    id: text,
    label: text,
    what: z.enum(variableKinds),
    of: cellRef.exactOptional(),
    spread,
    u: number,
    shift: number,
    dof: number.nullable(),
    place,
  })
  .meta({ id: 'Variable' });

export const source = z
  .strictObject({
    title: text,
    at: text.exactOptional(),
    status: z.enum(['published', 'common practice, no source', 'from memory']),
  })
  .meta({ id: 'Source' });

export const caution = z
  .strictObject({ id: text, words: text, source: text })
  .meta({ id: 'Caution' });

export const answer = z
  .strictObject({
    question: text,
    version: number,
    key: text,
    title: text,
    wording: text,
    outs: z.record(text, out),
    steps: z.array(step),
    groups: z.array(group).exactOptional(),
    detail: detail.exactOptional(),
    further: z.array(detail).exactOptional(),
    figures: z.array(figure).exactOptional(),
    findings: z.array(finding),
    basis,
    variables: z.record(text, variable),
    sources: z.array(source),
    assumptions: z.array(text),
    cautions: z.array(caution),
    reads: z.array(z.strictObject({ of: cellRef, there: z.boolean() })),
  })
  .meta({ id: 'Answer' });

export const claimState = z
  .strictObject({
    claim,
    tie: tie.exactOptional(),
    state: z.enum(['open', 'answered']),
    out: out.exactOptional(),
    answer: answer.exactOptional(),
    decision: decision.exactOptional(),
    lacks: z.array(text),
  })
  .meta({ id: 'ClaimState' });

export const studyAnswers = z
  .strictObject({
    answers: z.array(answer),
    refused: z.array(
      z.strictObject({
        question: z.strictObject({ id: z.string(), title: z.string() }),
        why: z.string(),
      }),
    ),
    claims: z.array(claimState),
  })
  .meta({ id: 'StudyAnswers' });
