import type { Drawn } from './draws.ts';
import type { Sampler, Sampling } from './evaluate.ts';
import { momentsOf } from './summary.ts';

/** Shares of a result's variance that come from one input or group. */
export interface Indices {
  /** By itself: what of the variance would go if it were known exactly, on average. */
  readonly first: number;
  /** With all that it does together with others. */
  readonly total: number;
}

/**
 * First-order and total indices of each group of variables, for every column of the sampler: from
 * two independent sets of draws A and B and, for each group, A with that group's columns from B.
 * First order by Saltelli and others (Comput. Phys. Commun. 181, 2010, table 2, b), total by
 * Jansen (1999; there f).
 */
export function* indicesOf(
  sampler: Sampler,
  a: Drawn,
  b: Drawn,
  groups: readonly ((variable: number) => boolean)[],
): Generator<number, readonly (readonly Indices[])[], undefined> {
  const runs = groups.length + 2;
  const fa = yield* within(sampler(a), 0, runs);
  const fb = yield* within(sampler(b), 1, runs);
  const found: Indices[][] = fa.map(() => []);
  for (const [g, isIn] of groups.entries()) {
    const mixed = yield* within(sampler(new Mixed(a, b, isIn)), g + 2, runs);
    for (const [k, column] of mixed.entries())
      found[k]?.push(indicesFrom(fa[k] ?? column, fb[k] ?? column, column));
  }
  return found;
}

/** One of several runs, its progress as a share of all of them. */
function* within(sampling: Sampling, run: number, runs: number): Sampling {
  for (;;) {
    const step = sampling.next();
    if (step.done) return step.value;
    yield (run + step.value) / runs;
  }
}

function indicesFrom(a: Float64Array, b: Float64Array, ab: Float64Array): Indices {
  const both = new Float64Array(2 * a.length);
  both.set(a);
  both.set(b, a.length);
  const { mean, u } = momentsOf(both);
  let [first, total] = [0, 0];
  for (let i = 0; i < a.length; i++) {
    const [ya, yb, yab] = [a[i] as number, b[i] as number, ab[i] as number];
    first += (yb - mean) * (yab - ya);
    total += (ya - yab) ** 2;
  }
  const scale = u * u * a.length;
  return { first: first / scale, total: total / (2 * scale) };
}

/** Draws A, with some variables' samples from B. */
class Mixed implements Drawn {
  readonly size: number;

  constructor(
    private readonly a: Drawn,
    private readonly b: Drawn,
    private readonly fromB: (variable: number) => boolean,
  ) {
    this.size = a.size;
  }

  addTo(column: Float64Array, variable: number, factor: number): void {
    (this.fromB(variable) ? this.b : this.a).addTo(column, variable, factor);
  }

  setTo(column: Float64Array, x: number, variable: number, factor: number): void {
    (this.fromB(variable) ? this.b : this.a).setTo(column, x, variable, factor);
  }
}
