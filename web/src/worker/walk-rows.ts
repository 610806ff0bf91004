import { CLAIM_QUESTIONS } from '../../../src/engine/index.ts';
import type { Way } from '../../../src/quantity/index.ts';
import { addSeconds, heardText, usualForm } from '../../../src/speech/index.ts';
import type { Id, Photo, Speech, StandingDraft, StudyView } from '../../../src/study/index.ts';
import { photoOf, type StoryPhoto } from './cell-story.ts';
import type { ClaimRow } from './claim-rows.ts';
import { nodeWords } from './node-words.ts';

/** A draft as the page of the walkaround shows it. */
export interface DraftRow {
  readonly id: Id;
  readonly kind: string;
  readonly words: string;
  readonly about: readonly { readonly id: Id; readonly words: string }[];
  /** Value or term as heard. */
  readonly heard: string;
  readonly how: Way;
  readonly form: 'reading' | 'claim';
  readonly isQuantity: boolean;
}

/** Words of one stretch of speech with all that belongs to their time. */
export interface WalkRow {
  readonly fromS: number;
  /** Minutes and seconds. */
  readonly clock: string;
  readonly who: string;
  readonly text: string;
  readonly drafts: readonly DraftRow[];
  readonly photos: readonly StoryPhoto[];
  readonly marks: number;
  /** Claims and readings that were made of these words. */
  readonly claims: readonly ClaimRow[];
  readonly settled: readonly { readonly id: Id; readonly words: string; readonly as: string }[];
}

export interface Walkaround {
  readonly id: Id;
  readonly file: string;
  readonly film?: string;
  readonly startedAt: string;
  readonly by: string;
  readonly rows: readonly WalkRow[];
  readonly open: number;
}

/** Recordings with their words, drafts, photographs and answers side by side, by the time line. */
export const walkarounds = (view: StudyView, claims: readonly ClaimRow[]): Walkaround[] =>
  view.speeches().map((speech) => walkaroundOf(view, speech, claims));

function walkaroundOf(view: StudyView, speech: Speech, claims: readonly ClaimRow[]): Walkaround {
  const drafts = view.drafts(speech.id);
  const photos = view.photos();
  const rows = speech.cues.map((cue, i): WalkRow => {
    const next = speech.cues[i + 1]?.fromS ?? Number.POSITIVE_INFINITY;
    const isHere = (s: number): boolean => s >= cue.fromS && s < next;
    const own = drafts.filter(({ draft }) => isHere(draft.fromS));
    const [from, to] = [cue.fromS, Math.min(next, cue.toS + 60)].map((s) =>
      addSeconds(speech.startedAt.local, s),
    );
    return {
      fromS: cue.fromS,
      clock: clockOf(cue.fromS),
      who: cue.who ?? '',
      text: cue.text,
      drafts: own.flatMap((d) => (d.settled ? [] : [draftRow(view, d)])),
      photos: photos.filter((p) => isBetween(p, from ?? '', to ?? '')).map(photoOf),
      marks: view.marks().filter((m) => m.speech === speech.id && isHere(m.atS ?? -1)).length,
      claims: claims.filter(({ claim }) =>
        claim.evidence.some((e) => e.speech === speech.id && isHere(e.fromS ?? -1)),
      ),
      settled: own.flatMap(({ draft, settled }) =>
        settled ? [{ id: draft.id, words: draft.words, as: settled.as }] : [],
      ),
    };
  });
  const { id, file, film, by } = speech;
  return {
    ...{ id, file, by, rows, startedAt: speech.startedAt.local },
    ...(film === undefined ? {} : { film }),
    open: drafts.filter((d) => !d.settled).length,
  };
}

const isBetween = ({ takenAt }: Photo, from: string, to: string): boolean => {
  const at = addSeconds(takenAt.local, 0);
  return at >= from && at < to;
};

const clockOf = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;

function draftRow(view: StudyView, { draft }: StandingDraft): DraftRow {
  const { id, kind, words, how } = draft;
  return {
    ...{ id, kind, words, how },
    about: draft.about.map((node) => {
      const found = view.node(node);
      return { id: node, words: found ? nodeWords(found) : node };
    }),
    heard: heardText(draft),
    form: usualForm(draft),
    isQuantity: draft.quantity !== undefined,
  };
}

/** What may answer a claim of this kind, with the value that was heard where there was one. */
export interface TieHint {
  readonly question: string;
  readonly output: string;
  readonly is: 'at least' | 'at most';
  readonly value: string;
}

/** Comparisons that hold where the number is small. */
const LESS: ReadonlySet<string> = new Set(['lighter', 'cheaper', 'thinner', 'softer', 'smaller']);

/** A question for a claim made of speech; undefined where its kind has none. */
export function tieHint(
  view: StudyView,
  { id, kind, evidence }: ClaimRow['claim'],
): TieHint | undefined {
  const [first] = CLAIM_QUESTIONS[kind ?? ''] ?? [];
  if (!first) return undefined;
  const drafts = evidence.flatMap((e) => (e.speech === undefined ? [] : view.drafts(e.speech)));
  const own = drafts.find((d) => d.settled?.made.includes(id))?.draft;
  const is = LESS.has(own?.term ?? '') ? 'at most' : first.is;
  return { ...first, is, value: own?.quantity ? heardText(own) : '' };
}
