import type { Entry } from './entries.ts';
import type { Id, Ulid } from './ids.ts';

/**
 * One atomic, append-only change to a study. What a person does in one go is one gesture; a
 * gesture too large for one change (an import) is several changes with the same gesture id,
 * appended together. Undo is a change that names the gesture it reverses; redo is the undo of
 * an undo.
 */
export interface Change {
  readonly id: Ulid;
  readonly study: Id;
  readonly device: Id;
  /** The device's own count of its changes to this study, from 1; a gap shows a loss. */
  readonly seq: number;
  /** Hybrid logical clock, sortable as text: see clock.ts. */
  readonly clock: string;
  readonly by: string;
  readonly gesture: Ulid;
  /** What was done, in a few words: "correct mass of 40-004". */
  readonly words: string;
  /** What its author had seen: every other device's highest seq by then. */
  readonly saw: Readonly<Record<Id, number>>;
  /** Gesture that this change reverses. */
  readonly undoes?: Ulid;
  readonly entries: readonly Entry[];
}

/**
 * The one text of a value by which stored bytes are compared and digested: JSON with the keys
 * of every object in order, so that it does not matter where a change has been kept meanwhile.
 */
export function canonicalText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value)
    .filter(([, v]) => v !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${fields.map(([k, v]) => `${JSON.stringify(k)}:${canonicalText(v)}`).join(',')}}`;
}
