import { type IndexedHost, openIndexedStore } from '../../../src/store/indexed/index.ts';
import type { Store, StudyHead } from '../../../src/store/port.ts';
import type { Id } from '../../../src/study/index.ts';
import { done, written } from './idb.ts';
import { OUTBOX, Outbox } from './outbox.ts';

const NAME = 'hoistside';
const STUDIES = 'studies';
const STEPS: readonly ((db: IDBDatabase) => void)[] = [
  (db) => db.createObjectStore(OUTBOX, { keyPath: 'id' }),
  (db) => db.createObjectStore(STUDIES, { keyPath: 'study' }),
];

/** A study that this browser has a copy of. */
export interface CopyHead extends StudyHead {
  /** The server's arrival number of the last change that was copied. */
  readonly cursor: number;
}

/**
 * What this browser keeps: a copy of each study that was opened here, in a store of its own, so
 * that one can be taken off the device without the others; and what waits to be sent.
 */
export class DeviceCopy {
  readonly outbox: Outbox;

  private constructor(private readonly db: IDBDatabase) {
    this.outbox = new Outbox(db);
  }

  static async open(): Promise<DeviceCopy> {
    const request = indexedDB.open(NAME, STEPS.length);
    request.onupgradeneeded = ({ oldVersion }) => {
      for (const step of STEPS.slice(oldVersion)) step(request.result);
    };
    const db = await done(request);
    db.onversionchange = () => db.close();
    return new DeviceCopy(db);
  }

  /** Changes and blobs of one study, as the server has them. */
  store(study: Id): Promise<Store> {
    // A browser's own objects fit what the store asks for; their types say more than it needs.
    return openIndexedStore(globalThis as unknown as IndexedHost, storeName(study));
  }

  async heads(): Promise<CopyHead[]> {
    const rows = this.db.transaction(STUDIES, 'readonly').objectStore(STUDIES);
    return (await done(rows.getAll())) as CopyHead[];
  }

  async head(study: Id): Promise<CopyHead | undefined> {
    return (await this.heads()).find((head) => head.study === study);
  }

  putHead(head: CopyHead): Promise<void> {
    return written(this.db, STUDIES, (rows) => void rows.put(head));
  }

  /** Takes the copy of a study off this device, with what of it was never sent. */
  async forget(study: Id): Promise<void> {
    const waiting = await this.outbox.of(study);
    await this.outbox.remove(...waiting.map((c) => c.id));
    await written(this.db, STUDIES, (rows) => void rows.delete(study));
    await done(indexedDB.deleteDatabase(storeName(study)));
  }
}

const storeName = (study: Id): string => `hoistside study ${study}`;
