import type { Cell, CellValue, Sheet } from 'hucre/xlsx';
import { type Finding, type Place, RefusalError } from '../../study/index.ts';
import type { DecimalSign } from '../detect.ts';
import { numberText } from './number-text.ts';
import { cellName, type OddCells, sheetNotes } from './sheet-notes.ts';
import { type ZipList, zipList } from './zip-list.ts';

/** A sheet of a workbook as a table of text, row for row. */
export interface SheetTable {
  readonly sheet: string;
  /** Names of the other sheets. */
  readonly others: readonly string[];
  /** Said by the user. */
  readonly given: boolean;
  /** Cells parted by commas, quoted where they must be (RFC 4180). */
  readonly text: string;
  readonly notes: readonly Finding[];
}

export interface SheetChoice {
  /** The first that is not hidden when absent. */
  readonly sheet?: string;
  /** Sign with which numbers are written out. */
  readonly decimal?: DecimalSign;
}

const MOST_UNPACKED = 400 * 2 ** 20;
const MOST_RATIO = 200;
/** Below this the ratio tells nothing. */
const SMALL = 2 ** 20;

/** Whether bytes begin like a zip, as every workbook does. */
export const isWorkbook = (head: Uint8Array): boolean =>
  [0x50, 0x4b, 0x03, 0x04].every((byte, i) => head[i] === byte);

/**
 * Reads one sheet of an XLSX workbook: cells as written, numbers with all their digits and the
 * unit of their number format, dates as ISO 8601 words, formulas by their stored results.
 * @throws RefusalError `bad-table`: no whole workbook, one that unpacks to too much, no such
 * sheet, a formula without a result.
 */
export async function readWorkbook(
  bytes: Uint8Array,
  file: string,
  choice: SheetChoice = {},
): Promise<SheetTable> {
  mustFit(bytes, file);
  const { sheet, names } = await wantedSheet(bytes, file, choice.sheet);
  const odd: OddCells = { dates: [], errors: [] };
  const text = textOf(sheet, file, choice.decimal ?? '.', odd);
  return {
    ...{ sheet: sheet.name, others: names.filter((name) => name !== sheet.name) },
    ...{ given: choice.sheet !== undefined, text },
    notes: sheetNotes(file, odd, sheet.merges?.length ?? 0),
  };
}

function mustFit(bytes: Uint8Array, file: string): void {
  const list = zipList(bytes);
  if (!list) throw bad({ file }, 'the workbook is cut short, or no workbook');
  if (list.encrypted) throw bad({ file }, 'the workbook is encrypted');
  if (list.unsized || isTooMuch(list, bytes.length))
    throw bad(
      { file },
      `its ${bytes.length} bytes would unpack to too much`,
      `${list.unpacked} bytes`,
    );
}

const isTooMuch = ({ unpacked }: ZipList, packed: number): boolean =>
  unpacked > MOST_UNPACKED || unpacked > SMALL + packed * MOST_RATIO;

async function wantedSheet(
  bytes: Uint8Array,
  file: string,
  wanted: string | undefined,
): Promise<{ readonly sheet: Sheet; readonly names: readonly string[] }> {
  const names: string[] = [];
  let taken: string | undefined;
  const sheets = (info: {
    readonly name: string;
    readonly hidden?: boolean;
    readonly veryHidden?: boolean;
  }) => {
    names.push(info.name);
    const isHidden = info.hidden === true || info.veryHidden === true;
    const isWanted = wanted === undefined ? !isHidden && taken === undefined : info.name === wanted;
    if (isWanted) taken = info.name;
    return isWanted;
  };
  try {
    // Loaded here so that pages and commands that read no workbook start without it.
    const { readXlsx } = await import('hucre/xlsx');
    const [sheet] = (await readXlsx(bytes, { readStyles: true, sheets })).sheets;
    if (sheet) return { sheet, names };
  } catch (error) {
    throw bad(
      { file },
      `the workbook can not be read: ${error instanceof Error ? error.message : ''}`,
    );
  }
  throw noSheet(file, wanted, names);
}

/** Rows keep their numbers: blank ones stay. */
function textOf(sheet: Sheet, file: string, decimal: DecimalSign, odd: OddCells): string {
  const width = sheet.rows.reduce((most, row) => Math.max(most, filled(row)), 0);
  const lines = sheet.rows.map((row, r) =>
    Array.from({ length: width }, (_, c) => {
      const cell = sheet.cells?.get(`${r},${c}`);
      return quoted(cellText(row[c] ?? null, cell, { file, row: r, column: c }, decimal, odd));
    }).join(','),
  );
  return `${lines.join('\n')}\n`;
}

const filled = (row: readonly CellValue[]): number =>
  row.findLastIndex((value) => value !== null && value !== '') + 1;

interface At {
  readonly file: string;
  readonly row: number;
  readonly column: number;
}

function cellText(
  value: CellValue,
  cell: Cell | undefined,
  at: At,
  decimal: DecimalSign,
  odd: OddCells,
): string {
  const name = cellName(at.row, at.column);
  if (value === null) {
    if (cell?.formula !== undefined) throw noResult(at, name, cell.formula);
    return '';
  }
  if (cell?.type === 'error') odd.errors.push(name);
  if (typeof value === 'number') return numberText(value, cell?.style?.numFmt, decimal);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (!(value instanceof Date)) return value;
  odd.dates.push(name);
  return dateText(value);
}

/** The day, with the time of day when it is not midnight. */
const dateText = (date: Date): string =>
  date
    .toISOString()
    .replace(/(T00:00)?:00\.000Z$/, '')
    .replace(/\.000Z$/, '');

const quoted = (text: string): string =>
  /[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

const bad = (place: Place, why: string, value?: string): RefusalError =>
  new RefusalError({
    ...{ code: 'bad-table', place, why },
    ...(value === undefined ? {} : { value }),
    next: 'Open it in the spreadsheet and save it again as XLSX, or save the sheet as CSV in UTF-8.',
  });

const noSheet = (
  file: string,
  wanted: string | undefined,
  names: readonly string[],
): RefusalError =>
  new RefusalError({
    ...{ code: 'bad-table', place: { file, column: 'sheet' }, value: wanted ?? '' },
    why:
      wanted === undefined
        ? 'all its sheets are hidden, or there is none'
        : 'it has no sheet of this name',
    next: `Name one of its sheets: ${names.join(', ') || 'none'}.`,
  });

const noResult = ({ file, row }: At, name: string, formula: string): RefusalError =>
  new RefusalError({
    ...{ code: 'bad-table', place: { file, row: row + 1, column: name }, value: `=${formula}` },
    why: 'the formula has no stored result',
    next: 'Open the workbook in the spreadsheet, let it calculate, and save it.',
  });
