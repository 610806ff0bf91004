import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cellText, readTable, type TextRow } from '../../demo/csv.ts';
import type { RecordKind } from '../../demo/record-tables.ts';

export const TABLES = join(import.meta.dirname, '../../demo/tables');

/** A committed table of one of the two records. */
export const committed = (record: RecordKind, file: string): TextRow[] =>
  readTable(join(TABLES, `van-27-${record}`, file));

export const committedText = (record: RecordKind, file: string): string =>
  readFileSync(join(TABLES, `van-27-${record}`, file), 'utf8');

/** Sum of a column, empty cells counting nothing. */
export const sumOf = (rows: readonly TextRow[], column: string): number =>
  rows.reduce((sum, row) => sum + Number(cellText(row, column)), 0);
