import type { Kysely } from 'kysely';
import { refusal } from '../../refuse.ts';
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

/**
 * Whether a library's schema is older than this program's: only then it has to be written on
 * opening.
 * @throws RefusalError `bad-call` when the library is newer than the program.
 */
export async function needsMigration({ db }: SqlLibrary, where: string): Promise<boolean> {
  const tables = await db.introspection.getTables();
  const held = tables.some((table) => table.name === 'schema') ? await version(db) : 0;
  if (held > MIGRATIONS.length) throw newerLibrary(where, held);
  return held < MIGRATIONS.length;
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

const newerLibrary = (where: string, held: number) =>
  refusal(
    'bad-call',
    { file: where },
    `the library was written by a newer version of this program: its schema is ${held}, this program knows ${MIGRATIONS.length}`,
    'Nothing was changed. Open it with the newer version, or open another library.',
  );
