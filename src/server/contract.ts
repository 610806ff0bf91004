/**
 * What the pages and the server say to each other: schemas of requests and answers, from which
 * validation, the OpenAPI document and these types are all made. Everything is JSON under /api,
 * quantities in SI. Free of Node, so that the pages may import it.
 */
import { z } from 'zod';
import { arrived, change, id, refusal, sha256 } from '../schema/index.ts';
import { answer, studyAnswers } from './schemas/answers.ts';
import { overrides, preview, tableForm } from './schemas/imports.ts';
import { question, writtenInputs } from './schemas/questions.ts';

/** Read-only all the way down, as the rest of the project has its values. */
export type Frozen<T> = T extends object ? { readonly [K in keyof T]: Frozen<T[K]> } : T;
type Shape<S extends z.ZodType> = Frozen<z.infer<S>>;

/** A request that can't be served; its status is the one of the first refusal. */
export const refusalsAnswer = z
  .strictObject({ refusals: z.tuple([refusal], refusal) })
  .meta({ id: 'Refusals' });
/** Our own fault, logged under this id. */
export const defectAnswer = z.strictObject({ defect: z.string() }).meta({ id: 'Defect' });

/** GET /api/about */
export const aboutAnswer = z.strictObject({
  name: z.string(),
  version: z.string(),
  node: z.string(),
  /** Why the library can only be read; absent when it can be written. */
  readOnly: z.string().exactOptional(),
});

/** What is known of a study without folding it. */
export const studyHead = z
  .strictObject({
    study: id,
    title: z.string(),
    vehicle: z.string(),
    invented: z.boolean(),
    changes: z.number(),
    parts: z.number(),
    clock: z.string(),
  })
  .meta({ id: 'StudyHead' });

/** GET /api/studies */
export const studiesAnswer = z.strictObject({ studies: z.array(studyHead) });

const words = z.string().trim().min(1).max(200);
/** POST /api/studies */
export const newStudy = z.strictObject({
  title: words,
  vehicle: words,
  invented: z.boolean().exactOptional(),
  by: words.exactOptional(),
});
export const newStudyAnswer = z.strictObject({ study: id });

/** Path of every route below one study: its id. */
export const studyPath = z.strictObject({ study: id });

/** GET /api/studies/:study/changes?after=0&limit=500: what arrived after the number `after`. */
export const changesQuery = z.strictObject({
  after: z.coerce.number().int().min(0).default(0),
  limit: z.coerce.number().int().min(1).max(5000).default(500),
});
export const changesAnswer = z.strictObject({
  changes: z.array(arrived),
  /** `after` of the next call; the same as before when nothing was new. */
  next: z.int(),
});

/** POST /api/studies/:study/changes: all or nothing; the same change twice changes nothing. */
export const changesPost = z.strictObject({ changes: z.array(change).min(1).max(5000) });
/** Comes once the changes are on disk. */
export const ackAnswer = z.strictObject({ cursor: z.int(), added: z.int() }).meta({ id: 'Ack' });

const page = z.strictObject({
  page: id,
  by: z.string().trim().min(1).max(200),
  part: id.exactOptional(),
});
/** POST /api/studies/:study/here: an open page tells of itself every few seconds. */
export const herePost = page;
export const hereAnswer = z.strictObject({
  others: z.array(page.extend({ device: z.string() }).meta({ id: 'Here' })),
});

/** GET /api/questions */
export const questionsAnswer = z.strictObject({ questions: z.array(question) });

/**
 * POST /api/ask: of values as written, or of a study with values written over what it has.
 * `subject` and `rates` belong to a study; without `subject` every node it can be asked of.
 */
export const askPost = z.strictObject({
  question: id,
  study: id.exactOptional(),
  subject: id.exactOptional(),
  rates: id.exactOptional(),
  values: writtenInputs.exactOptional(),
});
export const askAnswer = z.strictObject({ answers: z.array(answer) });

/** GET /api/studies/:study/answers */
export const studyAnswersAnswer = studyAnswers;

