import type { Value } from '../../quantity/index.ts';
import {
  type Change,
  expandTable,
  type Id,
  type NodeSpec,
  type Reading,
  rowParent,
  type TableChunk,
} from '../../study/index.ts';
import { partValues } from '../part-row.ts';
import { inPieces } from './in-pieces.ts';
import { hasRow, type NodeRow, nodeRow, orderOf } from './node-rows.ts';
import type { SqlLibrary } from './tables.ts';

/** Rows made straight from a chunk, and those of its nodes that must be folded instead. */
export interface ChunkRows {
  readonly rows: readonly NodeRow[];
  readonly unclear: readonly Id[];
}

/**
 * Makes the rows of a chunk without a fold, which would take some ten times as long: nothing
 * else speaks of such a row, so its one reading of each property is in force. `touched` are
 * nodes that other changes do speak of; they are left to the fold, with rows below them and
 * rows whose parent was not there before this chunk.
 */
export async function chunkRows(
  library: SqlLibrary,
  change: Change,
  table: TableChunk,
  condition: Id,
  touched: ReadonlySet<Id>,
): Promise<ChunkRows> {
  if (!hasRow(table.nodeKind)) return { rows: [], unclear: [] };
  const added = orderOf(change);
  const live = await liveParents(library, change.study, table, added);
  const rows: NodeRow[] = [];
  const unclear: Id[] = [];
  for (const { node, readings } of expandedRows(table)) {
    const parentLive = node.parent === null ? undefined : live.get(node.parent);
    const values = valuesOf(readings, condition);
    if (parentLive === undefined || values === undefined || touched.has(node.id)) {
      unclear.push(node.id);
      continue;
    }
    live.set(node.id, parentLive);
    rows.push(
      nodeRow(
        change.study,
        node,
        partValues((p) => values.get(p)),
        added,
        parentLive,
      ),
    );
  }
  return { rows, unclear };
}

/** Of the nodes that rows stand below, those that were there before the chunk, and whether they are live. */
async function liveParents(
  { db }: SqlLibrary,
  study: Id,
  table: TableChunk,
  added: string,
): Promise<Map<Id, boolean>> {
  const parents = [...new Set(table.rows.map((row) => rowParent(table, row)))];
  const live = new Map<Id, boolean>();
  for (const some of inPieces(parents)) {
    const held = await db
      .selectFrom('nodes')
      .select(['id', 'live', 'added'])
      .where('study', '=', study)
      .where('id', 'in', some)
      .execute();
    for (const node of held) if (node.added < added) live.set(node.id, node.live === 1);
  }
  return live;
}

interface ExpandedRow {
  readonly node: NodeSpec;
  readonly readings: Reading[];
}

function* expandedRows(table: TableChunk): Generator<ExpandedRow> {
  let row: ExpandedRow | undefined;
  for (const entry of expandTable(table)) {
    if (entry.e === 'node.add') {
      if (row) yield row;
      row = { node: entry.node, readings: [] };
    } else if (entry.e === 'reading.add') row?.readings.push(entry.reading);
  }
  if (row) yield row;
}

/** Values by property in the condition given; undefined when a property was read twice. */
function valuesOf(readings: readonly Reading[], condition: Id): Map<string, Value> | undefined {
  const values = new Map<string, Value>();
  for (const { of, value } of readings) {
    if (of.condition !== condition) continue;
    if (values.has(of.property)) return undefined;
    values.set(of.property, value);
  }
  return values;
}
