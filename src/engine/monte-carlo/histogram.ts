import type { Histogram } from './sampled.ts';

const BARS = 40;
/** Share left out at either end, so that one far sample does not press all into one bar. */
const TAIL = 0.001;

/** Counts of sorted samples over equal steps. */
export function histogramOf(sorted: Float64Array): Histogram {
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN;
  const [low, high] = [at(TAIL), at(1 - TAIL)];
  const counts = new Array<number>(BARS).fill(0);
  const step = (high - low) / BARS;
  for (const x of sorted) {
    const i = Math.floor((x - low) / step);
    if (i >= 0 && i < BARS) counts[i] = (counts[i] ?? 0) + 1;
  }
  return { low, high, counts };
}
