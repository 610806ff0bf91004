import type { Kind } from './kinds.ts';
import { unitSymbol } from './unit-symbol.ts';
import { fromSi, spreadFromSi } from './units.ts';

/** Name of the rounding rule, for the foot of a page. */
export const ROUNDING_RULE =
  'Rounded by JCGM 100:2008, 7.2.6: standard uncertainty to two significant digits, value to the same place. Numbers that are compared or add up all stand to the place of the largest uncertainty among them, which may leave a smaller one a single digit.';

/** Narrow no-break space, which groups digits by three (ISO 80000-1). */
const GROUP = '\u202f';
const MINUS = '\u2212';
const KNOWN_DIGITS = 4;

/**
 * |x| in units of 10^-place, rounded half away from zero. It starts from 15 significant digits,
 * so that 1.005 and 0.1 + 0.2 round as they are written and not as they are held in binary.
 */
function countOf(x: number, place: number): bigint {
  if (!Number.isInteger(place) || Math.abs(place) > 400)
    throw new RangeError(`${place} is no count of decimals`);
  if (!Number.isFinite(x)) throw new RangeError(`${x} cannot be printed`);
  const [mantissa = '0', exponent = '0'] = Math.abs(x).toExponential(14).split('e');
  const digits = BigInt(mantissa.replace('.', ''));
  const shift = Number(exponent) + place - 14;
  if (shift >= 0) return digits * 10n ** BigInt(shift);
  const unit = 10n ** BigInt(-shift);
  return (2n * digits + unit) / (2n * unit);
}

/** Power of ten of the first significant digit. */
const firstPlace = (x: number): number => Number(Math.abs(x).toExponential(14).split('e')[1]);

/**
 * Decimal place of the last of `digits` significant digits of x: 1 for 0.96 to one digit, −1 for
 * 123 to two. Rounding up to the next power of ten is taken into account: 0.0996 → 0.10.
 */
function placeOf(x: number, digits: number): number {
  const place = digits - 1 - firstPlace(x);
  return countOf(x, place) >= 10n ** BigInt(digits) ? place - 1 : place;
}

/**
 * Value and standard uncertainty rounded together after JCGM 100:2008, 7.2.6: u to two
 * significant digits, x to the same place. `place` counts decimals; negative above the units.
 * Plain rounding half away from zero.
 * @throws RangeError when x is not finite or u is not a positive number.
 */
export function roundToUncertainty(x: number, u: number): { x: string; u: string; place: number } {
  needUncertainty(u);
  const place = placeOf(u, 2);
  return { x: formatNumber(x, place, ''), u: formatNumber(u, place, ''), place };
}

function needUncertainty(u: number): void {
  if (!(u > 0) || !Number.isFinite(u))
    throw new RangeError(`standard uncertainty ${u} cannot be printed`);
}

/**
 * A number with a fixed count of decimals (negative: rounded to tens, hundreds, …), a true minus
 * sign and digits grouped by three with `group`, by default a narrow no-break space.
 * @throws RangeError when x is not finite.
 */
export function formatNumber(x: number, decimals: number, group: string = GROUP): string {
  const count = countOf(x, decimals);
  const zeros = '0'.repeat(Math.max(-decimals, 0));
  const fraction = Math.max(decimals, 0);
  const digits = `${count}${count === 0n ? '' : zeros}`.padStart(fraction + 1, '0');
  const whole = digits.slice(0, digits.length - fraction);
  const point = fraction > 0 ? `.${digits.slice(-fraction)}` : '';
  const sign = x < 0 && count !== 0n ? MINUS : '';
  return `${sign}${whole.replace(/\B(?=(\d{3})+$)/g, group)}${point}`;
}

/** A number to print, in SI. */
export interface Shown {
  readonly x: number;
  /** Standard uncertainty in SI; 0 when exact; undefined and 'incomplete' when not fully known. */
  readonly u?: number | 'incomplete' | undefined;
  /** UCUM code of the unit in which it is shown. */
  readonly unit: string;
  readonly kind: Kind;
}

export interface FormatOptions {
  /** Between groups of three digits; a narrow no-break space when absent. */
  readonly group?: string;
  /** Print the unit: yes in formatQuantity, no in formatTogether when absent. */
  readonly withUnit?: boolean;
  /** Significant digits of a value whose spread is not known; 4 when absent. */
  readonly digits?: number;
}

/** The same number in its unit: value, and spread as a number where it is known. */
interface InUnit {
  readonly x: number;
  readonly u: number | undefined;
  /** A count is not given decimals that it cannot have. */
  readonly whole: boolean;
}

