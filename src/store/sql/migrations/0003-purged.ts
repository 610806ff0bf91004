import type { Kysely } from 'kysely';
import type { Tables } from '../tables.ts';

/** Studies that were taken out for good: nothing of them is taken back in. */
export async function purged(db: Kysely<Tables>): Promise<void> {
  await db.schema
    .createTable('purged')
    .addColumn('study', 'text', (c) => c.primaryKey())
    .addColumn('purged', 'text', (c) => c.notNull())
    .addColumn('blobs', 'text')
    .execute();
}
