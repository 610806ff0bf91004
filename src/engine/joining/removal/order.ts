import type { Id } from '../../../study/index.ts';

/** Things in the order of doing, and rings of things of which each waits for the next. */
export interface Order {
  readonly order: readonly Id[];
  readonly circles: readonly (readonly Id[])[];
}

/**
 * Puts things after what must be done before them (Kahn's method), staying with one tool as long
 * as something is ready for it. Things in a ring, and what waits for them, come last, as named.
 */
export function orderOf(
  after: ReadonlyMap<Id, ReadonlySet<Id>>,
  toolOf: (id: Id) => string,
  labelOf: (id: Id) => string,
): Order {
  const waits = new Map<Id, number>();
  const then = new Map<Id, Id[]>();
  for (const [id, before] of after) {
    const there = [...before].filter((b) => after.has(b));
    waits.set(id, there.length);
    for (const b of there) {
      const list = then.get(b);
      if (list) list.push(id);
      else then.set(b, [id]);
    }
  }
  const byLabel = (a: Id, b: Id): number => (labelOf(a) < labelOf(b) ? -1 : 1);
  const ready = new ReadyByTool(toolOf, byLabel);
  for (const id of [...after.keys()].sort(byLabel)) if (waits.get(id) === 0) ready.add(id);
  const order: Id[] = [];
  for (let id = ready.take(); id !== undefined; id = ready.take()) {
    order.push(id);
    for (const next of then.get(id) ?? []) {
      const left = (waits.get(next) ?? 0) - 1;
      waits.set(next, left);
      if (left === 0) ready.add(next);
    }
  }
  const done = new Set(order);
  const rest = [...after.keys()].filter((id) => !done.has(id)).sort(byLabel);
  return { order: [...order, ...rest], circles: circlesIn(rest, after) };
}

/** What is ready to be done, a queue for each tool; what needs none comes between. */
class ReadyByTool {
  readonly #queues = new Map<string, { readonly ids: Id[]; at: number }>();
  #tool = '';

  constructor(
    private readonly toolOf: (id: Id) => string,
    private readonly compare: (a: Id, b: Id) => number,
  ) {}

  add(id: Id): void {
    const tool = this.toolOf(id);
    const queue = this.#queues.get(tool);
    if (queue) queue.ids.push(id);
    else this.#queues.set(tool, { ids: [id], at: 0 });
  }

  /** Next for the tool in hand; else the first by name of those at the head of their queues. */
  take(): Id | undefined {
    const held = this.#head(this.#tool) === undefined ? this.#firstTool() : this.#tool;
    const id = held === undefined ? undefined : this.#head(held);
    const queue = this.#queues.get(held ?? '');
    if (id === undefined || !queue) return undefined;
    queue.at += 1;
    this.#tool = held || this.#tool;
    return id;
  }

  #head(tool: string): Id | undefined {
    const queue = this.#queues.get(tool);
    return queue?.ids[queue.at];
  }

  #firstTool(): string | undefined {
    const heads = [...this.#queues.keys()].flatMap((tool) => {
      const id = this.#head(tool);
      return id === undefined ? [] : [{ tool, id }];
    });
    return heads.sort((a, b) => this.compare(a.id, b.id))[0]?.tool;
  }
}

/** One ring for each set of things that wait for each other, each started at its first by name. */
function circlesIn(rest: readonly Id[], after: ReadonlyMap<Id, ReadonlySet<Id>>): Id[][] {
  const among = new Set(rest);
  const seen = new Set<Id>();
  const circles: Id[][] = [];
  for (const start of rest) {
    const walked: Id[] = [];
    let at: Id | undefined = start;
    while (at !== undefined && !seen.has(at)) {
      seen.add(at);
      walked.push(at);
      at = [...(after.get(at) ?? [])].find((before) => among.has(before));
    }
    const from = at === undefined ? -1 : walked.indexOf(at);
    if (from >= 0) circles.push(walked.slice(from));
  }
  return circles;
}
