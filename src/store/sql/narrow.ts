import {
  type Change,
  type Entry,
  type Id,
  rowId,
  rowParent,
  type TableChunk,
} from '../../study/index.ts';

/** The part of a change that says something of the nodes asked for, or of the study's header. */
export const narrow = (change: Change, nodes: ReadonlySet<Id>): Change => ({
  ...change,
  entries: change.entries.flatMap((entry) => narrowEntry(entry, nodes)),
});

function narrowEntry(entry: Entry, nodes: ReadonlySet<Id>): Entry[] {
  if (entry.e === 'table.add') return narrowTable(entry.table, nodes);
  if (entry.e === 'study.put') return [entry];
  const subject = subjectOf(entry);
  return subject !== undefined && nodes.has(subject) ? [entry] : [];
}

/** The rows asked for, each as a chunk of its own, so that they keep their numbers and ids. */
function narrowTable(table: TableChunk, nodes: ReadonlySet<Id>): Entry[] {
  return rowsOf(table)
    .filter(({ id }) => nodes.has(id))
    .map(({ row, number }) => ({
      v: 1,
      e: 'table.add',
      table: { ...table, firstRow: number, rows: [row] },
    }));
}

/** Rows of a chunk with the id of the node that each becomes. */
export const rowsOf = (table: TableChunk) =>
  table.rows.map((row, i) => ({
    row,
    number: table.firstRow + i,
    id: rowId(table.id, table.firstRow + i),
  }));

/** The node an entry says something of, when it is one that a row may show. */
export function subjectOf(entry: Entry): Id | undefined {
  switch (entry.e) {
    case 'node.add':
      return entry.node.id;
    case 'node.move':
    case 'node.name':
    case 'node.retire':
      return entry.id;
    case 'reading.add':
      return entry.reading.of.subject;
    case 'reading.withdraw':
      return entry.subject;
    case 'choose':
      return entry.of.subject;
    default:
      return undefined;
  }
}

/** A node and one that a change places it below. */
export interface Placing {
  readonly id: Id;
  readonly parent: Id | null;
  /** True when the change adds the node, false when it moves it. */
  readonly adds: boolean;
}

/** Every placing of a node that a change speaks of, whether it takes effect or not. */
export const placings = (change: Change): Placing[] => change.entries.flatMap(placingsOf);

function placingsOf(entry: Entry): Placing[] {
  if (entry.e === 'node.add') return [{ id: entry.node.id, parent: entry.node.parent, adds: true }];
  if (entry.e === 'node.move') return [{ id: entry.id, parent: entry.parent, adds: false }];
  if (entry.e !== 'table.add') return [];
  const { table } = entry;
  return rowsOf(table).map(({ id, row }) => ({ id, parent: rowParent(table, row), adds: true }));
}
