import type { VariableId } from '../../quantity/index.ts';
import type { IndexedForm } from './indexed-form.ts';

type Contribution = readonly [VariableId, number];

/** Larger first; of two alike the one whose id sorts first. */
const bySize = ([a, x]: Contribution, [b, y]: Contribution): number =>
  Math.abs(y) - Math.abs(x) || (a < b ? -1 : 1);

/** Every contribution that is not zero, largest first. */
export function rankedOf({ vars, c, variables }: IndexedForm): Contribution[] {
  const all: Contribution[] = [];
  for (let i = 0; i < vars.length; i++)
    if (c[i]) all.push([variables.at(vars[i] ?? -1).id, c[i] ?? 0]);
  return all.sort(bySize);
}

/** The `n` largest contributions and what is left of the variance, without ranking the rest. */
export function largestOf(
  { vars, c, variables }: IndexedForm,
  n: number,
): { readonly top: readonly Contribution[]; readonly others: { count: number; variance: number } } {
  const kept: number[] = [];
  let count = 0;
  let variance = 0;
  let least = 0;
  for (let i = 0; i < c.length; i++) {
    const size = Math.abs(c[i] ?? 0);
    if (size === 0) continue;
    count++;
    variance += size * size;
    if (kept.length >= n && size <= least) continue;
    insert(kept, i, c, n);
    least = Math.abs(c[kept[kept.length - 1] ?? -1] ?? 0);
  }
  const top = kept.map((i): Contribution => [variables.at(vars[i] ?? -1).id, c[i] ?? 0]);
  const held = top.reduce((sum, [, size]) => sum + size * size, 0);
  const others = { count: count - top.length, variance: Math.max(variance - held, 0) };
  return { top: top.sort(bySize), others };
}

/** Puts a place where its size belongs among those kept, at most `n` of them. */
function insert(kept: number[], i: number, c: ArrayLike<number>, n: number): void {
  const size = Math.abs(c[i] ?? 0);
  let at = kept.length;
  while (at > 0 && Math.abs(c[kept[at - 1] ?? -1] ?? 0) < size) at--;
  kept.splice(at, 0, i);
  if (kept.length > n) kept.pop();
}
