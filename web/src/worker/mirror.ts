import type { Arrived, Store, StudyHead } from '../../../src/store/port.ts';
import type { Change, Id, StudyView } from '../../../src/study/index.ts';
import { changesOf } from '../../../src/study/index.ts';
import type { DeviceCopy } from './device-copy.ts';

const PAGE = 2000;

/** This browser's copy of one study, as far as the server has told of it. */
export class Mirror {
  #cursor: number;
  #keeping: Promise<void> = Promise.resolve();
  #behind = 0;
  #failed: unknown;

  private constructor(
    readonly study: Id,
    readonly store: Store,
    private readonly copy: DeviceCopy,
    cursor: number,
  ) {
    this.#cursor = cursor;
  }

  static async open(study: Id, copy: DeviceCopy): Promise<Mirror> {
    const [store, head] = [await copy.store(study), await copy.head(study)];
    return new Mirror(study, store, copy, head?.cursor ?? 0);
  }

  /** The server's arrival number up to which the copy goes. */
  get cursor(): number {
    return this.#cursor;
  }

  /** Why the copy does not go on; undefined as long as it does. */
  get failed(): unknown {
    return this.#failed;
  }

  /** Nothing that came in is left to be copied. */
  get isUpToDate(): boolean {
    return this.#behind === 0 && this.#failed === undefined;
  }

  async changes(): Promise<Change[]> {
    const all: Change[] = [];
    for (let cursor = 0; ; ) {
      const { changes, next } = await this.store.since(this.study, cursor, PAGE);
      if (changes.length === 0) return all;
      for (const { change } of changes) all.push(change);
      cursor = next;
    }
  }

  /**
   * Copies what has come in behind what is being copied already. Once a copy fails no cursor goes
   * on, so that nothing is left out of it: the next opening asks for it again.
   */
  keep(arrived: readonly Arrived[], cursor: number, view: StudyView): void {
    this.#behind += 1;
    this.#keeping = this.#keeping.then(async () => {
      if (this.#failed !== undefined) return;
      try {
        await this.#append(arrived);
        await this.copy.putHead({ ...headOf(view), cursor });
        this.#cursor = cursor;
        this.#behind -= 1;
      } catch (error) {
        this.#failed = error;
      }
    });
  }

  /** Ends when all that came in is copied, or the copy has failed. */
  kept(): Promise<void> {
    return this.#keeping;
  }

  async #append(arrived: readonly Arrived[]): Promise<void> {
    const stage = await this.store.stage(this.study, '');
    for (const { change, author } of arrived) await stage.add([change], author);
    await stage.commit();
  }

  close(): Promise<void> {
    return this.#keeping.then(() => this.store.close());
  }
}

/** What the list of studies shows of a copy when there is no server to ask. */
function headOf(view: StudyView): StudyHead {
  const { study, changes } = view;
  const { title, vehicle, invented } = view.header;
  const parts = view.nodes('part').length;
  return { study, title, vehicle, invented, changes, parts, clock: lastClock(view) };
}

const lastClock = (view: StudyView): string => changesOf(view).at(-1)?.clock ?? '';
