import { type Change, chunkOf, type Entry, type Id, rowParent } from '../../study/index.ts';
import { BulkInsert } from './bulk-insert.ts';
import { inPieces } from './in-pieces.ts';
import type { SqlLibrary, TouchesTable } from './tables.ts';

type Touch = Pick<TouchesTable, 'what' | 'subject'>;

const node = (subject: Id): Touch => ({ what: 'node', subject });
const below = (parent: Id | null): Touch =>
  parent === null ? { what: 'root', subject: '' } : { what: 'parent', subject: parent };

/** What one entry matters to; entries that no row shows matter to none. */
function touchesOf(entry: Entry): Touch[] {
  switch (entry.e) {
    case 'study.put':
      return [{ what: 'study', subject: '' }];
    case 'node.add':
      return [node(entry.node.id), below(entry.node.parent)];
    case 'node.move':
      return [node(entry.id), below(entry.parent)];
    case 'node.name':
    case 'node.retire':
      return [node(entry.id)];
    case 'reading.add':
      return [node(entry.reading.of.subject)];
    case 'reading.withdraw':
      return [node(entry.subject)];
    case 'choose':
      return [node(entry.of.subject)];
    case 'table.add': {
      const { table } = entry;
      const parents = new Set(table.rows.map((row) => rowParent(table, row)));
      return [node(table.id), ...[...parents].map(below)];
    }
    default:
      return [];
  }
}

const TOUCHES = new BulkInsert<TouchesTable>('touches', ['study', 'what', 'subject', 'change']);

/** Notes what a change matters to. */
export async function noteTouches(
  { db }: SqlLibrary,
  { study, entries }: Change,
  number: number,
): Promise<void> {
  const distinct = new Map(entries.flatMap(touchesOf).map((t) => [`${t.what} ${t.subject}`, t]));
  const rows = [...distinct.values()].map(({ what, subject }) => ({
    study,
    what,
    subject,
    change: number,
  }));
  await TOUCHES.insert(db, rows);
}

/** Numbers of the changes that matter to any of the subjects, each once. */
export async function changesTouching(
  { db }: SqlLibrary,
  study: Id,
  what: TouchesTable['what'],
  subjects: readonly string[],
): Promise<Set<number>> {
  const found = new Set<number>();
  for (const some of inPieces(subjects)) {
    const rows = await db
      .selectFrom('touches')
      .select('change')
      .where('study', '=', study)
      .where('what', '=', what)
      .where('subject', 'in', some)
      .execute();
    for (const { change } of rows) found.add(change);
  }
  return found;
}

/** Under what a node's changes are noted: its own id, and that of the chunk it is a row of. */
export const subjectsOf = (id: Id): string[] => {
  const chunk = chunkOf(id);
  return chunk === undefined ? [id] : [id, chunk];
};

/** Rows of a chunk that other changes matter to (`node`), or that others stand below of (`parent`). */
export async function touchedRows(
  { db }: SqlLibrary,
  study: Id,
  what: 'node' | 'parent',
  chunk: Id,
): Promise<Id[]> {
  const [from, to] = rowRange(chunk);
  const rows = await db
    .selectFrom('touches')
    .select('subject')
    .distinct()
    .where('study', '=', study)
    .where('what', '=', what)
    .where('subject', '>=', from)
    .where('subject', '<', to)
    .execute();
  return rows.map((r) => r.subject);
}

/** Bounds of the ids of a chunk's rows: from the first, to before the second. */
export const rowRange = (chunk: Id): readonly [string, string] => [`${chunk}.r`, `${chunk}.s`];
