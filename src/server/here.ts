import type { Id } from '../study/index.ts';

/** A page that is open on a study, and the part in hand there. */
export interface Here {
  /** The page's own name, under which it counts its changes. */
  readonly page: Id;
  /** Name of the person, as told. */
  readonly by: string;
  /** Name of the device, as the door knows it. */
  readonly device: string;
  readonly part?: Id;
}

/** A page that has not told of itself for so long is gone. */
const GONE_MS = 15_000;
/** Pages of one study that are remembered at most. */
const MOST = 200;

/**
 * Who is at which part just now. Nothing of it is recorded: it is in memory, and forgotten within
 * seconds.
 */
export class WhoIsHere {
  readonly #studies = new Map<Id, Map<Id, Here & { readonly seenMs: number }>>();
  readonly #now: () => number;

  constructor(now: () => number = Date.now) {
    this.#now = now;
  }

  /** Notes a page, and tells of the others of its study. */
  note(study: Id, here: Here): readonly Here[] {
    const pages = this.#studies.get(study) ?? new Map();
    this.#studies.set(study, pages);
    pages.delete(here.page);
    pages.set(here.page, { ...here, seenMs: this.#now() });
    this.#forget();
    return [...pages.values()]
      .filter(({ page }) => page !== here.page)
      .map(({ seenMs: _, ...other }) => other);
  }

  #forget(): void {
    for (const [study, pages] of this.#studies) {
      for (const [page, { seenMs }] of pages)
        if (this.#now() - seenMs > GONE_MS || pages.size > MOST) pages.delete(page);
      if (pages.size === 0) this.#studies.delete(study);
    }
  }
}
