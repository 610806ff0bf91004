import { type Id, RefusalError } from '../study/index.ts';
import type { Library } from './library.ts';

/**
 * Takes a study out of the library for good. Its title, letter for letter, says that it is meant.
 * @throws RefusalError `not-found`, `bad-call` when the title is another one, `busy`.
 */
export async function purgeStudy(library: Library, wanted: string, title: string): Promise<Id> {
  const head = await library.findStudy(wanted);
  if (title !== head.title) throw otherTitle(head.title, title);
  await library.purge(head.study);
  return head.study;
}

const otherTitle = (title: string, found: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { study: title, column: 'yes' },
    value: found,
    why: 'this is not the title of the study',
    next: `Nothing was deleted. To delete it for good, give its title, letter for letter: "${title}".`,
  });
