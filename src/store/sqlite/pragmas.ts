import { type Kysely, sql } from 'kysely';

/** A number that is another one after any other connection, of this process or not, has committed. */
export async function dataVersion<T>(db: Kysely<T>): Promise<number> {
  const { rows } = await sql<{ data_version: number }>`pragma data_version`.execute(db);
  return rows[0]?.data_version ?? 0;
}
