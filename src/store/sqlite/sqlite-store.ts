import { join } from 'node:path';
import type { ControlledTransaction, Kysely } from 'kysely';
import type { Change, Sha256 } from '../../study/index.ts';
import { FileBlobs } from '../file-blobs.ts';
import { makeFolder, syncFolder } from '../files.ts';
import { HeldStage, type StageWork } from '../held-stage.ts';
import type { Ack, Arrived, PartQuery, PartRow, Stage, Store, StudyHead } from '../port.ts';
import { changesSince, lastArrival, lastSeq, storeChanges } from '../sql/change-log.ts';
import { foldedHeads, foldedParts } from '../sql/folded.ts';
import { migrate } from '../sql/migrations/index.ts';
import type { Tables } from '../sql/tables.ts';
import { WriteTurn } from '../write-turn.ts';
import { backUp } from './backup.ts';
import { type Connection, openReader, openWriter } from './connection.ts';
import { dataVersion } from './pragmas.ts';

export interface SqliteStoreOptions {
  /** How long a writer waits for another one before it is refused `busy`. */
  readonly waitMs?: number;
}

/**
 * Opens the library in a folder, making it when there is none: `library.db` and `blobs/`.
 * @throws RefusalError `read-only`, `disk-full`, `busy`, `bad-value` when the file is no library,
 * `bad-call` when it is newer than this program.
 */
export async function openSqliteStore(
  dir: string,
  options: SqliteStoreOptions = {},
): Promise<Store> {
  const waitMs = options.waitMs ?? 5000;
  const file = join(dir, 'library.db');
  await makeFolder(join(dir, 'blobs'));
  const writer = openWriter(file, waitMs);
  try {
    await writer.db.transaction().execute((db) => migrate(db, file));
    await syncFolder(dir);
    return new SqliteStore(dir, file, waitMs, writer, openReader(file));
  } catch (error) {
    writer.close();
    throw error;
  }
}

/** Reads and writes go by connections of their own, so that no reader waits for a writer. */
class SqliteStore implements Store {
  readonly #turn: WriteTurn;
  readonly #blobs: FileBlobs;
  readonly #writer: Connection;
  readonly #reader: Connection;

  constructor(dir: string, file: string, waitMs: number, writer: Connection, reader: Connection) {
    this.#turn = new WriteTurn(file, waitMs);
    this.#blobs = new FileBlobs(join(dir, 'blobs'));
    this.#writer = writer;
    this.#reader = reader;
  }

  async append(study: string, batch: readonly Change[], author: string): Promise<Ack> {
    return this.#write((db) => keep(db, study, batch, author));
  }

  stage(study: string, author: string): Promise<Stage> {
    return this.#turn.hold(async (endTurn) => {
      const transaction = await this.#writer.db.startTransaction().execute();
      return new HeldStage(endTurn, stageWork(transaction, study, author));
    });
  }

  since(
    study: string,
    cursor: number,
    limit: number,
  ): Promise<{ readonly changes: readonly Arrived[]; readonly next: number }> {
    return changesSince(this.#reader.db, study, cursor, limit);
  }

  studies(): Promise<readonly StudyHead[]> {
    return foldedHeads(this.#reader.db);
  }

  lastSeq(study: string, device: string): Promise<number> {
    return lastSeq(this.#reader.db, study, device);
  }

  find(query: PartQuery): Promise<readonly PartRow[]> {
    return foldedParts(this.#reader.db, query);
  }

  rebuild(): Promise<void> {
    return Promise.resolve();
  }

  version(): Promise<number> {
    return dataVersion(this.#reader.db);
  }

  backup(toFile: string): Promise<void> {
    return backUp(this.#reader.db, toFile);
  }

  async close(): Promise<void> {
    await this.#turn.during(async () => {
      this.#reader.close();
      this.#writer.close();
    });
  }

  putBlob(chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>): Promise<Sha256> {
    return this.#blobs.putBlob(chunks);
  }

  getBlob(hash: Sha256): AsyncIterable<Uint8Array> {
    return this.#blobs.getBlob(hash);
  }

  hasBlob(hash: Sha256): Promise<boolean> {
    return this.#blobs.hasBlob(hash);
  }

  /** One transaction: what it returns is returned after the commit, which is after the fsync. */
  #write<T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> {
    return this.#turn.during(() => this.#writer.db.transaction().execute(work));
  }
}

/** Stores what is new of a batch inside the transaction open on `db`. */
async function keep(
  db: Kysely<Tables>,
  study: string,
  batch: readonly Change[],
  author: string,
): Promise<Ack> {
  const { ack } = await storeChanges(db, study, batch, author);
  return ack;
}

function stageWork(
  transaction: ControlledTransaction<Tables>,
  study: string,
  author: string,
): StageWork {
  let added = 0;
  return {
    add: async (batch) => {
      added += (await keep(transaction, study, batch, author)).added;
    },
    commit: async () => {
      const cursor = await lastArrival(transaction, study);
      await transaction.commit().execute();
      return { cursor, added };
    },
    rollBack: () => transaction.rollback().execute(),
  };
}
