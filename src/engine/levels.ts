import { niceStep } from '../quantity/index.ts';

/**
 * Round numbers within a range, about `count` of them: multiples of 1, 2 or 5 times a power of
 * ten in a unit of `unit` SI units. None where the range is empty.
 */
export function niceLevels(low: number, high: number, count: number, unit = 1): number[] {
  const span = (high - low) / unit;
  if (!(span > 0)) return [];
  const step = niceStep(span / count);
  const first = Math.ceil(low / unit / step + 1e-9);
  const last = Math.floor(high / unit / step - 1e-9);
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, i) => {
    // Rounded, so that 3 × 0.1 is 0.3.
    return Number(((first + i) * step).toPrecision(12)) * unit;
  });
}
