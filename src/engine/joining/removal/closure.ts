import type { Id } from '../../../study/index.ts';
import { type GraphBlock, LOST, type RemovalGraph } from './removal-graph.ts';
import { JointShares } from './shares.ts';
import { type JointStates, type Unit, unitOf } from './unit.ts';

/** What planning has to know of the things it meets. */
export interface PlanFacts extends JointStates {
  /** Seconds to undo all elements of a joint, do a step, or take a node off. */
  readonly seconds: (id: Id) => number;
}

/** Why there is no way: what can not be undone or does not come off. */
export interface Dead {
  readonly at: Id;
  readonly why: 'locked' | 'stays' | 'not there' | 'no alternative';
}

/** An assembly taken off first: nothing outside it is then in the way of what is in it. */
export interface OffFirst {
  readonly assembly: Id;
  readonly inside: ReadonlySet<Id>;
}

interface Choice {
  readonly of: Id;
  readonly members: readonly Id[];
  readonly unit: Unit | undefined;
}

/**
 * Everything that must be undone or off before some goal: all joints that hold what comes off,
 * all that stands in the way of them, and so on. Of alternatives the one that adds least time.
 */
export class Closure {
  /** What must be done before each thing that must be done. */
  readonly after = new Map<Id, Set<Id>>();
  readonly units = new Map<Id, Unit>();
  readonly shares: JointShares;
  dead: Dead | undefined;
  readonly #graph: RemovalGraph;
  readonly #facts: PlanFacts;
  readonly #first: OffFirst | undefined;
  readonly #choices: Choice[] = [];

  constructor(graph: RemovalGraph, facts: PlanFacts, first?: OffFirst) {
    this.#graph = graph;
    this.#facts = facts;
    this.#first = first;
    this.shares = new JointShares(graph);
  }

  /** The same so far, to try something on; choices still open stay behind. */
  #trial(): Closure {
    const other = new Closure(this.#graph, this.#facts, this.#first);
    for (const [id, before] of this.after) other.after.set(id, new Set(before));
    for (const [id, unit] of this.units) other.units.set(id, unit);
    other.shares.take(this.shares);
    return other;
  }

  /** Adds a goal with all it needs. */
  require(goal: Id): void {
    const open: Id[] = this.#add(goal) ? [goal] : [];
    for (let id = open.pop(); id !== undefined && !this.dead; id = open.pop())
      for (const need of this.#expand(id)) if (this.#add(need)) open.push(need);
    this.#choose();
  }

  #add(id: Id): boolean {
    if (this.after.has(id)) return false;
    this.after.set(id, new Set());
    return true;
  }

  /** What must be done before something, without what is still to be chosen. */
  #expand(id: Id): Id[] {
    const kind = this.#graph.kind(id);
    if (kind === undefined) return this.#die(id, 'not there');
    if (kind !== 'node')
      return this.#facts.isLocked(id) ? this.#die(id, 'locked') : this.#needs(id, [id]);
    if (this.#graph.isGround(id)) return this.#die(id, 'stays');
    const unit = unitOf(this.#graph, id, this.#facts);
    this.units.set(id, unit);
    if (unit.stuck !== undefined) return this.#die(unit.stuck, 'locked');
    return this.#needs(id, unit.roots, unit);
  }

  #die(at: Id, why: Dead['why']): Id[] {
    this.dead ??= { at, why };
    return [];
  }

  #needs(of: Id, roots: readonly Id[], unit?: Unit): Id[] {
    const blocks = roots.flatMap((root) => this.#blocksOf(of, root, unit));
    const plain = blocks.filter((b) => b.group === '').map((b) => b.first);
    const either = blocks.filter((b) => b.group !== '');
    for (const group of new Set(either.map((b) => b.group)))
      this.#choices.push({ of, unit, members: firstsOf(either, group) });
    const chosenLater = new Set(either.map((b) => b.first));
    const held = (unit?.crossing ?? []).filter((joint) => !chosenLater.has(joint));
    for (const joint of held) this.shares.hold(joint, unit);
    for (const id of plain) this.#need(id, unit);
    for (const need of [...plain, ...held]) this.after.get(of)?.add(need);
    return [...plain, ...held];
  }

  /** A joint that is in the way is wanted with all its elements, unless it holds the unit itself. */
  #need(id: Id, unit: Unit | undefined): void {
    if (unit?.crossing.includes(id)) this.shares.hold(id, unit);
    else this.shares.whole(id);
  }

  #blocksOf(of: Id, root: Id, unit: Unit | undefined): GraphBlock[] {
    const blocks = this.#graph.blocksOf(root).filter(({ first }) => !unit?.inside.has(first));
    const { assembly } = this.#first ?? {};
    if (assembly === undefined || !this.#isInside(root)) return blocks;
    const left = blocks.filter(({ first }) => this.#isInside(first));
    // What is not in the way any more is not in the way only once the assembly is off.
    if (left.length < blocks.length) this.after.get(of)?.add(assembly);
    return left;
  }

  /** Below the assembly that is off first; a joint may hold to the assembly itself. */
  #isInside(id: Id): boolean {
    const { assembly, inside = new Set() } = this.#first ?? {};
    const joint = this.#graph.joint(id);
    if (!joint) return inside.has(id) || this.#graph.kind(id) === 'step';
    const ends = [...joint.from, ...joint.to];
    return ends.every((end) => end !== LOST && (end === assembly || inside.has(end)));
  }

  #choose(): void {
    for (let choice = this.#choices.shift(); choice && !this.dead; choice = this.#choices.shift()) {
      const chosen = this.#cheapest(choice);
      if (chosen === undefined) {
        this.#die(choice.members[0] ?? choice.of, 'no alternative');
        return;
      }
      this.after.get(choice.of)?.add(chosen);
      this.#need(chosen, choice.unit);
      this.require(chosen);
    }
  }

  /** The member that adds least time; none where all are locked or wait for what they are wanted for. */
  #cheapest({ of, members, unit }: Choice): Id | undefined {
    let best: { readonly id: Id; readonly seconds: number } | undefined;
    for (const id of members) {
      const trial = this.#trial();
      trial.#need(id, unit);
      trial.require(id);
      if (trial.dead || trial.#leadsTo(id, of)) continue;
      const seconds = trial.seconds();
      if (!best || seconds < best.seconds) best = { id, seconds };
    }
    return best?.id;
  }

  /** Whether `goal` must be done before `start`. */
  #leadsTo(start: Id, goal: Id): boolean {
    const seen = new Set<Id>([start]);
    for (const id of seen) {
      if (id === goal) return true;
      for (const before of this.after.get(id) ?? []) seen.add(before);
    }
    return false;
  }

  /** Time of everything together. */
  seconds(): number {
    let sum = 0;
    for (const id of this.after.keys()) sum += this.#facts.seconds(id) * this.shares.of(id);
    return sum;
  }
}

const firstsOf = (blocks: readonly GraphBlock[], group: string): Id[] =>
  blocks.filter((b) => b.group === group).map((b) => b.first);
