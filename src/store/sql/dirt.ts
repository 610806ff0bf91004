import type { Change, Entry, Id } from '../../study/index.ts';
import { placings, subjectOf } from './narrow.ts';
import type { StoredChanges } from './stored-changes.ts';
import type { SqlLibrary } from './tables.ts';
import { changesTouching } from './touches.ts';

/** What has to be projected again after changes have come in. */
export interface Dirt {
  /** Nodes whose own row may differ. */
  readonly nodes: Set<Id>;
  /** Nodes with all that any change ever placed below them: added, moved, retired, or undone so. */
  readonly trees: Set<Id>;
  /** Numbers of the changes that carry chunks of tables, new or with their undoing changed. */
  readonly chunks: Set<number>;
  header: boolean;
}

/** What the changes given have to do with, and what they undo. */
export async function dirtOf(
  stored: StoredChanges,
  study: Id,
  fresh: Iterable<readonly [number, Change]>,
): Promise<Dirt> {
  const dirt: Dirt = {
    nodes: new Set(),
    trees: new Set(),
    chunks: new Set(),
    header: false,
  };
  const undone = new Set<string>();
  for (const [number, change] of fresh) soil(dirt, number, change, undone);
  // A set that grows while it is walked: an undo may name the gesture of another undo.
  for (const gesture of undone)
    for await (const [number, change] of stored.read(await stored.ofGestures(study, [gesture])))
      soil(dirt, number, change, undone);
  return dirt;
}

function soil(dirt: Dirt, number: number, change: Change, undone: Set<string>): void {
  if (change.undoes !== undefined) undone.add(change.undoes);
  for (const entry of change.entries) soilEntry(dirt, number, entry);
}

function soilEntry(dirt: Dirt, number: number, entry: Entry): void {
  const subject = subjectOf(entry);
  if (entry.e === 'study.put') dirt.header = true;
  if (entry.e === 'table.add') dirt.chunks.add(number);
  if (subject === undefined) return;
  const moves = ['node.add', 'node.move', 'node.retire'].includes(entry.e);
  (moves ? dirt.trees : dirt.nodes).add(subject);
}

/** The nodes that any change, but those left out, ever placed below `tops`, however far. */
export async function allBelow(
  library: SqlLibrary,
  stored: StoredChanges,
  study: Id,
  tops: Iterable<Id>,
  leaveOut: ReadonlySet<number>,
): Promise<Set<Id>> {
  const found = new Set<Id>();
  for (let level = new Set(tops); level.size > 0; ) {
    const numbers = await changesTouching(library, study, 'parent', [...level]);
    for (const number of leaveOut) numbers.delete(number);
    const next = new Set<Id>();
    for await (const [, change] of stored.read(numbers))
      for (const { id, parent } of placings(change))
        if (parent !== null && level.has(parent) && !found.has(id)) next.add(id);
    for (const id of next) found.add(id);
    level = next;
  }
  return found;
}
