import { createReadStream } from 'node:fs';
import { open, readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import {
  isWorkbook,
  type Open,
  readWorkbook,
  type SheetChoice,
  type TableRequest,
} from '../capture/index.ts';
import { RefusalError } from '../study/index.ts';

/** Where the rows of a table come from. */
export interface TableSource {
  readonly file: string;
  readonly open: Open;
  readonly size: number;
  readonly sheet?: NonNullable<TableRequest['sheet']>;
}

/** A workbook is read as a whole, in memory. */
const LARGEST_WORKBOOK = 100 * 2 ** 20;

/**
 * A table on disk as something to import: text as it stands, or a sheet of a workbook, told by its
 * first bytes.
 * @throws RefusalError `bad-table` for a workbook that can't be read, `bad-call` for a sheet of
 * what is none.
 */
export async function fileToImport(
  path: string,
  choice: SheetChoice = {},
  file = basename(path),
): Promise<TableSource> {
  const { size } = await stat(path);
  if (!isWorkbook(await headOf(path))) {
    if (choice.sheet !== undefined) throw noWorkbook(file, choice.sheet);
    return { file, open: () => createReadStream(path), size };
  }
  if (size > LARGEST_WORKBOOK) throw tooLarge(file, size);
  const { text, ...sheet } = await readWorkbook(await readFile(path), file, choice);
  const pieces = async function* () {
    yield text;
  };
  return { file, open: pieces, size: text.length, sheet };
}

async function headOf(path: string): Promise<Uint8Array> {
  const file = await open(path, 'r');
  try {
    const { buffer, bytesRead } = await file.read(new Uint8Array(4), 0, 4, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await file.close();
  }
}

const noWorkbook = (file: string, sheet: string): RefusalError =>
  new RefusalError({
    ...{ code: 'bad-call', place: { file, column: 'sheet' }, value: sheet },
    why: 'a sheet is named, and the file is no workbook',
    next: 'Leave the sheet out.',
  });

const tooLarge = (file: string, size: number): RefusalError =>
  new RefusalError({
    ...{ code: 'too-large', place: { file }, value: `${size} bytes` },
    why: `a workbook of more than ${LARGEST_WORKBOOK / 2 ** 20} MB is not read`,
    next: 'Save the sheet as CSV in UTF-8: tables of text may be much larger.',
  });
