import type { Kind } from '../../quantity/index.ts';
import type { DraftKind } from '../language/pack.ts';

/** A number with its unit as heard. */
export interface HeardQuantity {
  /** Both ends in the unit; the same where no range was said. */
  readonly low: number;
  readonly high: number;
  /** UCUM code; '1' for a count. */
  readonly unit: string;
  readonly kind: Kind;
  /** A range or a rounded amount. */
  readonly loose: boolean;
  /** True when no unit was said and the usual one was put. */
  readonly unitAssumed: boolean;
  /** Property that the words point at, where they do. */
  readonly property?: string;
}

/** A stretch of words that states something, before it is known of what and how well. */
export interface Fact {
  readonly kind: DraftKind;
  /** Words from..to (to exclusive). */
  readonly from: number;
  readonly to: number;
  readonly quantity?: HeardQuantity;
  /** Material, process, joint, direction, comparison, frequency or reason in the record's words. */
  readonly term?: string;
  /** Kind of claim that a comparison makes. */
  readonly claim?: string;
}
