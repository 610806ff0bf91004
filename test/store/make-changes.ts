import { type Change, clockText, type Entry, ulid } from '../../src/study/index.ts';

/** Same numbers on every run: a linear congruential generator (Numerical Recipes' constants, from memory). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const START_MS = Date.UTC(2026, 0, 5, 8);

/** A device that makes changes to one study, one millisecond after the other. */
export class Device {
  readonly #random: () => number;
  #seq = 0;
  #ms = START_MS;

  constructor(
    readonly study: string,
    readonly id = 'device-a',
    seed = 1,
  ) {
    this.#random = numbers(seed);
  }

  newId(): string {
    return ulid(this.#ms, this.#random);
  }

  /** Sets the device's clock, to make changes that are older or later than another's. */
  setClock(ms: number): void {
    this.#ms = START_MS + ms;
  }

  change(entries: readonly Entry[], more: Partial<Change> = {}): Change {
    this.#ms += 1;
    this.#seq += 1;
    return {
      id: this.newId(),
      study: this.study,
      device: this.id,
      seq: this.#seq,
      clock: clockText({ ms: this.#ms, count: 0, device: this.id }),
      by: 'R. Example',
      gesture: this.newId(),
      words: `change ${this.#seq}`,
      saw: {},
      entries,
      ...more,
    };
  }

  undo(gesture: string): Change {
    return this.change([], { undoes: gesture });
  }
}

type PartEntry = Extract<Entry, { e: 'node.add' }>;

export const addNode = (
  id: string,
  parent: string | null,
  kind: PartEntry['node']['kind'] = 'part',
  name = `name of ${id}`,
): Entry => ({ v: 1, e: 'node.add', node: { id, kind, parent, label: `L-${id}`, name } });

export const studyPut = (title: string, condition = 'kerb'): Entry => ({
  v: 1,
  e: 'study.put',
  set: { title, vehicle: 'made-up van', condition, invented: true },
});
