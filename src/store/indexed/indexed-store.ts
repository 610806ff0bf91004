import {
  blobsOf,
  type Change,
  extend,
  fold,
  type Id,
  type Sha256,
  type StudyView,
} from '../../study/index.ts';
import { headOf, partsOf } from '../folded.ts';
import { freshOf, type Handed } from '../fresh-changes.ts';
import { HeldStage } from '../held-stage.ts';
import { matches } from '../part-row.ts';
import type {
  Ack,
  Arrived,
  PartQuery,
  PartRow,
  Stage,
  Store,
  StoreCheck,
  StudyHead,
} from '../port.ts';
import { isPurged } from '../purged.ts';
import { refusal } from '../refuse.ts';
import { WriteTurn } from '../write-turn.ts';
import { IndexedBlobs } from './indexed-blobs.ts';
import { done, read, WHERE, written } from './indexed-requests.ts';
import { arrivedOf, countWrite, heldOf, isWhole, writes } from './indexed-rows.ts';
import {
  BLOBS,
  BY_SEQ,
  CHANGES,
  type ChangeRow,
  COUNTS,
  openDatabase,
  PURGED,
  type PurgedRow,
  RECORD,
  STUDIES,
  type StudyRow,
} from './indexed-schema.ts';
import type { IndexedDatabase, IndexedFactory, IndexedRanges } from './indexed-types.ts';

/** What a page or worker of a browser has to offer. */
export interface IndexedHost {
  readonly indexedDB: IndexedFactory;
  readonly IDBKeyRange: IndexedRanges;
}

interface Held {
  readonly view: StudyView;
  readonly at: number;
}

/** How many changes are read at a time. */
const PAGE = 2000;

/**
 * A library in a browser. Several pages may have it open: each write is one transaction, in which
 * all is checked and kept, and the browser lets one in at a time. Rows of parts are folded when
 * they are asked for, and the fold is kept.
 */
class IndexedStore extends IndexedBlobs implements Store {
  readonly #db: IndexedDatabase;
  readonly #ranges: IndexedRanges;
  readonly #turn: WriteTurn;
  readonly #views = new Map<Id, Held>();

  constructor(db: IndexedDatabase, ranges: IndexedRanges, waitMs: number) {
    super(db);
    this.#db = db;
    this.#ranges = ranges;
    this.#turn = new WriteTurn(WHERE, waitMs);
  }

  async append(study: Id, batch: readonly Change[], author: string): Promise<Ack> {
    const handed = batch.map((change) => ({ change, author }));
    return this.#turn.during(() => this.#keep(study, handed));
  }

