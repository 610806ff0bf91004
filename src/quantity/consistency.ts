import { meanOf } from './spread.ts';

/**
 * E_n number of two results: their difference over the expanded uncertainty (k = 2) of that
 * difference; up to 1 they agree (after ISO/IEC 17043, from memory).
 */
export const enNumber = (d: number, ua: number, ub: number): number =>
  Math.abs(d) / (2 * Math.hypot(ua, ub));

/**
 * Birge ratio of results combined by inverse variance: √(χ²/(n − 1)); near 1 where the results
 * scatter as their spreads say, well above it where the spreads are stated too small (Birge,
 * Physical Review 40, 1932, from memory).
 * @throws RangeError for fewer than two results or a spread that is not above zero.
 */
export function birgeRatio(xs: readonly number[], us: readonly number[]): number {
  if (xs.length < 2 || us.length !== xs.length || us.some((u) => !(u > 0)))
    throw new RangeError('a Birge ratio needs two results or more, each with a spread');
  const weights = us.map((u) => 1 / (u * u));
  const total = weights.reduce((a, b) => a + b, 0);
  const mean = xs.reduce((sum, x, i) => sum + (weights[i] ?? 0) * x, 0) / total;
  const chi2 = xs.reduce((sum, x, i) => sum + (weights[i] ?? 0) * (x - mean) ** 2, 0);
  return Math.sqrt(chi2 / (xs.length - 1));
}

/** How closely one person repeats a reading, and how closely different people agree. */
export interface Precision {
  /** Standard deviation of readings by one person. */
  readonly repeatability: number;
  /** Standard deviation of readings by any person: between people and within one together. */
  readonly reproducibility: number;
  /** Standard deviation of people about each other; 0 where their means scatter no more than repeats do. */
  readonly between: number;
  /** Degrees of freedom of the repeatability. */
  readonly dof: number;
}

/**
 * Repeatability and reproducibility from repeated readings of one thing, a list for each person
 * (analysis of variance of ISO 5725-2, one level, lists of any length; from memory). Undefined
 * with fewer than two people, or when nobody read twice.
 */
export function precisionOf(byPerson: readonly (readonly number[])[]): Precision | undefined {
  const lists = byPerson.filter((xs) => xs.length > 0);
  const n = lists.reduce((sum, xs) => sum + xs.length, 0);
  const [people, dof] = [lists.length, n - lists.length];
  if (people < 2 || dof < 1) return undefined;
  const all = meanOf(lists.flat());
  const within = sum(lists.map((xs) => squares(xs, meanOf(xs)))) / dof;
  const among = sum(lists.map((xs) => xs.length * (meanOf(xs) - all) ** 2)) / (people - 1);
  const perPerson = (n - sum(lists.map((xs) => xs.length ** 2)) / n) / (people - 1);
  const between2 = Math.max(0, (among - within) / perPerson);
  return {
    repeatability: Math.sqrt(within),
    reproducibility: Math.sqrt(within + between2),
    between: Math.sqrt(between2),
    dof,
  };
}

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);
const squares = (xs: readonly number[], m: number): number => sum(xs.map((x) => (x - m) ** 2));
