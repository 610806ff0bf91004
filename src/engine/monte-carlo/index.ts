/**
 * monte-carlo: distributions propagated through the questions' own bodies (JCGM 101:2008).
 *
 * Seeded draws (Sobol' points for the leading causes, strata for the others), columns of samples
 * through rows, sums and structured bodies, coverage intervals, the adaptive procedure, the linear
 * result held against the samples, and sensitivity indices.
 * Depends on the rest of the engine. Stays away from clocks and host randomness: a run is a
 * generator that whoever drives it may stop between two blocks.
 */

export type { SampleRun } from './monte-carlo.ts';
export * from './sample.ts';
export * from './sampled.ts';
export type { Interval } from './summary.ts';
