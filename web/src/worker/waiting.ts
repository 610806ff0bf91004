import { blobsOf, type Change, type Id, type Sha256 } from '../../../src/study/index.ts';
import type { Outbox } from './outbox.ts';

/**
 * What was recorded in this browser, by this page or another, and has not come back from the
 * server. The outbox on the device is the truth of it, so that each page sees what the others do.
 */
export class Waiting {
  #all: readonly Change[] = [];
  /** Recorded here and not in the outbox yet, or never, when the browser is full. */
  readonly #unput = new Map<Id, Change>();
  /** Acknowledged; in the outbox until they have come back and are copied. */
  readonly #acked = new Map<Id, Change>();
  #failed: unknown;

  constructor(
    private readonly study: Id,
    private readonly outbox: Outbox,
  ) {}

  /** To be sent, in the order in which they were made. */
  get all(): readonly Change[] {
    return this.#all;
  }

  /** What the server has acknowledged, whether it has come back or not. */
  get acknowledged(): readonly Change[] {
    return [...this.#acked.values()];
  }

  /** Why something is held by the open page only. */
  get failed(): unknown {
    return this.#unput.size > 0 ? this.#failed : undefined;
  }

  files(): Set<Sha256> {
    return new Set(this.#all.flatMap(blobsOf));
  }

  /** On the device when this returns, as long as the browser has room. */
  async add(changes: readonly Change[]): Promise<void> {
    for (const change of changes) this.#unput.set(change.id, change);
    this.#all = [...this.#all, ...changes];
    try {
      await this.outbox.put(...changes);
      for (const { id } of changes) this.#unput.delete(id);
    } catch (error) {
      this.#failed = error;
    }
  }

  /** Looks into the outbox; `arrived` are those that have come back from the server. */
  async refresh(arrived: ReadonlySet<Id>, areCopied: boolean): Promise<void> {
    const kept = await this.outbox.of(this.study);
    const back = kept.filter((c) => arrived.has(c.id));
    if (areCopied) await this.outbox.remove(...back.map((c) => c.id));
    const all = new Map([...kept, ...this.#unput.values()].map((c) => [c.id, c]));
    this.#all = [...all.values()]
      .filter((c) => !arrived.has(c.id) && !this.#acked.has(c.id))
      .sort((a, b) => (a.clock < b.clock ? -1 : 1));
  }

  acknowledge(batch: readonly Change[]): void {
    for (const change of batch) this.#acked.set(change.id, change);
    this.#all = this.#all.filter((c) => !this.#acked.has(c.id));
  }

  /** Puts others in the place of all that waits. */
  async replace(by: readonly Change[]): Promise<void> {
    const ids = this.#all.map((c) => c.id);
    await this.outbox.replace(ids, by);
    for (const id of ids) this.#unput.delete(id);
    this.#all = by;
  }
}
