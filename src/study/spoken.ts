import type { Kind, Way } from '../quantity/index.ts';
import type { Id } from './ids.ts';
import type { Reading } from './reading.ts';

/** Words of a recording between two times. */
export interface SpokenCue {
  /** Seconds from the start of the recording. */
  readonly fromS: number;
  readonly toS: number;
  readonly who?: string;
  readonly text: string;
}

/** Timed speech of one recording, as it was read from its file. */
export interface Speech {
  readonly id: Id;
  /** File the words came from. */
  readonly file: string;
  /** The film or sound that was recorded, by its file's name, where one is kept. */
  readonly film?: string;
  readonly cues: readonly SpokenCue[];
  /** Local time of second zero, so that photographs and marks find their words. */
  readonly startedAt: Reading['takenAt'];
  readonly by: string;
}

/** A number as heard, both ends in SI. */
export interface DraftQuantity {
  readonly low: number;
  readonly high: number;
  readonly kind: Kind;
  /** UCUM code it was said in; '1' for a count. */
  readonly unit: string;
  /** A range or a rounded amount. */
  readonly loose: boolean;
  readonly property?: string;
}

/** What the reader made of some words. No reading and no claim until somebody accepts it. */
export interface SpeechDraft {
  readonly id: Id;
  readonly speech: Id;
  readonly kind: string;
  readonly fromS: number;
  readonly toS: number;
  readonly who?: string;
  readonly words: string;
  /** The words with some before and behind. */
  readonly around: string;
  /** What it is about; several where it was not said which of them. */
  readonly about: readonly Id[];
  readonly quantity?: DraftQuantity;
  /** Material, process, joint, direction, comparison, frequency or reason, in the record's words. */
  readonly term?: string;
  /** Kind of claim that a comparison makes. */
  readonly claim?: string;
  readonly how: Way;
}

/** How a draft was settled, and what became of it. */
export interface DraftSettling {
  readonly draft: Id;
  readonly as: 'accepted' | 'corrected' | 'split' | 'rejected';
  /** Readings, claims, or drafts that it became. */
  readonly made: readonly Id[];
}

/** A rule that people gave: what is said in this study, and what it means. */
export interface WordRule {
  readonly id: Id;
  /** As a recogniser writes it. */
  readonly said: string;
  /** Number of a part, or a UCUM unit. */
  readonly means: string;
  readonly use: 'part' | 'unit';
}

/** A moment that somebody marked without a hand to write: words, photographs and part are tied to it. */
export interface Mark {
  readonly id: Id;
  readonly at: Reading['takenAt'];
  readonly by: string;
  readonly how: 'key' | 'word' | 'touch';
  /** Part in hand then; null when none was. */
  readonly about: Id | null;
  readonly speech?: Id;
  /** Seconds into that speech. */
  readonly atS?: number;
}

/** Something put on a photograph; the photograph itself stays as it is. */
export interface PhotoMark {
  readonly id: Id;
  readonly photo: Id;
  readonly what: 'pin' | 'arrow' | 'scale' | 'axis' | 'length';
  /** Pixels from the upper left corner: one point for a pin, two for the others. */
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly words: string;
  /** Of a scale: metres between its points, and their standard uncertainty. */
  readonly lengthM?: number;
  readonly uM?: number;
}

/** A draft with what became of it. */
export interface StandingDraft {
  readonly draft: SpeechDraft;
  readonly settled?: DraftSettling;
}
