import { type Candidate, rowsOf } from './candidate.ts';
import { NearIndex } from './near-index.ts';
import type { Frame, Scorer } from './scorer.ts';
import { dot, whitened } from './small-matrix.ts';

/** One or two faults to add, and what that gains (ln) under the common frame of the scorer. */
export interface Child {
  readonly add: readonly number[];
  readonly gain: number;
}

/** Gains below this (ln) are of no interest. */
const LEAST_GAIN = -14;
/** A pair must gain this much (ln) to be thought of. */
const LEAST_PAIR_GAIN = 0;

/** What each candidate does to residuals whitened in one frame, and quick looks through them. */
export class Effects {
  readonly #d: number;
  readonly #rows: readonly (readonly number[])[];
  readonly #w: Float64Array;
  readonly #half: Float64Array;
  readonly #odds: Float64Array;
  /** Candidates whose effect is known beforehand, and those of them that could pay for themselves. */
  readonly #known: readonly number[];
  readonly #strong: readonly number[];
  #index: NearIndex | undefined;

  constructor(scorer: Scorer, { factor }: Pick<Frame, 'factor'>, candidates: readonly Candidate[]) {
    this.#d = factor.length;
    this.#rows = candidates.map(rowsOf);
    this.#w = new Float64Array(candidates.length * this.#d);
    this.#half = new Float64Array(candidates.length);
    this.#odds = Float64Array.from(candidates, (c) => c.odds);
    this.#known = [...candidates.keys()].filter((i) => candidates[i]?.kind !== 'absorbed');
    for (const i of this.#known) {
      const w = whitened(factor, scorer.effectOf(candidates[i] as Candidate));
      this.#w.set(w, i * this.#d);
      this.#half[i] = 0.5 * dot(w, w);
    }
    this.#strong = this.#known.filter((i) => (this.#half[i] ?? 0) + (this.#odds[i] ?? 0) > 0);
  }

  #gain(i: number, rest: Float64Array): number {
    let along = 0;
    for (let k = 0, at = i * this.#d; k < this.#d; k++, at++)
      along += (rest[k] ?? 0) * (this.#w[at] ?? 0);
    return (this.#odds[i] ?? 0) + along - (this.#half[i] ?? 0);
  }

  #less(rest: Float64Array, i: number): Float64Array {
    const left = rest.slice();
    for (let k = 0, at = i * this.#d; k < this.#d; k++, at++)
      left[k] = (left[k] ?? 0) - (this.#w[at] ?? 0);
    return left;
  }

  /** A rest less what one or two candidates add to it. */
  restWith(rest: ArrayLike<number>, add: readonly number[]): number[] {
    const left = Array.from(rest);
    for (const i of add)
      for (let k = 0, at = i * this.#d; k < this.#d; k++, at++)
        left[k] = (left[k] ?? 0) - (this.#w[at] ?? 0);
    return left;
  }

  #clashes(i: number, taken: ReadonlySet<number>): boolean {
    for (const row of this.#rows[i] ?? []) if (taken.has(row)) return true;
    return false;
  }

  /** One at a time. */
  singles(rest: Float64Array, taken: ReadonlySet<number>): Child[] {
    const children: Child[] = [];
    for (const i of this.#known) {
      const gain = this.#gain(i, rest);
      if (gain > LEAST_GAIN && !this.#clashes(i, taken)) children.push({ add: [i], gain });
    }
    return children;
  }

  /** Two at once: for each candidate, those that come near what it leaves. */
  pairs(
    rest: Float64Array,
    taken: ReadonlySet<number>,
    takenBy: (i: number) => ReadonlySet<number>,
    window: number,
  ): Child[] {
    const children: Child[] = [];
    this.#index ??= new NearIndex(this.#w, this.#d, this.#strong);
    let least = LEAST_PAIR_GAIN;
    for (const i of this.#strong) {
      if (this.#clashes(i, taken)) continue;
      const left = this.#less(rest, i);
      const first = this.#gain(i, rest);
      this.#index.near(left, (j) => {
        const gain = j > i ? first + this.#gain(j, left) : Number.NEGATIVE_INFINITY;
        if (gain < least || this.#clashes(j, taken) || this.#clashes(j, takenBy(i))) return;
        least = Math.max(least, gain - window);
        children.push({ add: [i, j], gain });
      });
    }
    return children;
  }
}
