/** Orders found (question removal-order) against every order of small made-up plans, tried one by one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OrderJudge, type OrderProblem } from '../../../src/engine/hoist/order-judge.ts';
import { closestOrder, type Order, widestOrder } from '../../../src/engine/hoist/order-search.ts';
import { exactForm, type LinearForm } from '../../../src/quantity/index.ts';

const loose = (x: number, u: number, id: string): LinearForm => ({ x, by: new Map([[id, u]]) });
const SCALARS = {
  ...{ front: exactForm(0.56), rear: exactForm(2.38), left: exactForm(-0.56) },
  ...{ right: exactForm(0.56), shareX: exactForm(0.15), leastX: exactForm(0.25) },
  ...{ shareY: exactForm(0.15), pull: exactForm(80), pullX: exactForm(-0.82) },
  ...{ pullY: exactForm(0), rating: exactForm(3500), armRating: exactForm(1200) },
};

const step = fc.record({
  kg: fc.integer({ min: 10, max: 250 }),
  x: fc.double({ min: -0.5, max: 3.4, noNaN: true }),
  y: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
});
const problem = fc.array(step, { minLength: 2, maxLength: 5 }).chain((steps) =>
  fc.array(fc.tuple(fc.nat(steps.length - 1), fc.nat(steps.length - 1)), { maxLength: 3 }).map(
    (pairs): OrderProblem => ({
      all: { mass: loose(1500, 1, 'all'), x: loose(1500 * 1.35, 4, 'allX'), y: exactForm(5) },
      steps: steps.map(({ kg, x, y }, i) => ({
        label: `R${i}`,
        mass: loose(kg, 0.2, `m${i}`),
        x: { x: kg * x, by: new Map([[`m${i}`, 0.2 * x]]) },
        y: exactForm(kg * y),
      })),
      before: steps.map((_, i) => pairs.filter(([a, b]) => b === i && a < b).map(([a]) => a)),
      scalars: SCALARS,
    }),
  ),
);

function permutations(n: number): Order[] {
  if (n === 0) return [[]];
  const grow = (so: Order): Order[] =>
    so.length === n
      ? [so]
      : [...Array(n).keys()].filter((i) => !so.includes(i)).flatMap((i) => grow([...so, i]));
  return grow([]);
}

/** The least margin along an order; undefined where precedence or a margin is broken. */
function along(p: OrderProblem, judge: OrderJudge, order: Order): number | undefined {
  let [set, least] = [0, Number.POSITIVE_INFINITY];
  for (const i of order) {
    if (!(p.before[i] ?? []).every((first) => (set >> first) & 1)) return undefined;
    set |= 1 << i;
    const { holds, spareX } = judge.judge(set);
    if (!holds) return undefined;
    least = Math.min(least, spareX);
  }
  return least;
}

describe('orders of a plan', () => {
  it('the closest and the widest are those of trying all', () => {
    fc.assert(
      fc.property(problem, (p) => {
        const judge = new OrderJudge(p);
        const good = permutations(p.steps.length).flatMap((order) => {
          const least = along(p, judge, order);
          return least === undefined ? [] : [{ order, least }];
        });
        const closest = closestOrder(p, new OrderJudge(p));
        const widest = widestOrder(p, new OrderJudge(p));
        expect(closest.order).toEqual(good[0]?.order);
        expect(widest.order === undefined).toBe(good.length === 0);
        if (widest.order)
          expect(along(p, judge, widest.order)).toBeCloseTo(
            Math.max(...good.map((g) => g.least)),
            9,
          );
      }),
    );
  });
});
