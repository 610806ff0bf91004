import { ELEMENT_TIMES_1948 } from './element-times-1948.ts';

/** Time units over distance for one motion, distances in inches, ascending. */
export interface DistanceTable {
  readonly inches: readonly number[];
  /** By the letter of the case: a unit for each distance. */
  readonly units: Readonly<Record<string, readonly number[]>>;
  /** Units for each inch beyond the last distance, by case; a case without one ends there. */
  readonly beyond: Readonly<Record<string, number>>;
}

/** How the weight moved adds to a move: factor times the units for the distance, plus a constant. */
export interface WeightBand {
  /** Pounds. */
  readonly over: number;
  readonly upTo: number;
  readonly factor: number;
  readonly constant: number;
}

/** A set of predetermined element times. */
export interface ElementTimes {
  readonly id: string;
  readonly source: string;
  /** Seconds in one unit. */
  readonly secondsAUnit: number;
  readonly reach: DistanceTable;
  readonly move: DistanceTable;
  readonly weights: readonly WeightBand[];
  /** Elements that depend on no distance. */
  readonly single: Readonly<Record<string, number>>;
}

/** The tables that come with the tool. Without an entry only a study's own values are known. */
export const ELEMENT_TIME_TABLES: readonly ElementTimes[] = [ELEMENT_TIMES_1948];
