import { formatQuantity, fromSi, toSi } from '../quantity/index.ts';
import type { KindNumber } from './layout.ts';

const DIGITS = 4;

/**
 * A number of which only the nominal value was worked out: four digits of it, or of the largest
 * of the numbers beside it, and no idle zeros.
 */
export function nominalText(
  { x, kind, unit }: KindNumber,
  beside: readonly KindNumber[] = [],
): string {
  const shown = fromSi(x, unit, kind);
  const largest = beside.reduce(
    (most, n) => Math.max(most, Math.abs(fromSi(n.x, n.unit, n.kind))),
    Math.abs(shown),
  );
  const step = largest === 0 ? 1 : 10 ** (Math.floor(Math.log10(largest)) + 1 - DIGITS);
  const rounded = Number((Math.round(shown / step) * step).toPrecision(12));
  return formatQuantity({ x: toSi(rounded, unit, kind), u: 0, kind, unit });
}
