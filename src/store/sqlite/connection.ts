import { type Dialect, Kysely, SqliteDialect } from 'kysely';
import type { Tables } from '../sql/tables.ts';
import { GuardedDatabase } from './guarded-database.ts';
import { ImmediateDriver } from './immediate-driver.ts';

/** How long a reader waits inside the database for the moments in which the log needs a lock. */
const READ_WAIT_MS = 1000;
/** Memory for pages, in KiB: a large append spills the rest into the log. */
const CACHE_KIB = 16_384;
/** To this size the log is cut back after a large append. */
const LOG_BYTES = 64 * 1024 * 1024;

/** One connection to a library's file. */
export interface Connection {
  readonly db: Kysely<Tables>;
  close(): void;
}

/**
 * A connection that may write. Each commit is on disk when it returns: synchronous=FULL fsyncs
 * the write-ahead log. A transaction waits for the write lock up to `waitMs`.
 * @throws RefusalError `read-only`, `disk-full`, `busy`, or `bad-value` when the file is no library.
 */
export const openWriter = (file: string, waitMs: number): Connection =>
  open(file, waitMs, [
    `busy_timeout=${READ_WAIT_MS}`,
    'journal_mode=wal',
    'synchronous=full',
    'busy_timeout=0',
    `cache_size=-${CACHE_KIB}`,
    `journal_size_limit=${LOG_BYTES}`,
  ]);

/** A connection for reading: it sees what is committed, whatever a writer is at. */
export const openReader = (file: string): Connection =>
  open(file, 0, [`busy_timeout=${READ_WAIT_MS}`]);

function open(file: string, waitMs: number, pragmas: readonly string[]): Connection {
  const database = new GuardedDatabase(file);
  for (const pragma of pragmas) database.run(`pragma ${pragma}`);
  const db = new Kysely<Tables>({ dialect: dialectOver(database, waitMs) });
  return { db, close: () => database.close() };
}

function dialectOver(database: GuardedDatabase, waitMs: number): Dialect {
  const plain = new SqliteDialect({ database });
  return {
    createDriver: () => new ImmediateDriver(database, waitMs),
    createQueryCompiler: () => plain.createQueryCompiler(),
    createAdapter: () => plain.createAdapter(),
    createIntrospector: (db) => plain.createIntrospector(db),
  };
}
