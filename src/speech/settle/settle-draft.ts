import {
  type Kind,
  parseQuantity,
  type Spread,
  type Value,
  type Way,
} from '../../quantity/index.ts';
import {
  type Claim,
  type DraftQuantity,
  type Entry,
  type Evidence,
  type Id,
  type Reading,
  RefusalError,
  type Speech,
  type SpeechDraft,
  type StudyView,
} from '../../study/index.ts';
import { addSeconds } from './speech-entries.ts';

/** What a person says of a draft; what is left out stays as it was heard. */
export interface Accepted {
  readonly draft: Id;
  readonly subject?: Id;
  /** Value with its unit as typed, for a quantity that was misheard. */
  readonly value?: string;
  readonly property?: string;
  readonly how?: Way;
  /** Needed where the value was measured. */
  readonly instrument?: string;
  readonly as?: 'reading' | 'claim';
}

export interface Act {
  readonly words: string;
  readonly entries: Entry[];
  /** Id of the reading or claim that was made. */
  readonly made: readonly Id[];
}

/** Property under which a spoken quantity is kept when its words name none. */
const BY_KIND: Readonly<Partial<Record<Kind, string>>> = { mass: 'mass', count: 'countOf.element' };
/** Kinds of drafts that state a property of a part in words. */
const IN_WORDS: Readonly<Record<string, string>> = { material: 'material', process: 'process' };

/** A reading where the draft gives a value or a property of one part; else a claim. */
export const usualForm = (draft: SpeechDraft): 'reading' | 'claim' =>
  (draft.quantity && draft.quantity.kind !== 'specificEnergy') || IN_WORDS[draft.kind] !== undefined
    ? 'reading'
    : 'claim';

/**
 * What accepting a draft puts into the study: a reading or a claim with its words and time as
 * evidence, and the draft settled. Nothing of it was in the study before.
 * @throws RefusalError when it is settled already, when it is open which part is meant, when a
 *   measured value has no instrument, or when the typed value can not be read.
 */
export function acceptDraft(view: StudyView, said: Accepted, by: string, ids: () => Id): Act {
  const { draft, speech } = openDraft(view, said.draft);
  const form = said.as ?? usualForm(draft);
  const made =
    form === 'reading'
      ? readingOf(view, draft, speech, said, by, ids())
      : claimOf(draft, speech, said, by, ids());
  const id =
    made.e === 'reading.add' ? made.reading.id : made.e === 'claim.put' ? made.claim.id : '';
  const isMended = [said.subject, said.value, said.property, said.how].some((x) => x !== undefined);
  return {
    words: `accept draft: ${draft.words}`,
    entries: [
      ...instrumentEntries(view, said.instrument),
      made,
      {
        v: 1,
        e: 'draft.settle',
        settling: { draft: draft.id, as: isMended ? 'corrected' : 'accepted', made: [id] },
      },
    ],
    made: [id],
  };
}

function openDraft(view: StudyView, id: Id): { draft: SpeechDraft; speech: Speech } {
  const standing = view.draft(id);
  const speech = view.speeches().find((one) => one.id === standing?.draft.speech);
  if (!standing || !speech)
    throw refusal('not-found', 'draft', id, 'there is no such draft', 'Read the speech again.');
  if (standing.settled)
    throw refusal(
      'conflict',
      'draft',
      standing.draft.words,
      `the draft was ${standing.settled.as} already`,
      'Undo that first, in the history.',
    );
  return { draft: standing.draft, speech };
}

const refusal = (
  code: 'not-found' | 'conflict' | 'bad-value',
  column: string,
  value: string,
  why: string,
  next: string,
): RefusalError => new RefusalError({ code, place: { column }, value, why, next });

const instrumentEntries = (view: StudyView, label: string | undefined): Entry[] =>
  label === undefined ||
  label.trim() === '' ||
  view.instruments().some((i) => i.id === label || i.label === label)
    ? []
    : [{ v: 1, e: 'instrument.put', instrument: { id: label.trim(), label: label.trim() } }];

