import { join } from 'node:path';
import type { Kysely } from 'kysely';
import { type Change, RefusalError, type Sha256 } from '../../study/index.ts';
import { FileBlobs } from '../file-blobs.ts';
import { HeldStage } from '../held-stage.ts';
import type {
  Ack,
  Arrived,
  BlobHead,
  PartQuery,
  PartRow,
  Stage,
  Store,
  StoreCheck,
  StudyHead,
} from '../port.ts';
import { refusal } from '../refuse.ts';
import { changesSince, lastSeq } from '../sql/change-log.ts';
import { findParts } from '../sql/find-parts.ts';
import { keepChanges, stageIn } from '../sql/keep-changes.ts';
import { blobsToWipe, purgeRows, purgesAreDone } from '../sql/purge.ts';
import { rebuildProjections } from '../sql/rebuild.ts';
import { sameRows } from '../sql/same-rows.ts';
import { studyHeads } from '../sql/study-heads.ts';
import type { SqlLibrary, Tables } from '../sql/tables.ts';
import { WriteTurn } from '../write-turn.ts';
import { backUp } from './backup.ts';
import type { Connection } from './connection.ts';
import { FTS_WORDS } from './fts-words.ts';
import { checkpoint, dataVersion, deleteSecurely, faultsIn, vacuum } from './pragmas.ts';

/** Reads and writes go by connections of their own, so that no reader waits for a writer. */
export class SqliteStore implements Store {
  readonly #file: string;
  readonly #turn: WriteTurn;
  readonly #blobs: FileBlobs;
  readonly #writer: Connection;
  readonly #reader: Connection;
  #stage: Stage | undefined;
  #closed = false;

  constructor(dir: string, file: string, waitMs: number, writer: Connection, reader: Connection) {
    this.#file = file;
    this.#turn = new WriteTurn(file, waitMs);
    this.#blobs = new FileBlobs(join(dir, 'blobs'));
    this.#writer = writer;
    this.#reader = reader;
  }

  async append(study: string, batch: readonly Change[], author: string): Promise<Ack> {
    return this.#write((library) => keepChanges(library, study, batch, author));
  }

  stage(study: string, author: string): Promise<Stage> {
    return this.#turn.hold(async (endTurn) => {
      const transaction = await this.#writer.db.startTransaction().execute();
      this.#stage = new HeldStage(endTurn, stageIn(transaction, FTS_WORDS, study, author));
      return this.#stage;
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
    return studyHeads(over(this.#reader.db));
  }

  lastSeq(study: string, device: string): Promise<number> {
    return lastSeq(this.#reader.db, study, device);
  }

  find(query: PartQuery): Promise<readonly PartRow[]> {
    return findParts(over(this.#reader.db), query);
  }

  /** One transaction that is rolled back: what it makes is only looked at. */
  async check(): Promise<StoreCheck> {
    const faults = await faultsIn(this.#reader.db, 'whole');
    return this.#turn.during(async () => {
      const transaction = await this.#writer.db.startTransaction().execute();
      try {
        const same = await sameRows(over(transaction));
        return { faults, rows: same ? 'as made anew' : 'other' };
      } finally {
        await transaction.rollback().execute();
      }
    });
  }

  /** Takes away what uploads that were cut off have left. */
  sweep(): Promise<void> {
    return this.#blobs.sweep();
  }

  blobs(): AsyncIterable<BlobHead> {
    return this.#blobs.blobs();
  }

  rebuild(): Promise<void> {
    return this.#write(rebuildProjections);
  }

  async purge(study: string): Promise<void> {
    await deleteSecurely(this.#writer.db);
    await this.#write((library) => purgeRows(library, study));
    if (!(await this.wipePurged())) throw tracesStay(this.#file);
  }

  /**
   * Ends what a purge has begun: takes blobs off the disk and wipes what deleted rows left in the
   * files. False when another program keeps the log from being emptied.
   */
  async wipePurged(): Promise<boolean> {
    const { db } = this.#writer;
    const blobs = await blobsToWipe(db);
    if (blobs === undefined) return true;
    return this.#turn.during(async () => {
      for (const hash of blobs) await this.#blobs.wipeBlob(hash);
      await vacuum(db);
      const isEmpty = await checkpoint(db);
      if (isEmpty) await purgesAreDone(db);
      return isEmpty;
    });
  }

  version(): Promise<number> {
    return dataVersion(this.#reader.db);
  }

  backup(toFile: string): Promise<void> {
    return backUp(this.#reader.db, toFile);
  }

  /** Drops a large append that is still open, and lets a write that is under way end. */
  async close(): Promise<void> {
    if (this.#closed) return;
    this.#closed = true;
    await this.#stage?.drop();
    await this.#turn.during(async () => {
      try {
        await checkpoint(this.#writer.db);
      } catch (error) {
        // A full disk has no room to move the log: all of it is safe where it is.
        if (!(error instanceof RefusalError)) throw error;
      } finally {
        this.#reader.close();
        this.#writer.close();
      }
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
  #write<T>(work: (library: SqlLibrary) => Promise<T>): Promise<T> {
    return this.#turn.during(() => this.#writer.db.transaction().execute((db) => work(over(db))));
  }
}

const tracesStay = (file: string): RefusalError =>
  refusal(
    'busy',
    { file },
    'the study is out, but another program keeps its traces in the log from being wiped',
    'Close every other program that uses the library, then open it once: that wipes them.',
  );

/** SQLite's own SQL beside a connection or a transaction. */
export const over = (db: Kysely<Tables>): SqlLibrary => ({ db, words: FTS_WORDS });
