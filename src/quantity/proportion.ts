import { normalQuantile } from './statistics.ts';

/** How many of how many, with an interval for the share in the whole that they were drawn from. */
export interface Proportion {
  readonly hits: number;
  readonly of: number;
  /** Hits over of; NaN when there were none to count. */
  readonly share: number;
  /** Wilson's score interval, without correction for continuity. */
  readonly low: number;
  readonly high: number;
}

/**
 * A counted share with its interval after Wilson (1927), Journal of the American Statistical
 * Association 22, 209-212: the shares that the count would not reject at the given coverage.
 * Nothing counted says nothing: 0 to 1.
 */
export function proportion(hits: number, of: number, coverage = 0.95): Proportion {
  if (of === 0) return { hits, of, share: Number.NaN, low: 0, high: 1 };
  const z = normalQuantile((1 + coverage) / 2);
  const [p, zz] = [hits / of, z * z];
  const middle = (p + zz / (2 * of)) / (1 + zz / of);
  const half = (z / (1 + zz / of)) * Math.sqrt((p * (1 - p)) / of + zz / (4 * of * of));
  return { hits, of, share: p, low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}
