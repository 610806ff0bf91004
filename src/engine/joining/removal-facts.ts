import type { Id } from '../../study/index.ts';
import type { Finder, Found } from '../method.ts';
import type { Facts } from './removal/plan.ts';

/** Words for a joint that will not open. */
const LOCKED = /\b(seized|locked|sheared|rusted fast)\b/i;

export const onRemoval = (at: Finder, id: Id): string =>
  at.text(id, 'onRemoval').text.trim().toLowerCase();

const has = (at: Finder, id: Id, property: string): boolean =>
  at.view.properties(id).includes(property);

/** Time to undo one element, do a step, or take a part off. */
export function undoTime(at: Finder, id: Id): Found {
  if (has(at, id, 'time.removal')) return at.number(id, 'time.removal');
  return driveOrNone(at, id);
}

/** Time to do up one element again, to undo a step, or to put a part back. */
export function refitTime(at: Finder, id: Id): Found {
  if (has(at, id, 'time.refit')) return at.number(id, 'time.refit');
  return at.view.node(id)?.kind === 'step' ? undoTime(at, id) : driveOrNone(at, id);
}

/** A joint is undone in the time it takes to reach and drive it, where nothing else is recorded. */
function driveOrNone(at: Finder, id: Id): Found {
  const node = at.view.node(id);
  if (node?.kind === 'joint')
    return at.sum(node.label, [at.number(id, 'time.access'), at.number(id, 'time.drive')]);
  return node?.kind === 'step'
    ? at.number(id, 'time.removal')
    : at.exact(0, 'no time to take it off is recorded');
}

/** Elements of a joint; anything else is one. */
export const elementsOf = (at: Finder, id: Id): Found =>
  at.view.node(id)?.kind === 'joint' ? at.number(id, 'count.holes') : at.exact(1, 'one');

const nominal = (found: Found): number => ('missing' in found ? 0 : found.form.x);

/** Ids of the things said to be locked, and words that name none. */
export function lockedIn(at: Finder): { readonly ids: readonly Id[]; readonly lost: string[] } {
  const words = at
    .given('locked')
    .split(/[;,\s]+/)
    .filter((w) => w !== '');
  return {
    ids: words.flatMap((w) => at.node(w) ?? []),
    lost: words.filter((w) => at.node(w) === undefined),
  };
}

/** What planning asks of the study, read only where it looks. */
export function factsOf(at: Finder): Facts {
  const locked = new Set(lockedIn(at).ids);
  return {
    isLocked: (id) => locked.has(id) || LOCKED.test(at.text(id, 'state').text),
    isDestroyed: (id) => onRemoval(at, id) === 'destroys part',
    seconds: (id) => nominal(undoTime(at, id)) * nominal(elementsOf(at, id)),
    tool: (id) => at.text(id, 'tool').text,
  };
}
