import {
  createColumnHelper,
  createSortedRowModel,
  rowSortingFeature,
  tableFeatures,
} from '@tanstack/react-table';
import type { PartProperty, PartRow } from '../worker/part-rows.ts';
import type { ShownCell } from '../worker/shown-cell.ts';

export const partFeatures = tableFeatures({
  rowSortingFeature,
  sortedRowModel: createSortedRowModel(),
});

type Key = string | number | undefined;

/** What a cell is sorted by: SI number or text; undefined, and last, where it is missing. */
function keyOf(cell: ShownCell): Key {
  if (cell.c === 'number') return cell.x;
  if (cell.c === 'text') return cell.text.toLowerCase();
  return cell.c === 'vector' ? cell.x[0] : undefined;
}

interface Sortable {
  readonly getValue: (column: string) => unknown;
}

/** Numbers by size, words by letters; the table itself puts what is missing last. */
function compare(a: Sortable, b: Sortable, column: string): number {
  const [x, y] = [a.getValue(column), b.getValue(column)] as [Key, Key];
  if (typeof x === 'number' && typeof y === 'number') return x - y;
  return String(x) < String(y) ? -1 : String(x) > String(y) ? 1 : 0;
}

const helper = createColumnHelper<typeof partFeatures, PartRow>();
const sorting = { sortFn: compare, sortUndefined: 'last', sortDescFirst: false } as const;

const word = (id: string, header: string, of: (row: PartRow) => Key) =>
  helper.accessor(of, { id, header, ...sorting });
const cell = (property: PartProperty, header: string) =>
  helper.accessor((row) => keyOf(row.cells[property]), { id: property, header, ...sorting });

export const partColumns = helper.columns([
  word('label', 'number', (row) => row.label),
  word('name', 'name', (row) => row.name.toLowerCase()),
  cell('mass', 'mass, all pieces'),
  word('how', 'mass is', (row) =>
    row.cells.mass.c === 'missing' ? undefined : row.cells.mass.how,
  ),
  cell('position', 'position X; Y; Z'),
  cell('count', 'pieces'),
  cell('material', 'material'),
  cell('process', 'process'),
  cell('thickness', 'thickness'),
  word('assembly', 'assembly', (row) => row.assembly || undefined),
]);
