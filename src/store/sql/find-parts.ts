import { type Expression, type ExpressionBuilder, type SqlBool, sql } from 'kysely';
import { searchWords } from '../part-row.ts';
import type { PartQuery, PartRow } from '../port.ts';
import type { SqlLibrary, Tables } from './tables.ts';
import type { WordIndex } from './word-index.ts';

const COLUMNS = [
  'study',
  'id',
  'label',
  'name',
  'parent',
  'count',
  'mass',
  'massU',
  'thickness',
  'x',
  'y',
  'z',
  'material',
  'process',
] as const satisfies readonly (keyof PartRow)[];

/** Parts that answer a query, in the order of their studies and ids. */
export async function findParts({ db, words }: SqlLibrary, query: PartQuery): Promise<PartRow[]> {
  return db
    .selectFrom('nodes')
    .select(COLUMNS)
    .where((q) => found(q, words, query))
    .orderBy('study')
    .orderBy('id')
    .limit(query.limit)
    .execute();
}

type Nodes = ExpressionBuilder<Tables, 'nodes'>;

/**
 * Parts of a material are few: they are looked up by themselves, by its index, and put in order
 * after. Without one, the rows are walked in order until there are enough.
 */
function found(q: Nodes, words: WordIndex, query: PartQuery): Expression<SqlBool> {
  const all = q.and(conditions(q, words, query));
  if (query.material === undefined) return all;
  return q('place', 'in', q.selectFrom('nodes').select('place').where(all));
}

function conditions(q: Nodes, words: WordIndex, query: PartQuery): Expression<SqlBool>[] {
  const asked = searchWords(query.text ?? '');
  return [
    // A literal, not a parameter, lets the database use the index of shown rows.
    q('shown', '=', sql.lit(1)),
    ...inStudy(q, query),
    ...(query.material === undefined ? [] : [q('material', '=', query.material)]),
    ...(query.process === undefined ? [] : [q('process', '=', query.process)]),
    ...(query.thickness === undefined ? [] : [q.between('thickness', ...query.thickness)]),
    ...(asked.length === 0 ? [] : [words.match(asked)]),
  ];
}

/** A material is looked up study by study: the index of materials begins with the study. */
function inStudy(q: Nodes, { study, material }: PartQuery): Expression<SqlBool>[] {
  if (study !== undefined) return [q('study', '=', study)];
  return material === undefined ? [] : [q('study', 'in', q.selectFrom('studies').select('study'))];
}
