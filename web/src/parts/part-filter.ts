import type { PartRow } from '../worker/part-rows.ts';

export const SHOW = ['all parts', 'without a mass', 'without a place', 'in doubt'] as const;
export type Show = (typeof SHOW)[number];

export interface PartFilter {
  /** Words, all of which must stand somewhere in the row. */
  readonly text: string;
  readonly show: Show;
}

export function filterParts(rows: readonly PartRow[], { text, show }: PartFilter): PartRow[] {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((w) => w !== '');
  return rows.filter((row) => shows(row, show) && words.every((w) => searched(row).includes(w)));
}

function shows({ cells }: PartRow, show: Show): boolean {
  if (show === 'without a mass') return cells.mass.c === 'missing';
  if (show === 'without a place') return cells.position.c === 'missing';
  if (show === 'in doubt') return Object.values(cells).some((c) => c.c !== 'missing' && c.doubt);
  return true;
}

const searched = ({ label, name, assembly, cells }: PartRow): string =>
  [label, name, assembly, textOf(cells.material), textOf(cells.process)].join(' ').toLowerCase();

const textOf = (cell: PartRow['cells']['material']): string => (cell.c === 'text' ? cell.text : '');
