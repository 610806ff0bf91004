import { type Id, type PlannedRemoval, removalSequence } from '../../study/index.ts';
import type { Finder } from '../method.ts';

/** What is on the hoist when a step begins, and what of it the step takes. */
export interface Standing {
  readonly parts: readonly Id[];
  readonly taken: ReadonlySet<Id>;
}

const KEPT = new WeakMap<Finder, Standing>();

/** Worked out once for each time inputs are found: every row asks for it. */
export function standingAt(at: Finder): Standing {
  const held = KEPT.get(at);
  if (held) return held;
  const plan = removalSequence(at.view);
  const made = standingOf(
    plan,
    at.subject,
    at.view.nodes('part').map((n) => n.id),
  );
  KEPT.set(at, made);
  return made;
}

function standingOf(plan: readonly PlannedRemoval[], step: Id, all: readonly Id[]): Standing {
  const place = plan.findIndex((p) => p.id === step);
  const before = place < 0 ? [] : plan.slice(0, place);
  const gone = new Set(before.flatMap((p) => p.parts));
  return { parts: all.filter((id) => !gone.has(id)), taken: new Set(plan[place]?.parts) };
}
