import type { Id } from '../../../study/index.ts';
import { Closure, type Dead, type OffFirst, type PlanFacts } from './closure.ts';
import { orderOf } from './order.ts';
import type { RemovalGraph } from './removal-graph.ts';
import type { Unit } from './unit.ts';

export interface PlanStep {
  readonly id: Id;
  readonly kind: 'joint' | 'step' | 'node';
  /** Share of a group's elements that must be opened. */
  readonly share: number;
  /** What must be done before it. */
  readonly after: readonly Id[];
}

/** A way to a node. */
export interface Plan {
  readonly steps: readonly PlanStep[];
  readonly seconds: number;
  /** What comes off along with something else, by a joint that is not opened. */
  readonly along: readonly Id[];
  /** Of those, the ones that nothing recorded holds to the rest. */
  readonly loose: readonly Id[];
  /** Rings of things that wait for each other: there is no order among them. */
  readonly circles: readonly (readonly Id[])[];
  /** Assembly that is taken off first. */
  readonly offFirst?: Id;
}

export interface Planned {
  /** The quickest way; none where `dead` says why. */
  readonly best?: Plan;
  /** The other ways, quickest first. */
  readonly others: readonly Plan[];
  readonly dead?: Dead;
}

export interface Facts extends PlanFacts {
  readonly tool: (id: Id) => string;
}

/**
 * Ways to take a node off: where it stands, or with one of the assemblies around it taken off
 * first, so that what is outside is no more in the way. The quickest is best; among equals the
 * one that leaves the assembly where it is.
 */
export function planRemoval(graph: RemovalGraph, target: Id, facts: Facts): Planned {
  const inPlace = planWith(graph, target, facts, undefined);
  const around = graph
    .assembliesAbove(target)
    .map((assembly) => planWith(graph, target, facts, offFirst(graph, assembly)));
  const plans = [inPlace, ...around].flatMap((p) => ('steps' in p ? [p] : []));
  const [best, ...others] = plans.sort((a, b) => a.seconds - b.seconds);
  if (best) return { best, others: differing(best, others) };
  return { others: [], ...('why' in inPlace ? { dead: inPlace } : {}) };
}

/** Ways that do the same things are one way. */
function differing(best: Plan, others: readonly Plan[]): Plan[] {
  const key = (plan: Plan): string =>
    plan.steps
      .map((s) => `${s.id} ${s.share}`)
      .sort()
      .join('\n');
  const seen = new Set([key(best)]);
  return others.filter((plan) => {
    const own = key(plan);
    const isNew = !seen.has(own);
    seen.add(own);
    return isNew;
  });
}

function offFirst(graph: RemovalGraph, assembly: Id): OffFirst {
  const inside = graph.below([assembly]);
  inside.delete(assembly);
  return { assembly, inside };
}

function planWith(
  graph: RemovalGraph,
  target: Id,
  facts: Facts,
  first: OffFirst | undefined,
): Plan | Dead {
  const closure = new Closure(graph, facts, first);
  if (first) closure.require(first.assembly);
  if (!closure.dead) closure.require(target);
  if (closure.dead) return closure.dead;
  const { order, circles } = orderOf(closure.after, facts.tool, graph.label);
  const steps = order.map(
    (id): PlanStep => ({
      id,
      kind: graph.kind(id) ?? 'node',
      share: closure.shares.of(id),
      after: [...(closure.after.get(id) ?? [])],
    }),
  );
  const along = comingAlong(closure);
  return {
    steps,
    seconds: closure.seconds(),
    along: along.map(({ id }) => id),
    loose: along.filter(({ id, unit }) => isLoose(graph, id, unit)).map(({ id }) => id),
    circles,
    ...(first ? { offFirst: first.assembly } : {}),
  };
}

/** What comes off with something else, and as a part of what. */
function comingAlong(closure: Closure): { readonly id: Id; readonly unit: Unit }[] {
  const found = new Map<Id, Unit>();
  for (const [wanted, unit] of closure.units)
    for (const id of unit.roots) if (id !== wanted && !closure.after.has(id)) found.set(id, unit);
  return [...found].map(([id, unit]) => ({ id, unit }));
}

/** Pulled along by a locked joint, though nothing recorded holds it at its other end. */
function isLoose(graph: RemovalGraph, id: Id, { pulled, crossing }: Unit): boolean {
  if (!pulled.has(id)) return false;
  const inside = graph.below([id]);
  return !crossing.some((joint) => {
    const { from = [], to = [] } = graph.joint(joint) ?? {};
    return [...from, ...to].some((end) => inside.has(end));
  });
}

/** Rings anywhere among what stands in the way of what, whatever is to be taken off. */
export function allCircles(graph: RemovalGraph, facts: Facts): readonly (readonly Id[])[] {
  const closure = new Closure(graph, { ...facts, isLocked: () => false });
  for (const id of graph.blocked()) {
    closure.dead = undefined;
    closure.require(id);
  }
  return orderOf(closure.after, facts.tool, graph.label).circles;
}
