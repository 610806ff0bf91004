import {
  type Accepted,
  acceptDraft,
  ENGLISH,
  readSpeech,
  rejectDraft,
  speechEntries,
  splitDraft,
} from '../../../src/speech/index.ts';
import {
  type Entry,
  type Finding,
  type Id,
  type Mark,
  RefusalError,
  type StudyView,
  ulid,
} from '../../../src/study/index.ts';

/** Timed speech as it is handed in. */
export interface SpeechFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Local time of second zero, ISO 8601. */
  readonly startedAt: string;
  readonly film?: string;
}

export interface MarkSpec {
  readonly how: Mark['how'];
  readonly about: Id | null;
  /** Where the film or the words stand. */
  readonly speech?: Id;
  readonly atS?: number;
  /** Local time, ISO 8601. */
  readonly local: string;
}

/** What is done with speech and its drafts. */
export type SpokenAct =
  | { readonly do: 'add'; readonly file: SpeechFile }
  | { readonly do: 'accept'; readonly said: Accepted }
  | { readonly do: 'reject' | 'split'; readonly draft: Id }
  | { readonly do: 'word'; readonly said: string; readonly part: Id }
  | { readonly do: 'mark'; readonly mark: MarkSpec };

interface Recorded {
  readonly words: string;
  readonly entries: Entry[];
}
type Record = (act: Recorded) => Promise<void>;

const freshId = (): Id => ulid(Date.now(), Math.random);
const LOCAL = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?$/;

/** Puts it into the record; returns what was doubtful in a file that was handed in. */
export async function doSpoken(
  view: StudyView,
  act: SpokenAct,
  by: string,
  record: Record,
): Promise<readonly Finding[]> {
  if (act.do === 'add') {
    const { findings, ...added } = speechOf(view, act.file, by);
    await record(added);
    return findings;
  }
  await record(recordedOf(view, act, by));
  return [];
}

function recordedOf(view: StudyView, act: Exclude<SpokenAct, { do: 'add' }>, by: string): Recorded {
  switch (act.do) {
    case 'accept':
      return acceptDraft(view, act.said, by, freshId);
    case 'reject':
      return rejectDraft(view, act.draft);
    case 'split':
      return splitDraft(view, act.draft, freshId);
    case 'word':
      return wordOf(view, act.said, act.part);
    case 'mark':
      return markOf(act.mark, by);
  }
}

function speechOf(
  view: StudyView,
  { name, bytes, startedAt, film }: SpeechFile,
  by: string,
): Recorded & { readonly findings: readonly Finding[] } {
  if (!LOCAL.test(startedAt))
    throw new RefusalError({
      code: 'bad-value',
      place: { column: 'started' },
      value: startedAt,
      why: 'the recording needs the local time at which it started',
      next: 'Give date and time.',
    });
  const read = readSpeech(bytes, name);
  const cues = read.cues.map(({ line: _line, ...cue }) => cue);
  const speech = {
    ...{ id: freshId(), file: name, cues, startedAt: { local: startedAt }, by },
    ...(film === undefined ? {} : { film }),
  };
  const entries = speechEntries(view, speech, ENGLISH, freshId);
  return { words: `walkaround: ${name}`, entries, findings: read.findings };
}

function wordOf(view: StudyView, said: string, part: Id): Recorded {
  const means = view.node(part)?.label ?? part;
  const rule = { id: freshId(), said: said.trim().toLowerCase(), means, use: 'part' as const };
  return { words: `"${said}" means ${means}`, entries: [{ v: 1, e: 'word.put', rule }] };
}

function markOf({ how, about, speech, atS, local }: MarkSpec, by: string): Recorded {
  const mark: Mark = {
    ...{ id: freshId(), at: { local }, by, how, about },
    ...(speech === undefined ? {} : { speech }),
    ...(atS === undefined ? {} : { atS }),
  };
  return { words: 'mark', entries: [{ v: 1, e: 'mark.add', mark }] };
}
