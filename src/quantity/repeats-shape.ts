import type { Shape } from './quantity-shapes.ts';
import {
  type Amount,
  type Context,
  chooseUnit,
  inSi,
  needUnit,
  readAmount,
} from './read-amount.ts';
import { meanOf } from './spread.ts';
import { spreadToSi } from './units.ts';
import type { Spread } from './value.ts';

/**
 * `12.1; 12.3; 12.2 kg`: repeated readings of one thing. The value is their mean, its spread
 * their experimental standard deviation over √n (JCGM 100:2008, 4.2.3). Readings that are all
 * alike say no more of the spread than their last digit: rectangular, half of it to each side
 * (F.2.2.1).
 */
export function readRepeats(core: string, c: Context): Shape | undefined {
  if (!core.includes(';')) return undefined;
  const parts = core.split(';').map((part) => part.trim());
  const amounts = parts.flatMap((part) => readAmount(part, c) ?? []);
  if (amounts.length < parts.length || amounts.length < 2 || amounts.some(hasSpread))
    return undefined;
  if (isMixed(amounts)) return undefined;
  const unit = chooseUnit(amounts.map((a) => a.unit).reverse(), c);
  const xs = amounts.map((a) => amountInSi(a, unit, c));
  const [first = Number.NaN] = xs;
  if (xs.some((x) => x !== first)) return { x: meanOf(xs), spread: { s: 'repeats', xs }, unit };
  return { x: first, spread: lastDigit(parts, unit, c), unit };
}

/** A reading without a unit beside two different ones could be of either. */
const isMixed = (amounts: readonly Amount[]): boolean =>
  amounts.some((a) => a.unit === undefined) &&
  new Set(amounts.flatMap((a) => a.unit ?? [])).size > 1;

const hasSpread = ({ number }: Amount): boolean => number.u !== undefined;

function amountInSi({ number, unit }: Amount, common: string, c: Context): number {
  if (unit !== undefined) needUnit(unit, c);
  return inSi(number.x, unit ?? common, c.kind);
}

/** Half of the last digit written in the readings; unknown for fractions and powers of ten. */
function lastDigit(parts: readonly string[], unit: string, c: Context): Spread {
  const decimals = parts.map((part) => decimalsOf(part, c));
  if (decimals.some((n) => n === undefined)) return { s: 'unknown' };
  const half = 0.5 * 10 ** -Math.max(...decimals.map((n) => n ?? 0));
  return { s: 'rectangular', half: spreadToSi(half, unit, c.kind) };
}

function decimalsOf(part: string, { decimal }: Context): number | undefined {
  const digits = /^[-+\u2212\u2013]?[\d\s\u00a0\u202f\u2009]*(?:[.,](\d+))?(?=[^\d/.,]|$)/.exec(
    part,
  );
  if (!digits || /[eE/×]\d|10\^/.test(part)) return undefined;
  return part.includes(decimal) ? (digits[1] ?? '').length : 0;
}
