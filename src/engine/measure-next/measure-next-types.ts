import type { Kind } from '../../quantity/index.ts';
import type { CellRef, Id, Place } from '../../study/index.ts';
import type { Decision, Run, Variable } from '../method.ts';

/** How narrow a total is wanted, as one standard uncertainty: SI, or over its value. */
export type Width = { readonly u: number } | { readonly relative: number };

export interface Ask {
  readonly question: string;
  readonly output: string;
  /** Node by id or number; the study's root when absent. */
  readonly subject?: Id;
  readonly width: Width;
}

/** An instrument that could be taken to hand: one reading's spread and its work. */
export interface AtHand {
  readonly label: string;
  readonly kind: Kind;
  readonly betters: 'reading' | 'gain' | 'rate';
  /** Fixed part, SI, and share of the value. */
  readonly u: number;
  readonly relativeU: number;
  readonly minutes: number;
  readonly range: readonly [low: number, high: number];
  /** Beginnings of the properties that it is there for; any of its kind when absent. */
  readonly properties?: readonly string[];
}

export interface MeasureNextOptions {
  /** Totals and how narrow they are wanted; the usual ones when absent. */
  readonly asks?: readonly Ask[];
  /** Instruments at hand; those of the study and the usual ones when absent. */
  readonly instruments?: readonly AtHand[];
  readonly rates?: string;
  /** Readings told at most, of those that lack and of those that narrow; 20 when absent. */
  readonly limit?: number;
  readonly run?: Run;
}

/** Something that is not settled: a claim without a settled word, a total that is wider than asked. */
export interface OpenThing {
  readonly about: 'claim' | 'margin' | 'total';
  /** The claim's words, or what the output means. */
  readonly words: string;
  readonly question: string;
  readonly subject: Id;
  readonly output: string;
  readonly kind: Kind;
  readonly unit: string;
  /** SI; absent when it could not be worked out. */
  readonly x?: number;
  readonly u: number | 'incomplete';
  /** Standard uncertainty that is asked for, SI. */
  readonly wanted?: number;
  readonly decision?: Decision;
}

/** What one reading would do for one open thing. */
export interface Effect {
  /** Place in the list of open things. */
  readonly open: number;
  /** Standard uncertainty now and, foretold, with the reading; SI. Absent where it can't be foretold. */
  readonly u?: number;
  readonly after?: number;
}

/** A reading worth taking next. */
export interface NextReading {
  readonly why: 'missing' | 'spread not known' | 'spread';
  readonly label: string;
  readonly what: Variable['what'];
  readonly place: Place;
  /** The cell of the study to be read; absent for an instrument's gain or a price. */
  readonly of?: CellRef;
  /** What to take it with; absent where nothing at hand measures it. */
  readonly instrument?: {
    readonly label: string;
    readonly kind: Kind;
    /** Standard uncertainty of the new reading, SI. */
    readonly u: number;
    readonly minutes: number;
  };
  readonly effects: readonly Effect[];
  /** Sum over the open things of the share by which each spread would fall. */
  readonly fall: number;
  readonly perMinute: number;
}

export interface MeasureNext {
  readonly open: readonly OpenThing[];
  /** What is missing or has no known spread first, then the largest gain a minute. */
  readonly readings: readonly NextReading[];
  /** Readings of either sort beyond the limit. */
  readonly leftOut: number;
}
