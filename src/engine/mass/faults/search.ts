import { type Candidate, rowsOf } from './candidate.ts';
import { type Child, Effects } from './effects.ts';
import type { Frame, Score, Scorer } from './scorer.ts';
import { dot } from './small-matrix.ts';

/** A set of faults with its score. */
export interface Explanation {
  /** Indices of candidates, rising. */
  readonly set: readonly number[];
  readonly score: Score;
}

export interface Searched {
  /** Best first; the empty set is among them. */
  readonly found: readonly Explanation[];
  /** False when the search met its limit before every promising branch was looked into. */
  readonly complete: boolean;
}

/** Children this much less likely than the best of their kind (ln) are not kept. */
const WINDOW = 10;
/** Branches whose bound is this far (ln) below the best set are cut. */
const CUT = 5;
/** Branches looked into at most, children kept of each, faults in a set. */
const MOST_EXPANDED = 36;
const MOST_CHILDREN = 120;
const MOST_FAULTS = 12;
/** Odds (ln) from which a slip is evident from its row alone, or nearly so. */
const EVIDENT = -4;
/** Two faults at once are tried where at least this much (ln) is left to explain. */
const PAIRS_FROM = 8;
/** What is left by two sets is alike within this, standard units: so is whatever else explains it. */
const ALIKE = 1.5;
/** Unlike sets in which every fault is exchanged in turn at the end, and how far (ln) behind. */
const EXCHANGED = 6;
const EXCHANGE_WITHIN = 6;

/**
 * Branch and bound over sets of faults, best first. A branch adds one fault, or two at once
 * where much is left, so that two which cancel are seen. Its bound is what it would score if one
 * more fault of the best odds explained all the rest; branches whose bound lies below the best
 * set by more than the window are cut. The number of branches is limited, and the answer says
 * when that limit was met.
 */
export class FaultSearch {
  readonly #scorer: Scorer;
  readonly #candidates: readonly Candidate[];
  readonly #effects = new Map<Frame, Effects>();
  /** Candidates whose mass is not known beforehand. */
  readonly #free: readonly number[];
  readonly #partners: readonly (number | undefined)[];
  readonly #bestOdds: number;
  readonly #seen = new Map<string, Explanation>();
  readonly #done = new Set<string>();
  readonly #expanded: Explanation[] = [];
  #best: Explanation | undefined;

