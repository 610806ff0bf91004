import { refusal } from '../../refuse.ts';
import type { SqlLibrary } from '../tables.ts';
import { changes } from './0001-changes.ts';
import { projections } from './0002-projections.ts';

/** The projections as they are now, for making them again. */
export { projections };

/** Forward only, in order; the number of those that have run is the schema's version. */
const MIGRATIONS: readonly ((library: SqlLibrary) => Promise<void>)[] = [
  ({ db }) => changes(db),
  ({ db, words }) => projections(db, words),
];

/**
 * Brings a library's schema to this program's, inside the transaction that is open on it.
 * @throws RefusalError `bad-call` when the library is newer than the program.
 */
export async function migrate(library: SqlLibrary, where: string): Promise<void> {
  const { db } = library;
  await db.schema
    .createTable('schema')
    .ifNotExists()
    .addColumn('version', 'integer', (c) => c.notNull())
    .execute();
  const row = await db.selectFrom('schema').select('version').executeTakeFirst();
  const held = row?.version ?? 0;
  if (held > MIGRATIONS.length) throw newerLibrary(where, held);
  if (held === MIGRATIONS.length) return;
  for (const step of MIGRATIONS.slice(held)) await step(library);
  if (row) await db.updateTable('schema').set({ version: MIGRATIONS.length }).execute();
  else await db.insertInto('schema').values({ version: MIGRATIONS.length }).execute();
}

const newerLibrary = (where: string, held: number) =>
  refusal(
    'bad-call',
    { file: where },
    `the library was written by a newer version of this program: its schema is ${held}, this program knows ${MIGRATIONS.length}`,
    'Nothing was changed. Open it with the newer version, or open another library.',
  );
