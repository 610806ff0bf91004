import type { Id } from '../../study/index.ts';
import type { Finder } from '../method.ts';
import { graphOf } from './removal/from-study.ts';
import { type Plan, type Planned, type PlanStep, planRemoval } from './removal/plan.ts';
import type { RemovalGraph } from './removal/removal-graph.ts';
import { elementsOf, factsOf } from './removal-facts.ts';

/** The way to the subject, worked out once for each time inputs are found. */
export interface WayIn {
  readonly graph: RemovalGraph;
  readonly planned: Planned;
  readonly steps: ReadonlyMap<Id, PlanStep>;
  /** Steps at which the tool changes, and those at which one is used for the first time. */
  readonly changes: ReadonlySet<Id>;
  readonly firsts: ReadonlySet<Id>;
}

const KEPT = new WeakMap<Finder, WayIn>();

export function wayIn(at: Finder): WayIn {
  const held = KEPT.get(at);
  if (held) return held;
  const graph = graphOf(at.view);
  const planned = planRemoval(graph, at.subject, factsOf(at));
  const steps = new Map((planned.best?.steps ?? []).map((step) => [step.id, step]));
  const made = { graph, planned, steps, ...toolUse(at, planned.best) };
  KEPT.set(at, made);
  return made;
}

function toolUse(at: Finder, plan: Plan | undefined): Pick<WayIn, 'changes' | 'firsts'> {
  const [changes, firsts, seen] = [new Set<Id>(), new Set<Id>(), new Set<string>()];
  let inHand = '';
  for (const { id } of plan?.steps ?? []) {
    const tool = at.text(id, 'tool').text;
    if (tool === '') continue;
    if (inHand !== '' && tool !== inHand) changes.add(id);
    if (!seen.has(tool)) firsts.add(id);
    seen.add(tool);
    inHand = tool;
  }
  return { changes, firsts };
}

/** Share of a group that is opened: only where that is a whole number of its elements. */
export function shareOf(at: Finder, id: Id): number {
  const share = wayIn(at).steps.get(id)?.share ?? 1;
  const count = elementsOf(at, id);
  const opened = 'missing' in count ? Number.NaN : count.form.x * share;
  return Math.abs(opened - Math.round(opened)) < 1e-9 && opened >= 1 ? share : 1;
}

/** Beyond this many steps it is not worked out for each what would be if it were locked. */
const STEPS_TRIED = 40;

/** What one would do if a joint or step were locked: other steps and their time, or that there is no way. */
export function ifLocked(at: Finder, id: Id): string {
  const { graph, planned, steps } = wayIn(at);
  if (!planned.best || steps.size > STEPS_TRIED || graph.kind(id) === 'node') return '';
  const facts = factsOf(at);
  const other = planRemoval(graph, at.subject, {
    ...facts,
    isLocked: (other) => other === id || facts.isLocked(other),
  });
  if (!other.best) return 'no other way';
  const added = listed(
    other.best.steps.filter((s) => !steps.has(s.id)).map((s) => s.id),
    graph,
  );
  const along = listed(other.best.along, graph);
  const words = [
    ...(added === '' ? [] : [`by ${added}`]),
    ...(along === '' ? [] : [`comes off with ${along}`]),
    ...(other.best.loose.length > 0 ? ['its other end is not recorded'] : []),
  ].join('; ');
  return `${words || 'without it'} (${signed(other.best.seconds - planned.best.seconds)} s)`;
}

const LISTED = 3;

/** The first few by their labels, and how many more. */
function listed(ids: readonly Id[], graph: RemovalGraph): string {
  const labels = ids.slice(0, LISTED).map(graph.label).join(', ');
  return ids.length > LISTED ? `${labels} and ${ids.length - LISTED} more` : labels;
}

export const signed = (x: number): string =>
  `${x < 0 ? '−' : '+'}${Math.abs(Number(x.toPrecision(3)))}`;
