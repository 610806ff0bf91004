import { useTable } from '@tanstack/react-table';
import { useVirtualizer } from '@tanstack/react-virtual';
import { type KeyboardEvent, useEffect, useRef } from 'react';
import { useSelection } from '../app/selection.tsx';
import type { PartRow } from '../worker/part-rows.ts';
import { partColumns, partFeatures } from './part-columns.ts';
import { PartLine } from './part-line.tsx';
import { useTouchSize } from './touch-size.ts';

/** Rows kept ready above and below what is in sight. */
const OVERSCAN = 6;

/**
 * The table of parts: only the rows in sight are in the page, so that thousands stay smooth.
 * Arrow keys go from row to row once the table has the focus.
 */
export function PartsTable({ rows }: { readonly rows: PartRow[] }) {
  const scroll = useRef<HTMLDivElement>(null);
  const { selected, select } = useSelection();
  const rowHeight = useTouchSize();
  const table = useTable({ features: partFeatures, columns: partColumns, data: rows, getRowId });
  const sorted = table.getRowModel().rows;
  const virtual = useVirtualizer({
    count: sorted.length,
    getScrollElement: () => scroll.current,
    estimateSize: () => rowHeight,
    overscan: OVERSCAN,
    getItemKey: (index) => sorted[index]?.id ?? index,
  });
  const at = sorted.findIndex((row) => row.id === selected);
  // biome-ignore lint/correctness/useExhaustiveDependencies: rows of another height are laid out anew
  useEffect(() => virtual.measure(), [rowHeight]);
  const isFilled = sorted.length > 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new part in hand is scrolled to
  useEffect(() => {
    if (at >= 0) virtual.scrollToIndex(at);
  }, [selected, isFilled]);
  const onKey = (event: KeyboardEvent) => {
    const next = stepOf(event.key, at, sorted.length);
    if (next === undefined || event.target !== scroll.current) return;
    event.preventDefault();
    select(sorted[next]?.id);
  };
  return (
    <section
      ref={scroll}
      className="parts-scroll"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard
      tabIndex={0}
      aria-label="Table of parts; arrow keys go from row to row"
      onKeyDown={onKey}
    >
      <table className="parts-table" aria-rowcount={sorted.length + 1} aria-label="Parts">
        <thead>
          <tr className="parts-row" aria-rowindex={1}>
            {table.getHeaderGroups()[0]?.headers.map(({ id, column }) => (
              <SortHeading
                key={id}
                title={String(column.columnDef.header)}
                order={column.getIsSorted()}
                onSort={(descending) => column.toggleSorting(descending)}
              />
            ))}
          </tr>
        </thead>
        <tbody style={{ blockSize: virtual.getTotalSize() }}>
          {virtual.getVirtualItems().map((item) => {
            const row = sorted[item.index];
            return row ? (
              <PartLine
                key={row.id}
                row={row.original}
                index={item.index + 2}
                top={item.start}
                height={item.size}
                inHand={row.id === selected}
                onSelect={select}
              />
            ) : null;
          })}
        </tbody>
      </table>
    </section>
  );
}

interface SortHeadingProps {
  readonly title: string;
  readonly order: 'asc' | 'desc' | false;
  readonly onSort: (descending: boolean) => void;
}

const SortHeading = ({ title, order, onSort }: SortHeadingProps) => (
  <th
    scope="col"
    aria-sort={order === 'asc' ? 'ascending' : order === 'desc' ? 'descending' : 'none'}
  >
    <button type="button" onClick={() => onSort(order === 'asc')}>
      {title}
      <span aria-hidden="true">{order === 'asc' ? ' ↑' : order === 'desc' ? ' ↓' : ''}</span>
    </button>
  </th>
);

const getRowId = (row: PartRow): string => row.id;

/** Row to go to by a key; undefined for other keys. */
function stepOf(key: string, at: number, count: number): number | undefined {
  const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: count - 1 }[key];
  return to === undefined ? undefined : Math.min(Math.max(to, 0), count - 1);
}
