import { type Entry, type Id, RefusalError } from '../study/index.ts';
import type { Library } from './library.ts';

export interface NewStudy {
  readonly title: string;
  readonly vehicle: string;
  readonly by: string;
  /** Who the store notes as having brought it; `by` when absent. */
  readonly hand?: string;
  readonly invented: boolean;
  readonly note?: string;
}

/**
 * Makes a study with its vehicle, in the condition "kerb, as received".
 * @throws RefusalError `conflict` when another study has the title.
 */
export async function createStudy(library: Library, spec: NewStudy): Promise<Id> {
  await mustBeFree(library, spec.title);
  const study = library.newStudy();
  const { title, vehicle, invented, note } = spec;
  const entries: Entry[] = [
    {
      v: 1,
      e: 'study.put',
      set: { title, vehicle, condition: 'kerb', invented, ...(note === undefined ? {} : { note }) },
    },
    { v: 1, e: 'condition.put', id: 'kerb', words: 'kerb, as received' },
    {
      v: 1,
      e: 'node.add',
      node: {
        id: library.newStudy(),
        kind: 'vehicle',
        parent: null,
        label: vehicle,
        name: vehicle,
      },
    },
  ];
  await library.record(study, spec.by, `new study ${title}`, entries, undefined, spec.hand);
  return study;
}

async function mustBeFree(library: Library, title: string): Promise<void> {
  const taken = (await library.studies()).find((s) => s.title === title);
  if (!taken) return;
  throw new RefusalError({
    code: 'conflict',
    place: { study: title },
    value: title,
    why: 'a study of this title is there already',
    next: 'Import into it without making it anew, or give the new one another title.',
  });
}
