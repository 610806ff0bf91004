import type { Change } from '../study/index.ts';
import type { Ack, Stage } from './port.ts';
import { refusal } from './refuse.ts';
import type { EndTurn } from './write-turn.ts';

/** What a large append does to the store it is made to. */
export interface StageWork {
  add(batch: readonly Change[], author?: string): Promise<void>;
  /** Durable when it returns. */
  commit(): Promise<Ack>;
  rollBack(): Promise<void>;
}

/** A large append that holds the writer's turn until it is committed, dropped or fails. */
export class HeldStage implements Stage {
  readonly #work: StageWork;
  readonly #endTurn: EndTurn;
  #ended = false;

  constructor(endTurn: EndTurn, work: StageWork) {
    this.#endTurn = endTurn;
    this.#work = work;
  }

  /** What fails ends the stage and leaves nothing. */
  async add(batch: readonly Change[], author?: string): Promise<void> {
    await this.#orDrop(() => this.#work.add(batch, author));
  }

  async commit(): Promise<Ack> {
    const ack = await this.#orDrop(() => this.#work.commit());
    this.#end();
    return ack;
  }

  async drop(): Promise<void> {
    if (this.#ended) return;
    try {
      await this.#work.rollBack();
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
