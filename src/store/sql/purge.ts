import type { Kysely } from 'kysely';
import { blobsOf, type Change, type Id, type Sha256 } from '../../study/index.ts';
import { searchedText, searchWords } from '../part-row.ts';
import { isPurged } from '../purged.ts';
import { inPieces } from './in-pieces.ts';
import type { SqlLibrary, Tables } from './tables.ts';

/** Rows read at a time. */
const PAGE = 200;

/** @throws RefusalError `not-allowed`. */
export async function mustNotBePurged(db: Kysely<Tables>, study: Id): Promise<void> {
  const row = await db
    .selectFrom('purged')
    .select('purged')
    .where('study', '=', study)
    .executeTakeFirst();
  if (row) throw isPurged(study, row.purged);
}

/**
 * Takes every row of a study out, inside the open transaction, and notes which blobs are then
 * named by none.
 */
export async function purgeRows(library: SqlLibrary, study: Id): Promise<void> {
  const { db } = library;
  const own = await blobsNamedBy(db, study);
  for (const table of ['changes', 'nodes', 'touches', 'studies'] as const)
    await db.deleteFrom(table).where('study', '=', study).execute();
  const blobs = (await namedByNone(db, own)).join();
  const row = { study, purged: new Date().toISOString(), blobs };
  await db
    .insertInto('purged')
    .values(row)
    .onConflict((clash) => clash.column('study').doNothing())
    .execute();
  await wordsAgain(library);
}

async function blobsNamedBy(db: Kysely<Tables>, study: Id): Promise<Set<Sha256>> {
  const named = new Set<Sha256>();
  for await (const body of bodies(db, study)) {
    const change: Change = JSON.parse(body);
    for (const hash of blobsOf(change)) named.add(hash);
  }
  return named;
}

/** Those of `hashes` that stand in no change, however it names them. */
async function namedByNone(db: Kysely<Tables>, hashes: Set<Sha256>): Promise<Sha256[]> {
  const left = new Set(hashes);
  if (left.size === 0) return [];
  for await (const body of bodies(db))
    for (const [hash] of body.matchAll(/\b[0-9a-f]{64}\b/g)) left.delete(hash);
  return [...left];
}

/** Texts of changes, of one study or of all. */
async function* bodies(db: Kysely<Tables>, study?: Id): AsyncGenerator<string> {
  for (let last = 0; ; ) {
    const rows = await db
      .selectFrom('changes')
      .select(['number', 'body'])
      .where('number', '>', last)
      .$if(study !== undefined, (q) => q.where('study', '=', study ?? ''))
      .orderBy('number')
      .limit(PAGE)
      .execute();
    if (rows.length === 0) return;
    yield* rows.map((row) => row.body);
    last = rows.at(-1)?.number ?? last;
  }
}

/** An index of words keeps those of rows that went: it is made again from the rows that stay. */
async function wordsAgain({ db, words }: SqlLibrary): Promise<void> {
  await words.drop(db);
  await words.create(db);
  const rows = await db
    .selectFrom('nodes')
    .select(['place', 'label', 'name', 'material', 'process'])
    .where('shown', '=', 1)
    .execute();
  for (const some of inPieces(rows, PAGE))
    await words.put(
      db,
      some.map((row) => ({ place: row.place, words: searchWords(searchedText(row)).join(' ') })),
    );
}

/** Blobs that purges have still to take off the disk; undefined when no purge is unfinished. */
export async function blobsToWipe(db: Kysely<Tables>): Promise<Sha256[] | undefined> {
  const rows = await db
    .selectFrom('purged')
    .select('blobs')
    .where('blobs', 'is not', null)
    .execute();
  if (rows.length === 0) return undefined;
  const noted = rows.flatMap((row) => (row.blobs ?? '').split(',').filter((hash) => hash !== ''));
  return namedByNone(db, new Set(noted));
}

export async function purgesAreDone(db: Kysely<Tables>): Promise<void> {
  await db.updateTable('purged').set({ blobs: null }).execute();
}
