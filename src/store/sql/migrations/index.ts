import type { Kysely } from 'kysely';
import type { SqlLibrary, Tables } from '../tables.ts';
import { changes } from './0001-changes.ts';
import { projections } from './0002-projections.ts';
import { purged } from './0003-purged.ts';

/** The projections as they are now, for making them again. */
export { projections };

/** Forward only, in order; the number of those that have run is the schema's version. */
const MIGRATIONS: readonly ((library: SqlLibrary) => Promise<void>)[] = [
  ({ db }) => changes(db),
  ({ db, words }) => projections(db, words),
  ({ db }) => purged(db),
];

/** A library's schema beside this program's: older ones are brought up to it, newer ones only read. */
export async function schemaAge({ db }: SqlLibrary): Promise<'older' | 'same' | 'newer'> {
  const tables = await db.introspection.getTables();
  const held = tables.some((table) => table.name === 'schema') ? await version(db) : 0;
  if (held === MIGRATIONS.length) return 'same';
  return held > MIGRATIONS.length ? 'newer' : 'older';
}

/** Brings a library's schema to this program's, inside the transaction that is open on it. */
export async function migrate(library: SqlLibrary): Promise<void> {
  const { db } = library;
  await db.schema
    .createTable('schema')
    .ifNotExists()
    .addColumn('version', 'integer', (c) => c.notNull())
    .execute();
  for (const step of MIGRATIONS.slice(await version(db))) await step(library);
  await db.deleteFrom('schema').execute();
  await db.insertInto('schema').values({ version: MIGRATIONS.length }).execute();
}

async function version(db: Kysely<Tables>): Promise<number> {
  const row = await db.selectFrom('schema').select('version').executeTakeFirst();
  return row?.version ?? 0;
}
