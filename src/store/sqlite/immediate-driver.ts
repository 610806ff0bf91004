import { CompiledQuery, type DatabaseConnection, SqliteDriver } from 'kysely';
import { RefusalError } from '../../study/index.ts';
import { busy } from '../refuse.ts';
import type { GuardedDatabase } from './guarded-database.ts';

const RETRY_MS = 15;

/**
 * Transactions take the write lock when they begin, so that none fails half-way for want of it.
 * Waiting for another process leaves the event loop free.
 */
export class ImmediateDriver extends SqliteDriver {
  readonly #database: GuardedDatabase;
  readonly #waitMs: number;

  constructor(database: GuardedDatabase, waitMs: number) {
    super({ database });
    this.#database = database;
    this.#waitMs = waitMs;
  }

  /** @throws RefusalError `busy` when the lock does not come within the time given. */
  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    const until = Date.now() + this.#waitMs;
    while (!(await began(connection))) {
      if (Date.now() >= until) throw busy(this.#database.file, this.#waitMs);
      await new Promise((resolve) => setTimeout(resolve, RETRY_MS));
    }
  }

  /** After an error such as a full disk the database has rolled back by itself. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#database.inTransaction) await super.rollbackTransaction(connection);
  }
}

async function began(connection: DatabaseConnection): Promise<boolean> {
  try {
    await connection.executeQuery(CompiledQuery.raw('begin immediate'));
    return true;
  } catch (error) {
    if (error instanceof RefusalError && error.refusals[0].code === 'busy') return false;
    throw error;
  }
}
