import type { RowChunk } from './form-reader.ts';
import type { Problems } from './problems.ts';
import { columnName, type RowBatch, type RowsAs, readRows } from './read-rows.ts';
import { type Encoding, type Open, type Piece, readPieces } from './text-source.ts';

/** Rows in a chunk at most. */
const CHUNK_ROWS = 2000;

/** How the file is cut into rows of a table. */
export interface TableAs extends RowsAs {
  readonly open: Open;
  readonly encoding: Encoding;
}

/** What a pass over a file saw of it, to hold two passes against each other. */
export class PassRecord {
  #digest = 0x811c9dc5;
  #length = 0;
  rows = 0;
  blankRows = 0;

  add(text: string): void {
    let digest = this.#digest;
    for (let i = 0; i < text.length; i++)
      digest = Math.imul(digest ^ text.charCodeAt(i), 0x01000193);
    this.#digest = digest;
    this.#length += text.length;
  }

  isSameAs = (other: PassRecord): boolean =>
    this.#digest === other.#digest && this.#length === other.#length;
}

/**
 * The rows below the headings, in chunks of rows that follow one another. Blank rows are left
 * out and end a chunk; rows with more or fewer cells than there are headings are problems.
 */
export async function* tableChunks(
  as: TableAs,
  record: PassRecord,
  problems: Problems,
  progress: (done: number) => void,
): AsyncGenerator<RowChunk> {
  const chunker = new Chunker();
  const pieces = recorded(readPieces(as.open, as.encoding), record);
  for await (const batch of readRows(pieces, as, problems)) {
    for (const [row, cells] of dataRows(batch)) {
      if (isBlank(cells)) record.blankRows++;
      else if (cells.length !== as.headings.length) reportRagged(cells, row, as, problems);
      else {
        record.rows++;
        const full = chunker.add(cells, row);
        if (full) yield full;
      }
    }
    progress(batch.done);
    if (problems.full) return;
  }
  const last = chunker.take();
  if (last) yield last;
}

async function* recorded(pieces: AsyncIterable<Piece>, record: PassRecord): AsyncGenerator<Piece> {
  for await (const piece of pieces) {
    record.add(piece.text);
    yield piece;
  }
}

function* dataRows({ firstRow, rows }: RowBatch): Generator<readonly [number, readonly string[]]> {
  for (const [i, cells] of rows.entries()) if (firstRow + i > 1) yield [firstRow + i, cells];
}

export const isBlank = (cells: readonly string[]): boolean =>
  cells[0]?.trim() === '' && cells.every((cell) => cell.trim() === '');

class Chunker {
  #index = 0;
  #firstRow = 0;
  #rows: (readonly string[])[] = [];

  /** Takes a row in; a chunk that ends before it is handed out. */
  add(cells: readonly string[], row: number): RowChunk | undefined {
    const follows = row === this.#firstRow + this.#rows.length;
    const ended = follows && this.#rows.length < CHUNK_ROWS ? undefined : this.take();
    if (this.#rows.length === 0) this.#firstRow = row;
    this.#rows.push(cells);
    return ended;
  }

  take(): RowChunk | undefined {
    if (this.#rows.length === 0) return undefined;
    const chunk = { index: this.#index++, firstRow: this.#firstRow, rows: this.#rows };
    this.#rows = [];
    return chunk;
  }
}

function reportRagged(
  cells: readonly string[],
  row: number,
  { headings, delimiter }: TableAs,
  problems: Problems,
): void {
  const isShort = cells.length < headings.length;
  problems.add({
    row,
    column: columnName(headings, isShort ? cells.length : headings.length),
    value: isShort ? cells.join(delimiter) : cells.slice(headings.length).join(delimiter),
    why: `the row has ${cells.length} cells where the headings are ${headings.length}`,
    next: isShort
      ? 'Add the missing cells, empty ones too.'
      : 'Take the extra cells out; put a cell that holds the delimiter, a decimal comma for instance, in quotation marks.',
  });
}
