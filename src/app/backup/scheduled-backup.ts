import type { Library } from '../library.ts';
import { backupsIn, madeMs, pruneBackups } from './backup-folders.ts';
import { type Backup, backupLibrary } from './backup-library.ts';

export interface BackupPlan {
  readonly library: Library;
  readonly to: string;
  readonly everyMs: number;
  /** How many are kept; older ones are deleted once a later one is whole. */
  readonly keep: number;
  readonly done: (backup: Backup) => void;
  readonly failed: (error: unknown) => void;
}

/** After a failure it is tried again so soon, or at the next turn when that is sooner. */
const AGAIN_MS = 10 * 60_000;
/** The longest that a timer takes. */
const LONGEST_TIMER_MS = 2 ** 31 - 1;

/** Backs a library up time and again, the first time when the last backup is old enough. */
export class ScheduledBackup {
  readonly #plan: BackupPlan;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<void> = Promise.resolve();
  #stopped = false;

  constructor(plan: BackupPlan) {
    this.#plan = plan;
    this.#running = this.#begin();
  }

  /** Ends when a backup that is under way is whole. */
  async stop(): Promise<void> {
    this.#stopped = true;
    clearTimeout(this.#timer);
    await this.#running;
  }

  async #begin(): Promise<void> {
    const { to, everyMs } = this.#plan;
    const last = (await backupsIn(to)).at(-1);
    this.#in(last === undefined ? 0 : madeMs(last) + everyMs - Date.now());
  }

  #in(ms: number): void {
    if (this.#stopped) return;
    const wait = Math.min(Math.max(ms, 0), LONGEST_TIMER_MS);
    this.#timer = setTimeout(() => {
      this.#running = this.#once();
    }, wait);
    // A server that has nothing else to do may end.
    this.#timer.unref();
  }

  async #once(): Promise<void> {
    const { library, to, everyMs, keep, done, failed } = this.#plan;
    try {
      done(await backupLibrary(library, to));
      await pruneBackups(to, keep);
      this.#in(everyMs);
    } catch (error) {
      failed(error);
      this.#in(Math.min(everyMs, AGAIN_MS));
    }
  }
}
