import { RefusalError } from '../study/index.ts';
import { fileKindOf, firstBytes } from './file-kinds.ts';

/** Bytes of a file, or text that is decoded already. */
export type Chunk = Uint8Array | string;
/** Opens the file from its start; called once for each pass over it. */
export type Open = () => AsyncIterable<Chunk>;

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be';

/** What the start of a file says of the whole. */
export interface Head {
  readonly encoding: Encoding;
  readonly encodingWhy: string;
  readonly text: string;
  /** The head is all there is. */
  readonly whole: boolean;
  readonly newline: '\n' | '\r';
}

/** A piece of decoded text, and how much of the file (bytes, or characters of a text) is read with it. */
export interface Piece {
  readonly text: string;
  readonly done: number;
}

/** Enough for some hundred rows. */
const HEAD_BYTES = 65_536;

/**
 * Reads the start of a file.
 * @throws RefusalError when it is empty or no text.
 */
export async function readHead(open: Open, file: string): Promise<Head> {
  const chunks: Chunk[] = [];
  let length = 0;
  let whole = true;
  for await (const chunk of open()) {
    chunks.push(chunk);
    length += chunk.length;
    if (length < HEAD_BYTES) continue;
    whole = false;
    break;
  }
  const bytes = chunks.find((c) => typeof c !== 'string' && c.length > 0) as Uint8Array | undefined;
  const found = bytes ? sniffEncoding(joined(chunks), file) : TEXT;
  const text = chunks.length > 0 ? decodeAll(chunks, found.encoding) : '';
  if (text.trim() === '') throw nothingIn(file);
  const newline = text.includes('\n') || !text.includes('\r') ? '\n' : '\r';
  return { encoding: found.encoding, encodingWhy: found.why, text, whole, newline };
}

interface Found {
  readonly encoding: Encoding;
  readonly why: string;
}
const TEXT: Found = { encoding: 'utf-8', why: 'handed over as text' };

function joined(chunks: readonly Chunk[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, c) => sum + c.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    if (typeof chunk !== 'string') bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

function sniffEncoding(head: Uint8Array, file: string): Found {
  if (head[0] === 0xef && head[1] === 0xbb && head[2] === 0xbf)
    return { encoding: 'utf-8', why: 'UTF-8 by its byte order mark' };
  if (head[0] === 0xff && head[1] === 0xfe)
    return { encoding: 'utf-16le', why: 'UTF-16 by its byte order mark' };
  if (head[0] === 0xfe && head[1] === 0xff)
    return { encoding: 'utf-16be', why: 'UTF-16 by its byte order mark' };
  const kind = fileKindOf(head);
  if (kind) throw noTable(file, head, `the file is no table but seems to be ${kind.words}`);
  if (head.includes(0)) throw noTable(file, head, 'the file is no text: it has zero bytes');
  return { encoding: 'utf-8', why: 'no byte order mark, so UTF-8' };
}

const noTable = (file: string, head: Uint8Array, why: string): RefusalError =>
  new RefusalError({
    code: 'bad-table',
    place: { file, row: 1, column: 'first bytes' },
    value: firstBytes(head),
    why,
    next: 'Save the table as CSV in UTF-8, or as an XLSX workbook, and import that file.',
  });

const nothingIn = (file: string): RefusalError =>
  new RefusalError({
    code: 'bad-table',
    place: { file, row: 1, column: 'headings' },
    value: '',
    why: 'the file is empty',
    next: 'Import a table with a row of headings and a row for each thing.',
  });

function decodeAll(chunks: readonly Chunk[], encoding: Encoding): string {
  const decoder = new TextDecoder(encoding);
  const texts = chunks.map((c) =>
    typeof c === 'string' ? c : decoder.decode(c, { stream: true }),
  );
  return texts.join('').replace(/^\ufeff/, '');
}

/**
 * The whole file as text, piece by piece. Bytes that are no text come out as U+FFFD, which the
 * reader of rows refuses with the place.
 */
export async function* readPieces(open: Open, encoding: Encoding): AsyncGenerator<Piece> {
  const decoder = new TextDecoder(encoding);
  let done = 0;
  for await (const chunk of open()) {
    const isText = typeof chunk === 'string';
    const text = isText ? chunk : decoder.decode(chunk, { stream: true });
    yield {
      text: isText && done === 0 ? text.replace(/^\ufeff/, '') : text,
      done: done + chunk.length,
    };
    done += chunk.length;
  }
  const tail = decoder.decode();
  if (tail !== '') yield { text: tail, done };
}
