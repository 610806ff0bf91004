import { type Kysely, sql } from 'kysely';
import type { Tables } from '../tables.ts';

/** The record of truth: append-only changes, in the order of their arrival. */
export async function changes(db: Kysely<Tables>): Promise<void> {
  await db.schema
    .createTable('changes')
    .addColumn('number', 'integer', (c) => c.primaryKey())
    .addColumn('study', 'text', (c) => c.notNull())
    .addColumn('at', 'integer', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull().unique())
    .addColumn('device', 'text', (c) => c.notNull())
    .addColumn('seq', 'integer', (c) => c.notNull())
    .addColumn('clock', 'text', (c) => c.notNull())
    .addColumn('gesture', 'text', (c) => c.notNull())
    .addColumn('undoes', 'text')
    .addColumn('by', 'text', (c) => c.notNull())
    .addColumn('words', 'text', (c) => c.notNull())
    .addColumn('author', 'text', (c) => c.notNull())
    .addColumn('received', 'text', (c) => c.notNull())
    .addColumn('body', 'text', (c) => c.notNull())
    .addUniqueConstraint('changes_at', ['study', 'at'])
    .addUniqueConstraint('changes_seq', ['study', 'device', 'seq'])
    .execute();
  await db.schema
    .createIndex('changes_gesture')
    .on('changes')
    .columns(['study', 'gesture'])
    .execute();
  await db.schema
    .createIndex('changes_undoes')
    .on('changes')
    .columns(['study', 'undoes'])
    .where(sql.ref('undoes'), 'is not', null)
    .execute();
}
