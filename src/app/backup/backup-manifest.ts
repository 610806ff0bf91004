import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { sha256 } from '../../schema/index.ts';
import { RefusalError } from '../../study/index.ts';

/** Names of what a backup holds; the blobs lie as in a library. */
export const MANIFEST = 'manifest.json';
export const DATABASE = 'library.db';

const bytes = z.int().min(0);
const file = z.strictObject({ hash: sha256, bytes });

const backupManifest = z.strictObject({
  format: z.literal('hoistside-backup'),
  version: z.literal(1),
  program: z.string(),
  /** ISO 8601, UTC. */
  made: z.string(),
  database: file,
  studies: z.array(z.strictObject({ study: z.string(), title: z.string(), changes: z.int() })),
  blobs: z.array(file),
  /** Blobs that were damaged in the library already, and are not in the backup. */
  damaged: z.array(sha256),
});
export type BackupManifest = z.infer<typeof backupManifest>;

/** @throws RefusalError `bad-value` when the folder holds no whole backup. */
export async function readManifest(folder: string): Promise<BackupManifest> {
  const path = join(folder, MANIFEST);
  try {
    return backupManifest.parse(JSON.parse(await readFile(path, 'utf8')));
  } catch (error) {
    throw badBackup(
      path,
      `it is no list of a backup: ${error instanceof Error ? error.message : ''}`,
    );
  }
}

export const badBackup = (path: string, why: string, value?: string): RefusalError =>
  new RefusalError({
    code: 'bad-value',
    place: { file: path },
    ...(value === undefined ? {} : { value }),
    why,
    next: 'Nothing was restored. Take an older backup, and keep this one for whoever looks into it.',
  });
