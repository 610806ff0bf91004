import { differenceOf, formUncertainty, type LinearForm } from '../../../quantity/index.ts';
import { logNormalCdf, logWithin } from '../../mass/faults/orthant.ts';
import type { DesignFigures } from './design-lines.ts';
import type { LookForms } from './look-forms.ts';

/** Probability that the first costs less than the second, as if the difference were normal about its mean. */
export function cheaper(forms: LookForms, a: LinearForm, b: LinearForm): number {
  const d = differenceOf(a, b);
  const mean = d.x + forms.lean(d);
  const u = formUncertainty(d);
  if (u === 0) return mean < 0 ? 1 : mean > 0 ? 0 : 0.5;
  return Math.exp(logNormalCdf(-mean / u));
}

/** Probability of each that it is the cheapest of all, rates and facts moving together. */
export function firsts(forms: LookForms, costs: readonly LinearForm[]): number[] {
  const each = costs.map((c, i) => {
    const less = costs.filter((_, k) => k !== i).map((other) => differenceOf(c, other));
    const cov = less.map((a) => less.map((b) => covarianceOf(a, b)));
    const mean = less.map((d) => d.x + forms.lean(d));
    return Math.exp(
      logWithin(
        mean,
        cov,
        less.map(() => ({ low: -1e12, high: 0 })),
      ),
    );
  });
  const sum = each.reduce((a, b) => a + b, 0);
  return each.map((p) => p / sum);
}

const covarianceOf = (a: LinearForm, b: LinearForm): number =>
  [...a.by].reduce((sum, [id, c]) => sum + c * (b.by.get(id) ?? 0), 0);

/** What designs are ranked by: less is better. */
export const CRITERIA = ['cost', 'mass', 'time', 'tool', 'crossings', 'service'] as const;

/** Names of the designs that are no worse in anything and better in something. */
export const dominatedBy = (design: DesignFigures, all: readonly DesignFigures[]): string[] =>
  all
    .filter(
      (other) =>
        other !== design &&
        CRITERIA.every((c) => other[c] <= design[c]) &&
        CRITERIA.some((c) => other[c] < design[c]),
    )
    .map(({ name }) => name);

/** Steps into which the whole weight is divided. */
const PARTS = 8;

/**
 * Share of all ways to weigh the criteria in which each design comes first. Weights go in eighths
 * of the whole over the criteria in which the designs differ at all, each measured from its best
 * to its worst.
 */
export function weighed(all: readonly DesignFigures[]): number[] {
  const spans = CRITERIA.map((c) => {
    const xs = all.map((design) => design[c]);
    return { c, low: Math.min(...xs), wide: Math.max(...xs) - Math.min(...xs) };
  }).filter(({ wide }) => wide > 0);
  const scores = all.map((design) => spans.map(({ c, low, wide }) => (design[c] - low) / wide));
  const wins = all.map(() => 0);
  let ways = 0;
  for (const weights of weightings(spans.length, PARTS)) {
    const totals = scores.map((s) => s.reduce((sum, x, k) => sum + x * (weights[k] ?? 0), 0));
    const best = Math.min(...totals);
    const first = totals.map((t) => t <= best + 1e-12);
    const ties = first.filter(Boolean).length;
    for (const [i, isFirst] of first.entries()) if (isFirst) wins[i] = (wins[i] ?? 0) + 1 / ties;
    ways++;
  }
  return wins.map((w) => w / Math.max(1, ways));
}

/** Every way to share out so many parts among so many places. */
function* weightings(places: number, parts: number): Generator<readonly number[]> {
  if (places <= 1) {
    yield places === 1 ? [parts] : [];
    return;
  }
  for (let first = 0; first <= parts; first++)
    for (const rest of weightings(places - 1, parts - first)) yield [first, ...rest];
}
