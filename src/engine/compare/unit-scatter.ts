import { unitScatter } from '../../data/index.ts';
import type { Kind } from '../../quantity/index.ts';
import type { CompareOptions, Scatter } from './comparison.ts';

/** Unit-to-unit scatter of a kind of quantity: what was stated, else the table's; undefined when not known. */
export function scatterFor(kind: Kind, options: CompareOptions): Scatter | undefined {
  return options.scatter?.[kind] ?? unitScatter(kind);
}

/** Standard deviation of single units about a design of this value, SI. */
export const scatterOf = (scatter: Scatter, x: number): number =>
  'relative' in scatter ? scatter.relative * Math.abs(x) : scatter.absolute;