function readingOf(
  view: StudyView,
  draft: SpeechDraft,
  speech: Speech,
  said: Accepted,
  by: string,
  id: Id,
): Entry {
  const how = said.how ?? draft.how;
  const instrument = said.instrument?.trim() ?? '';
  if (how === 'measured' && instrument === '')
    throw refusal(
      'bad-value',
      'instrument',
      draft.words,
      'a measured value names no instrument',
      'Name the gauge or scale, or say how else it is known.',
    );
  const subject = onlyPart(draft, said);
  const value = heardValue(draft, said);
  const property =
    said.property ??
    draft.quantity?.property ??
    BY_KIND[draft.quantity?.kind ?? 'ratio'] ??
    IN_WORDS[draft.kind] ??
    `heard.${draft.quantity?.kind ?? draft.kind}`;
  const reading: Reading = {
    id,
    of: { subject, property, condition: view.header.condition },
    value,
    asWritten: said.value ?? draft.words,
    how,
    by: draft.who ?? by,
    takenAt: { ...speech.startedAt, local: addSeconds(speech.startedAt.local, draft.fromS) },
    ...(instrument === ''
      ? {}
      : { instrument: view.instruments().find((i) => i.label === instrument)?.id ?? instrument }),
    evidence: [evidenceOf(draft)],
    causes: [],
  };
  return { v: 1, e: 'reading.add', reading };
}

/** @throws RefusalError when it is open which part is meant. */
function onlyPart(draft: SpeechDraft, said: Accepted): Id {
  const [only, second] = said.subject === undefined ? draft.about : [said.subject];
  if (only !== undefined && second === undefined) return only;
  throw refusal(
    'bad-value',
    'part',
    draft.words,
    only === undefined ? 'nothing says which part this is of' : 'left or right was not said',
    'Choose the part, or split the draft.',
  );
}

function heardValue({ quantity, term, words }: SpeechDraft, { value }: Accepted): Value {
  if (!quantity) return { t: 'text', text: value ?? term ?? words };
  if (value !== undefined) {
    const read = parseQuantity(value, quantity.kind, { unit: quantity.unit });
    if (!read.ok) throw refusal('bad-value', 'value', value, read.why, read.next);
    const { x, spread } = read.value;
    return quantity.kind === 'count' ? { t: 'count', n: x, spread } : read.value;
  }
  const x = (quantity.low + quantity.high) / 2;
  const spread = spreadOf(quantity);
  return quantity.kind === 'count'
    ? { t: 'count', n: x, spread }
    : { t: 'scalar', kind: quantity.kind, x, spread };
}

/** A range is rectangular between its ends; a plain count is exact; of all else nothing is known. */
function spreadOf({ low, high, kind, loose }: DraftQuantity): Spread {
  if (high > low) return { s: 'rectangular', half: (high - low) / 2 };
  return kind === 'count' && !loose ? { s: 'exact' } : { s: 'unknown' };
}

function claimOf(draft: SpeechDraft, speech: Speech, said: Accepted, by: string, id: Id): Entry {
  const how = said.how ?? draft.how;
  const claim: Claim = {
    id,
    words: draft.around,
    // A claim is never measured: what was read off an instrument is a reading.
    how: how === 'measured' ? 'seen' : how,
    by: draft.who ?? by,
    heard: addSeconds(speech.startedAt.local, draft.fromS),
    about: said.subject === undefined ? draft.about : [said.subject],
    evidence: [evidenceOf(draft)],
    kind: draft.claim ?? (draft.quantity ? draft.quantity.kind : draft.kind),
    ...(draft.kind === 'reason' ? { reason: NO_REASON } : {}),
  };
  return { v: 1, e: 'claim.put', claim };
}

const NO_REASON: NonNullable<Claim['reason']> = {
  rule: '',
  market: '',
  date: '',
  applies: 'not known',
  exemptions: '',
  refutedBy: '',
};

const evidenceOf = (draft: SpeechDraft): Evidence => ({
  speech: draft.speech,
  fromS: draft.fromS,
  toS: draft.toS,
  words: draft.words,
});

/** Settles a draft as nothing for the record. */
export function rejectDraft(view: StudyView, id: Id): Act {
  const { draft } = openDraft(view, id);
  return {
    words: `reject draft: ${draft.words}`,
    entries: [{ v: 1, e: 'draft.settle', settling: { draft: id, as: 'rejected', made: [] } }],
    made: [],
  };
}

/** A draft of several parts becomes one of each. */
export function splitDraft(view: StudyView, id: Id, ids: () => Id): Act {
  const { draft } = openDraft(view, id);
  if (draft.about.length < 2)
    throw refusal(
      'bad-value',
      'part',
      draft.words,
      'the draft is of one part or none',
      'Accept it, or choose another part.',
    );
  const parts = draft.about.map((part): SpeechDraft => ({ ...draft, id: ids(), about: [part] }));
  const made = parts.map((part) => part.id);
  return {
    words: `split draft: ${draft.words}`,
    entries: [
      ...parts.map((part): Entry => ({ v: 1, e: 'draft.add', draft: part })),
      { v: 1, e: 'draft.settle', settling: { draft: id, as: 'split', made } },
    ],
    made,
  };
}
