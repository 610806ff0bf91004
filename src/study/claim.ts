import type { Way } from '../quantity/index.ts';
import type { Id } from './ids.ts';
import type { Evidence } from './reading.ts';

/** A statement made at the vehicle. Heard before anyone knows which question will answer it. */
export interface Claim {
  readonly id: Id;
  readonly words: string;
  readonly how: Way;
  readonly by: string;
  /** ISO 8601 local time. */
  readonly heard: string;
  /** Nodes it is about. */
  readonly about: readonly Id[];
  readonly evidence: readonly Evidence[];
  /** Kind of claim, as comparisons make it: mass, cost, stiffness, service, common, reason … */
  readonly kind?: string;
  /** For a claim that gives a reason: what it answers, and what would refute it. */
  readonly reason?: Reason;
}

/** Why something is as it is. Rival reasons of one thing stand side by side. */
export interface Reason {
  /** Rule or test it may answer; empty when none is named. */
  readonly rule: string;
  readonly market: string;
  readonly date: string;
  readonly applies: 'yes' | 'no' | 'not known';
  readonly exemptions: string;
  readonly refutedBy: string;
}

/**
 * Ties a claim to a question asked of a node, and says what would make the claim true. The
 * claim's state is worked out from it, not stored: open until the question answers with a
 * number, a spread and a word.
 */
export interface Tie {
  readonly id: Id;
  readonly claim: Id;
  readonly question: string;
  readonly subject: Id;
  readonly output: string;
  readonly test: {
    readonly is: 'at least' | 'at most';
    /** SI. */
    readonly value: number;
    /** What was typed, with its unit. */
    readonly asWritten: string;
  };
}
