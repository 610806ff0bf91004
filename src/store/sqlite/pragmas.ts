import { type Kysely, sql } from 'kysely';

/** A number that is another one after any other connection, of this process or not, has committed. */
export async function dataVersion<T>(db: Kysely<T>): Promise<number> {
  const { rows } = await sql<{ data_version: number }>`pragma data_version`.execute(db);
  return rows[0]?.data_version ?? 0;
}

/**
 * Moves the log into the database file and empties it, as far as other processes let it. What
 * stays in the log is as safe there, and is read from it next time.
 */
export async function checkpoint<T>(db: Kysely<T>): Promise<void> {
  await sql`pragma wal_checkpoint(truncate)`.execute(db);
}
