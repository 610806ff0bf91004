import type { Change, Id, NodeSpec } from '../../study/index.ts';
import { type PartValues, searchedText, searchWords, valuesInForce } from '../part-row.ts';
import { BulkInsert } from './bulk-insert.ts';
import { inPieces } from './in-pieces.ts';
import type { Refolded } from './refold.ts';
import type { NodesTable, SqlLibrary } from './tables.ts';
import { rowRange } from './touches.ts';

/** A row of `nodes` that has no place yet. */
export type NodeRow = Omit<NodesTable, 'place'>;

/** Kinds that no row is kept of: joints are many, not searched for, and stand above nothing. */
export const hasRow = (kind: NodeSpec['kind']): boolean => kind !== 'joint';

/** Sorts as the fold orders changes. */
export const orderOf = ({ clock, id }: Pick<Change, 'clock' | 'id'>): string => `${clock} ${id}`;

const NO_VALUES: PartValues = {
  count: null,
  mass: null,
  massU: null,
  thickness: null,
  x: null,
  y: null,
  z: null,
  material: null,
  process: null,
};

/** The row of a node that was folded again; none when it is not there, or of a kind without rows. */
export function refoldedRow({ view, added }: Refolded, id: Id): NodeRow[] {
  const node = view.node(id);
  const order = added.get(id);
  if (!node || order === undefined || !hasRow(node.kind)) return [];
  const values = node.kind === 'part' ? valuesInForce(view, node.id) : NO_VALUES;
  return [nodeRow(view.study, node, values, order, view.find(id)?.id === id)];
}

export function nodeRow(
  study: Id,
  { id, kind, label, name, parent }: NodeSpec,
  values: PartValues,
  added: string,
  isLive: boolean,
): NodeRow {
  const live = isLive ? 1 : 0;
  const shown = isLive && kind === 'part' ? 1 : 0;
  return { study, id, kind, label, name, parent, added, live, shown, ...values };
}

const NODES = new BulkInsert<NodesTable>('nodes', [
  'place',
  'study',
  'id',
  'kind',
  'label',
  'name',
  'parent',
  'added',
  'live',
  'shown',
  'count',
  'mass',
  'massU',
  'thickness',
  'x',
  'y',
  'z',
  'material',
  'process',
]);

/** Adds rows that are not there yet; returns how many of them are shown. */
export async function addRows(library: SqlLibrary, rows: readonly NodeRow[]): Promise<number> {
  if (rows.length === 0) return 0;
  const first = (await lastPlace(library)) + 1;
  const placed = rows.map((row, i) => ({ place: first + i, ...row }));
  await NODES.insert(library.db, placed);
  const shown = placed.filter((row) => row.shown === 1);
  await library.words.put(
    library.db,
    shown.map((row) => ({ place: row.place, words: searchWords(searchedText(row)).join(' ') })),
  );
  return shown.length;
}

async function lastPlace({ db }: SqlLibrary): Promise<number> {
  const last = await db
    .selectFrom('nodes')
    .select((q) => q.fn.max('place').as('place'))
    .executeTakeFirst();
  return Number(last?.place ?? 0);
}

/** Takes the rows of these nodes out; returns how many were shown. */
export async function dropRows(
  library: SqlLibrary,
  study: Id,
  ids: readonly Id[],
): Promise<number> {
  let shown = 0;
  for (const some of inPieces(ids)) {
    const rows = await library.db
      .deleteFrom('nodes')
      .where('study', '=', study)
      .where('id', 'in', some)
      .returning(['place', 'shown'])
      .execute();
    shown += await dropWords(library, rows);
  }
  return shown;
}

/** Takes the rows out that a chunk of a table became; returns how many were shown. */
export async function dropChunk(library: SqlLibrary, study: Id, chunk: Id): Promise<number> {
  const [from, to] = rowRange(chunk);
  const rows = await library.db
    .deleteFrom('nodes')
    .where('study', '=', study)
    .where('id', '>=', from)
    .where('id', '<', to)
    .returning(['place', 'shown'])
    .execute();
  return dropWords(library, rows);
}

async function dropWords(
  { db, words }: SqlLibrary,
  rows: readonly Pick<NodesTable, 'place' | 'shown'>[],
): Promise<number> {
  const shown = rows.filter((row) => row.shown === 1);
  await words.remove(
    db,
    shown.map((row) => row.place),
  );
  return shown.length;
}
