import { access } from 'node:fs/promises';
import { userInfo } from 'node:os';
import { join } from 'node:path';
import type { Command } from 'commander';
import { deviceOf, Library } from '../app/index.ts';
import { openSqliteStore, type Store } from '../store/index.ts';
import { type Id, RefusalError, type StudyView } from '../study/index.ts';

/** Opens the store in a folder; `checkAll` reads it for damage, however large it is. */
export const openStore = (dir: string, checkAll = false): Promise<Store> =>
  openSqliteStore(dir, { checkAll });

/** Opens the library in a folder, with the store that the command line uses. */
export async function openLibrary(dir: string, checkAll = false): Promise<Library> {
  const store = await openStore(dir, checkAll);
  return new Library(store, dir, await deviceOf(dir));
}

/** The folder named by --library. */
export const libraryDir = (command: Command): string =>
  command.optsWithGlobals<{ library: string }>().library;

/** Commands that make a library where there is none. */
const MAKERS: ReadonlySet<string> = new Set(['import', 'serve']);

async function mustBeLibrary(dir: string): Promise<void> {
  if (await hasLibrary(dir)) return;
  throw new RefusalError({
    code: 'not-found',
    place: { file: dir },
    value: dir,
    why: 'there is no library in this folder',
    next: 'Name its folder with --library, or import a record: that makes one.',
  });
}

const hasLibrary = (dir: string): Promise<boolean> =>
  access(join(dir, 'library.db')).then(
    () => true,
    () => false,
  );

/** Opens the library named on the command line, hands it over and closes it whatever happens. */
export async function withLibrary<T>(
  command: Command,
  use: (library: Library) => Promise<T>,
  checkAll = false,
): Promise<T> {
  const dir = libraryDir(command);
  if (!MAKERS.has(command.name())) await mustBeLibrary(dir);
  const library = await openLibrary(dir, checkAll);
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
