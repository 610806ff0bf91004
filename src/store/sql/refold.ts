import { type Change, fold, type Id, type StudyView } from '../../study/index.ts';
import { narrow, placings } from './narrow.ts';
import { orderOf } from './node-rows.ts';
import type { StoredChanges } from './stored-changes.ts';
import type { SqlLibrary } from './tables.ts';
import { changesTouching, subjectsOf } from './touches.ts';

/** Nodes folded again. */
export interface Refolded {
  readonly view: StudyView;
  /** By node, the order of the change that added it. */
  readonly added: ReadonlyMap<Id, string>;
}

/**
 * A view in which the nodes asked for stand as in the fold of the whole study: made of what
 * the changes say of them, of all that any change ever placed above them, of the roots, and of
 * the study's header, with the undoing of any of it.
 */
export async function refold(
  library: SqlLibrary,
  stored: StoredChanges,
  study: Id,
  ids: Iterable<Id>,
): Promise<Refolded> {
  const { nodes, numbers } = await withAllAbove(library, stored, study, ids);
  const changes: Change[] = [];
  for await (const [, change] of stored.read(numbers)) changes.push(narrow(change, nodes));
  const view = fold(study, [...changes, ...(await undoingOf(stored, study, changes))]);
  return { view, added: firstAdded(view, changes) };
}

/** The first addition that stands is the one that counts. */
function firstAdded(view: StudyView, changes: readonly Change[]): Map<Id, string> {
  const undone = new Set(view.gestures().flatMap((g) => (g.undone ? [g.gesture] : [])));
  const found = new Map<Id, string>();
  for (const change of changes.filter((c) => !undone.has(c.gesture)))
    for (const { id, adds } of placings(change)) {
      const earlier = found.get(id);
      const order = orderOf(change);
      if (adds && (earlier === undefined || order < earlier)) found.set(id, order);
    }
  return found;
}

async function withAllAbove(
  library: SqlLibrary,
  stored: StoredChanges,
  study: Id,
  ids: Iterable<Id>,
): Promise<{ readonly nodes: ReadonlySet<Id>; readonly numbers: ReadonlySet<number> }> {
  const nodes = new Set([...ids, ...(await rootIds(library, stored, study))]);
  const numbers = await changesTouching(library, study, 'study', ['']);
  for (let fresh = nodes as ReadonlySet<Id>; fresh.size > 0; ) {
    const subjects = new Set([...fresh].flatMap(subjectsOf));
    const touching = await changesTouching(library, study, 'node', [...subjects]);
    for (const n of touching) numbers.add(n);
    fresh = await parentsNamed(stored, touching, fresh);
    fresh = new Set([...fresh].filter((id) => !nodes.has(id)));
    for (const id of fresh) nodes.add(id);
  }
  return { nodes, numbers };
}

/** Nodes that a change adds below none: where those stand whose own parent is not known. */
export async function rootIds(
  library: SqlLibrary,
  stored: StoredChanges,
  study: Id,
): Promise<Set<Id>> {
  const roots = new Set<Id>();
  for await (const [, change] of stored.read(await changesTouching(library, study, 'root', [''])))
    for (const { id, parent } of placings(change)) if (parent === null) roots.add(id);
  return roots;
}

/** Ids that the changes place any of `children` below. */
async function parentsNamed(
  stored: StoredChanges,
  numbers: ReadonlySet<number>,
  children: ReadonlySet<Id>,
): Promise<Set<Id>> {
  const found = new Set<Id>();
  for await (const [, change] of stored.read(numbers))
    for (const { id, parent } of placings(change))
      if (parent !== null && children.has(id)) found.add(parent);
  return found;
}

/** The changes, not among those given, that undo one of them, or undo such an undoing. */
export async function undoingOf(
  stored: StoredChanges,
  study: Id,
  changes: readonly Change[],
): Promise<Change[]> {
  const held = new Set(changes.map((c) => c.id));
  const found: Change[] = [];
  for (let gestures = changes.map((c) => c.gesture); gestures.length > 0; ) {
    const fresh: Change[] = [];
    const numbers = new Set(await stored.undoing(study, [...new Set(gestures)]));
    for await (const [, change] of stored.read(numbers))
      if (!held.has(change.id)) fresh.push({ ...change, entries: [] });
    for (const change of fresh) held.add(change.id);
    found.push(...fresh);
    gestures = fresh.map((c) => c.gesture);
  }
  return found;
}

/** Whether a gesture stands undone. */
export async function isUndone(stored: StoredChanges, study: Id, change: Change): Promise<boolean> {
  const bare = { ...change, entries: [] };
  const undoing = await undoingOf(stored, study, [bare]);
  if (undoing.length === 0) return false;
  const gestures = fold(study, [bare, ...undoing]).gestures();
  return gestures.some((g) => g.gesture === change.gesture && g.undone);
}
