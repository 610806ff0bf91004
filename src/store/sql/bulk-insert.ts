import { CompiledQuery, type Kysely, sql } from 'kysely';
import { inPieces } from './in-pieces.ts';
import type { Tables } from './tables.ts';

/** Rows in one statement; with 20 columns well below the databases' limits on parameters. */
const ROWS = 50;

/**
 * Inserts many rows with few distinct statements: a query builder that compiles each anew would
 * cost more than the insert itself.
 */
export class BulkInsert<Row> {
  readonly #table: keyof Tables;
  readonly #columns: readonly (keyof Row & string)[];
  readonly #sql = new Map<number, string>();

  constructor(table: keyof Tables, columns: readonly (keyof Row & string)[]) {
    this.#table = table;
    this.#columns = columns;
  }

  async insert(db: Kysely<Tables>, rows: readonly Row[]): Promise<void> {
    for (const some of inPieces(rows, ROWS)) {
      const parameters = some.flatMap((row) => this.#columns.map((column) => row[column]));
      await db.executeQuery(CompiledQuery.raw(this.#sqlFor(db, some.length), parameters));
    }
  }

  #sqlFor(db: Kysely<Tables>, rows: number): string {
    const kept = this.#sql.get(rows);
    if (kept !== undefined) return kept;
    const row = sql`(${sql.join(this.#columns.map(() => sql.val(null)))})`;
    const columns = sql.join(this.#columns.map((column) => sql.ref(column)));
    const all = sql.join(Array.from({ length: rows }, () => row));
    const text = sql`insert into ${sql.table(this.#table)} (${columns}) values ${all}`;
    const made = text.compile(db).sql;
    this.#sql.set(rows, made);
    return made;
  }
}
