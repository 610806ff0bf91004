import { type Finding, type Id, type PlannedRemoval, removalSequence } from '../../study/index.ts';
import { graphOf } from '../joining/removal/from-study.ts';
import { planRemoval } from '../joining/removal/plan.ts';
import { factsOf } from '../joining/removal-facts.ts';
import type { Finder } from '../method.ts';

/** Which steps of the plan must come before which, with what makes it so. */
export interface Precedence {
  readonly plan: readonly PlannedRemoval[];
  /** By step: the steps before it, each with a reason. */
  readonly before: ReadonlyMap<Id, ReadonlyMap<Id, string>>;
  readonly findings: readonly Finding[];
}

const KEPT = new WeakMap<Finder, Precedence>();

/**
 * Precedence among the steps of the removal plan: what the way to each thing that a step takes
 * needs off first (joints that hold it, what stands in the way of them, and so on), where another
 * step takes that; and what was recorded between the steps themselves.
 */
export function precedenceOf(at: Finder): Precedence {
  const held = KEPT.get(at);
  if (held) return held;
  const made = workOut(at);
  KEPT.set(at, made);
  return made;
}

function workOut(at: Finder): Precedence {
  const plan = removalSequence(at.view);
  const owner = new Map(plan.flatMap((step) => step.parts.map((part) => [part, step.id])));
  const findings: Finding[] = [];
  const before = new Map(
    plan.map((step) => [
      step.id,
      new Map([...recorded(at, step), ...byTheGraph(at, step, owner, findings)]),
    ]),
  );
  return { plan, before, findings };
}

function recorded(at: Finder, { id }: PlannedRemoval): [Id, string][] {
  const links = at.view.links('blocks', id).filter((l) => l.to === id);
  const steps = links.filter((l) => at.view.node(l.from)?.kind === 'removal');
  return steps.map((l) => [l.from, 'as recorded']);
}

function byTheGraph(
  at: Finder,
  step: PlannedRemoval,
  owner: ReadonlyMap<Id, Id>,
  findings: Finding[],
): [Id, string][] {
  const graph = graphOf(at.view);
  const facts = factsOf(at);
  return step.nodes.flatMap((node) => {
    const { best, dead } = planRemoval(graph, node, facts);
    if (dead) findings.push(noWay(step, graph.label(node), graph.label(dead.at)));
    const off = (best?.steps ?? []).filter((s) => s.kind === 'node' && s.id !== node);
    return off.flatMap(({ id }) =>
      ownersOf(at, id, owner)
        .filter((other) => other !== step.id)
        .map((other): [Id, string] => [
          other,
          `${graph.label(id)} is off before ${graph.label(node)}`,
        ]),
    );
  });
}

/** The steps that take a part, or the parts of an assembly. */
const ownersOf = (at: Finder, id: Id, owner: ReadonlyMap<Id, Id>): Id[] => [
  ...new Set(at.view.nodes('part', id).flatMap((part) => owner.get(part.id) ?? [])),
];

const noWay = (step: PlannedRemoval, node: string, stop: string): Finding => ({
  code: 'removal-no-way',
  level: 'doubt',
  place: { subject: step.label },
  value: node,
  what: `the record has no way to take it off: ${stop} stops it`,
  next: 'Record the way in, or say what is to be cut.',
});
