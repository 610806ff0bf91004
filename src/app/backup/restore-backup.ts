import { createReadStream } from 'node:fs';
import { readdir, rename, rm, rmdir, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import {
  asFileRefusal,
  makeFolder,
  type Store,
  syncFolder,
  writeHashed,
} from '../../store/index.ts';
import { RefusalError } from '../../study/index.ts';
import { deviceOf, Library } from '../library.ts';
import { backupsIn } from './backup-folders.ts';
import {
  type BackupManifest,
  badBackup,
  DATABASE,
  MANIFEST,
  readManifest,
} from './backup-manifest.ts';
import { checkLibrary, isWhole, type LibraryCheck } from './check-library.ts';

export interface Restored {
  /** The backup it came from. */
  readonly folder: string;
  readonly made: string;
  readonly studies: BackupManifest['studies'];
  readonly check: LibraryCheck;
}

/** How the store of a folder is opened, which only the hosts know. */
export type OpenStore = (dir: string) => Promise<Store>;

/**
 * Makes a library of a backup: `from` is one, or a folder with several, of which the latest is
 * taken. Everything is checked on the way: each file against its SHA-256, the database by itself,
 * its rows against its changes. The library is there whole when this returns, or not at all; it
 * gets a device name of its own, so that it can be used beside the one it is a copy of.
 * @throws RefusalError `not-found`, `conflict` when there is a library already, `bad-value` when
 * the backup is damaged.
 */
export async function restoreBackup(from: string, to: string, open: OpenStore): Promise<Restored> {
  const folder = await backupAt(from);
  const manifest = await readManifest(folder);
  await mustBeFree(to);
  const partial = `${resolve(to)}.part-${Date.now()}`;
  try {
    await makeFolder(join(partial, 'blobs'));
    await copyAll(folder, manifest, partial);
    const check = await checkCopy(partial, open);
    await rmdir(to).catch(() => undefined);
    await rename(partial, to);
    await syncFolder(dirname(resolve(to)));
    const { made, studies } = manifest;
    return { folder, made, studies, check };
  } catch (error) {
    await rm(partial, { recursive: true, force: true });
    throw asFileRefusal(error, to);
  }
}

async function backupAt(from: string): Promise<string> {
  if (await isThere(join(from, MANIFEST))) return from;
  const latest = (await backupsIn(from)).at(-1);
  if (latest !== undefined) return join(from, latest);
  throw new RefusalError({
    code: 'not-found',
    place: { file: from },
    value: from,
    why: 'there is no whole backup in this folder',
    next: 'Name the folder that was named to `backup`, or one backup in it.',
  });
}

const isThere = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );

/** A library is never restored over another. */
async function mustBeFree(to: string): Promise<void> {
  const names = await readdir(to).catch(() => []);
  if (names.length === 0) return;
  throw new RefusalError({
    code: 'conflict',
    place: { file: to },
    value: to,
    why: 'the folder is not empty',
    next: 'Nothing was restored. Name a new folder with --library.',
  });
}

async function copyAll(folder: string, manifest: BackupManifest, to: string): Promise<void> {
  await copyChecked(join(folder, DATABASE), join(to, DATABASE), manifest.database.hash);
  for (const { hash } of manifest.blobs) {
    const name = join('blobs', hash.slice(0, 2), hash);
    await makeFolder(dirname(join(to, name)));
    await copyChecked(join(folder, name), join(to, name), hash);
    await syncFolder(dirname(join(to, name)));
  }
}

async function copyChecked(from: string, to: string, hash: string): Promise<void> {
  if (!(await isThere(from))) throw badBackup(from, 'the file is missing');
  const found = (await writeHashed(createReadStream(from), to)).hash;
  if (found !== hash) throw badBackup(from, 'the file is damaged: its SHA-256 differs', found);
}

async function checkCopy(dir: string, open: OpenStore): Promise<LibraryCheck> {
  const library = new Library(await open(dir), dir, await deviceOf(dir));
  try {
    const check = await checkLibrary(library);
    if (!isWhole(check)) throw badBackup(dir, `the copy is not whole: ${JSON.stringify(check)}`);
    return check;
  } finally {
    await library.close();
  }
}
