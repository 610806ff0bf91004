import type { Kysely } from 'kysely';
import type { Change } from '../../study/index.ts';
import { foldedHead, foldedParts as partsOf } from '../folded.ts';
import { matches } from '../part-row.ts';
import type { PartQuery, PartRow, StudyHead } from '../port.ts';
import type { Tables } from './tables.ts';

export async function foldedHeads(db: Kysely<Tables>): Promise<StudyHead[]> {
  return [...(await all(db))].map(([study, changes]) => foldedHead(study, changes));
}
export async function foldedParts(db: Kysely<Tables>, query: PartQuery): Promise<PartRow[]> {
  const rows = [...(await all(db))].flatMap(([study, changes]) => partsOf(study, changes));
  return rows.filter((row) => matches(row, query)).slice(0, query.limit);
}
async function all(db: Kysely<Tables>): Promise<Map<string, Change[]>> {
  const rows = await db
    .selectFrom('changes')
    .select(['study', 'body'])
    .orderBy('study')
    .orderBy('at')
    .execute();
  const found = new Map<string, Change[]>();
  for (const { study, body } of rows)
    found.set(study, [...(found.get(study) ?? []), JSON.parse(body)]);
  return found;
}
