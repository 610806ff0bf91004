import type { Id } from '../../../study/index.ts';
import type { RemovalGraph } from './removal-graph.ts';
import type { Unit } from './unit.ts';

/**
 * How much of each group of joints must be opened: a group may hold several parts alike, left
 * and right, of which one only comes off.
 */
export class JointShares {
  readonly #graph: RemovalGraph;
  readonly #ends = new Map<Id, Set<Id>>();
  readonly #whole = new Set<Id>();

  constructor(graph: RemovalGraph) {
    this.#graph = graph;
  }

  take(other: JointShares): void {
    for (const [joint, ends] of other.#ends) this.#ends.set(joint, new Set(ends));
    for (const joint of other.#whole) this.#whole.add(joint);
  }

  /** All of its elements are wanted. */
  whole(joint: Id): void {
    this.#whole.add(joint);
  }

  /** Those that hold a unit are wanted. */
  hold(joint: Id, unit: Unit | undefined): void {
    const { from = [], to = [] } = this.#graph.joint(joint) ?? {};
    const ends = this.#ends.get(joint) ?? new Set<Id>();
    for (const end of [...from, ...to]) if (unit?.inside.has(end)) ends.add(end);
    this.#ends.set(joint, ends);
  }

  /** 1 for all of it. Ends of one side count alike. */
  of(id: Id): number {
    const joint = this.#graph.joint(id);
    const ends = this.#ends.get(id);
    if (!joint || !ends || this.#whole.has(id)) return 1;
    return Math.max(shareOn(joint.from, ends), shareOn(joint.to, ends)) || 1;
  }
}

const shareOn = (side: readonly Id[], ends: ReadonlySet<Id>): number =>
  side.length === 0 ? 0 : side.filter((end) => ends.has(end)).length / side.length;
