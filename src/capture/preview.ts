import type { Value } from '../quantity/index.ts';
import type { Finding, Refusal } from '../study/index.ts';
import type { DecimalSign, Delimiter, Guess } from './detect.ts';
import type { ColumnGuess } from './mapping.ts';
import type { TableForm } from './table-forms.ts';
import type { Encoding } from './text-source.ts';

/** Rows that a preview shows. */
export const PREVIEW_ROWS = 20;

export interface PreviewCell {
  readonly written: string;
  /** As it would be read; absent for words of the table itself, and for empty and bad cells. */
  readonly value?: Value;
  readonly problem?: string;
}

export interface PreviewRow {
  readonly row: number;
  readonly cells: readonly PreviewCell[];
}

/** Something that holds for the whole table where the table does not say it. */
export interface Assumption {
  readonly what: string;
  readonly value: string;
  readonly why: string;
  readonly given: boolean;
}

/** What would be imported, and every guess that it rests on. */
export interface Preview {
  readonly form: TableForm;
  readonly file: string;
  readonly encoding: Guess<Encoding>;
  readonly delimiter: Guess<Delimiter>;
  readonly decimal: Guess<DecimalSign>;
  readonly columns: readonly ColumnGuess[];
  /** Headings of columns that are left out. */
  readonly unmapped: readonly string[];
  readonly assumed: readonly Assumption[];
  /** The first rows. */
  readonly rows: readonly PreviewRow[];
  /** Rows checked, and what the table will make. */
  readonly counts: Readonly<Record<string, number>>;
  readonly notes: readonly Finding[];
  /** What keeps the table from being imported; at most as many as Problems holds. */
  readonly problems: readonly Refusal[];
}

/** A row as a preview shows it. */
export function previewRow(
  cells: readonly string[],
  row: number,
  headings: readonly string[],
  values: ReadonlyMap<number, Value>,
  problems: readonly Refusal[],
): PreviewRow {
  const here = problems.filter((p) => p.place.row === row);
  return {
    row,
    cells: cells.map((written, i) => {
      const value = values.get(i);
      const problem = here.find((p) => p.place.column === headings[i])?.why;
      return { written, ...(value ? { value } : {}), ...(problem ? { problem } : {}) };
    }),
  };
}
