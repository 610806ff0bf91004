import type { Id, StudyHeader } from '../../study/index.ts';
import type { StudyHead } from '../port.ts';
import type { SqlLibrary, StudiesTable } from './tables.ts';

/** Heads of all studies, in the order of their ids. */
export async function studyHeads({ db }: SqlLibrary): Promise<StudyHead[]> {
  const rows = await db.selectFrom('studies').selectAll().orderBy('study').execute();
  return rows.map(({ condition: _, ...head }) => ({ ...head, invented: head.invented === 1 }));
}

export const headRow = ({ db }: SqlLibrary, study: Id): Promise<StudiesTable | undefined> =>
  db.selectFrom('studies').selectAll().where('study', '=', study).executeTakeFirst();

/** The row of a study before its first change. */
export const emptyHead = (study: Id): StudiesTable => ({
  study,
  title: '',
  vehicle: '',
  invented: 0,
  condition: '',
  changes: 0,
  parts: 0,
  clock: '',
});

export const withHeader = (row: StudiesTable, header: StudyHeader): StudiesTable => ({
  ...row,
  title: header.title,
  vehicle: header.vehicle,
  invented: header.invented ? 1 : 0,
  condition: header.condition,
});

export async function putHead({ db }: SqlLibrary, row: StudiesTable): Promise<void> {
  const { study, ...set } = row;
  await db
    .insertInto('studies')
    .values(row)
    .onConflict((clash) => clash.column('study').doUpdateSet(set))
    .execute();
}
