import { join } from 'node:path';
import { type Change, fold, type RefusalError, type Sha256 } from '../../study/index.ts';
import { FileBlobs } from '../file-blobs.ts';
import { headOf, partsOf } from '../folded.ts';
import { matches } from '../part-row.ts';
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
import { backUp } from './backup.ts';
import type { Connection } from './connection.ts';
import { dataVersion, faultsIn } from './pragmas.ts';

/**
 * A library that a newer version of the program has written: its changes can be read, for their
 * table only ever gains columns; its rows are not trusted, but folded from the changes; nothing
 * is stored.
 */
export class NewerStore implements Store {
  readonly readOnly = 'the library was written by a newer version of this program';
  readonly #file: string;
  readonly #reader: Connection;
  readonly #blobs: FileBlobs;

  constructor(dir: string, file: string, reader: Connection) {
    this.#file = file;
    this.#reader = reader;
    this.#blobs = new FileBlobs(join(dir, 'blobs'));
  }

  append(): Promise<Ack> {
    return this.#refuse();
  }
  stage(): Promise<Stage> {
    return this.#refuse();
  }
  purge(): Promise<void> {
    return this.#refuse();
  }
  rebuild(): Promise<void> {
    return this.#refuse();
  }
  putBlob(): Promise<Sha256> {
    return this.#refuse();
  }

  since(
    study: string,
    cursor: number,
    limit: number,
  ): Promise<{ readonly changes: readonly Arrived[]; readonly next: number }> {
    return changesSince(this.#reader.db, study, cursor, limit);
  }

  lastSeq(study: string, device: string): Promise<number> {
    return lastSeq(this.#reader.db, study, device);
  }

  async studies(): Promise<readonly StudyHead[]> {
    const heads: StudyHead[] = [];
    for await (const [study, changes] of this.#all()) heads.push(headOf(fold(study, changes)));
    return heads;
  }

  async find(query: PartQuery): Promise<readonly PartRow[]> {
    const rows: PartRow[] = [];
    for await (const [study, changes] of this.#all())
      rows.push(...partsOf(fold(study, changes)).filter((row) => matches(row, query)));
    return rows.slice(0, query.limit);
  }

  async check(): Promise<StoreCheck> {
    return { faults: await faultsIn(this.#reader.db, 'whole'), rows: 'not known' };
  }

  version(): Promise<number> {
    return dataVersion(this.#reader.db);
  }
  backup(toFile: string): Promise<void> {
    return backUp(this.#reader.db, toFile);
  }
  async close(): Promise<void> {
    this.#reader.close();
  }
  getBlob(hash: Sha256): AsyncIterable<Uint8Array> {
    return this.#blobs.getBlob(hash);
  }
  hasBlob(hash: Sha256): Promise<boolean> {
    return this.#blobs.hasBlob(hash);
  }
  blobs(): AsyncIterable<BlobHead> {
    return this.#blobs.blobs();
  }

  /** Every study with all of its changes. */
  async *#all(): AsyncGenerator<readonly [string, readonly Change[]]> {
    const { db } = this.#reader;
    const studies = await db.selectFrom('changes').select('study').distinct().execute();
    for (const { study } of studies.sort((a, b) => (a.study < b.study ? -1 : 1))) {
      const { changes } = await this.since(study, 0, Number.MAX_SAFE_INTEGER);
      yield [study, changes.map((a) => a.change)];
    }
  }

  async #refuse(): Promise<never> {
    throw newerLibrary(this.#file, this.readOnly);
  }
}

const newerLibrary = (file: string, why: string): RefusalError =>
  refusal(
    'read-only',
    { file },
    why,
    'Nothing was stored, what is there can be read. Use the newer version to record.',
  );
