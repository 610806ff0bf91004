import { userInfo } from 'node:os';
import type { Command } from 'commander';
import { deviceOf, Library } from '../app/index.ts';
import { openSqliteStore } from '../store/index.ts';
import { type Id, RefusalError, type StudyView } from '../study/index.ts';

/** Opens the library in a folder, with the store that the command line uses. */
export async function openLibrary(dir: string): Promise<Library> {
  const store = await openSqliteStore(dir);
  return new Library(store, dir, await deviceOf(dir));
}

/** Opens the library named on the command line, hands it over and closes it whatever happens. */
export async function withLibrary<T>(
  command: Command,
  use: (library: Library) => Promise<T>,
): Promise<T> {
  const library = await openLibrary(command.optsWithGlobals<{ library: string }>().library);
  try {
    return await use(library);
  } finally {
    await library.close();
  }
}

/** The study named on the command line, as it stands. */
export async function studyNamed(
  library: Library,
  name: string,
): Promise<{ study: Id; view: StudyView }> {
  const { study } = await library.findStudy(name);
  return { study, view: await library.view(study) };
}

/** A node by its number or id. @throws RefusalError `not-found`. */
export function nodeNamed(view: StudyView, wanted: string): Id {
  const node = view.find(wanted);
  if (node) return node.id;
  throw new RefusalError({
    code: 'not-found',
    place: { study: view.header.title, subject: wanted },
    value: wanted,
    why: 'there is nothing of this number in the study',
    next: `See: hoistside list parts --study ${JSON.stringify(view.header.title)}.`,
  });
}

/** Who is at the keyboard, where nothing else is said. */
export const whoIsHere = (): string => process.env.HOISTSIDE_BY ?? userInfo().username;
