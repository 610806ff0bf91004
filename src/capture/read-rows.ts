import Papa from 'papaparse';
import type { Problems } from './problems.ts';
import type { Piece } from './text-source.ts';

/** Rows that follow one another in the file, the first of them being row `firstRow`; row 1 has the headings. */
export interface RowBatch {
  readonly firstRow: number;
  readonly rows: readonly (readonly string[])[];
  /** How much of the file is read with this batch, in the units of Piece. */
  readonly done: number;
}

export interface RowsAs {
  readonly delimiter: string;
  readonly newline: '\n' | '\r';
  /** For the messages. */
  readonly headings: readonly string[];
}

/** How messages call a column, by its 0-based place. */
export const columnName = (headings: readonly string[], column: number): string =>
  headings[column] || `cell ${column + 1}`;

/** A cell of more characters than this has lost its closing quote. */
const LONGEST_ROW = 1_000_000;
const UNREADABLE = /[\0\ufffd]/;

interface Parsed {
  readonly data: string[][];
  readonly errors: readonly {
    readonly code: string;
    readonly row: number;
    readonly index: number;
  }[];
  readonly meta: { readonly cursor: number };
}

/**
 * Cuts text into rows and cells (RFC 4180 quoting), the same in a browser and on a server, with
 * papaparse's parser of one piece of text: it says where its last whole row ends, and what
 * follows is put before the next piece. Broken quotes and unreadable characters are problems.
 */
export async function* readRows(
  pieces: AsyncIterable<Piece>,
  as: RowsAs,
  problems: Problems,
): AsyncGenerator<RowBatch> {
  const parser = new Papa.Parser({ delimiter: as.delimiter, newline: as.newline });
  let rest = '';
  let firstRow = 1;
  let done = 0;
  const cut = (text: string, isLast: boolean): RowBatch => {
    const parsed: Parsed = parser.parse(text, 0, !isLast);
    rest = isLast ? '' : text.slice(parsed.meta.cursor);
    const batch = { firstRow, rows: parsed.data, done };
    reportQuotes(parsed, text, firstRow, problems, (index) => {
      const before = text.slice(text.lastIndexOf('\n', index) + 1, index);
      const cells: Parsed = parser.parse(before, 0, false);
      return columnName(as.headings, (cells.data[0]?.length ?? 1) - 1);
    });
    if (as.newline === '\n') for (const row of parsed.data) dropReturn(row);
    if (UNREADABLE.test(text)) reportUnreadable(batch, as.headings, problems);
    firstRow += parsed.data.length;
    return batch;
  };
  for await (const piece of pieces) {
    done = piece.done;
    const batch = cut(rest + piece.text, false);
    if (batch.rows.length > 0) yield batch;
    if (rest.length > LONGEST_ROW) return endless(firstRow, rest, as.headings, problems);
  }
  if (rest !== '') yield cut(rest, true);
}

/** The row's last cell ends with the carriage return of a line that ends with both. */
function dropReturn(row: string[]): void {
  const last = row[row.length - 1];
  if (last?.endsWith('\r')) row[row.length - 1] = last.slice(0, -1);
}

/** Complaints about the row after the last whole one come again with the next piece. */
function reportQuotes(
  { data, errors }: Parsed,
  text: string,
  firstRow: number,
  problems: Problems,
  columnAt: (index: number) => string,
): void {
  for (const { code, row, index } of errors) {
    if (row >= data.length) continue;
    problems.add({
      once: true,
      row: firstRow + row,
      column: columnAt(index - 1),
      value: text.slice(index - 1, index + 40),
      why:
        code === 'MissingQuotes'
          ? 'a quotation mark opens here and none closes'
          : 'text follows the closing quotation mark of a cell',
      next: 'Close the quoted cell, and write a quotation mark within it twice.',
    });
  }
}

function reportUnreadable(
  { rows, firstRow }: RowBatch,
  headings: readonly string[],
  problems: Problems,
): void {
  for (const [i, row] of rows.entries()) {
    const at = row.findIndex((cell) => UNREADABLE.test(cell));
    if (at < 0) continue;
    problems.add({
      row: firstRow + i,
      column: columnName(headings, at),
      value: row[at] ?? '',
      why: 'bytes that are no UTF-8 text',
      next: 'Save the table as CSV in UTF-8.',
    });
  }
}

function endless(row: number, rest: string, headings: readonly string[], problems: Problems): void {
  problems.add({
    row,
    column: columnName(headings, 0),
    value: rest.slice(0, 80),
    why: 'the row does not end within a million characters',
    next: 'Look for a quotation mark that opens a cell and is not closed.',
  });
}
