import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

/** A row of a table by column heading; every cell is the text in the file. */
export type TextRow = Readonly<Record<string, string>>;

/** Reads a table with one heading row. @throws when a row has more or fewer cells than headings. */
export const readTable = (path: string): TextRow[] =>
  parse(readFileSync(path, 'utf8'), { columns: true }) as TextRow[];

/** The text in a column. @throws RangeError naming the column when the table has none of that name. */
export function cellText(row: TextRow, column: string): string {
  const text = row[column];
  if (text === undefined) throw new RangeError(`the table has no column ${column}`);
  return text;
}

const quoted = (cell: string): string =>
  /[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

/** A table as CSV (RFC 4180 quoting, LF line ends); columns in the order of `headings`. */
export function formatTable(headings: readonly string[], rows: readonly TextRow[]): string {
  const lines = rows.map((row) => headings.map((h) => quoted(cellText(row, h))).join(','));
  return `${[headings.join(','), ...lines].join('\n')}\n`;
}
