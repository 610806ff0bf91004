import { createHash } from 'node:crypto';
import { type FileHandle, mkdir, open, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { RefusalError, Sha256 } from '../study/index.ts';
import { refusal } from './refuse.ts';

/** Makes what a rename or a new file changed in a folder last. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/**
 * Makes a folder, with those above it, so that it is there after a power cut. Step by step: a
 * recursive mkdir reports a read-only disk as a missing folder.
 * @throws RefusalError `read-only`, `disk-full`, `bad-call` when a file stands in its place.
 */
export async function makeFolder(folder: string): Promise<void> {
  if (await isFolder(folder)) return;
  if (dirname(folder) !== folder) await makeFolder(dirname(folder));
  try {
    await mkdir(folder);
    await syncFolder(dirname(folder));
  } catch (error) {
    // Another process may have made it in the same moment.
    if (!(await isFolder(folder))) throw asFileRefusal(error, folder);
  }
}

const isFolder = (path: string): Promise<boolean> =>
  stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );

/** A file by what is in it. */
export interface Hashed {
  readonly hash: Sha256;
  readonly bytes: number;
}

/** Writes chunks to a new file, on disk when this returns, though not yet its folder. */
export async function writeHashed(
  chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
  path: string,
): Promise<Hashed> {
  const digest = createHash('sha256');
  let bytes = 0;
  const file = await open(path, 'wx');
  try {
    for await (const chunk of chunks) {
      digest.update(chunk);
      bytes += chunk.length;
      await writeAll(file, chunk);
    }
    await file.sync();
  } finally {
    await file.close();
  }
  return { hash: digest.digest('hex'), bytes };
}

/** A single write may take less than all of it. */
export async function writeAll(file: FileHandle, bytes: Uint8Array): Promise<void> {
  for (let done = 0; done < bytes.length; )
    done += (await file.write(bytes, done, bytes.length - done)).bytesWritten;
}

/** What a caller can do something about becomes a refusal with the path; the rest stays as it is. */
export function asFileRefusal(error: unknown, path: string): unknown {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ENOSPC' || code === 'EDQUOT') return diskFull(path);
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') return readOnly(path);
  if (code === 'ENOENT')
    return refusal(
      'not-found',
      { file: path },
      'its folder is not there',
      'Make the folder first.',
    );
  if (code === 'ENOTDIR' || code === 'EEXIST')
    return refusal(
      'bad-call',
      { file: path },
      'a file stands where a folder is needed',
      'Name another folder for the library.',
    );
  return error;
}

export const diskFull = (path: string): RefusalError =>
  refusal(
    'disk-full',
    { file: path },
    'the disk is full',
    'Nothing of this call was stored. Make room on that disk, then try again.',
  );

export const readOnly = (path: string): RefusalError =>
  refusal(
    'read-only',
    { file: path },
    'the library can not be written',
    'Nothing of this call was stored. Allow this user to write the folder and all files in it, or open a library elsewhere.',
  );
