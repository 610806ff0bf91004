import { busy } from './refuse.ts';

/** Ends a turn; the next in line may write. */
export type EndTurn = () => void;

interface Waiter {
  start(): void;
}

/**
 * One writer at a time within this process, first come first served. Waiting here, and not in
 * the database, leaves the event loop free for the writer that is waited for.
 */
export class WriteTurn {
  readonly #where: string;
  readonly #waitMs: number;
  readonly #waiting: Waiter[] = [];
  #taken = false;

  /** `where` names the library in the refusal; `waitMs` is how long a writer waits at most. */
  constructor(where: string, waitMs: number) {
    this.#where = where;
    this.#waitMs = waitMs;
  }

  /** @throws RefusalError `busy` when the turn does not come in time. */
  async take(): Promise<EndTurn> {
    if (this.#taken) await this.#inLine();
    this.#taken = true;
    let ended = false;
    return () => {
      if (!ended) this.#next();
      ended = true;
    };
  }

  /** Runs `work` in a turn of its own. */
  async during<T>(work: () => Promise<T>): Promise<T> {
    const end = await this.take();
    try {
      return await work();
    } finally {
      end();
    }
  }

  /** Runs `begin` in a turn that goes on until what it began calls `endTurn`; its failure ends it too. */
  async hold<T>(begin: (endTurn: EndTurn) => Promise<T>): Promise<T> {
    const end = await this.take();
    try {
      return await begin(end);
    } catch (error) {
      end();
      throw error;
    }
  }

  #inLine(): Promise<void> {
    return new Promise((resolve, reject) => {
      const waiter: Waiter = {
        start: () => {
          clearTimeout(timer);
          resolve();
        },
      };
      const timer = setTimeout(() => {
        this.#waiting.splice(this.#waiting.indexOf(waiter), 1);
        reject(busy(this.#where, this.#waitMs));
      }, this.#waitMs);
      this.#waiting.push(waiter);
    });
  }

  /** Hands the turn on without a gap, so that nobody slips in before the first in line. */
  #next(): void {
    const first = this.#waiting.shift();
    if (first) first.start();
    else this.#taken = false;
  }
}
