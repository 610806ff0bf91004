import type { SqliteDatabase, SqliteStatement } from 'kysely';
import Libsql from 'libsql';
import { bindGuard, parametersIn } from './bind-guard.ts';
import { asRefusal } from './sqlite-refusals.ts';

type Native = ReturnType<Libsql.Database['prepare']>;

/** Prepared statements kept for reuse; long ones with many rows of parameters are dear to prepare. */
const KEPT_STATEMENTS = 120;

/**
 * The driver with its teeth covered: every value passes the bind guard, errors that a caller can
 * act on become refusals, and statements are prepared once.
 */
export class GuardedDatabase implements SqliteDatabase {
  readonly file: string;
  readonly #native: Libsql.Database;
  readonly #kept = new Map<string, SqliteStatement>();
  #closed = false;

  /** @throws RefusalError when the file can't be opened. */
  constructor(file: string) {
    this.file = file;
    this.#native = guarded(file, () => new Libsql(file));
  }

  /** @throws TypeError once it is closed: the driver would end the whole process. */
  prepare(sql: string): SqliteStatement {
    if (this.#closed) throw new TypeError(`${this.file} is closed`);
    const kept = this.#kept.get(sql);
    if (kept) return kept;
    const native = guarded(this.file, () => this.#native.prepare(sql));
    const statement = new GuardedStatement(this.file, native, parametersIn(sql));
    this.#keep(sql, statement);
    return statement;
  }

  /** Runs one statement without parameters, whether it gives rows or not. */
  run(sql: string): void {
    const statement = this.prepare(sql);
    if (statement.reader) statement.all([]);
    else statement.run([]);
  }

  get inTransaction(): boolean {
    return !this.#closed && this.#native.inTransaction;
  }

  /** The driver frees locks and files only when the last statement is collected, so what is open is rolled back. */
  close(): void {
    if (this.#closed) return;
    if (this.inTransaction) this.run('rollback');
    this.#closed = true;
    this.#kept.clear();
    this.#native.close();
  }

  /** The oldest goes when there are too many; queries with a varying count of parameters come and go. */
  #keep(sql: string, statement: SqliteStatement): void {
    const oldest = this.#kept.keys().next();
    if (this.#kept.size >= KEPT_STATEMENTS && !oldest.done) this.#kept.delete(oldest.value);
    this.#kept.set(sql, statement);
  }
}

class GuardedStatement implements SqliteStatement {
  readonly reader: boolean;
  readonly #file: string;
  readonly #native: Native;
  readonly #wanted: number;

  constructor(file: string, native: Native, wanted: number) {
    this.#file = file;
    this.#native = native;
    this.#wanted = wanted;
    this.reader = native.reader;
  }

  all(parameters: readonly unknown[]): unknown[] {
    const bound = bindGuard(parameters, this.#wanted);
    return guarded(this.#file, () => this.#native.all(bound));
  }

  run(parameters: readonly unknown[]): { changes: number; lastInsertRowid: number | bigint } {
    const bound = bindGuard(parameters, this.#wanted);
    return guarded(this.#file, () => this.#native.run(bound));
  }

  /** Reads all rows at once: a row at a time would leave a read open on the shared connection. */
  iterate(parameters: readonly unknown[]): IterableIterator<unknown> {
    return this.all(parameters)[Symbol.iterator]();
  }
}

function guarded<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw asRefusal(error, file);
  }
}
