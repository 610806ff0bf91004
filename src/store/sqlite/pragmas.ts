import { type Kysely, sql } from 'kysely';

/** A number that is another one after any other connection, of this process or not, has committed. */
export async function dataVersion<T>(db: Kysely<T>): Promise<number> {
  const { rows } = await sql<{ data_version: number }>`pragma data_version`.execute(db);
  return rows[0]?.data_version ?? 0;
}

/**
 * Moves the log into the database file and empties it, as far as other processes let it; true
 * when they did. What stays in the log is as safe there, and is read from it next time.
 */
export async function checkpoint<T>(db: Kysely<T>): Promise<boolean> {
  const { rows } = await sql<{ busy: number }>`pragma wal_checkpoint(truncate)`.execute(db);
  return rows[0]?.busy === 0;
}

/** What the database finds wrong with its own file; the quick way leaves the indices out. */
export async function faultsIn<T>(db: Kysely<T>, how: 'quick' | 'whole'): Promise<string[]> {
  const query = how === 'quick' ? sql`pragma quick_check` : sql`pragma integrity_check`;
  const { rows } = await query.execute(db);
  const lines = rows.flatMap((row) => Object.values(row as object).map(String));
  return lines.filter((line) => line !== 'ok');
}

/** From now on what this connection deletes is written over with zeros. */
export async function deleteSecurely<T>(db: Kysely<T>): Promise<void> {
  await sql`pragma secure_delete=on`.execute(db);
}

/** Writes the database anew, without the pages that deleted rows have left. */
export async function vacuum<T>(db: Kysely<T>): Promise<void> {
  await sql`vacuum`.execute(db);
}
