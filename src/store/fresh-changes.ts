import type { Change, Id, Ulid } from '../study/index.ts';
import { idConflict, seqConflict } from './conflict.ts';
import { type StoredText, storedText } from './stored-text.ts';

/** A change with who brought it. */
export interface Handed {
  readonly change: Change;
  readonly author: string;
}

/** What a store holds already, as far as a batch could collide with it. */
export interface HeldChanges {
  /** Canonical text of a change. */
  bodyOf(id: Ulid): string | undefined;
  hasSeq(change: Change): boolean;
}

/**
 * What of a batch is not here yet, each change once, checked against what is held and against the
 * batch itself.
 * @throws RefusalError `bad-change`, `conflict`.
 */
export function freshOf(
  study: Id,
  batch: readonly Handed[],
  held: HeldChanges,
): (StoredText & Handed)[] {
  const fresh = new Map<string, StoredText & Handed>();
  const seqs = new Set<string>();
  for (const { change, author } of batch) {
    const text = storedText(study, change);
    const body = held.bodyOf(change.id) ?? fresh.get(change.id)?.body;
    if (body !== undefined && body !== text.body) throw idConflict(study, change);
    if (body !== undefined) continue;
    if (held.hasSeq(change) || seqs.has(seqKey(change))) throw seqConflict(study, change);
    fresh.set(change.id, { ...text, author });
    seqs.add(seqKey(change));
  }
  return [...fresh.values()];
}

/** One device's count within a study. */
export const seqKey = ({ seq, device }: Pick<Change, 'seq' | 'device'>): string =>
  `${seq} ${device}`;
