import { has, type OrderJudge, type OrderProblem, type Steps } from './order-judge.ts';

/** An order of the steps, by their places in the plan. */
export type Order = readonly number[];

/** Sets of steps looked at before a search is given up; said where it is. */
export const MOST_SETS = 20_000;
/** Bits of a number that hold a set. */
export const MOST_STEPS = 30;

export interface Found {
  readonly order?: Order;
  /** The search was cut off: there may be an order all the same. */
  readonly cutOff: boolean;
}

const mayGo = ({ before }: OrderProblem, set: Steps, i: number): boolean =>
  !has(set, i) && (before[i] ?? []).every((first) => has(set, first));

const nextOf = (problem: OrderProblem, set: Steps): number[] =>
  [...problem.steps.keys()].filter((i) => mayGo(problem, set, i));

/**
 * The first order, by the places of the plan, in which every precedence is kept and every margin
 * holds after each step. A set from which no such order leads on is not tried twice.
 */
export function closestOrder(problem: OrderProblem, judge: OrderJudge): Found {
  const dead = new Set<Steps>();
  const whole = 2 ** problem.steps.length - 1;
  let cutOff = false;
  const go = (set: Steps, so: Order): Order | undefined => {
    if (set === whole) return so;
    for (const i of nextOf(problem, set)) {
      const then = set | (1 << i);
      if (dead.has(then)) continue;
      if (judge.looked > MOST_SETS) {
        cutOff = true;
        return undefined;
      }
      const found = judge.judge(then).holds ? go(then, [...so, i]) : undefined;
      if (found) return found;
      dead.add(then);
    }
    return undefined;
  };
  const order = problem.steps.length > MOST_STEPS ? undefined : go(0, []);
  return order ? { order, cutOff } : { cutOff: cutOff || problem.steps.length > MOST_STEPS };
}

/** The order whose least margin in X is widest, among those in which all holds; the closest to the plan of equals. */
export function widestOrder(problem: OrderProblem, judge: OrderJudge): Found {
  if (problem.steps.length > MOST_STEPS) return { cutOff: true };
  const best = new Map<Steps, { readonly least: number; readonly next: number }>();
  const whole = 2 ** problem.steps.length - 1;
  let cutOff = false;
  const least = (set: Steps): number => {
    if (set === whole) return Number.POSITIVE_INFINITY;
    const held = best.get(set);
    if (held) return held.least;
    let chosen = { least: Number.NEGATIVE_INFINITY, next: -1 };
    for (const i of nextOf(problem, set)) {
      if (judge.looked > MOST_SETS) {
        cutOff = true;
        break;
      }
      const then = set | (1 << i);
      const { holds, spareX } = judge.judge(then);
      const reached = holds ? Math.min(spareX, least(then)) : Number.NEGATIVE_INFINITY;
      if (reached > chosen.least) chosen = { least: reached, next: i };
    }
    best.set(set, chosen);
    return chosen.least;
  };
  if (least(0) === Number.NEGATIVE_INFINITY || cutOff) return { cutOff };
  const order: number[] = [];
  for (let set = 0; set !== whole; ) {
    const next = best.get(set)?.next ?? -1;
    order.push(next);
    set |= 1 << next;
  }
  return { order, cutOff };
}
