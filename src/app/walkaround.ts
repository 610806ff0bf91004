import {
  type Accepted,
  acceptDraft,
  ENGLISH,
  packWith,
  readDrafts,
  readSpeech,
  rejectDraft,
  type SpeechReading,
  speechEntries,
  splitDraft,
  spokenParts,
  type TimedSpeech,
} from '../speech/index.ts';
import { type Id, RefusalError, type StandingDraft, type StudyView } from '../study/index.ts';
import type { Library } from './library.ts';

/** What a file of timed speech would become; nothing is written. */
export function previewWalkaround(
  view: StudyView,
  bytes: Uint8Array,
  file: string,
): { readonly speech: TimedSpeech; readonly reading: SpeechReading } {
  const speech = readSpeech(bytes, file);
  const pack = packWith(ENGLISH, view.wordRules());
  return { speech, reading: readDrafts(speech.cues, spokenParts(view), pack) };
}

export interface NewWalkaround {
  readonly file: string;
  readonly bytes: Uint8Array;
  /** Local time of second zero, ISO 8601. */
  readonly startedAt: string;
  readonly by: string;
  readonly film?: string;
}

/** Keeps timed speech and its drafts as one gesture. Drafts are no readings until accepted. */
export async function importWalkaround(
  library: Library,
  study: Id,
  { file, bytes, startedAt, by, film }: NewWalkaround,
): Promise<{ readonly speech: Id; readonly drafts: number; readonly read: TimedSpeech }> {
  const view = await library.view(study);
  const read = readSpeech(bytes, file);
  if (view.speeches().some((one) => one.file === file && one.startedAt.local === startedAt))
    throw refusal(
      'conflict',
      'file',
      file,
      'this recording is in the study already',
      'Name another file, or another start.',
    );
  const id = library.newStudy();
  const cues = read.cues.map(({ line: _line, ...cue }) => cue);
  const speech = {
    id,
    file,
    ...(film === undefined ? {} : { film }),
    cues,
    startedAt: { local: startedAt },
    by,
  };
  const entries = speechEntries(view, speech, ENGLISH, () => library.newStudy());
  await library.record(study, by, `walkaround: ${file}`, entries);
  return { speech: id, drafts: entries.filter((e) => e.e === 'draft.add').length, read };
}

/** Every draft of a study by its number in the order of recordings and words, from 1. */
export const numberedDrafts = (view: StudyView): readonly StandingDraft[] =>
  view.speeches().flatMap((speech) => view.drafts(speech.id));

/** @throws RefusalError `not-found`. */
function draftNumbered(view: StudyView, number: string): StandingDraft {
  const drafts = numberedDrafts(view);
  const draft = drafts[Number(number) - 1] ?? view.draft(number);
  if (draft) return draft;
  throw refusal(
    'not-found',
    'draft',
    number,
    'there is no draft of this number',
    `There are 1 to ${drafts.length}.`,
  );
}

const refusal = (
  code: 'not-found' | 'conflict',
  column: string,
  value: string,
  why: string,
  next: string,
): RefusalError => new RefusalError({ code, place: { column }, value, why, next });

/** Accepts, with what was misheard put right; returns the id of the reading or claim. */
export async function acceptNumbered(
  library: Library,
  study: Id,
  number: string,
  said: Omit<Accepted, 'draft'>,
  by: string,
): Promise<Id> {
  const view = await library.view(study);
  const { draft } = draftNumbered(view, number);
  const act = acceptDraft(view, { ...said, draft: draft.id }, by, () => library.newStudy());
  await library.record(study, by, act.words, act.entries);
  return act.made[0] ?? draft.id;
}

export async function rejectNumbered(
  library: Library,
  study: Id,
  number: string,
  by: string,
): Promise<void> {
  const view = await library.view(study);
  const act = rejectDraft(view, draftNumbered(view, number).draft.id);
  await library.record(study, by, act.words, act.entries);
}

export async function splitNumbered(
  library: Library,
  study: Id,
  number: string,
  by: string,
): Promise<void> {
  const view = await library.view(study);
  const act = splitDraft(view, draftNumbered(view, number).draft.id, () => library.newStudy());
  await library.record(study, by, act.words, act.entries);
}

/** Keeps what people say in this study for a part of it: the next speech is read by it. */
export async function keepWord(
  library: Library,
  study: Id,
  said: string,
  means: string,
  by: string,
): Promise<void> {
  const rule = {
    id: library.newStudy(),
    said: said.trim().toLowerCase(),
    means,
    use: 'part' as const,
  };
  await library.record(study, by, `"${said}" means ${means}`, [{ v: 1, e: 'word.put', rule }]);
}
