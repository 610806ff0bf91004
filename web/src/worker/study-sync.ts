import {
  type Author,
  blobsOf,
  type Change,
  checkChange,
  type Entry,
  extend,
  fold,
  type Id,
  makeChange,
  type Refusal,
  RefusalError,
  type Sha256,
  type StudyView,
  ulid,
} from '../../../src/study/index.ts';
import { type Api, Unreachable } from './api.ts';
import { countedAfter } from './counted-after.ts';
import type { DeviceCopy } from './device-copy.ts';
import { Mirror } from './mirror.ts';
import { isRefused, whatPasses } from './passing.ts';
import { Pause } from './pause.ts';
import type { SaveState } from './save-state.ts';
import { Waiting } from './waiting.ts';

const PAGE = 500;
/** Changes that are sent in one go, at most. */
const MOST_AT_ONCE = 100;
/** Seconds between looks for what others wrote, as long as the server answers. */
const POLL_S = 2;
/** Seconds before a server that does not answer is tried again, the longest. */
const LONGEST_WAIT_S = 10;

/** Who does something, in which words, and what. */
export interface Act {
  readonly by: string;
  readonly words: string;
  readonly entries: readonly Entry[];
  readonly undoes?: Id;
}

export interface Told {
  readonly changed: () => void;
  readonly state: (state: SaveState) => void;
}

/**
 * One study kept level with the server. A change holds at once here, is kept on the device, and
 * counts as saved only when the server has acknowledged it. Without a server all goes on from the
 * copy on the device.
 */
export class StudySync {
  view: StudyView;
  #cursor: number;
  /** The server that answers has the study, and all of it that was copied. */
  #hasMet = false;
  readonly #known = new Set<Id>();
  readonly #arrived = new Set<Id>();
  readonly #sentFiles = new Set<Sha256>();
  readonly #waiting: Waiting;
  readonly #pause = new Pause();
  #atOnce = MOST_AT_ONCE;
  #inHand: { readonly by: string; readonly part?: Id } | undefined;
  #others: SaveState['others'] = [];
  #refused: SaveState['refused'];
  #unreachable: string | undefined;
  #isClosed = false;

  private constructor(
    readonly study: Id,
    readonly device: Id,
    private readonly api: Api,
    copy: DeviceCopy,
    readonly mirror: Mirror,
    private readonly told: Told,
  ) {
    this.view = fold(study, []);
    this.#cursor = mirror.cursor;
    this.#waiting = new Waiting(study, copy.outbox);
  }

  /**
   * Opens the copy on the device, with what still has to be sent; the server follows. Where there
   * is no copy yet the server is read first.
   * @throws RefusalError when there is neither.
   */
  static async open(
    { study, device, api, copy }: { study: Id; device: Id; api: Api; copy: DeviceCopy },
    told: Told,
    progress: (changes: number) => void,
  ): Promise<StudySync> {
    const sync = new StudySync(study, device, api, copy, await Mirror.open(study, copy), told);
    await sync.#load(progress);
    void sync.#run();
    return sync;
  }

