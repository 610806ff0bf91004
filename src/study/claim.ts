import type { Way } from '../quantity/index.ts';
import type { Id } from './ids.ts';

/** What would make a claim true: an output of its question at least or at most a value. */
export interface ClaimTest {
  readonly output: string;
  readonly is: 'at least' | 'at most';
  /** SI. */
  readonly value: number;
  /** What was typed, with its unit. */
  readonly asWritten: string;
}

/**
 * A statement made at the vehicle, tied by hand to a node and a question. Its state is worked
 * out, not stored: open until the question answers with a number, a spread and a word.
 */
export interface Claim {
  readonly id: Id;
  readonly words: string;
  readonly how: Way;
  readonly by: string;
  readonly at: string;
  readonly subject: Id;
  readonly question: string;
  readonly test: ClaimTest;
}
