/** An interval that holds a stated share of the samples. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** What samples of one result say (JCGM 101:2008, 7.6 and 7.7). */
export interface Spread101 {
  readonly mean: number;
  /** Standard deviation of the samples. */
  readonly u: number;
  /** As likely to be missed below as above. */
  readonly symmetric: Interval;
  readonly shortest: Interval;
}

/** Sums up samples in rising order; `coverage` is the share that intervals hold. */
export function summaryOf(sorted: Float64Array, coverage: number): Spread101 {
  const { mean, u } = momentsOf(sorted);
  return {
    ...{ mean, u },
    symmetric: symmetricInterval(sorted, coverage),
    shortest: shortestInterval(sorted, coverage),
  };
}

/** Mean and standard deviation (7.6), in two passes so that a small spread of a large number stands. */
export function momentsOf(xs: Float64Array): { readonly mean: number; readonly u: number } {
  let sum = 0;
  for (const x of xs) sum += x;
  const mean = sum / xs.length;
  let squares = 0;
  for (const x of xs) squares += (x - mean) ** 2;
  return { mean, u: Math.sqrt(squares / (xs.length - 1)) };
}

/** How many of M samples an interval spans: pM, to the nearest whole number (7.7.2). */
const spanOf = (m: number, coverage: number): number =>
  Math.min(Math.floor(coverage * m + 0.5), m - 1);

export function symmetricInterval(sorted: Float64Array, coverage: number): Interval {
  const q = spanOf(sorted.length, coverage);
  return intervalAt(sorted, Math.floor((sorted.length - q + 1) / 2) - 1, q);
}

/** The narrowest of all that span as many (7.7.3); the lowest of equal ones. */
export function shortestInterval(sorted: Float64Array, coverage: number): Interval {
  const q = spanOf(sorted.length, coverage);
  let best = 0;
  let width = Number.POSITIVE_INFINITY;
  for (let r = 0; r + q < sorted.length; r++) {
    const own = (sorted[r + q] ?? 0) - (sorted[r] ?? 0);
    if (own < width) [best, width] = [r, own];
  }
  return intervalAt(sorted, best, q);
}

function intervalAt(sorted: Float64Array, r: number, q: number): Interval {
  const from = Math.max(r, 0);
  return { low: sorted[from] ?? Number.NaN, high: sorted[from + q] ?? Number.NaN };
}