  constructor(
    scorer: Scorer,
    candidates: readonly Candidate[],
    partners: readonly (number | undefined)[],
  ) {
    this.#scorer = scorer;
    this.#candidates = candidates;
    this.#partners = partners;
    this.#free = [...candidates.keys()].filter((i) => candidates[i]?.kind === 'absorbed');
    this.#bestOdds = candidates.reduce(
      (best, c) => Math.max(best, c.odds),
      Number.NEGATIVE_INFINITY,
    );
  }

  run(tick: (share: number) => void): Searched {
    this.#add([]);
    for (const set of this.#evidentSets()) this.#add(set);
    let count = 0;
    for (let next = this.#next(); next && count < MOST_EXPANDED; next = this.#next()) {
      this.#expand(next, true);
      tick(++count / MOST_EXPANDED);
    }
    for (const { set } of this.#unlike()) this.#exchange(set);
    return { found: this.#ranked(), complete: count < MOST_EXPANDED };
  }

  /**
   * What the rows say by themselves, whatever the sums: all evident slips together, then with
   * each other evident slip in the place of those that it clashes with.
   */
  #evidentSets(): number[][] {
    const evident = [...this.#candidates.keys()]
      .filter((i) => (this.#candidates[i]?.odds ?? 0) > EVIDENT)
      .sort((a, b) => (this.#candidates[b]?.odds ?? 0) - (this.#candidates[a]?.odds ?? 0));
    const all = this.#without(evident.filter((i) => (this.#candidates[i]?.odds ?? 0) > 0));
    return [all, ...evident.slice(0, MOST_CHILDREN).map((i) => this.#without([i, ...all]))];
  }

  /** A set without those that clash with earlier ones. */
  #without(set: readonly number[]): number[] {
    const kept: number[] = [];
    for (const i of set) {
      const taken = this.#takenBy(kept);
      if (!rowsOf(this.#candidates[i]).some((row) => taken.has(row))) kept.push(i);
    }
    return kept.slice(0, MOST_FAULTS).sort((a, b) => a - b);
  }

  #ranked = (): Explanation[] => [...this.#seen.values()].sort((a, b) => b.score.log - a.score.log);

  /** The best set not looked into yet whose bound is within the window. */
  #next(): Explanation | undefined {
    let next: Explanation | undefined;
    for (const e of this.#seen.values()) {
      if (e.set.length >= MOST_FAULTS || this.#done.has(keyOf(e.set))) continue;
      if (next && e.score.log <= next.score.log) continue;
      if (this.#expanded.some((x) => leavesAlike(x, e))) this.#done.add(keyOf(e.set));
      else next = e;
    }
    if (!next || !this.#best) return undefined;
    const { log, rest } = next.score;
    const bound = log + 0.5 * dot(rest, rest) + pressed(next) + this.#bestOdds;
    return bound > this.#best.score.log - CUT ? next : undefined;
  }

  #add(set: readonly number[]): void {
    if (!this.#seen.has(keyOf(set))) this.#keep(set, this.#scorer.score(this.#of(set)));
  }

  /** A child of a set: in the same frame but for parts that are on others. */
  #addTo(parent: Explanation, add: readonly number[], effects: Effects): void {
    const set = joined(parent.set, add);
    if (this.#seen.has(keyOf(set))) return;
    const candidates = this.#of(set);
    const sameFrame = add.every((i) => this.#candidates[i]?.kind !== 'absorbed');
    const frame = this.#scorer.frameFor(candidates);
    const score = sameFrame
      ? this.#scorer.scoreOf(candidates, frame, effects.restWith(parent.score.rest, add))
      : this.#scorer.score(candidates);
    this.#keep(set, score);
  }

  #keep(set: readonly number[], score: Score): void {
    if (!Number.isFinite(score.log)) return;
    const made = { set, score };
    this.#seen.set(keyOf(set), made);
    if (!this.#best || score.log > this.#best.score.log) this.#best = made;
  }

  #expand(parent: Explanation, withPairs: boolean): void {
    this.#done.add(keyOf(parent.set));
    this.#expanded.push(parent);
    const rest = Float64Array.from(parent.score.rest);
    const taken = this.#takenBy(parent.set);
    const effects = this.#effectsFor(parent.set);
    const two =
      withPairs && 0.5 * dot(rest, rest) > PAIRS_FROM
        ? effects.pairs(rest, taken, (i) => this.#takenBy([i]), WINDOW)
        : [];
    const children = effects
      .singles(rest, taken)
      .concat(two, this.#absorbed(parent, taken))
      .sort((x, y) => y.gain - x.gain);
    const least = (children[0]?.gain ?? 0) - WINDOW;
    for (const { add, gain } of children.slice(0, MOST_CHILDREN))
      if (gain > least) this.#addTo(parent, add, effects);
  }

  /** Effects in the frame of a set: where parts are on others, missing masses weigh elsewhere. */
  #effectsFor(set: readonly number[]): Effects {
    const frame = this.#scorer.frameFor(this.#of(set));
    const effects = this.#effects.get(frame) ?? new Effects(this.#scorer, frame, this.#candidates);
    this.#effects.set(frame, effects);
    return effects;
  }

  /** Parts that may still be on others, one at a time: scored as they are, for each has a frame of its own. */
  #absorbed(parent: Explanation, taken: ReadonlySet<number>): Child[] {
    return this.#free
      .filter((i) => !rowsOf(this.#candidates[i]).some((row) => taken.has(row)))
      .map((i) => {
        const { log } = this.#scorer.score(this.#of(joined(parent.set, [i])));
        return { add: [i], gain: log - parent.score.log };
      });
  }

  #of = (set: readonly number[]): Candidate[] => set.map((i) => this.#candidates[i] as Candidate);

  /** Rows that a set has to do with: each row and its mirror image may be in one fault only. */
  #takenBy(set: readonly number[]): ReadonlySet<number> {
    const rows = set.flatMap((i) => rowsOf(this.#candidates[i]));
    return new Set(rows.flatMap((row) => [row, this.#partners[row] ?? row]));
  }

  /** The best sets of which no two are alike but for one fault. */
  #unlike(): Explanation[] {
    const kept: Explanation[] = [];
    const ranked = this.#ranked();
    const least = (ranked[0]?.score.log ?? 0) - EXCHANGE_WITHIN;
    for (const e of ranked) {
      if (e.score.log < least || kept.length >= EXCHANGED) break;
      if (kept.every((k) => differences(k.set, e.set) > 1)) kept.push(e);
    }
    return kept;
  }

  /** Each fault of a set taken out, and every other put in its place. */
  #exchange(set: readonly number[]): void {
    for (const out of set) {
      const others = set.filter((i) => i !== out);
      this.#add(others);
      const parent = this.#seen.get(keyOf(others));
      if (parent && !this.#expanded.includes(parent)) this.#expand(parent, false);
    }
  }
}

/** What the bounds of missing masses take away, ln: a further fault may free them. */
const pressed = ({ score }: Explanation): number => Math.max(0, -score.within);
/** Two sets that leave the same rest, with the same parts pressed. */
function leavesAlike(a: Explanation, b: Explanation): boolean {
  const d = a.score.rest.map((x, k) => x - (b.score.rest[k] ?? 0));
  return dot(d, d) < ALIKE ** 2 && Math.abs(a.score.within - b.score.within) < 1;
}

/** Faults of one set that are not in the other, of the set that has more of them. */
function differences(a: readonly number[], b: readonly number[]): number {
  const only = (x: readonly number[], y: readonly number[]) =>
    x.filter((i) => !y.includes(i)).length;
  return Math.max(only(a, b), only(b, a));
}

const keyOf = (set: readonly number[]): string => set.join(',');
const joined = (a: readonly number[], b: readonly number[]): number[] =>
  [...a, ...b].sort((x, y) => x - y);
