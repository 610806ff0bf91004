import {
  covariance,
  exactForm,
  formUncertainty,
  type LinearForm,
  partials,
} from '../../quantity/index.ts';
import { decideMargin } from '../decide.ts';
import type { Decision, Formula } from '../method.ts';
import { HOIST_NAMES } from './hoist-inputs.ts';
import { HOIST_OUTPUTS } from './hoist-outputs.ts';

/** Mass and moments of something, as forms that share the variables of the parts. */
export interface Sums {
  readonly mass: LinearForm;
  readonly x: LinearForm;
  readonly y: LinearForm;
}

/** What a search for orders works with. */
export interface OrderProblem {
  /** All that stands on the hoist before the first step. */
  readonly all: Sums;
  /** What each step takes, in the order planned. */
  readonly steps: readonly (Sums & { readonly label: string })[];
  /** Places of the steps that must come before each. */
  readonly before: readonly (readonly number[])[];
  /** Pads, margin asked for, pull and ratings by name. */
  readonly scalars: Readonly<Record<string, LinearForm>>;
}

/** What counts against a limit after a set of steps. */
export interface Judged {
  readonly decisions: readonly { readonly of: string; readonly decision: Decision }[];
  readonly holds: boolean;
  /** Margin in X beyond what is asked for, SI. */
  readonly spareX: number;
}

/** Ratings that are not recorded can not be judged and are left to the step's own answer. */
const JUDGED = ['spareX', 'spareY', 'spareArm', 'spareLift'] as const;
const formulaOf = (name: string): Formula =>
  HOIST_OUTPUTS.find((o) => o.name === name)?.of ?? (() => Number.NaN);

/** A set of steps as the bits of a number. */
export type Steps = number;
export const has = (set: Steps, i: number): boolean => ((set >> i) & 1) === 1;

/** Judges what is left after a set of steps, each set once: covariances of the sums are worked out beforehand. */
export class OrderJudge {
  readonly #problem: OrderProblem;
  /** Covariance of the sums: place 0 is all, place i + 1 the step i; three sums each. */
  readonly #cov: readonly (readonly number[])[];
  readonly #kept = new Map<Steps, Judged>();

  constructor(problem: OrderProblem) {
    this.#problem = problem;
    const forms = [problem.all, ...problem.steps].flatMap((s) => [s.mass, s.x, s.y]);
    this.#cov = forms.map((a, i) => forms.slice(0, i + 1).map((b) => covariance(a, b)));
  }

  judge(set: Steps): Judged {
    const held = this.#kept.get(set);
    if (held) return held;
    const made = this.#work(set);
    this.#kept.set(set, made);
    return made;
  }

  get looked(): number {
    return this.#kept.size;
  }

  #work(set: Steps): Judged {
    const sums = this.#sums(set);
    const cov = [0, 1, 2].map((i) => [0, 1, 2].map((j) => this.#covariance(set, i, j)));
    const decisions = JUDGED.flatMap((of) => {
      const decision = this.#decide(formulaOf(of), sums, cov);
      return Number.isNaN(decision.d) ? [] : [{ of, decision }];
    });
    const spareX = decisions.find((d) => d.of === 'spareX')?.decision.d ?? Number.NaN;
    const holds = !Number.isNaN(spareX) && decisions.every((d) => d.decision.word === 'holds');
    return { decisions, holds, spareX };
  }

  #sums(set: Steps): readonly [number, number, number] {
    const { all, steps } = this.#problem;
    const left = (of: 'mass' | 'x' | 'y') =>
      steps.reduce((sum, step, i) => (has(set, i) ? sum - step[of].x : sum), all[of].x);
    return [left('mass'), left('x'), left('y')];
  }

  /** Of two of the three sums of what is left: all less what the steps took. */
  #covariance(set: Steps, a: number, b: number): number {
    const signs = [1, ...this.#problem.steps.map((_, i) => (has(set, i) ? -1 : 0))];
    let sum = 0;
    for (const [i, si] of signs.entries())
      if (si !== 0)
        for (const [j, sj] of signs.entries())
          if (sj !== 0) sum += si * sj * this.#covOf(3 * i + a, 3 * j + b);
    return sum;
  }

  #covOf = (i: number, j: number): number => this.#cov[Math.max(i, j)]?.[Math.min(i, j)] ?? 0;

  /** First-order spread through the formula: the sums by their covariance, pads and limits apart. */
  #decide(f: Formula, sums: readonly number[], cov: readonly (readonly number[])[]): Decision {
    const given = HOIST_NAMES.map((name) => this.#problem.scalars[name] ?? exactForm(Number.NaN));
    const xs = [...sums, ...given.map((g) => g.x)];
    const us = [...sums.map((_, i) => Math.sqrt(cov[i]?.[i] ?? 0)), ...given.map(formUncertainty)];
    const ofSums: Formula = (m, x, y, ...more) => f(m, m, x, y, 0, 0, 0, 0, ...more);
    const { first } = partials(ofSums, xs, us);
    const g = (i: number): number => first[i] ?? 0;
    let variance = 0;
    for (const i of sums.keys())
      for (const j of sums.keys()) variance += g(i) * g(j) * (cov[i]?.[j] ?? 0);
    for (const [k, u] of us.entries()) if (k >= sums.length && u > 0) variance += (g(k) * u) ** 2;
    return decideMargin(ofSums(...xs), Math.sqrt(Math.max(0, variance)), null);
  }
}
