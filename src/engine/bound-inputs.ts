import type { Finding, InForce, Missing } from '../study/index.ts';
import type { BoundRow } from './bound-row.ts';
import type { FlatCells } from './flat-cells.ts';
import type { FlatRows } from './forms/flat-rows.ts';
import type { Variables } from './forms/variables.ts';
import type { Basis, Found, FoundTerm, Variable } from './method.ts';
import type { GapsByTerm } from './row-worker.ts';

/** Lists that are brought up to date instead of made anew. */
export interface LaidOut {
  cells?: FlatCells;
  rows?: FlatRows<BoundRow, GapsByTerm>;
  /** Columns of sums and scalars, used again once the outputs are made of them. */
  columns?: readonly Float64Array[];
}

/** Inputs found for one question and one subject. */
export interface BoundInputs {
  /** What was asked about: study and subject, so that nothing else has its own errors; "given" for bare values. */
  readonly of: string;
  readonly scalars: Readonly<Record<string, Found>>;
  readonly terms: Readonly<Record<string, FoundTerm>>;
  readonly tables: Readonly<Record<string, readonly BoundRow[]>>;
  readonly variables: Variables;
  /** Errors of other questions' methods that come with their answers, by number. */
  readonly models: ReadonlyMap<number, Variable>;
  /** Numbers of the table that a tally sums over, laid out. */
  readonly cells?: FlatCells;
  /** What was laid out before for the same question and subject: put there for the next time. */
  readonly before: LaidOut;
  /** Every place looked at, there or missing. */
  readonly read: () => readonly (InForce | Missing)[];
  readonly findings: readonly Finding[];
  readonly basis: Basis;
}
