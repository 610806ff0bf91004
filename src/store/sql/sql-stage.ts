import type { ControlledTransaction } from 'kysely';
import type { Change } from '../../study/index.ts';
import type { Ack, Stage } from '../port.ts';
import { refusal } from '../refuse.ts';
import type { EndTurn } from '../write-turn.ts';
import type { Tables } from './tables.ts';

/** Stores and projects one batch inside the transaction given. */
export type StoreBatch = (
  transaction: ControlledTransaction<Tables>,
  batch: readonly Change[],
) => Promise<Ack>;

/** A large append in one transaction, open until it is committed or dropped. */
export class SqlStage implements Stage {
  readonly #transaction: ControlledTransaction<Tables>;
  readonly #store: StoreBatch;
  readonly #endTurn: EndTurn;
  #ended = false;
  #ack: Ack = { cursor: 0, added: 0 };

  constructor(transaction: ControlledTransaction<Tables>, endTurn: EndTurn, store: StoreBatch) {
    this.#transaction = transaction;
    this.#endTurn = endTurn;
    this.#store = store;
  }

  /** What fails ends the stage and leaves nothing. */
  async add(batch: readonly Change[]): Promise<void> {
    const { cursor, added } = await this.#orDrop(() => this.#store(this.#transaction, batch));
    this.#ack = { cursor, added: this.#ack.added + added };
  }

  /** On disk when it returns. */
  async commit(): Promise<Ack> {
    await this.#orDrop(() => this.#transaction.commit().execute());
    this.#end();
    return this.#ack;
  }

  async drop(): Promise<void> {
    if (this.#ended) return;
    try {
      await this.#transaction.rollback().execute();
    } finally {
      this.#end();
    }
  }

  async #orDrop<T>(work: () => Promise<T>): Promise<T> {
    if (this.#ended) throw hasEnded();
    try {
      return await work();
    } catch (error) {
      await this.drop();
      throw error;
    }
  }

  #end(): void {
    this.#ended = true;
    this.#endTurn();
  }
}

const hasEnded = () =>
  refusal('bad-call', {}, 'this large append has ended already', 'Begin another one.');
