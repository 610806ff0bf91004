import type { MassRecord } from './mass-record.ts';
import type { RowEvidence } from './row-evidence.ts';

/** Kinds of slip that the search knows. */
export type FaultKind =
  | 'pounds'
  | 'decimal'
  | 'doubled'
  | 'miscount'
  | 'tare'
  | 'weighed-with'
  | 'sides'
  | 'swapped'
  | 'absorbed';

/** One slip that may have been made, and what it would mean. */
export interface Candidate {
  readonly kind: FaultKind;
  /** Index of the row to look at. */
  readonly row: number;
  /** Index of another row that it has to do with. */
  readonly other?: number;
  /** Recorded less right, kg, by row. The mass of an absorbed part is not known beforehand. */
  readonly changes: readonly { readonly row: number; readonly kg: number }[];
  /** ln of prior odds times what the rows themselves say for it. */
  readonly odds: number;
  /** What the row should read, kg, where the slip tells; the count for a miscount. */
  readonly right?: number;
  /** What else tells it from its like: a tote, a number of pieces. */
  readonly by?: string;
}

/** What makers of candidates work with. */
export interface Clues {
  readonly record: MassRecord;
  readonly evidence: RowEvidence;
}
export type MakeCandidates = (clues: Clues) => readonly Candidate[];

/** ln of odds for a rate, and of what speaks for a right mass against the recorded one. */
export const oddsOf = (rate: number, ...clues: readonly number[]): number =>
  clues.reduce((sum, c) => sum + c, Math.log(rate));

/** Rows of which no other fault of one set may be: those changed, and an absorbed part's. */
export function rowsOf(c: Candidate | undefined): readonly number[] {
  if (c === undefined) return [];
  return c.kind === 'absorbed' ? [c.row, c.other ?? -1] : c.changes.map((change) => change.row);
}
