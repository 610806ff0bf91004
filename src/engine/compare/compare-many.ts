import type { Answer } from '../method.ts';
import { compareOutputs } from './compare-outputs.ts';
import type { CompareOptions, Comparison, Pair } from './comparison.ts';

/** Probability that the rule calls two equal things different: outside 2 u, or its Student's t. */
export const FALSE_DIFFERENT = 1 - 0.9545;

/** Many comparisons side by side, and how many of them chance alone would call different. */
export interface ComparisonTable {
  readonly comparisons: readonly Comparison[];
  /** Expected number of false "different" among those with a spread, were all of them equal. */
  readonly falseDifferent: number;
  /** Said below the table. */
  readonly words: string;
}

/** Every output that two answers share, compared. @throws RefusalError as compareOutputs. */
export const compareAll = (a: Answer, b: Answer, options?: CompareOptions): ComparisonTable =>
  tableOf(
    Object.keys(a.outs)
      .filter((name) => name in b.outs)
      .map((name) => compareOutputs(a, b, name, options)),
  );

/** One output of many pairs. @throws RefusalError as compareOutputs. */
export const comparePairs = (
  pairs: readonly Pair[],
  output: string,
  options?: CompareOptions,
): ComparisonTable => tableOf(pairs.map(([a, b]) => compareOutputs(a, b, output, options)));

/** A table with its remark on chance. */
export function tableOf(comparisons: readonly Comparison[]): ComparisonTable {
  const uncertain = comparisons.filter((c) => c.decision !== undefined && c.knownU > 0).length;
  const falseDifferent = uncertain * FALSE_DIFFERENT;
  const words =
    uncertain < 2
      ? ''
      : `Of ${uncertain} comparisons chance alone would call about ${count(falseDifferent)} "different" if nothing differed (${percent(FALSE_DIFFERENT)} each).`;
  return { comparisons, falseDifferent, words };
}

const count = (x: number): string => (x < 10 ? x.toFixed(1) : String(Math.round(x)));
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
