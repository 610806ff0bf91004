import { createHash } from 'node:crypto';
import type { Kysely } from 'kysely';
import { rebuildProjections } from './rebuild.ts';
import type { NodesTable, SqlLibrary, StudiesTable, Tables } from './tables.ts';

/** Rows read at a time. */
const PAGE = 500;

/**
 * Whether the rows are those that the changes give: makes them anew inside the open transaction,
 * which the caller rolls back.
 */
export async function sameRows(library: SqlLibrary): Promise<boolean> {
  const before = await digestOfRows(library.db);
  await rebuildProjections(library);
  return (await digestOfRows(library.db)) === before;
}

async function digestOfRows(db: Kysely<Tables>): Promise<string> {
  const hash = createHash('sha256');
  for await (const row of studyRows(db)) hash.update(JSON.stringify(row));
  for await (const row of nodeRows(db)) hash.update(JSON.stringify(row));
  return hash.digest('hex');
}

async function* studyRows(db: Kysely<Tables>): AsyncGenerator<StudiesTable> {
  yield* await db.selectFrom('studies').selectAll().orderBy('study').execute();
}

/** All but the place, which tells only in which order rows were made. */
async function* nodeRows(db: Kysely<Tables>): AsyncGenerator<Omit<NodesTable, 'place'>> {
  for (let last = { study: '', id: '' }; ; ) {
    const rows = await db
      .selectFrom('nodes')
      .selectAll()
      .where((q) =>
        q.or([
          q('study', '>', last.study),
          q.and([q('study', '=', last.study), q('id', '>', last.id)]),
        ]),
      )
      .orderBy('study')
      .orderBy('id')
      .limit(PAGE)
      .execute();
    if (rows.length === 0) return;
    for (const { place: _, ...row } of rows) yield row;
    last = rows.at(-1) ?? last;
  }
}
