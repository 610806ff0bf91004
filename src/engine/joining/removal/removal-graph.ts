import type { Id, NodeSpec } from '../../../study/index.ts';

/** A joint between two sides. An end that names nothing in the study is left as `LOST`. */
export interface GraphJoint {
  readonly id: Id;
  readonly from: readonly Id[];
  readonly to: readonly Id[];
}
/** `first` must be undone or off before `then`; of those with one `group`, any one is enough. */
export interface GraphBlock {
  readonly first: Id;
  readonly after: Id;
  readonly group: string;
}
export interface GraphInput {
  /** Vehicle, assemblies, parts and steps. */
  readonly nodes: readonly Pick<NodeSpec, 'id' | 'kind' | 'parent' | 'label'>[];
  readonly joints: readonly (GraphJoint & { readonly label: string })[];
  readonly blocks: readonly GraphBlock[];
  /** Nodes that stay on the hoist whatever comes off. */
  readonly stays: readonly Id[];
}

/** Stands for what a joint holds and the study does not have: always outside. */
export const LOST: Id = '';

export type ThingKind = 'joint' | 'step' | 'node';

/**
 * What holds what, and what stands in the way of what. Built once from a study's tree and links;
 * times, tools and locked joints come with each question asked of it.
 */
export class RemovalGraph {
  readonly #kinds = new Map<Id, ThingKind>();
  readonly #labels = new Map<Id, string>();
  readonly #parents = new Map<Id, Id | null>();
  readonly #children = new Map<Id, Id[]>();
  readonly #joints = new Map<Id, GraphJoint>();
  readonly #jointsAt = new Map<Id, Id[]>();
  readonly #blocks = new Map<Id, GraphBlock[]>();
  /** What stays, what is below it and what is above it. */
  readonly #ground = new Set<Id>();
  readonly hasGround: boolean;

  constructor({ nodes, joints, blocks, stays }: GraphInput) {
    for (const { id, kind, parent, label } of nodes) {
      this.#kinds.set(id, kind === 'step' ? 'step' : 'node');
      this.#labels.set(id, label);
      this.#parents.set(id, parent);
      if (parent !== null) push(this.#children, parent, id);
    }
    for (const joint of joints) this.#addJoint(joint);
    for (const block of blocks) push(this.#blocks, block.after, block);
    for (const id of stays) this.#addGround(id);
    this.hasGround = stays.length > 0;
  }

  #addJoint({ id, from, to, label }: GraphInput['joints'][number]): void {
    this.#kinds.set(id, 'joint');
    this.#labels.set(id, label);
    this.#joints.set(id, { id, from, to });
    for (const end of new Set([...from, ...to])) push(this.#jointsAt, end, id);
  }

  #addGround(id: Id): void {
    for (const below of this.below([id])) this.#ground.add(below);
    for (let at = this.parent(id); at !== null; at = this.parent(at)) this.#ground.add(at);
  }

  kind = (id: Id): ThingKind | undefined => this.#kinds.get(id);
  label = (id: Id): string => this.#labels.get(id) ?? id;
  parent = (id: Id): Id | null => this.#parents.get(id) ?? null;
  joint = (id: Id): GraphJoint | undefined => this.#joints.get(id);
  jointsAt = (id: Id): readonly Id[] => this.#jointsAt.get(id) ?? [];
  blocksOf = (id: Id): readonly GraphBlock[] => this.#blocks.get(id) ?? [];
  blocked = (): readonly Id[] => [...this.#blocks.keys()];
  isGround = (id: Id): boolean => id === LOST || this.#ground.has(id);

  /** The nodes and everything below them. */
  below(roots: readonly Id[]): Set<Id> {
    const all = new Set<Id>(roots);
    for (const id of all) for (const child of this.#children.get(id) ?? []) all.add(child);
    return all;
  }

  /** Assemblies above a node, nearest first, the vehicle left out. */
  assembliesAbove(id: Id): Id[] {
    const found: Id[] = [];
    for (let at = this.parent(id); at !== null && this.parent(at) !== null; at = this.parent(at))
      found.push(at);
    return found;
  }

  /** The outermost assembly that a node is in, itself at least. */
  outermost = (id: Id): Id => this.assembliesAbove(id).at(-1) ?? id;
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
