import {
  type Change,
  changesOf,
  checkChange,
  type Entry,
  extend,
  fold,
  type Id,
  makeChange,
  type Refusal,
  type RefusalCode,
  RefusalError,
  type StudyView,
} from '../../../src/study/index.ts';
import { type Api, Unreachable } from './api.ts';
import type { Outbox } from './outbox.ts';

const PAGE = 500;
/** Seconds between looks for what others wrote, as long as the server answers. */
const POLL_S = 2;
/** Seconds before a failed post is tried again, the longest. */
const LONGEST_WAIT_S = 10;

/** How far this page's changes have come. */
export interface SaveState {
  /** Changes that wait for the server's acknowledgement. */
  readonly waiting: number;
  /** Why the server can not be reached at the moment. */
  readonly unreachable?: string;
  /** The change that the server refused, and why; those behind it wait. */
  readonly refused?: { readonly words: string; readonly refusals: readonly Refusal[] };
}

/** Who does something, in which words, and what. */
export interface Act {
  readonly by: string;
  readonly words: string;
  readonly entries: readonly Entry[];
  readonly undoes?: Id;
}

/**
 * One study kept level with the server. A change holds at once here, is kept by the browser,
 * and counts as saved only when the server has acknowledged it.
 */
export class StudySync {
  view: StudyView;
  #cursor = 0;
  readonly #known = new Set<Id>();
  #waiting: Change[] = [];
  #state: SaveState = { waiting: 0 };
  #sending = false;
  #closed = false;

  constructor(
    readonly study: Id,
    readonly device: Id,
    private readonly api: Api,
    private readonly outbox: Outbox,
    private readonly told: { readonly changed: () => void; readonly state: (s: SaveState) => void },
  ) {
    this.view = fold(study, []);
  }

  /** Reads the whole study, then what this browser still has to send. */
  async load(progress: (changes: number) => void): Promise<void> {
    while (await this.#pull()) progress(this.view.changes);
    this.#waiting = await this.outbox.of(this.study);
    this.#take(this.#waiting);
    this.#tell({});
    void this.#send();
    void this.#poll();
  }

  close(): void {
    this.#closed = true;
  }

  /** Does it here at once; the server follows. @throws RefusalError for what no change may carry. */
  async record({ by, words, entries, undoes }: Act): Promise<Change> {
    const { study, device, view } = this;
    const author = { study, by, device, view, nowMs: Date.now(), random: Math.random };
    const change = makeChange(author, {
      words,
      entries,
      ...(undoes === undefined ? {} : { undoes }),
    });
    const [bad, ...more] = checkChange(change);
    if (bad) throw new RefusalError(bad, ...more);
    this.#take([change]);
    this.#waiting.push(change);
    this.told.changed();
    this.#tell({});
    await this.outbox.put(change);
    void this.#send();
    return change;
  }

  /** Takes back the refused change; those behind it are counted anew and sent. */
  async dropRefused(): Promise<void> {
    if (!this.#state.refused) return;
    const [, ...rest] = this.#waiting;
    await this.outbox.remove(...this.#waiting.map((c) => c.id));
    this.view = fold(this.study, []);
    this.#cursor = 0;
    this.#known.clear();
    while (await this.#pull());
    this.#waiting = countedAfter(this.view, rest);
    await this.outbox.put(...this.#waiting);
    this.#take(this.#waiting);
    this.#state = { waiting: 0 };
    this.told.changed();
    this.#tell({});
    void this.#send();
  }

  /** True when there was something new. */
  async #pull(): Promise<boolean> {
    const { changes, next } = await this.api.changes(this.study, this.#cursor, PAGE);
    this.#cursor = next;
    this.#take(changes.map((c) => c.change));
    return changes.length > 0;
  }

  /** Holds only what is new: a view extended by what it has is folded all over again. */
  #take(changes: readonly Change[]): boolean {
    const fresh = changes.filter((c) => !this.#known.has(c.id));
    if (fresh.length === 0) return false;
    for (const c of fresh) this.#known.add(c.id);
    this.view = extend(this.view, fresh);
    return true;
  }

  async #send(): Promise<void> {
    if (this.#sending || this.#state.refused) return;
    this.#sending = true;
    for (let wait = 1; this.#waiting.length > 0 && !this.#closed; ) {
      const outcome = await this.#post(this.#waiting[0] as Change);
      if (outcome === 'refused') break;
      if (outcome === 'saved') wait = 1;
      else {
        await sleep(wait);
        wait = Math.min(2 * wait, LONGEST_WAIT_S);
      }
    }
    this.#sending = false;
  }

  async #post(change: Change): Promise<'saved' | 'refused' | 'again'> {
    try {
      await this.api.post(this.study, [change]);
    } catch (error) {
      const passing = whatPasses(error);
      if (passing === undefined && error instanceof RefusalError) {
        this.#tell({ refused: { words: change.words, refusals: error.refusals } });
        return 'refused';
      }
      this.#tell({ unreachable: passing ?? String(error) });
      return 'again';
    }
    this.#waiting = this.#waiting.filter((c) => c.id !== change.id);
    await this.outbox.remove(change.id);
    this.#tell({});
    return 'saved';
  }

  async #poll(): Promise<void> {
    while (!this.#closed) {
      await sleep(POLL_S);
      try {
        const before = this.view.changes;
        while (!this.#closed && (await this.#pull()));
        if (this.view.changes !== before) this.told.changed();
        if (this.#state.unreachable !== undefined) this.#tell({});
      } catch (error) {
        this.#tell({ unreachable: whatPasses(error) ?? String(error) });
      }
    }
  }

  #tell(more: Omit<SaveState, 'waiting'>): void {
    const { refused } = this.#state;
    this.#state = { ...(refused ? { refused } : {}), ...more, waiting: this.#waiting.length };
    this.told.state(this.#state);
  }
}

/** Changes not sent yet, each counted on from what is known of its device. */
function countedAfter(view: StudyView, waiting: readonly Change[]): Change[] {
  const last = new Map<Id, number>();
  for (const { device, seq } of changesOf(view))
    last.set(device, Math.max(last.get(device) ?? 0, seq));
  return waiting.map((change) => {
    const seq = (last.get(change.device) ?? 0) + 1;
    last.set(change.device, seq);
    return { ...change, seq };
  });
}

/** Refusals that are about the server's state, not about what was sent: it may be sent again. */
const PASSING: readonly RefusalCode[] = ['busy', 'not-signed-in', 'read-only', 'disk-full'];

/** What keeps the server from answering now, in words; undefined when it is something else. */
function whatPasses(error: unknown): string | undefined {
  if (error instanceof Unreachable) return `${error.message}; it is tried again every few seconds.`;
  if (!(error instanceof RefusalError)) return undefined;
  const [{ code, why, next }] = error.refusals;
  return PASSING.includes(code) ? `${why}. ${next}` : undefined;
}

const sleep = (seconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, 1000 * seconds));
