import type { Id } from '../../study/index.ts';
import { projections } from './migrations/index.ts';
import { Projector } from './projector.ts';
import type { SqlLibrary } from './tables.ts';

/** Changes projected together; a chunk of a table may be a change. */
const PAGE = 16;

/** Drops all projections and makes them again from the changes, inside the open transaction. */
export async function rebuildProjections(library: SqlLibrary): Promise<void> {
  const { db, words } = library;
  await words.drop(db);
  for (const table of ['touches', 'nodes', 'studies'] as const)
    await db.schema.dropTable(table).execute();
  await projections(db, words);
  const studies = await db.selectFrom('changes').select('study').distinct().execute();
  for (const { study } of studies) await projectStudy(library, study);
}

async function projectStudy(library: SqlLibrary, study: Id): Promise<void> {
  const projector = await Projector.of(library, study);
  for (let last = 0; ; ) {
    const rows = await library.db
      .selectFrom('changes')
      .select(['number', 'at', 'body'])
      .where('study', '=', study)
      .where('at', '>', last)
      .orderBy('at')
      .limit(PAGE)
      .execute();
    if (rows.length === 0) return;
    last = rows.at(-1)?.at ?? last;
    await projector.project(
      rows.map(({ number, body }) => ({
        number,
        change: JSON.parse(body),
        characters: body.length,
      })),
    );
  }
}
