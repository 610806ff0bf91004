import type { Kysely } from 'kysely';
import type { Change } from '../../study/index.ts';
import { idConflict, seqConflict } from '../conflict.ts';
import type { Ack, Arrived } from '../port.ts';
import { type StoredText, storedText } from '../stored-text.ts';
import { arrivedOf, rowOf } from './change-rows.ts';
import { mustNotBePurged } from './purge.ts';
import type { Tables } from './tables.ts';

/** A change now held that was not before, with its order of arrival over all studies. */
export interface Fresh {
  readonly number: number;
  readonly change: Change;
  /** Length of its text. */
  readonly characters: number;
}

/**
 * Stores the changes of a batch that are not held yet, inside the transaction open on `db`.
 * @throws RefusalError `bad-change`, `conflict`; the caller rolls back.
 */
export async function storeChanges(
  db: Kysely<Tables>,
  study: string,
  batch: readonly Change[],
  author: string,
): Promise<{ readonly ack: Ack; readonly fresh: readonly Fresh[] }> {
  await mustNotBePurged(db, study);
  const received = new Date().toISOString();
  const fresh: Fresh[] = [];
  let at = await lastArrival(db, study);
  for (const change of batch) {
    const text = storedText(study, change);
    const number = await storeOne(db, text, { at: at + 1, author, received });
    if (number === undefined) continue;
    at += 1;
    fresh.push({ number, change, characters: text.body.length });
  }
  return { ack: { cursor: at, added: fresh.length }, fresh };
}

/** Its number, or undefined when the same change is held already. */
async function storeOne(
  db: Kysely<Tables>,
  text: StoredText,
  arrival: { readonly at: number; readonly author: string; readonly received: string },
): Promise<number | undefined> {
  const stored = await db
    .insertInto('changes')
    .values(rowOf(text, arrival))
    .onConflict((clash) => clash.doNothing())
    .returning('number')
    .executeTakeFirst();
  if (stored) return stored.number;
  await refuseOther(db, text);
  return undefined;
}

/** What stands in the way is the same change, or another under the same id or seq. */
async function refuseOther(db: Kysely<Tables>, { change, body }: StoredText): Promise<void> {
  const held = await db
    .selectFrom('changes')
    .select('body')
    .where('id', '=', change.id)
    .executeTakeFirst();
  if (!held) throw seqConflict(change.study, change);
  if (held.body !== body) throw idConflict(change.study, change);
}

/** Arrival number of the study's last change; 0 when there is none. */
export async function lastArrival(db: Kysely<Tables>, study: string): Promise<number> {
  const last = await db
    .selectFrom('changes')
    .select((q) => q.fn.max('at').as('at'))
    .where('study', '=', study)
    .executeTakeFirst();
  return Number(last?.at ?? 0);
}

export async function changesSince(
  db: Kysely<Tables>,
  study: string,
  cursor: number,
  limit: number,
): Promise<{ readonly changes: readonly Arrived[]; readonly next: number }> {
  const rows = await db
    .selectFrom('changes')
    .select(['at', 'author', 'received', 'body'])
    .where('study', '=', study)
    .where('at', '>', cursor)
    .orderBy('at')
    .limit(limit)
    .execute();
  return { changes: rows.map(arrivedOf), next: rows.at(-1)?.at ?? cursor };
}

export async function lastSeq(db: Kysely<Tables>, study: string, device: string): Promise<number> {
  const last = await db
    .selectFrom('changes')
    .select((q) => q.fn.max('seq').as('seq'))
    .where('study', '=', study)
    .where('device', '=', device)
    .executeTakeFirst();
  return Number(last?.seq ?? 0);
}
