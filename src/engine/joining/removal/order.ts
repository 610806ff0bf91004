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
    for (const b of there) then.set(b, [...(then.get(b) ?? []), id]);
  }
  const byLabel = (a: Id, b: Id): number => (labelOf(a) < labelOf(b) ? -1 : 1);
  const ready = [...after.keys()].filter((id) => waits.get(id) === 0).sort(byLabel);
  const order: Id[] = [];
  let tool = '';
  while (ready.length > 0) {
    const at = Math.max(
      0,
      ready.findIndex((id) => toolOf(id) === tool),
    );
    const [id = ''] = ready.splice(at, 1);
    order.push(id);
    tool = toolOf(id) || tool;
    for (const next of then.get(id) ?? []) {
      const left = (waits.get(next) ?? 0) - 1;
      waits.set(next, left);
      if (left === 0) ready.push(next);
    }
  }
  const done = new Set(order);
  const rest = [...after.keys()].filter((id) => !done.has(id)).sort(byLabel);
  return { order: [...order, ...rest], circles: circlesIn(rest, after) };
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
