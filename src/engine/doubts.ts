import type { IndexedForm } from './forms/indexed-form.ts';
import type { Variable } from './method.ts';
import type { Propagated } from './propagate.ts';

/** Relative spread of an input's share above which a curved formula is doubted, and of curvature to u. */
const WIDE = 0.1;
/** Share of variance from which one input that is not normal sets the shape of the whole. */
const DOMINANT = 0.5;
/** Curvature below this share of u is rounding in the differences, not a curved formula. */
const NOISE = 1e-4;

type Doubted = Omit<Propagated, 'depends'>;

/** True where second-order terms add so much to the variance that the linear spread is too small. */
export const widens = (p: Doubted): boolean => p.addedVariance > WIDE * p.form.u ** 2;

/** Reasons why the linear spread may mislead; empty when there is none. */
export function linearDoubts(p: Doubted): string[] {
  const { u, x } = p.form;
  if (u === 0)
    return p.curvature !== 0 || p.addedVariance > 0
      ? ['the result does not move with its inputs to first order, only to second']
      : [];
  const doubts: string[] = [];
  if (widens(p)) doubts.push('second-order terms add more than a tenth to the variance');
  if (Math.abs(p.curvature) > WIDE * u)
    doubts.push('second-order terms shift the mean by more than a tenth of the spread');
  if (x !== 0 && u > WIDE * Math.abs(x) && Math.abs(p.curvature) > NOISE * u)
    doubts.push('the spread is more than a tenth of the value and the formula is curved');
  const spread = dominantOf(p.form)?.spread.s;
  if (spread === 'rectangular' || spread === 'arcsine' || spread === 'triangular')
    doubts.push(`one ${spread} input makes up most of the spread: an interval of 2 u is not 95 %`);
  return doubts;
}

/** The variable that brings most of the variance, where one does. */
function dominantOf({ vars, c, u, variables }: IndexedForm): Variable | undefined {
  for (let i = 0; i < vars.length; i++)
    if ((c[i] ?? 0) ** 2 > DOMINANT * u * u) return variables.at(vars[i] ?? -1);
  return undefined;
}
