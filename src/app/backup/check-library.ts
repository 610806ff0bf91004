import { createHash } from 'node:crypto';
import type { StoreCheck } from '../../store/index.ts';
import { blobsOf, type Sha256 } from '../../study/index.ts';
import type { Library } from '../library.ts';

/** Changes read at a time. */
const PAGE = 200;

/** What was found in a library that was read from end to end. */
export interface LibraryCheck {
  readonly database: StoreCheck;
  readonly blobs: number;
  /** Blobs whose bytes are no longer those of their name. */
  readonly damaged: readonly Sha256[];
  /** Blobs that a study names and that are not here: not arrived as yet, or lost. */
  readonly missing: readonly { readonly study: string; readonly hash: Sha256 }[];
  /** Blobs that no study names: on their way, or left by an upload whose change never came. */
  readonly unused: readonly Sha256[];
}

/** Whether nothing of what the library acknowledged is damaged; blobs may still be on their way. */
export const isWhole = ({ database, damaged }: LibraryCheck): boolean =>
  database.faults.length === 0 && database.rows !== 'other' && damaged.length === 0;

/** Reads all of a library: the database and its rows, and every blob against its hash. */
export async function checkLibrary(
  library: Library,
  progress: (blob: number) => void = () => {},
): Promise<LibraryCheck> {
  const database = await library.store.check();
  const named = await blobsNamed(library);
  const held = new Set<Sha256>();
  const damaged: Sha256[] = [];
  for await (const { hash } of library.store.blobs()) {
    held.add(hash);
    if ((await readHash(library, hash)) !== hash) damaged.push(hash);
    progress(held.size);
  }
  return {
    ...{ database, blobs: held.size, damaged },
    missing: [...named].flatMap(([hash, study]) => (held.has(hash) ? [] : [{ study, hash }])),
    unused: [...held].filter((hash) => !named.has(hash)),
  };
}

/** Every blob that a change names, with the title of a study that names it. */
async function blobsNamed(library: Library): Promise<Map<Sha256, string>> {
  const named = new Map<Sha256, string>();
  for (const { study, title } of await library.studies())
    for (let cursor = 0; ; ) {
      const { changes, next } = await library.store.since(study, cursor, PAGE);
      if (changes.length === 0) break;
      for (const hash of changes.flatMap((a) => blobsOf(a.change))) named.set(hash, title);
      cursor = next;
    }
  return named;
}

/** Undefined for what the disk can not read. */
async function readHash(library: Library, hash: Sha256): Promise<string | undefined> {
  const digest = createHash('sha256');
  try {
    for await (const chunk of library.store.getBlob(hash)) digest.update(chunk);
  } catch {
    return undefined;
  }
  return digest.digest('hex');
}
