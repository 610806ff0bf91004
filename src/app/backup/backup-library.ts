import { mkdir, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import {
  asFileRefusal,
  type BlobHead,
  makeFolder,
  syncFolder,
  writeHashed,
} from '../../store/index.ts';
import { RefusalError, type Sha256 } from '../../study/index.ts';
import type { Library } from '../library.ts';
import { VERSION } from '../version.ts';
import { backupsIn, partialName, stampOf } from './backup-folders.ts';
import { type BackupManifest, DATABASE, MANIFEST } from './backup-manifest.ts';
import { hashOf, linked } from './copy-file.ts';

export interface Backup extends BackupManifest {
  readonly folder: string;
}

/**
 * Copies a library, as last committed, with its blobs into a folder of its own below `to`, named
 * by the time. It is there whole and on disk when this returns, or not at all. Blobs that an
 * earlier backup there has are linked to, where the disk can.
 * @throws RefusalError `disk-full`, `read-only`, `bad-call` when a file stands in the way.
 */
export async function backupLibrary(library: Library, to: string): Promise<Backup> {
  const made = new Date();
  const stamp = stampOf(made);
  const partial = join(to, partialName(stamp, library.newStudy()));
  try {
    await makeFolder(to);
    const earlier = (await backupsIn(to)).at(-1);
    await mkdir(join(partial, 'blobs'), { recursive: true });
    const manifest = await fill(library, partial, made, earlier && join(to, earlier));
    await rename(partial, join(to, stamp));
    await syncFolder(to);
    return { ...manifest, folder: join(to, stamp) };
  } catch (error) {
    await rm(partial, { recursive: true, force: true }).catch(() => undefined);
    throw asFileRefusal(error, to);
  }
}

async function fill(
  library: Library,
  partial: string,
  made: Date,
  earlier: string | undefined,
): Promise<BackupManifest> {
  // The database first: whatever a change in it names was there before the change was.
  await library.store.backup(join(partial, DATABASE));
  const database = await hashOf(join(partial, DATABASE));
  const studies = (await library.studies()).map(({ study, title, changes }) => ({
    ...{ study, title, changes },
  }));
  const copied = await copyBlobs(library, partial, earlier);
  const manifest: BackupManifest = {
    ...{ format: 'hoistside-backup', version: 1, program: VERSION, made: made.toISOString() },
    ...{ database, studies, ...copied },
  };
  const text = Buffer.from(`${JSON.stringify(manifest, undefined, 1)}\n`);
  await writeHashed([text], join(partial, MANIFEST));
  await syncFolder(partial);
  return manifest;
}

type Copied = Pick<BackupManifest, 'blobs' | 'damaged'>;

async function copyBlobs(
  library: Library,
  partial: string,
  earlier: string | undefined,
): Promise<Copied> {
  const copied: Copied = { blobs: [], damaged: [] };
  const folders = new Set<string>();
  for await (const blob of library.store.blobs()) {
    const folder = join(partial, 'blobs', blob.hash.slice(0, 2));
    if (!folders.has(folder)) await mkdir(folder, { recursive: true });
    folders.add(folder);
    const how = await copyBlob(library, blob, join(folder, blob.hash), earlier);
    if (how === 'copied') copied.blobs.push(blob);
    if (how === 'damaged') copied.damaged.push(blob.hash);
  }
  for (const folder of [...folders, join(partial, 'blobs')]) await syncFolder(folder);
  return copied;
}

/** A blob may be purged while the backup is made; one that is damaged does not stop the rest. */
async function copyBlob(
  library: Library,
  { hash, bytes }: BlobHead,
  path: string,
  earlier: string | undefined,
): Promise<'copied' | 'damaged' | 'gone'> {
  if (earlier && (await linkedFrom(earlier, hash, bytes, path))) return 'copied';
  try {
    const found = await writeHashed(library.store.getBlob(hash), path);
    if (found.hash === hash) return 'copied';
  } catch (error) {
    await rm(path, { force: true });
    if (isGone(error)) return 'gone';
    if (!isUnreadable(error)) throw error;
    return 'damaged';
  }
  await rm(path);
  return 'damaged';
}

async function linkedFrom(
  earlier: string,
  hash: Sha256,
  bytes: number,
  path: string,
): Promise<boolean> {
  const from = join(earlier, 'blobs', hash.slice(0, 2), hash);
  const size = await stat(from).then(
    (found) => found.size,
    () => -1,
  );
  return size === bytes && linked(from, path);
}

const isUnreadable = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'EIO';

const isGone = (error: unknown): boolean =>
  (error instanceof RefusalError && error.refusals[0].code === 'not-found') ||
  (error instanceof Error && 'code' in error && error.code === 'ENOENT');
