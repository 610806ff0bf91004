import type { Id, Reading, StudyView, Ulid } from '../study/index.ts';
import type { Overrides } from './mapping.ts';
import type { TableForm } from './table-forms.ts';
import type { Open } from './text-source.ts';
import type { SheetTable } from './workbook/read-workbook.ts';

export interface TableProgress {
  /** Every row is checked before any is read. */
  readonly phase: 'checking' | 'reading';
  /** Bytes, or characters of a source that is text. */
  readonly done: number;
  readonly total?: number;
}

/** A table to be imported into a study, and what stands for its readings where it says nothing. */
export interface TableRequest {
  readonly form: TableForm;
  /** Name by which messages and readings call the file. */
  readonly file: string;
  readonly open: Open;
  /** Of the file, in bytes; for the progress only. */
  readonly size?: number;
  readonly view: StudyView;
  readonly ids: () => Ulid;
  readonly by: string;
  readonly takenAt: Reading['takenAt'];
  /** Condition of readings; the study's own when absent. */
  readonly condition?: Id;
  /** Frame of positions; `vehicle` when absent. */
  readonly frame?: string;
  /** Where it comes from when it is a sheet of a workbook, with its cells parted by commas. */
  readonly sheet?: Omit<SheetTable, 'text'>;
  readonly overrides?: Overrides;
  /** Told after each piece of the file; what it throws stops the import. */
  readonly progress?: (progress: TableProgress) => void;
  /** Whether a question of this id has this output; claims are held against it when it is given. */
  readonly knowsOutput?: (question: string, output: string) => boolean;
}
