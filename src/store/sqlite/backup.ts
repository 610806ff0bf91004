import { randomUUID } from 'node:crypto';
import { access, open, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { type Kysely, sql } from 'kysely';
import { RefusalError } from '../../study/index.ts';
import { asFileRefusal, diskFull, syncFolder } from '../files.ts';
import { refusal } from '../refuse.ts';

/**
 * Copies the database, as last committed, to a new file; blobs are files already and are copied
 * as such. The file is there whole, or not at all.
 * @throws RefusalError `conflict` when the file is there, `not-found` when its folder is not,
 * `read-only`, `disk-full`.
 */
export async function backUp<T>(db: Kysely<T>, toFile: string): Promise<void> {
  if (await exists(toFile)) throw inTheWay(toFile);
  const partial = `${toFile}.${randomUUID()}`;
  try {
    // The database takes an empty file as none; making it tells what is wrong with the folder.
    await (await open(partial, 'wx')).close();
    await sql`vacuum into ${partial}`.execute(db);
    await syncFile(partial);
    await rename(partial, toFile);
    await syncFolder(dirname(toFile));
  } catch (error) {
    await rm(partial, { force: true });
    throw isDiskFull(error) ? diskFull(toFile) : asFileRefusal(error, toFile);
  }
}

/** The database names its own file, but it is the copy that found no room. */
const isDiskFull = (error: unknown): boolean =>
  error instanceof RefusalError && error.refusals[0].code === 'disk-full';

const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

async function syncFile(path: string): Promise<void> {
  const handle = await open(path, 'r+');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

const inTheWay = (file: string) =>
  refusal(
    'conflict',
    { file },
    'a file of this name is there already',
    'Nothing was written. Name a new file; an older backup is never overwritten.',
  );
