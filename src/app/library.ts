import { randomUUID } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Ack, Store, StudyHead } from '../store/index.ts';
import {
  type Author,
  type Change,
  checkChange,
  didYouMean,
  type Entry,
  extend,
  fold,
  type Id,
  makeChange,
  type Refusal,
  RefusalError,
  type StudyView,
  ulid,
} from '../study/index.ts';

/** How many changes are read from the store at a time. */
const PAGE = 2000;

interface Held {
  readonly view: StudyView;
  readonly cursor: number;
  /** Of the store, when all of the view was read. */
  readonly version: number;
}

/** A library of studies, open: views kept up to date, changes recorded. */
export class Library {
  readonly #held = new Map<Id, Held>();

  constructor(
    readonly store: Store,
    readonly dir: string,
    readonly device: Id,
  ) {}

  studies(): Promise<readonly StudyHead[]> {
    return this.store.studies();
  }

  /**
   * A study by its id, by its title, or by its vehicle where that names one only.
   * @throws RefusalError `not-found` or `conflict`, listing what there is.
   */
  async findStudy(wanted: string): Promise<StudyHead> {
    const all = await this.studies();
    const exact = all.find((s) => s.study === wanted);
    if (exact) return exact;
    const titled = all.filter((s) => s.title === wanted);
    const named = titled.length > 0 ? titled : all.filter((s) => s.vehicle === wanted);
    const [only, second] = named;
    if (only && !second) return only;
    throw new RefusalError({
      code: second ? 'conflict' : 'not-found',
      place: { study: wanted },
      value: wanted,
      why: second ? 'several studies go by this name' : 'there is no study of this name',
      next: second
        ? `Name one by its id: ${named.map((s) => s.study).join(', ')}.`
        : `${didYouMean(
            wanted,
            all.map((s) => s.title),
          )}There are: ${all.map((s) => s.title).join('; ') || 'none yet; import one'}.`,
    });
  }

  /** The study as it stands, with what other processes have written meanwhile. */
  async view(study: Id): Promise<StudyView> {
    const version = await this.store.version();
    const held = this.#held.get(study);
    if (held?.version === version) return held.view;
    const before = held && (await this.#stillHas(study, held)) ? held : nothingOf(study);
    const { fresh, cursor } = await this.#after(study, before.cursor);
    const view = fresh.length === 0 ? before.view : extend(before.view, fresh);
    if (cursor > 0) this.#held.set(study, { view, cursor, version });
    else this.#held.delete(study);
    return view;
  }

  /** All together: a view is extended once, however many changes there are. */
  async #after(
    study: Id,
    from: number,
  ): Promise<{ readonly fresh: readonly Change[]; readonly cursor: number }> {
    const fresh: Change[] = [];
    for (let cursor = from; ; ) {
      const { changes, next } = await this.store.since(study, cursor, PAGE);
      if (changes.length === 0) return { fresh, cursor };
      for (const { change } of changes) fresh.push(change);
      cursor = next;
    }
  }

  /** False when another program has purged the study, whatever came in its place. */
  async #stillHas(study: Id, { cursor }: Held): Promise<boolean> {
    const head = (await this.studies()).find((s) => s.study === study);
    return head !== undefined && head.changes >= cursor;
  }

  /** Takes a study out for good, for whoever uses the library. */
  async purge(study: Id): Promise<void> {
    this.#held.delete(study);
    await this.store.purge(study);
  }

  /** A fresh study id. */
  newStudy(): Id {
    return ulid(Date.now(), Math.random);
  }

  /**
   * Records one gesture; the change is on disk when this returns. `hand` is who the store notes as
   * having brought it.
   */
  async record(
    study: Id,
    by: string,
    words: string,
    entries: readonly Entry[],
    undoes?: Id,
    hand = by,
  ): Promise<Change> {
    const stage = await this.store.stage(study, hand);
    try {
      // Only now, when nobody else can write: a count taken before could be used up meanwhile.
      const author = await this.author(study, by);
      const act = { words, entries, ...(undoes === undefined ? {} : { undoes }) };
      const change = makeChange(author, act);
      mustBeGood(study, [change]);
      await stage.add([change]);
      await stage.commit();
      return change;
    } catch (error) {
      await stage.drop();
      throw error;
    }
  }

  /**
   * Keeps changes made here or on another device; they are on disk when this returns.
   * @throws RefusalError with all that no change may carry; nothing of the batch is kept then.
   */
  async accept(study: Id, changes: readonly Change[], author: string): Promise<Ack> {
    mustBeGood(study, changes);
    return this.store.append(study, changes, author);
  }

  /** What the next change of this device carries of the study's history. */
  async author(study: Id, by: string): Promise<Author> {
    return {
      study,
      by,
      device: this.device,
      view: await this.view(study),
      nowMs: Date.now(),
      random: Math.random,
    };
  }

  close(): Promise<void> {
    return this.store.close();
  }
}

const nothingOf = (study: Id): Held => ({ view: fold(study, []), cursor: 0, version: 0 });

/** @throws RefusalError with all that no change may carry. */
function mustBeGood(study: Id, changes: readonly Change[]): void {
  const [first, ...more] = changes.flatMap((change) => [
    ...checkChange(change),
    ...(change.study === study ? [] : [otherStudy(study, change)]),
  ]);
  if (first) throw new RefusalError(first, ...more);
}

const otherStudy = (study: Id, change: Change): Refusal => ({
  code: 'bad-change',
  place: { study },
  value: change.study,
  why: `the change ${change.id} belongs to another study`,
  next: 'Send each change to the study it belongs to.',
});

/** The name by which this library's changes are told from those of other devices; made at the first opening. */
export async function deviceOf(dir: string): Promise<Id> {
  const file = join(dir, 'device.json');
  try {
    return (JSON.parse(await readFile(file, 'utf8')) as { device: string }).device;
  } catch {
    const device = `desk-${randomUUID().slice(0, 8)}`;
    await writeFile(file, `${JSON.stringify({ device })}\n`, { flag: 'wx' }).catch(() => undefined);
    return (JSON.parse(await readFile(file, 'utf8')) as { device: string }).device;
  }
}
