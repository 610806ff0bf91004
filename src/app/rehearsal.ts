import { openMemoryStore } from '../store/index.ts';
import type { Id } from '../study/index.ts';
import { createStudy, type NewStudy } from './create-study.ts';
import { Library } from './library.ts';

/** Changes copied at a time. */
const PAGE = 200;

/**
 * Tries something out on a copy of a study in memory, or on one that does not exist yet: what is
 * refused there has touched nothing.
 */
export async function rehearse<T>(
  library: Library,
  target: Id | NewStudy,
  use: (copy: Library, study: Id) => Promise<T>,
): Promise<T> {
  const copy = new Library(openMemoryStore(), library.dir, `${library.device}-rehearsal`);
  try {
    const study =
      typeof target === 'string'
        ? await copied(library, copy, target)
        : await createStudy(copy, target);
    return await use(copy, study);
  } finally {
    await copy.close();
  }
}

async function copied(from: Library, to: Library, study: Id): Promise<Id> {
  let cursor = 0;
  for (;;) {
    const { changes, next } = await from.store.since(study, cursor, PAGE);
    if (changes.length === 0) return study;
    await to.store.append(
      study,
      changes.map((c) => c.change),
      'rehearsal',
    );
    cursor = next;
  }
}
