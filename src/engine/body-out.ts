import { exactForm, type LinearForm } from '../quantity/index.ts';
import type { Place } from '../study/index.ts';
import type { IndexedForm } from './forms/indexed-form.ts';
import type { Variables } from './forms/variables.ts';
import type { Cell, DetailTable, Found, GroupRow, OutputSpec, Solved } from './method.ts';
import type { Propagated } from './propagate.ts';
import type { TermSum } from './run-tally.ts';

/** What a body gives for one output, before model error and decision. */
export interface BodyOut {
  readonly spec: OutputSpec;
  readonly result: Propagated;
  readonly missing: readonly Place[];
  readonly unknownSpread: readonly Place[];
}

/** What a body gives beside its outputs. */
export interface BodyResult {
  readonly outs: readonly BodyOut[];
  /** Sums of a tally in the order of its terms, for the working. */
  readonly sums?: readonly TermSum[];
  readonly groups?: () => readonly GroupRow[];
  readonly detail?: DetailTable;
  readonly findings: Solved['findings'];
}

const NOT_THERE: LinearForm = exactForm(Number.NaN);

export const isMissing = (found: Found): found is Extract<Found, { missing: true }> =>
  'missing' in found;

/** Forms of cells by number; NaN for what is missing. */
export const formsOf = (cells: readonly Found[], variables: Variables): IndexedForm[] =>
  cells.map((cell) => variables.form(isMissing(cell) ? NOT_THERE : cell.form));

export const placesMissing = (cells: readonly Found[]): Place[] =>
  cells.filter(isMissing).map((c) => c.place);

export const placesUnknown = (cells: readonly Found[]): Place[] =>
  cells.filter((c): c is Cell => !isMissing(c) && c.unknownSpread === true).map((c) => c.place);
