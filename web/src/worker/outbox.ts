import type { Change, Id } from '../../../src/study/index.ts';

const NAME = 'hoistside';
const STORE = 'outbox';

/**
 * Changes made here that the server has not acknowledged yet, kept by the browser over a
 * reload or a flat battery.
 */
export class Outbox {
  constructor(private readonly db: IDBDatabase) {}

  static open(): Promise<Outbox> {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE, { keyPath: 'id' });
    return done(request).then((db) => new Outbox(db));
  }

  async put(...changes: readonly Change[]): Promise<void> {
    const store = this.#store('readwrite');
    await Promise.all(changes.map((change) => done(store.put(change))));
  }

  async remove(...ids: readonly Id[]): Promise<void> {
    const store = this.#store('readwrite');
    await Promise.all(ids.map((id) => done(store.delete(id))));
  }

  /** Changes of one study that wait, in the order in which they were made. */
  async of(study: Id): Promise<Change[]> {
    const all = (await done(this.#store('readonly').getAll())) as Change[];
    return all.filter((c) => c.study === study).sort((a, b) => (a.clock < b.clock ? -1 : 1));
  }

  #store(mode: IDBTransactionMode): IDBObjectStore {
    return this.db.transaction(STORE, mode).objectStore(STORE);
  }
}

const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('the browser keeps nothing'));
  });