function inUnit(shown: Shown): InUnit {
  const x = fromSi(shown.x, shown.unit, shown.kind);
  if (!Number.isFinite(x)) throw new RangeError(`${x} cannot be printed`);
  const whole = shown.kind === 'count' && Number.isInteger(x);
  if (shown.u === undefined && shown.kind === 'count') return { x, u: 0, whole };
  if (shown.u === undefined || shown.u === 'incomplete') return { x, u: undefined, whole };
  const u = spreadFromSi(shown.u, shown.unit, shown.kind);
  if (u !== 0) needUncertainty(u);
  return { x, u, whole };
}

/** Place of the last digit worth printing: by the spread, or by the digits where there is none. */
function placeFor({ x, u, whole }: InUnit, digits: number): number {
  if (u) return placeOf(u, 2);
  if (u === 0) return exactPlace(x);
  return x === 0 || whole ? 0 : placeOf(x, digits);
}

/** Decimals of the shortest form of an exact number, at most 12 significant digits. */
function exactPlace(x: number): number {
  const [mantissa = '', exponent = '0'] = Number(x.toPrecision(12)).toExponential().split('e');
  return Math.max((mantissa.split('.')[1] ?? '').length - Number(exponent), 0);
}

/** "1 645.29 ± 0.20", "1 645, spread incomplete" or "5" at a place; ± <0.1 where u is below it. */
function atPlace({ x, u }: InUnit, place: number, group: string, unit: string): string {
  const value = formatNumber(x, place, group);
  // The signs of degrees, minutes and seconds stand at each number, without a blank.
  const atNumber = /^[°′″]$/.test(unit) ? unit : '';
  const behind = atNumber || unit === '' ? atNumber : ` ${unit}`;
  if (u === undefined) return `${value}${behind}, spread incomplete`;
  if (u === 0) return `${value}${behind}`;
  const isBelow = countOf(u, place) === 0n;
  const spread = `${isBelow ? '<' : ''}${formatNumber(isBelow ? 10 ** -place : u, place, group)}`;
  // 5 ± 2 % could be read as a share of 5.
  if (unit === '%') return `(${value} ± ${spread}) %`;
  return `${value}${atNumber} ± ${spread}${behind}`;
}

/**
 * A quantity as printed: `1 645.29 ± 0.20 kg`, rounded by JCGM 100:2008, 7.2.6; the number
 * behind ± is one standard uncertainty. With an incomplete or missing spread the value has four
 * significant digits and says so; an exact one has no ±, nor has a count without a spread.
 * @throws RangeError for numbers that are not finite, and units of another dimension.
 */
export function formatQuantity(shown: Shown, options: FormatOptions = {}): string {
  const number = inUnit(shown);
  const place = placeFor(number, options.digits ?? KNOWN_DIGITS);
  const unit = options.withUnit === false ? '' : unitSymbol(shown.unit);
  return atPlace(number, place, options.group ?? GROUP, unit);
}

/**
 * Numbers shown side by side in one unit, all to one place: that of the largest standard
 * uncertainty to two significant digits. 1645.291 ± 0.198 beside 1645.5 ± 1.02 reads
 * `1 645.3 ± 0.2`. Where no spread is known the place is that of the largest number.
 * @throws RangeError as formatQuantity, and when the units differ.
 */
export function formatTogether(list: readonly Shown[], options: FormatOptions = {}): string[] {
  const first = list[0];
  if (!first) return [];
  if (list.some((shown) => shown.unit !== first.unit))
    throw new RangeError(
      `numbers side by side need one unit, not ${list.map((s) => s.unit).join(', ')}`,
    );
  const numbers = list.map(inUnit);
  const place = commonPlace(numbers, options.digits ?? KNOWN_DIGITS);
  const unit = options.withUnit ? unitSymbol(first.unit) : '';
  return numbers.map((n) => atPlace(n, place, options.group ?? GROUP, unit));
}

function commonPlace(numbers: readonly InUnit[], digits: number): number {
  const largest = Math.max(...numbers.map((n) => n.u ?? 0));
  if (largest > 0) return placeOf(largest, 2);
  const open = numbers.filter((n) => n.u === undefined);
  if (open.length === 0) return Math.max(...numbers.map(({ x }) => exactPlace(x)));
  const largestOpen = open.reduce((a, b) => (Math.abs(b.x) > Math.abs(a.x) ? b : a));
  return placeFor(largestOpen, digits);
}
