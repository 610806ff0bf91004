import type { Expression, Kysely, SqlBool } from 'kysely';
import type { Tables } from './tables.ts';

/** Words of the row of `nodes` at a place. */
export interface PlacedWords {
  readonly place: number;
  /** Words as searchWords gives them, separated by a space. */
  readonly words: string;
}

/** Text search over `nodes`: the one part of the query set for which each database has its own SQL. */
export interface WordIndex {
  create(db: Kysely<Tables>): Promise<void>;
  drop(db: Kysely<Tables>): Promise<void>;
  put(db: Kysely<Tables>, rows: readonly PlacedWords[]): Promise<void>;
  remove(db: Kysely<Tables>, places: readonly number[]): Promise<void>;
  /** True for rows of `nodes` of which every word given begins a word. */
  match(words: readonly string[]): Expression<SqlBool>;
}