  async #load(progress: (changes: number) => void): Promise<void> {
    const copied = await this.mirror.changes();
    progress(copied.length);
    for (const { id } of copied) this.#arrived.add(id);
    await this.#waiting.refresh(this.#arrived, true);
    this.#take([...copied, ...this.#waiting.all]);
    if (copied.length === 0) await this.#pull(progress).catch(orNotHere(this.study));
    this.#tell();
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    this.#pause.end();
    await this.mirror.close();
  }

  /** Looks for the server now: the network may be back. */
  nudge(): void {
    this.#pause.end();
  }

  /** What this page has in hand; the others are told with the next round. */
  takeInHand(by: string, part: Id | undefined): void {
    this.#inHand = { by, ...(part === undefined ? {} : { part }) };
  }

  /** Does it here at once; the server follows. @throws RefusalError for what no change may carry. */
  record({ by, words, entries, undoes }: Act): Promise<void> {
    const act = { words, entries, ...(undoes === undefined ? {} : { undoes }) };
    return this.#hold([makeChange(this.#author(by), act)]);
  }

  /** Does in one gesture what is too large for one change: all of it or nothing. */
  recordParts(by: string, words: string, parts: readonly (readonly Entry[])[]): Promise<void> {
    const author = this.#author(by);
    const id = ulid(author.nowMs, author.random);
    return this.#hold(
      parts.map((entries, before) =>
        makeChange(author, { words, entries, gesture: { id, before } }),
      ),
    );
  }

  #author(by: string): Author {
    const { study, device, view } = this;
    return { study, by, device, view, nowMs: Date.now(), random: Math.random };
  }

  async #hold(changes: readonly Change[]): Promise<void> {
    const [bad, ...more] = changes.flatMap(checkChange);
    if (bad) throw new RefusalError(bad, ...more);
    this.#take(changes);
    const added = this.#waiting.add(changes);
    this.told.changed();
    this.#tell();
    await added;
    this.#tell();
    this.nudge();
  }

  /** Takes back the refused change; those behind it are counted anew and sent. */
  async dropRefused(): Promise<void> {
    await this.#alone(async () => {
      await this.#waiting.refresh(this.#arrived, false);
      const dropped = this.#refused?.change;
      this.view = fold(this.study, []);
      this.#known.clear();
      this.#take([...(await this.#backFromServer()), ...this.#waiting.acknowledged]);
      const rest = this.#waiting.all.filter((c) => c.id !== dropped);
      await this.#waiting.replace(countedAfter(this.view, rest));
      this.#take(this.#waiting.all);
      this.#refused = undefined;
    });
    this.told.changed();
    this.#tell();
    this.nudge();
  }

  /** All that the server has ever told of. */
  async #backFromServer(): Promise<Change[]> {
    await this.mirror.kept();
    if (this.mirror.failed === undefined) return this.mirror.changes();
    const all: Change[] = [];
    for (let cursor = 0; ; ) {
      const { changes, next } = await this.api.changes(this.study, cursor, PAGE);
      if (changes.length === 0) return all;
      all.push(...changes.map((c) => c.change));
      cursor = next;
    }
  }

  /** Sends and asks, for as long as the study is open. */
  async #run(): Promise<void> {
    for (let wait = 0; !this.#isClosed; ) {
      try {
        await this.#round();
        this.#unreachable = undefined;
        wait = POLL_S;
      } catch (error) {
        this.#unreachable = whatPasses(error) ?? String(error);
        this.#hasMet = false;
        this.#others = [];
        wait = Math.min(Math.max(1, 2 * wait), LONGEST_WAIT_S);
      }
      if (this.#isClosed) return;
      this.#tell();
      await this.#pause.of(wait);
    }
  }

  async #round(): Promise<void> {
    if (!this.#hasMet) await this.#meet();
    await this.#alone(() => this.#send());
    await this.#pull();
    await this.mirror.kept();
    await this.#seeOtherPages();
    await this.#meetOthers();
  }

  async #meetOthers(): Promise<void> {
    if (!this.#inHand) return;
    const { others } = await this.api.here(this.study, { page: this.device, ...this.#inHand });
    this.#others = others;
  }

  /**
   * Nothing is sent to a server before it has shown that it has this study: another library may
   * answer under the same address. One that was restored from a backup gets back what it lacks.
   */
  async #meet(): Promise<void> {
    const { studies } = await this.api.studies();
    const head = studies.find((s) => s.study === this.study);
    if (!head) throw new Unreachable('the library that answers here does not have this study');
    if (head.changes < this.#cursor) await this.#giveBack();
    this.#hasMet = true;
  }

  async #giveBack(): Promise<void> {
    const all = await this.mirror.changes();
    for (let at = 0; at < all.length; at += MOST_AT_ONCE)
      await this.#put(all.slice(at, at + MOST_AT_ONCE));
    this.#cursor = 0;
  }

  /** What other pages of this browser recorded, and what has come back. */
  async #seeOtherPages(): Promise<void> {
    await this.#waiting.refresh(this.#arrived, this.mirror.failed === undefined);
    if (this.#take(this.#waiting.all)) this.told.changed();
  }

  async #send(): Promise<void> {
    await this.#seeOtherPages();
    while (this.#waiting.all.length > 0 && !this.#refused && !this.#isClosed) {
      const batch = this.#waiting.all.slice(0, this.#atOnce);
      try {
        await this.#put(batch);
      } catch (error) {
        if (!isRefused(error)) throw error;
        this.#narrow(batch, error);
        continue;
      }
      this.#waiting.acknowledge(batch);
      this.#atOnce = Math.min(2 * this.#atOnce, MOST_AT_ONCE);
      this.#tell();
    }
  }

  /** Of several the one that is refused is found by sending them one by one. */
  #narrow([first, ...more]: readonly Change[], { refusals }: RefusalError): void {
    if (more.length === 0 && first)
      this.#refused = { change: first.id, words: first.words, refusals };
    this.#atOnce = 1;
  }

  /** Files first: a change that names one never comes before it. */
  async #put(batch: readonly Change[]): Promise<void> {
    for (const hash of new Set(batch.flatMap(blobsOf))) {
      if (this.#sentFiles.has(hash) || !(await this.mirror.store.hasBlob(hash))) continue;
      const pieces: BlobPart[] = [];
      for await (const piece of this.mirror.store.getBlob(hash)) pieces.push(piece.slice());
      await this.api.putBlob(new Blob(pieces));
      this.#sentFiles.add(hash);
      this.#tell();
    }
    await this.api.post(this.study, batch);
  }

  /** What arrived at the server since it was asked last; what came before a failure is taken. */
  async #pull(progress?: (changes: number) => void): Promise<void> {
    const arrived = [];
    let cursor = this.#cursor;
    try {
      for (;;) {
        const { changes, next } = await this.api.changes(this.study, cursor, PAGE);
        if (changes.length === 0) return;
        arrived.push(...changes);
        cursor = next;
        progress?.(arrived.length);
      }
    } finally {
      if (arrived.length > 0) {
        this.#cursor = cursor;
        for (const { change } of arrived) this.#arrived.add(change.id);
        if (this.#take(arrived.map((a) => a.change))) this.told.changed();
        this.mirror.keep(arrived, cursor, this.view);
      }
    }
  }

  /** Holds only what is new: a view extended by what it has is folded all over again. */
  #take(changes: readonly Change[]): boolean {
    const fresh = changes.filter((c) => !this.#known.has(c.id));
    if (fresh.length === 0) return false;
    for (const c of fresh) this.#known.add(c.id);
    this.view = extend(this.view, fresh);
    return true;
  }

  /** One page of the browser at a time sends, or counts anew what waits. */
  #alone<T>(work: () => Promise<T>): Promise<T> {
    return navigator.locks.request(`hoistside send ${this.study}`, work) as Promise<T>;
  }

  #tell(): void {
    const unkept = this.#waiting.failed ?? this.mirror.failed;
    const files = [...this.#waiting.files()].filter((hash) => !this.#sentFiles.has(hash));
    this.told.state({
      ...{ waiting: this.#waiting.all.length, files: files.length },
      ...{ isCopied: this.mirror.isUpToDate, others: this.#others },
      ...(this.#unreachable === undefined ? {} : { unreachable: this.#unreachable }),
      ...(this.#refused ? { refused: this.#refused } : {}),
      ...(unkept === undefined ? {} : { unkept: wordsOf(unkept) }),
    });
  }
}

const wordsOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

const orNotHere =
  (study: Id) =>
  (error: unknown): never => {
    if (!(error instanceof Unreachable)) throw error;
    const refusal: Refusal = {
      code: 'not-found',
      place: { study },
      why: `this device has no copy of the study, and ${error.message}`,
      next: 'Open the study here once while the server is in reach; from then on it opens without.',
    };
    throw new RefusalError(refusal);
  };
