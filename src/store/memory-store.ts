import { createHash } from 'node:crypto';
import { blobsOf, type Change, fold, type Sha256, type StudyView } from '../study/index.ts';
import { blobNotFound, mustBeHash } from './blob-name.ts';
import { headOf, partsOf } from './folded.ts';
import { freshOf, type Handed, seqKey } from './fresh-changes.ts';
import { HeldStage } from './held-stage.ts';
import { matches } from './part-row.ts';
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
} from './port.ts';
import { isPurged } from './purged.ts';
import { refusal } from './refuse.ts';
import { WriteTurn } from './write-turn.ts';

const WHERE = 'the library in memory';

interface HeldStudy {
  readonly arrived: Arrived[];
  readonly bySeq: Map<string, string>;
}

const NOTHING: HeldStudy = { arrived: [], bySeq: new Map() };

/** A library that ends with the process: for tests and for looking at a study without keeping it. */
export class MemoryStore implements Store {
  readonly #studies = new Map<string, HeldStudy>();
  readonly #bodies = new Map<string, string>();
  readonly #blobs = new Map<Sha256, Uint8Array>();
  readonly #purged = new Map<string, string>();
  readonly #turn: WriteTurn;
  #version = 0;

  constructor(waitMs: number) {
    this.#turn = new WriteTurn(WHERE, waitMs);
  }

  async append(study: string, batch: readonly Change[], author: string): Promise<Ack> {
    const handed = batch.map((change) => ({ change, author }));
    return this.#turn.during(async () => this.#appendNow(study, handed));
  }

  async stage(study: string, author: string): Promise<Stage> {
    return this.#turn.hold(async (endTurn) => {
      const all: Handed[] = [];
      return new HeldStage(endTurn, {
        add: async (batch, other) =>
          void all.push(...batch.map((change) => ({ change, author: other ?? author }))),
        commit: async () => this.#appendNow(study, all),
        rollBack: async () => {},
      });
    });
  }

  async since(
    study: string,
    cursor: number,
    limit: number,
  ): Promise<{ readonly changes: readonly Arrived[]; readonly next: number }> {
    const held = this.#studies.get(study)?.arrived ?? [];
    const changes = held.slice(cursor, cursor + limit);
    return { changes, next: changes.at(-1)?.at ?? cursor };
  }

  async studies(): Promise<readonly StudyHead[]> {
    return [...this.#studies].map(([study, held]) => headOf(viewOf(study, held))).sort(byStudy);
  }

  async lastSeq(study: string, device: string): Promise<number> {
    const held = this.#studies.get(study)?.arrived ?? [];
    return held.reduce(
      (last, { change }) => (change.device === device ? Math.max(last, change.seq) : last),
      0,
    );
  }

  async find(query: PartQuery): Promise<readonly PartRow[]> {
    const studies = [...this.#studies].sort(([a], [b]) => (a < b ? -1 : 1));
    const rows = studies.flatMap(([study, held]) => partsOf(viewOf(study, held)));
    return rows.filter((row) => matches(row, query)).slice(0, query.limit);
  }

  async purge(study: string): Promise<void> {
    return this.#turn.during(async () => {
      const own = changesOf(this.#studies.get(study) ?? NOTHING);
      this.#studies.delete(study);
      for (const change of own) this.#bodies.delete(change.id);
      const left = [...this.#studies.values()].flatMap(changesOf).flatMap(blobsOf);
      for (const hash of own.flatMap(blobsOf)) if (!left.includes(hash)) this.#blobs.delete(hash);
      this.#purged.set(study, new Date().toISOString());
      this.#version += 1;
    });
  }

  async check(): Promise<StoreCheck> {
    return { faults: [], rows: 'as made anew' };
  }

  /** There is nothing to drop: rows are made from the changes each time. */
  async rebuild(): Promise<void> {}

  async version(): Promise<number> {
    return this.#version;
  }

  async backup(toFile: string): Promise<void> {
    throw refusal(
      'bad-call',
      { file: toFile },
      'a library in memory can not be copied to a file',
      'Open a library in a folder.',
    );
  }

  async close(): Promise<void> {}

  async putBlob(chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>): Promise<Sha256> {
    const pieces: Uint8Array[] = [];
    for await (const piece of chunks) pieces.push(Uint8Array.from(piece));
    const bytes = Buffer.concat(pieces);
    const hash = createHash('sha256').update(bytes).digest('hex');
    this.#blobs.set(hash, bytes);
    return hash;
  }

  async *getBlob(hash: Sha256): AsyncIterable<Uint8Array> {
    mustBeHash(hash);
    const bytes = this.#blobs.get(hash);
    if (!bytes) throw blobNotFound(WHERE, hash);
    yield bytes;
  }

  async *blobs(): AsyncIterable<BlobHead> {
    for (const hash of [...this.#blobs.keys()].sort())
      yield { hash, bytes: this.#blobs.get(hash)?.length ?? 0 };
  }

  async hasBlob(hash: Sha256): Promise<boolean> {
    mustBeHash(hash);
    return this.#blobs.has(hash);
  }

  /** All is checked against what is held and against the batch itself before anything is kept. */
  #appendNow(study: string, batch: readonly Handed[]): Ack {
    const purged = this.#purged.get(study);
    if (purged !== undefined) throw isPurged(study, purged);
    const held: HeldStudy = this.#studies.get(study) ?? { arrived: [], bySeq: new Map() };
    const fresh = freshOf(study, batch, {
      bodyOf: (id) => this.#bodies.get(id),
      hasSeq: (change) => held.bySeq.has(seqKey(change)),
    });
    const received = new Date().toISOString();
    for (const { change, body, author } of fresh) {
      const kept: Change = JSON.parse(body);
      held.arrived.push({ at: held.arrived.length + 1, author, received, change: kept });
      held.bySeq.set(seqKey(change), change.id);
      this.#bodies.set(change.id, body);
    }
    if (fresh.length > 0) this.#studies.set(study, held);
    this.#version += fresh.length > 0 ? 1 : 0;
    return { cursor: held.arrived.length, added: fresh.length };
  }
}

export const openMemoryStore = (options: { readonly waitMs?: number } = {}): Store =>
  new MemoryStore(options.waitMs ?? 5000);

const byStudy = (a: StudyHead, b: StudyHead): number => (a.study < b.study ? -1 : 1);

const changesOf = (held: HeldStudy): Change[] => held.arrived.map((a) => a.change);

const viewOf = (study: string, held: HeldStudy): StudyView => fold(study, changesOf(held));
