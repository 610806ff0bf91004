import { CompiledQuery, type Kysely, sql } from 'kysely';
import { inPieces } from '../sql/in-pieces.ts';
import type { Tables } from '../sql/tables.ts';
import type { PlacedWords, WordIndex } from '../sql/word-index.ts';

/**
 * Text search by SQLite's FTS5, one entry a place. It keeps no text of its own, and splits at
 * blanks only: the words come split and folded already, the same for every database.
 */
export const FTS_WORDS: WordIndex = {
  create: async (db) => {
    await sql`create virtual table nodes_words using fts5(
      words, content='', contentless_delete=1, detail=none, tokenize='ascii')`.execute(db);
  },
  drop: async (db) => {
    await sql`drop table if exists nodes_words`.execute(db);
  },
  put: async (db, rows) => {
    for (const some of inPieces(rows, 100)) await putSome(db, some);
  },
  remove: async (db, places) => {
    for (const some of inPieces(places)) await removeSome(db, some);
  },
  match: (words) => {
    const query = words.map((word) => `"${word}"*`).join(' ');
    return sql<boolean>`place in (select rowid from nodes_words where nodes_words match ${query})`;
  },
};

const putSome = (db: Kysely<Tables>, rows: readonly PlacedWords[]) =>
  db.executeQuery(
    CompiledQuery.raw(
      `insert into nodes_words (rowid, words) values ${rows.map(() => '(?, ?)').join(', ')}`,
      rows.flatMap(({ place, words }) => [place, words]),
    ),
  );

const removeSome = (db: Kysely<Tables>, places: readonly number[]) =>
  db.executeQuery(
    CompiledQuery.raw(
      `delete from nodes_words where rowid in (${places.map(() => '?').join(', ')})`,
      [...places],
    ),
  );
