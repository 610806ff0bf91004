import type { Change, Id } from '../../../src/study/index.ts';
import { done, written } from './idb.ts';

export const OUTBOX = 'outbox';

/**
 * Changes made here that have not come back from the server yet, kept by the browser over a
 * reload, a killed tab or a flat battery.
 */
export class Outbox {
  constructor(private readonly db: IDBDatabase) {}

  put(...changes: readonly Change[]): Promise<void> {
    return this.replace([], changes);
  }

  remove(...ids: readonly Id[]): Promise<void> {
    return this.replace(ids, []);
  }

  /** Takes some out and puts others in, both or neither. */
  async replace(out: readonly Id[], put: readonly Change[]): Promise<void> {
    if (out.length + put.length === 0) return;
    await written(this.db, OUTBOX, (rows) => {
      for (const id of out) rows.delete(id);
      for (const change of put) rows.put(change);
    });
  }

  /** Changes of one study that wait, in the order in which they were made. */
  async of(study: Id): Promise<Change[]> {
    const rows = this.db.transaction(OUTBOX, 'readonly').objectStore(OUTBOX);
    const all = (await done(rows.getAll())) as Change[];
    return all.filter((c) => c.study === study).sort((a, b) => (a.clock < b.clock ? -1 : 1));
  }
}
