import type { Finding, InForce, Missing } from '../study/index.ts';
import type { BoundRow } from './bound-row.ts';
import type { FlatRows } from './forms/flat-rows.ts';
import type { Variables } from './forms/variables.ts';
import type { Basis, Found, FoundTerm, Variable } from './method.ts';

/** Inputs found for one question and one subject. */
export interface BoundInputs {
  readonly scalars: Readonly<Record<string, Found>>;
  readonly terms: Readonly<Record<string, FoundTerm>>;
  readonly tables: Readonly<Record<string, readonly BoundRow[]>>;
  readonly variables: Variables;
  /** Errors of other questions' methods that come with their answers, by number. */
  readonly models: ReadonlyMap<number, Variable>;
  /** What a tally worked out of the same table before, put there by it for the next time. */
  readonly before: { rows?: FlatRows<BoundRow> };
  /** Every place looked at, there or missing. */
  readonly read: () => readonly (InForce | Missing)[];
  readonly findings: readonly Finding[];
  readonly basis: Basis;
}
