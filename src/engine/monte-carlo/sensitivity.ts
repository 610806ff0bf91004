import type { BoundInputs } from '../bound-inputs.ts';
import { Draws } from './draws.ts';
import type { Sampler } from './evaluate.ts';
import { indicesOf } from './indices.ts';
import type { Influence } from './sampled.ts';
import { SOBOL_DIMENSIONS } from './sobol.ts';

/** Causes told one by one; the others are one group. */
const TOLD = 8;
/** Samples of each set: a power of two, for which Sobol' points are evenest. */
const SAMPLES = 2 ** 14;

/**
 * First-order and total indices for the leading causes and all others together, for each column of
 * the sampler. A total far above the first order says that causes act together, which shares of the
 * linear variance can not show. `ranked`: all variables by number, those that matter most first.
 */
export function* sensitivityOf(
  { variables }: BoundInputs,
  sampler: Sampler,
  ranked: readonly number[],
  seed: number,
): Generator<number, readonly (readonly Influence[])[], undefined> {
  const told = ranked.slice(0, TOLD);
  const isTold = new Set(told);
  const groups = [
    ...told.map((own) => (number: number) => number === own),
    ...(ranked.length > told.length ? [(number: number) => !isTold.has(number)] : []),
  ];
  // The second set goes on in the dimensions behind those of the first.
  const half = SOBOL_DIMENSIONS / 2;
  const leading = ranked.slice(0, half);
  const of = { variables, leading, count: ranked.length, size: SAMPLES };
  const a = new Draws({ ...of, seed });
  const b = new Draws({ ...of, seed: ~seed, dimension: half });
  const found = yield* indicesOf(sampler, a, b, groups);
  return found.map((columns) =>
    columns.map((own, i) => {
      const number = told[i];
      return number === undefined ? own : { ...own, variable: variables.at(number) };
    }),
  );
}
