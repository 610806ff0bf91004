import type { Kind, Spread, Way } from '../quantity/index.ts';

/** One price, rate or factor of a rate book, with where it comes from. */
export interface RateCell {
  /** Kept when a version is copied: the shared cause is the same price in both. */
  readonly cause: string;
  /** E.g. `material/steel sheet`, `process/stamp`, `factor/overhead`. */
  readonly id: string;
  readonly words: string;
  readonly kind: Kind;
  /** SI: units of account per kg, per second and so on. */
  readonly x: number;
  readonly spread: Spread;
  /** `supplied` for a quotation or published index; `guessed` for a judgement. */
  readonly how: Way;
  readonly source: string;
  /** Words in a part's material or process to which this cell applies, matched in lower case. */
  readonly match: readonly string[];
  /** As the book's, where a cell says it. */
  readonly currency?: string;
  /** ISO 8601 date after which the cell is out of date. */
  readonly expires?: string;
}

/** An immutable, versioned set of prices and rates. */
export interface RateBook {
  /** Own to this version's content; two books of one version name stay apart. */
  readonly id: string;
  readonly version: string;
  readonly region: string;
  /** ISO 8601 date to which the prices belong. */
  readonly date: string;
  readonly currency: string;
  /** Pieces a year and years for which the rates hold. */
  readonly volumePerYear: number;
  readonly years: number;
  readonly invented: boolean;
  readonly cells: readonly RateCell[];
}
