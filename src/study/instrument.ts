import { checkSpread, type Kind, type Spread } from '../quantity/index.ts';

/**
 * A scale, gauge, wrench or watch. Readings name it by its id, which is its label as written
 * where nobody gave it another. What is not known of it is left out.
 */
export interface Instrument {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
  /** What it measures; the numbers below are in SI of this kind. */
  readonly kind?: Kind;
  /** Standard uncertainty of one reading: a fixed part, and a share of the value. */
  readonly u?: number;
  readonly relativeU?: number;
  /** Minutes of work that one reading takes. */
  readonly minutes?: number;
  /** Smallest and largest value that it is made for. */
  readonly range?: { readonly low: number; readonly high: number };
  /** Step of its display. */
  readonly resolution?: number;
  /** Class as marked on it: "III" of a scale, "2" of a tape. */
  readonly accuracyClass?: string;
  /** ISO 8601 dates of its last calibration, and until when that holds. */
  readonly calibrated?: string;
  readonly due?: string;
  /** A check mass, gauge block or the like read on it: what it is, with its spread, and what was shown. */
  readonly check?: {
    readonly nominal: number;
    readonly u: number;
    readonly shown: number;
    /** ISO 8601 date. */
    readonly at: string;
  };
}

/** Standard uncertainty of one reading of a value, SI; undefined when not known. */
export function readingU({ u, relativeU }: Instrument, x: number): number | undefined {
  if (u === undefined && relativeU === undefined) return undefined;
  return Math.hypot(u ?? 0, (relativeU ?? 0) * Math.abs(x));
}

/** Standard uncertainty that a display of this step has at least (JCGM 100:2008, F.2.2.1). */
export const resolutionU = (step: number): number => step / Math.sqrt(12);

/** What is wrong with what is said of an instrument, in words; undefined when nothing is. */
export function wrongInstrument(i: Instrument): string | undefined {
  const numbers = [i.u, i.relativeU, i.minutes, i.resolution, i.check?.u];
  if (numbers.some((x) => x !== undefined && !(Number.isFinite(x) && x >= 0)))
    return 'a number of it is negative or none';
  if (i.range && !(i.range.low < i.range.high)) return 'its range does not rise';
  if ([i.check?.nominal, i.check?.shown].some((x) => x !== undefined && !Number.isFinite(x)))
    return 'its check is no number';
  if ([i.calibrated, i.due, i.check?.at].some((date) => date !== undefined && !isDate(date)))
    return 'a date of it can not be read';
  const needsKind = i.u !== undefined || i.range !== undefined || i.check !== undefined;
  return needsKind && i.kind === undefined ? 'its numbers have no kind of quantity' : undefined;
}

const isDate = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d/.test(text) && !Number.isNaN(Date.parse(text));

/** Spread of a reading taken with an instrument, for a value: normal, where it is known. */
export function spreadWith(instrument: Instrument, x: number): Spread {
  const u = readingU(instrument, x);
  const spread: Spread = u === undefined ? { s: 'unknown' } : { s: 'normal', u };
  return checkSpread(spread, x) === undefined ? spread : { s: 'unknown' };
}
