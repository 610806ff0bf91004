import type { FigureNumber } from '../engine/index.ts';
import type { Kind } from '../quantity/index.ts';

/** A number of a figure with what is needed to print it. */
export interface KindNumber extends FigureNumber {
  readonly kind: Kind;
  /** UCUM code. */
  readonly unit: string;
}

/** A number in words. */
export interface NumberWords {
  /** "20.3 ± 0.2 kg". */
  readonly text: string;
  /** What it lacks; empty when nothing. */
  readonly lack: string;
}

/** What a door hands in: how wide its paper is, and how it puts numbers into words. */
export interface Layout {
  /** Units. */
  readonly width: number;
  /** With the numbers beside it where they are to be rounded to one place. */
  readonly say: (n: KindNumber, beside?: readonly KindNumber[]) => NumberWords;
}

/** Paper narrower than this has no room for words beside a scale. */
export const NARROW = 520;
