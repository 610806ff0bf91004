import type { Value } from '../quantity/index.ts';
import type { Entry, Finding, StudyView } from '../study/index.ts';
import type { DecimalSign } from './detect.ts';
import type { Mapping, Overrides } from './mapping.ts';
import type { Problem, Problems } from './problems.ts';
import type { TableRequest } from './table-request.ts';

/** Rows that follow one another in the file and become one batch of entries. */
export interface RowChunk {
  /** 0-based; the same for the same rows at each pass over the file. */
  readonly index: number;
  readonly firstRow: number;
  readonly rows: readonly (readonly string[])[];
}

/** What a reader of one form works with. */
export interface Setup {
  readonly request: TableRequest;
  readonly overrides: Overrides;
  readonly mapping: Mapping;
  readonly decimal: DecimalSign;
  readonly condition: string;
  readonly frame: string;
  readonly problems: Problems;
}

/**
 * Reads the tables of one form. First every row is checked, then, where something can only be
 * settled by it, every row is looked at again; only then are entries asked for.
 */
export interface FormReader {
  check(cells: readonly string[], row: number): void;
  needsLook(): boolean;
  look(chunk: RowChunk): void;
  /** Called once after the last row was checked and looked at. */
  settle(): void;
  /** Entries that come before those of any row. */
  opening(): readonly Entry[];
  entries(chunk: RowChunk): readonly Entry[];
  /** Values of a row by column, as they would be read: for the preview. */
  values(cells: readonly string[], row: number): ReadonlyMap<number, Value>;
  /** What the table will make: `parts`, `readings`, … to how many. */
  counts(): Readonly<Record<string, number>>;
  notes(): readonly Finding[];
}

type ColumnsByField = ReadonlyMap<string, { readonly index: number; readonly column: string }>;

/** The texts of a row by field, blanks taken off. */
export class RowText {
  readonly #at: ColumnsByField;
  readonly #cells: readonly string[];
  readonly row: number;

  constructor(at: ColumnsByField, cells: readonly string[], row: number) {
    this.#at = at;
    this.#cells = cells;
    this.row = row;
  }

  text(field: string): string {
    return (this.#cells[this.#at.get(field)?.index ?? -1] ?? '').trim();
  }

  /** A problem at one of the row's cells. */
  problem(field: string, why: string, next: string): Problem {
    const column = this.#at.get(field)?.column ?? field;
    return { row: this.row, column, value: this.text(field), why, next };
  }
}

/** Hands out the texts of rows by field. */
export function rowTexts(mapping: Mapping): (cells: readonly string[], row: number) => RowText {
  const at = new Map(
    mapping.columns.flatMap((c) => (c.field ? [[c.field.field, c] as const] : [])),
  );
  return (cells, row) => new RowText(at, cells, row);
}

/** A copy of a short text that does not hold on to the long one that it was cut from. */
export const ownText = (text: string): string => [...text].join('');

export const note = (
  place: Finding['place'],
  what: string,
  next: string,
  value?: string,
): Finding => ({
  code: 'import-note',
  level: 'note',
  place,
  ...(value === undefined ? {} : { value }),
  what,
  next,
});

export const putInstrument = (label: string): Entry => ({
  v: 1,
  e: 'instrument.put',
  instrument: { id: label, label },
});

/** A condition that the study does not know is put with its own name for words. */
export function openCondition(id: string, view: StudyView): Entry[] {
  const isKnown = id === view.header.condition || view.condition(id) !== id;
  return isKnown ? [] : [{ v: 1, e: 'condition.put', id, words: id }];
}

/** A local time in ISO 8601, to the day, the minute or the second. */
export const LOCAL_TIME = /^\d{4}-\d\d-\d\d([T ]\d\d:\d\d(:\d\d)?)?$/;
