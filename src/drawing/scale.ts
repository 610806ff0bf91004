import { formatNumber, fromSi, type Kind, niceStep, spreadFromSi } from '../quantity/index.ts';

/** Whiskers and bands reach this many standard uncertainties to each side. */
export const WHISKER_U = 2;

/** A straight scale with round ticks, in the unit in which it is shown. */
export interface Scale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
}

/** Round numbers from below `low` to above `high`, about `count` steps; a point gets some room. */
export function niceScale(low: number, high: number, count = 5): Scale {
  const room = high > low ? 0 : Math.abs(low) / 10 || 1;
  const step = niceStep((high - low + 2 * room) / count);
  const first = Math.floor((low - room) / step + 1e-9);
  const last = Math.ceil((high + room) / step - 1e-9);
  const decimals = Math.max(-Math.floor(Math.log10(step) + 1e-9), 0);
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => {
    const x = (first + i) * step;
    return { x, text: formatNumber(x, decimals) };
  });
  return { low: first * step, high: last * step, ticks };
}

/** A number in the unit in which it is shown, with the reach of its whiskers where it has any. */
export function shownSpan(
  {
    x,
    u,
    knownU,
  }: { readonly x: number; readonly u?: number | 'incomplete'; readonly knownU?: number },
  kind: Kind,
  unit: string,
): { readonly x: number; readonly reach: number } {
  const spread = typeof u === 'number' ? u : u === 'incomplete' ? (knownU ?? 0) : 0;
  return { x: fromSi(x, unit, kind), reach: WHISKER_U * spreadFromSi(spread, unit, kind) };
}
