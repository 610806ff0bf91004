import { formatTogether } from './format.ts';
import type { Kind } from './kinds.ts';
import { unitSymbol } from './unit-symbol.ts';
import { fromSi, spreadToSi } from './units.ts';

/** A number to be printed, SI, with all that is known of its spread and of what it lacks. */
export interface Printable {
  readonly x: number;
  /** Standard uncertainty; `unknown` for a reading without one, `incomplete` for a result. */
  readonly u: number | 'incomplete' | 'unknown';
  /** What of an incomplete spread is known. */
  readonly knownU?: number;
  readonly kind: Kind;
  /** UCUM code of the unit in which it is shown. */
  readonly unit: string;
  /** How many values an incomplete result lacks; with none only its spread is incomplete. */
  readonly lacks?: number | undefined;
  /** Significant digits where no spread tells; four when absent. */
  readonly digits?: number | undefined;
}

/** A number in its printed pieces. */
export interface PrintedNumber {
  readonly value: string;
  /** Behind ±, or the known part of it where something lacks; empty when exact or all unknown. */
  readonly spread: string;
  readonly symbol: string;
  /** What it lacks, in words; empty for a whole number. */
  readonly lack: string;
}

/** Significant digits of a number that is not complete, whatever is known of its spread. */
const INCOMPLETE_DIGITS = 5;

/**
 * A number in pieces, rounded by its spread or by what of it is known; together with `beside`,
 * the numbers it is compared with, all to one place.
 * @throws RangeError as formatTogether.
 */
export function printedNumber(number: Printable, beside: readonly Printable[] = []): PrintedNumber {
  const [text = ''] = formatTogether(
    [number, ...beside.filter((other) => fits(number, other))]
      .map(rounded)
      .concat(coarsest(number)),
    number.digits === undefined ? {} : { digits: number.digits },
  );
  const [value = '', spread = ''] = (text.split(',')[0] ?? text).split(' ± ');
  return { value, spread, symbol: unitSymbol(number.unit), lack: lackWords(number) };
}

/** What a number lacks: the one wording for screen, paper and terminal. */
export function lackWords({ u, lacks }: Pick<Printable, 'u' | 'lacks'>): string {
  if (u === 'unknown') return 'spread not known';
  if (u !== 'incomplete') return '';
  if (lacks === undefined) return 'not complete';
  if (lacks === 0) return 'spread incomplete';
  return `not complete: ${lacks} ${lacks === 1 ? 'value' : 'values'} missing`;
}

/** "not complete: 2 values missing, known part ± 0.2"; never a bare ± at what is not whole. */
export const lackWithKnown = ({ lack, spread }: Pick<PrintedNumber, 'lack' | 'spread'>): string =>
  lack === '' || spread === '' ? lack : `${lack}, known part ± ${spread}`;

/** Degree, minute and second stand close to their number. */
const closeUp = (symbol: string): boolean => /^[°′″]$/.test(symbol);

/** "1 645.3 ± 0.2 kg", "(12.0 ± 1.1) %", "462 kg, spread not known": all in one line of text. */
export function printedLine(number: PrintedNumber): string {
  const { value, spread, symbol, lack } = number;
  const hasSpread = spread !== '' && lack === '';
  const both = hasSpread ? `${value} ± ${spread}` : value;
  const closed = hasSpread && (symbol === '%' || closeUp(symbol)) ? `(${both})` : both;
  const unit = symbol === '' || closeUp(symbol) ? symbol : ` ${symbol}`;
  return [`${closed}${unit}`, lackWithKnown(number)].filter((t) => t !== '').join(', ');
}

/**
 * "1 644.9 to 1 645.7 kg": two ends of an interval, each to the place of the spread `u` of what
 * lies between them.
 */
export function printedInterval(
  { low, high }: { readonly low: number; readonly high: number },
  u: number,
  { kind, unit }: { readonly kind: Kind; readonly unit: string },
): string {
  const end = (x: number) => printedNumber({ x, u, kind, unit });
  const { value, symbol } = end(high);
  const joined = `${end(low).value} to ${value}`;
  return symbol === '' ? joined : `${joined}${closeUp(symbol) ? '' : ' '}${symbol}`;
}

/**
 * A spread by itself, to three digits: two are told apart here that lie close together. That of
 * a temperature is a difference, that of a count need not be whole.
 */
export function printedSpread(u: number, kind: Kind, unit: string): string {
  const own = kind === 'tempAbs' ? 'tempDiff' : kind === 'count' ? 'ratio' : kind;
  const { value, symbol } = printedNumber({ x: u, u: u / 10, kind: own, unit });
  return `${value} ${symbol}`.trim();
}

/**
 * Of results of one answer, those that add up with this one (a gap and its two sides, a sum and
 * its parts): they are printed to one place, so that the sum can be checked by hand.
 */
export function addingUp<N extends Printable>(number: N, all: readonly N[]): N[] {
  const alike = all.filter((n) => n.kind === number.kind && n.unit === number.unit);
  const found = new Set<N>();
  for (const sum of alike)
    for (const a of alike)
      for (const b of alike) {
        const three = [sum, a, b];
        if (new Set(three).size === 3 && three.includes(number) && isSum(sum, a, b))
          for (const n of three) found.add(n);
      }
  found.delete(number);
  return [...found];
}

function isSum(sum: Printable, a: Printable, b: Printable): boolean {
  const size = Math.max(...[sum, a, b].map((n) => Math.abs(n.x)));
  return size > 0 && Math.abs(a.x + b.x - sum.x) <= 1e-9 * size;
}

const knownSpread = ({ u, knownU }: Printable): number | undefined =>
  u === 'incomplete' ? knownU || undefined : u === 'unknown' ? undefined : u;

/** For rounding: what of the spread is known, or nothing at all. */
const rounded = (n: Printable) => ({ x: n.x, u: knownSpread(n), kind: n.kind, unit: n.unit });

/** Numbers are set to one place only while none loses more than one of its own two digits. */
function fits(a: Printable, b: Printable): boolean {
  if (a.kind !== b.kind || a.unit !== b.unit || !Number.isFinite(b.x)) return false;
  const [ua, ub] = [knownSpread(a) ?? 0, knownSpread(b) ?? 0];
  return ua > 0 && ub > 0 && ua < 10 * ub && ub < 10 * ua;
}

/** A spread that rounds a number which is not complete to few digits; nothing for a complete one. */
function coarsest(n: Printable): ReturnType<typeof rounded>[] {
  if (n.u !== 'incomplete' || !n.knownU || n.x === 0) return [];
  const shown = Math.abs(fromSi(n.x, n.unit, n.kind));
  const u = 10 ** (Math.floor(Math.log10(shown)) - INCOMPLETE_DIGITS + 2);
  return [{ ...rounded(n), u: spreadToSi(u, n.unit, n.kind) }];
}
