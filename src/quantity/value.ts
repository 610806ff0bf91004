import type { Kind } from './kinds.ts';

/**
 * What is known of the error of one value. `exact` is zero by definition; `unknown` is
 * something else: it adds no variance and leaves an answer incomplete.
 */
export type Spread =
  | { readonly s: 'exact' }
  | { readonly s: 'unknown' }
  /** Standard uncertainty `u`, in the value's SI unit; `dof` absent means unlimited. */
  | { readonly s: 'normal'; readonly u: number; readonly dof?: number }
  /** Half-width `half`, in the value's SI unit. */
  | { readonly s: 'rectangular' | 'arcsine'; readonly half: number }
  /** Limits in the value's SI unit; the value itself is the mode. */
  | { readonly s: 'triangular'; readonly low: number; readonly high: number }
  /** Repeated observations in the value's SI unit; the value itself is their mean. */
  | { readonly s: 'repeats'; readonly xs: readonly number[] };

/** Why a value that could have been taken is not there. */
export const ABSENT_WHYS = ['not taken', 'destroyed', 'not applicable'] as const;
export type AbsentWhy = (typeof ABSENT_WHYS)[number];

/** Such words as people write them in the place of a value; undefined for anything else. */
export const absentWhy = (text: string): AbsentWhy | undefined =>
  ABSENT_WHYS.find((why) => why === text.trim().toLowerCase());

export interface ScalarValue {
  readonly t: 'scalar';
  readonly kind: Kind;
  /** SI. */
  readonly x: number;
  readonly spread: Spread;
}

/** A point or other vector is one measurement: components share its frame and covariance. */
export interface VectorValue {
  readonly t: 'vector';
  readonly kind: Kind;
  /** Components, SI. */
  readonly x: readonly number[];
  /** Covariance matrix by rows, n × n, SI squared; empty when the spread is unknown. */
  readonly cov: readonly number[];
  readonly frame: string;
}

export type Value =
  | ScalarValue
  | VectorValue
  | { readonly t: 'count'; readonly n: number; readonly spread: Spread }
  | { readonly t: 'term'; readonly scheme: string; readonly code: string }
  | { readonly t: 'text'; readonly text: string }
  | { readonly t: 'flag'; readonly on: boolean }
  | { readonly t: 'ref'; readonly to: string }
  | { readonly t: 'blob'; readonly hash: string }
  | { readonly t: 'absent'; readonly why: AbsentWhy };

/** How a value is known. `measured` requires an instrument. */
export const WAYS = ['measured', 'supplied', 'calculated', 'seen', 'inferred', 'guessed'] as const;
export type Way = (typeof WAYS)[number];
export const isWay = (word: string): word is Way => (WAYS as readonly string[]).includes(word);
/** Best way of knowing first: 0 is best. */
export const wayRank = (way: Way): number => WAYS.indexOf(way);