  async stage(study: Id, author: string): Promise<Stage> {
    return this.#turn.hold(async (endTurn) => {
      const all: Handed[] = [];
      return new HeldStage(endTurn, {
        add: async (batch, other) =>
          void all.push(...batch.map((change) => ({ change, author: other ?? author }))),
        commit: () => this.#keep(study, all),
        rollBack: async () => {},
      });
    });
  }

  async since(
    study: Id,
    cursor: number,
    limit: number,
  ): Promise<{ readonly changes: readonly Arrived[]; readonly next: number }> {
    const range = this.#after(study, cursor);
    const rows = await read(this.#db, [CHANGES], (r) => done(r(CHANGES).getAll(range, limit)));
    const changes = (rows as ChangeRow[]).map(arrivedOf);
    return { changes, next: changes.at(-1)?.at ?? cursor };
  }

  async studies(): Promise<readonly StudyHead[]> {
    const heads: StudyHead[] = [];
    for (const { study } of await this.#studyRows()) heads.push(headOf(await this.#view(study)));
    return heads;
  }

  async lastSeq(study: Id, device: Id): Promise<number> {
    const range = this.#ranges.bound([study, device, 0], [study, device, Number.MAX_VALUE]);
    const last = await read(this.#db, [CHANGES], (rows) =>
      done(rows(CHANGES).index(BY_SEQ).openKeyCursor(range, 'prev')),
    );
    return last === null ? 0 : ((last.key as [Id, Id, number])[2] ?? 0);
  }

  async find(query: PartQuery): Promise<readonly PartRow[]> {
    const found: PartRow[] = [];
    for (const { study } of await this.#studyRows())
      found.push(...partsOf(await this.#view(study)).filter((row) => matches(row, query)));
    return found.slice(0, query.limit);
  }

  async purge(study: Id): Promise<void> {
    return this.#turn.during(async () => {
      const own = await this.#blobsNamed([study]);
      const others = (await this.#studyRows()).map((s) => s.study).filter((id) => id !== study);
      const left = await this.#blobsNamed(others);
      this.#views.delete(study);
      await written(this.#db, [...RECORD, BLOBS], async (rows) => {
        await done(rows(CHANGES).delete(this.#after(study, 0)));
        await done(rows(STUDIES).delete(study));
        for (const hash of own) if (!left.has(hash)) await done(rows(BLOBS).delete(hash));
        const row: PurgedRow = { study, when: new Date().toISOString() };
        await done(rows(PURGED).put(row));
        await countWrite(rows);
      });
    });
  }

  async check(): Promise<StoreCheck> {
    const faults: string[] = [];
    for (const { study, last } of await this.#studyRows()) {
      let at = 0;
      for (const row of await this.#rowsOf(study)) {
        at += 1;
        if (row.at !== at) faults.push(`change ${at} of ${study} is missing`);
        if (!isWhole(row)) faults.push(`change ${row.id} of ${study} is not as it was kept`);
        at = row.at;
      }
      if (at !== last) faults.push(`${study} has ${at} changes of ${last}`);
    }
    return { faults, rows: 'as made anew' };
  }

  /** There is nothing to drop: rows are made from the changes. */
  async rebuild(): Promise<void> {
    this.#views.clear();
  }

  async version(): Promise<number> {
    return read(this.#db, [COUNTS], (rows) => writes(rows));
  }

  async backup(toFile: string): Promise<void> {
    throw refusal(
      'bad-call',
      { file: toFile },
      'a browser can not copy its store to a file',
      'Send what it holds to the server, and back up the library there.',
    );
  }

  async close(): Promise<void> {
    this.#db.close();
  }

  /** All is checked against what is held, and kept, in one transaction. */
  #keep(study: Id, batch: readonly Handed[]): Promise<Ack> {
    return written(this.#db, RECORD, async (rows) => {
      const purged = (await done(rows(PURGED).get(study))) as PurgedRow | undefined;
      if (purged) throw isPurged(study, purged.when);
      const { last } = ((await done(rows(STUDIES).get(study))) ?? { last: 0 }) as StudyRow;
      const fresh = freshOf(study, batch, await heldOf(rows, batch));
      if (fresh.length === 0) return { cursor: last, added: 0 };
      const received = new Date().toISOString();
      const puts = fresh.map(({ change, body, author }, i) => {
        const { id, device, seq } = change;
        const row: ChangeRow = { study, at: last + 1 + i, id, device, seq, author, received, body };
        return done(rows(CHANGES).put(row));
      });
      const cursor = last + fresh.length;
      await Promise.all([...puts, done(rows(STUDIES).put({ study, last: cursor }))]);
      await countWrite(rows);
      return { cursor, added: fresh.length };
    });
  }

  /** The study folded, with what came since it was asked for last. */
  async #view(study: Id): Promise<StudyView> {
    const rows = await this.#rowsOf(study, this.#views.get(study)?.at ?? 0);
    // Looked up again: another caller may have extended the view meanwhile.
    const held = this.#views.get(study) ?? { view: fold(study, []), at: 0 };
    const fresh = rows.filter((row) => row.at > held.at);
    if (fresh.length === 0) return held.view;
    const changes = fresh.map((row) => arrivedOf(row).change);
    const view = extend(held.view, changes);
    this.#views.set(study, { view, at: held.at + fresh.length });
    return view;
  }

  async #rowsOf(study: Id, from = 0): Promise<ChangeRow[]> {
    const all: ChangeRow[] = [];
    for (let cursor = from; ; cursor = all.at(-1)?.at ?? cursor) {
      const range = this.#after(study, cursor);
      const page = await read(this.#db, [CHANGES], (r) => done(r(CHANGES).getAll(range, PAGE)));
      all.push(...(page as ChangeRow[]));
      if (page.length < PAGE) return all;
    }
  }

  async #studyRows(): Promise<readonly StudyRow[]> {
    const rows = await read(this.#db, [STUDIES], (r) => done(r(STUDIES).getAll()));
    return rows as StudyRow[];
  }

  async #blobsNamed(studies: readonly Id[]): Promise<Set<Sha256>> {
    const named = new Set<Sha256>();
    for (const study of studies)
      for (const row of await this.#rowsOf(study))
        for (const hash of blobsOf(arrivedOf(row).change)) named.add(hash);
    return named;
  }

  #after(study: Id, cursor: number): unknown {
    return this.#ranges.bound([study, cursor], [study, Number.MAX_VALUE], true);
  }
}

/** @throws RefusalError `read-only` when a newer version of the program made the store. */
export async function openIndexedStore(
  { indexedDB, IDBKeyRange }: IndexedHost,
  name: string,
  options: { readonly waitMs?: number } = {},
): Promise<Store> {
  const db = await openDatabase(indexedDB, name);
  return new IndexedStore(db, IDBKeyRange, options.waitMs ?? 5000);
}
