import type { Answer, Out, Variable } from '../engine/index.ts';
import type { Contribution, ReportOut } from './model.ts';
import { othersText, placeWords, VARIABLE_WORDS } from './wording.ts';

/** Contributions drawn one by one, and the smallest share that is. */
const DRAWN = 5;
const SMALLEST = 0.01;

/** Shares of the variance of a result by its causes; the small ones are taken together. */
export function contributionsOf(
  out: Out,
  variables: Answer['variables'],
): Pick<ReportOut, 'contributions' | 'others'> {
  const total = out.linear.reduce((sum, [, c]) => sum + c * c, 0);
  if (!(total > 0)) return { contributions: [] };
  const all = out.linear.map(([id, c]): Contribution => {
    const variable = variables[id];
    return {
      label: variable ? labelOf(variable) : id,
      what: variable ? VARIABLE_WORDS[variable.what] : '',
      share: (c * c) / total,
    };
  });
  const sorted = all.sort((a, b) => b.share - a.share);
  const drawn = sorted.filter((c, i) => i < DRAWN && c.share >= SMALLEST);
  const rest = sorted.slice(drawn.length);
  const share = rest.reduce((sum, c) => sum + c.share, 0);
  return {
    contributions: drawn,
    ...(rest.length > 0 ? { others: { words: othersText(rest.length), share } } : {}),
  };
}

/** A reading by its subject and property in words; anything else by its own label. */
function labelOf({ what, label, place: { subject, property } }: Variable): string {
  if (what !== 'reading' || subject === undefined || property === undefined) return label;
  return placeWords({ subject, property });
}
