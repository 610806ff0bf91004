import type { Id } from '../../../study/index.ts';
import { LOST, type RemovalGraph } from './removal-graph.ts';

/** How joints are, for one question: those that can not be opened, and those that opening destroys. */
export interface JointStates {
  readonly isLocked: (id: Id) => boolean;
  readonly isDestroyed: (joint: Id) => boolean;
}

/** What comes off as one piece. */
export interface Unit {
  /** The node wanted first, then what comes along with it. */
  readonly roots: readonly Id[];
  readonly inside: ReadonlySet<Id>;
  /** Of what comes along, what a locked joint pulls with it. */
  readonly pulled: ReadonlySet<Id>;
  /** Joints between the unit and the rest. */
  readonly crossing: readonly Id[];
  /** A locked joint that holds it to what stays: it does not come off. */
  readonly stuck?: Id;
}

/**
 * The node, and along with it whatever hangs on by a joint that can not be opened or that opening
 * would destroy, until all that still holds the unit can be opened. What stays on the hoist never
 * comes along: a destroyed joint to it is opened all the same, a locked one leaves no way.
 */
export function unitOf(graph: RemovalGraph, wanted: Id, states: JointStates): Unit {
  let roots: Id[] = [wanted];
  const pulled = new Set<Id>();
  for (;;) {
    const inside = graph.below(roots);
    const crossing = crossingJoints(graph, inside);
    const fast = crossing.filter((j) => states.isLocked(j) || states.isDestroyed(j));
    const beyond = fast.flatMap((j) => outsideEnds(graph, j, inside));
    const more = beyond.filter((end) => comesAlong(graph, end, wanted));
    const stuck = fast.find(
      (j) =>
        states.isLocked(j) &&
        outsideEnds(graph, j, inside).some((end) => !comesAlong(graph, end, wanted)),
    );
    if (stuck !== undefined) return { roots, inside, pulled, crossing, stuck };
    if (more.length === 0) return { roots, inside, pulled, crossing };
    for (const joint of fast.filter(states.isLocked))
      for (const end of outsideEnds(graph, joint, inside)) pulled.add(end);
    roots = outermostOf(graph, [...roots, ...more]);
  }
}

/** Without a word on what stays, only neighbours in the same outermost assembly come along. */
function comesAlong(graph: RemovalGraph, end: Id, wanted: Id): boolean {
  if (graph.isGround(end)) return false;
  return graph.hasGround || graph.outermost(end) === graph.outermost(wanted);
}

/** Joints between something inside and something outside. */
function crossingJoints(graph: RemovalGraph, inside: ReadonlySet<Id>): Id[] {
  const at = new Set([...inside].flatMap((id) => graph.jointsAt(id)));
  return [...at].filter((joint) => outsideEnds(graph, joint, inside).length > 0);
}

/** What a joint holds outside, onto something inside. */
function outsideEnds(graph: RemovalGraph, joint: Id, inside: ReadonlySet<Id>): Id[] {
  const { from = [], to = [] } = graph.joint(joint) ?? {};
  const beyond = [...partners(from, to, inside), ...partners(to, from, inside)];
  return [...new Set(beyond)].filter((end) => end === LOST || !inside.has(end));
}

/**
 * Ends on one side that the inside ones of the other side are held to. A group that lists as many
 * ends on both sides holds them in pairs, in the order listed; any other each to all.
 */
function partners(side: readonly Id[], others: readonly Id[], inside: ReadonlySet<Id>): Id[] {
  if (side.length === others.length) return others.filter((_, i) => inside.has(side[i] ?? LOST));
  return side.some((end) => inside.has(end)) ? [...others] : [];
}

/** Without those that are below another one; the first stays first. */
function outermostOf(graph: RemovalGraph, ids: readonly Id[]): Id[] {
  const all = new Set(ids);
  return [...all].filter((id) => {
    for (let at = graph.parent(id); at !== null; at = graph.parent(at))
      if (all.has(at)) return false;
    return true;
  });
}
