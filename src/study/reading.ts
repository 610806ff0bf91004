import type { Kind, Spread, Value, Way } from '../quantity/index.ts';
import type { BlobRef, Id } from './ids.ts';

/** Names a measurable thing about a node: see properties.ts for the ones with a meaning. */
export type PropertyId = string;

/** What is asked of a node: one property, in one condition and, where it matters, one posture. */
export interface CellRef {
  readonly subject: Id;
  readonly property: PropertyId;
  readonly condition: Id;
  readonly posture?: Id;
}

/** Where one can see or hear it: a photograph, or a stretch of film or speech with its words. */
export interface Evidence {
  readonly blob?: BlobRef;
  /** Timed speech it was heard in. */
  readonly speech?: Id;
  /** Seconds from the start, for film and speech. */
  readonly fromS?: number;
  readonly toS?: number;
  readonly words?: string;
}

/** A share of a reading's error that other readings have too: value = nominal + own + Σ effect × cause. */
export interface CauseShare {
  readonly cause: Id;
  /** Change of the reading for a change of one of the cause, in SI of both. */
  readonly effect: number;
}

/**
 * One value of one thing, and how well it is known. Never overwritten: a second reading stands
 * beside the first.
 */
export interface Reading {
  readonly id: Id;
  readonly of: CellRef;
  readonly value: Value;
  /** What was typed, said or found in the file, word for word. */
  readonly asWritten: string;
  /** What its taker noted beside it. */
  readonly note?: string;
  readonly how: Way;
  readonly by: string;
  readonly takenAt: { readonly local: string; readonly zone?: string };
  readonly instrument?: Id;
  readonly evidence: readonly Evidence[];
  readonly causes: readonly CauseShare[];
  /** Where it came in, when by a table: file, row and column. */
  readonly source?: { readonly file: string; readonly row: number; readonly column: string };
}

/** What readings share: a scale's gain, a frame's offset, a rate, a density, a formula's own error, one specimen. */
export interface Cause {
  readonly id: Id;
  readonly what: 'gain' | 'offset' | 'frame' | 'rate' | 'density' | 'model' | 'specimen';
  readonly kind: Kind;
  readonly spread: Spread;
  readonly label: string;
}
