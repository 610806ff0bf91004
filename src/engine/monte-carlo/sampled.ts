import type { Kind } from '../../quantity/index.ts';
import type { Decision, Variable } from '../method.ts';
import type { Indices } from './indices.ts';
import type { Interval, Spread101 } from './summary.ts';

/** How the linear result stands beside the samples (JCGM 101:2008, 8.1). */
export interface Validated {
  /** Coverage interval of the linear result. */
  readonly linear: Interval;
  /** How far the ends of both intervals lie apart, SI. */
  readonly atLow: number;
  readonly atHigh: number;
  /** Half of the last digit in which the spread is told, SI: further apart is not validated. */
  readonly tolerance: number;
  readonly holds: boolean;
}

/** Bars of a histogram between two ends: counts of samples. */
export interface Histogram extends Interval {
  readonly counts: readonly number[];
}

/** Indices of one cause, or without a variable of all others together. */
export interface Influence extends Indices {
  readonly variable?: Variable;
}

/** One result by Monte Carlo, SI. */
export interface SampledOut extends Spread101 {
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly kind: Kind;
  readonly unit: string;
  /** Share of the samples in which the result is no number: they are left out. */
  readonly none: number;
  readonly validated: Validated;
  readonly histogram: Histogram;
  /** Where they were asked for: the leading causes, then all others together. */
  readonly influences?: readonly Influence[];
  /** The word by mean and spread of the samples, where the result has one. */
  readonly decision?: Decision;
}

/** What a Monte Carlo run says of an answer. */
export interface Sampled {
  readonly question: string;
  readonly seed: number;
  readonly samples: number;
  /** Share that the intervals hold. */
  readonly coverage: number;
  /** Mean, spread and ends of the intervals have settled to the digits asked for. */
  readonly settled: boolean;
  readonly digits: 1 | 2;
  readonly outs: readonly SampledOut[];
}

/** How far a run is. */
export interface Progress {
  readonly samples: number;
  /** Samples at most, those for indices included; it may settle before. */
  readonly most: number;
}

export interface SampleOptions {
  /** The same seed gives the same digits; 1 when absent. */
  readonly seed?: number;
  /** So many samples, rounded up to whole blocks, in place of as many as it takes to settle. */
  readonly samples?: number;
  /** Samples at most; 200 000 when absent. */
  readonly most?: number;
  /** Digits of the spread that are to be settled; 2 when absent. */
  readonly digits?: 1 | 2;
  /** Share that the intervals hold; 0.95 when absent. */
  readonly coverage?: number;
  /** Sensitivity indices too. */
  readonly indices?: boolean;
}
