import { type Kysely, sql } from 'kysely';
import type { Tables } from '../tables.ts';
import type { WordIndex } from '../word-index.ts';

/** What is made from the changes and can be dropped and made again. */
export async function projections(db: Kysely<Tables>, words: WordIndex): Promise<void> {
  await studies(db);
  await nodes(db);
  await touches(db);
  await words.create(db);
}

async function studies(db: Kysely<Tables>): Promise<void> {
  await db.schema
    .createTable('studies')
    .addColumn('study', 'text', (c) => c.primaryKey())
    .addColumn('title', 'text', (c) => c.notNull())
    .addColumn('vehicle', 'text', (c) => c.notNull())
    .addColumn('invented', 'integer', (c) => c.notNull())
    .addColumn('condition', 'text', (c) => c.notNull())
    .addColumn('changes', 'integer', (c) => c.notNull())
    .addColumn('parts', 'integer', (c) => c.notNull())
    .addColumn('clock', 'text', (c) => c.notNull())
    .execute();
}

async function nodes(db: Kysely<Tables>): Promise<void> {
  await db.schema
    .createTable('nodes')
    .addColumn('place', 'integer', (c) => c.primaryKey())
    .addColumn('study', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('kind', 'text', (c) => c.notNull())
    .addColumn('label', 'text', (c) => c.notNull())
    .addColumn('name', 'text', (c) => c.notNull())
    .addColumn('parent', 'text')
    .addColumn('added', 'text', (c) => c.notNull())
    .addColumn('live', 'integer', (c) => c.notNull())
    .addColumn('shown', 'integer', (c) => c.notNull())
    .addColumn('count', 'double precision')
    .addColumn('mass', 'double precision')
    .addColumn('massU', 'double precision')
    .addColumn('thickness', 'double precision')
    .addColumn('x', 'double precision')
    .addColumn('y', 'double precision')
    .addColumn('z', 'double precision')
    .addColumn('material', 'text')
    .addColumn('process', 'text')
    .addUniqueConstraint('nodes_id', ['study', 'id'])
    .execute();
  await db.schema
    .createIndex('nodes_material')
    .on('nodes')
    .columns(['study', 'material', 'process', 'thickness'])
    .where(sql.ref('shown'), '=', 1)
    .execute();
}

async function touches(db: Kysely<Tables>): Promise<void> {
  await db.schema
    .createTable('touches')
    .addColumn('study', 'text', (c) => c.notNull())
    .addColumn('what', 'text', (c) => c.notNull())
    .addColumn('subject', 'text', (c) => c.notNull())
    .addColumn('change', 'integer', (c) => c.notNull())
    .addPrimaryKeyConstraint('touches_pk', ['study', 'what', 'subject', 'change'])
    .execute();
}