/** What one query parameter holds as JSON text. */
const inJson = <S extends z.ZodType>(schema: S) => z.string().pipe(parsed).pipe(schema);
const parsed = z.transform((text: string, context): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    context.issues.push({ code: 'custom', message: 'the text is no JSON', input: text });
    return z.NEVER;
  }
});

/**
 * POST /api/studies/:study/import?form=parts&file=parts.csv&dry=1: the body is the file. With
 * `dry` nothing is written, and problems stand in the preview; without, they are refusals.
 */
export const importQuery = z.strictObject({
  form: tableForm,
  file: words,
  dry: z.enum(['0', '1']).exactOptional(),
  by: words.exactOptional(),
  overrides: inJson(overrides).exactOptional(),
  /** Of a workbook; its first when absent. */
  sheet: words.exactOptional(),
});
export const importAnswer = z.strictObject({
  preview,
  imported: z.strictObject({ rows: z.int(), changes: z.int() }).exactOptional(),
});

/** POST /api/bundles?file=van.hoist.zip: the body is the bundle; all of it is checked first. */
export const bundleQuery = z.strictObject({ file: words, by: words.exactOptional() });
export const bundleAnswer = z.strictObject({
  study: id,
  title: z.string(),
  changes: z.int(),
  added: z.int(),
  blobs: z.int(),
  addedBlobs: z.int(),
  missing: z.array(sha256),
});

/** POST /api/pair, on the network only: the code that the desk shows, with or without its blank. */
export const pairPost = z.strictObject({
  code: z.string().regex(/^[\d ]{6,12}$/, 'a code is eight digits'),
  name: z.string().trim().min(1).max(60),
});
const pairedDevice = z
  .strictObject({ id, name: z.string(), paired: z.string() })
  .meta({ id: 'PairedDevice' });
/** The token is given out here and never again. */
export const pairAnswer = z.strictObject({ token: z.string(), device: pairedDevice });

/** POST /api/pairing, on this machine only. */
export const pairingAnswer = z.strictObject({
  code: z.string(),
  /** ISO 8601, UTC. */
  expires: z.string(),
  /** To open on the device; `/trust` and `/pair` below each. */
  addresses: z.array(z.string()),
  /** SHA-256 of the authority's certificate, for the eye. */
  fingerprint: z.string(),
});

/** GET /api/devices, DELETE /api/devices/:device, on this machine only. */
export const devicesAnswer = z.strictObject({ devices: z.array(pairedDevice) });
export const devicePath = z.strictObject({ device: id });

/** PUT /api/blobs */
export const blobAnswer = z.strictObject({ hash: sha256 });
export const blobPath = z.strictObject({ hash: sha256 });

export type RefusalsAnswer = Shape<typeof refusalsAnswer>;
export type DefectAnswer = Shape<typeof defectAnswer>;
export type AboutAnswer = Shape<typeof aboutAnswer>;
export type StudiesAnswer = Shape<typeof studiesAnswer>;
export type NewStudy = Shape<typeof newStudy>;
export type NewStudyAnswer = Shape<typeof newStudyAnswer>;
export type ChangesAnswer = Shape<typeof changesAnswer>;
export type ChangesPost = Shape<typeof changesPost>;
export type AckAnswer = Shape<typeof ackAnswer>;
export type HerePost = Shape<typeof herePost>;
export type HereAnswer = Shape<typeof hereAnswer>;
export type QuestionsAnswer = Shape<typeof questionsAnswer>;
export type AskPost = Shape<typeof askPost>;
export type AskAnswer = Shape<typeof askAnswer>;
export type StudyAnswersAnswer = Shape<typeof studyAnswersAnswer>;
export type ImportQuery = Shape<typeof importQuery>;
export type ImportAnswer = Shape<typeof importAnswer>;
export type BundleAnswer = Shape<typeof bundleAnswer>;
export type PairPost = Shape<typeof pairPost>;
export type PairAnswer = Shape<typeof pairAnswer>;
export type PairingAnswer = Shape<typeof pairingAnswer>;
export type DevicesAnswer = Shape<typeof devicesAnswer>;
export type BlobAnswer = Shape<typeof blobAnswer>;
