import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { MANIFEST } from './backup-manifest.ts';

/** A backup is named by when it was made, so that names sort by age: 2026-11-25T10-00-00-000Z. */
const STAMP = /^(\d{4}-\d\d-\d\d)T(\d\d)-(\d\d)-(\d\d)-(\d{3})Z$/;
/** What is under way is named so; nobody takes it for a backup. */
const PARTIAL = '.part-';
/** No backup takes longer. */
const LONGEST_MS = 24 * 3_600_000;

export const stampOf = (made: Date): string => made.toISOString().replace(/[:.]/g, '-');
export const partialName = (stamp: string, id: string): string => `${PARTIAL}${stamp}-${id}`;

/** When a backup was made, Unix time in milliseconds. */
export const madeMs = (name: string): number => Date.parse(name.replace(STAMP, '$1T$2:$3:$4.$5Z'));

/** Names of the whole backups in a folder, oldest first; none when it is not there. */
export async function backupsIn(folder: string): Promise<string[]> {
  const names = (await readdir(folder).catch(() => [])).filter((name) => STAMP.test(name)).sort();
  const whole = await Promise.all(names.map((name) => exists(join(folder, name, MANIFEST))));
  return names.filter((_, i) => whole[i]);
}

const exists = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );

/** Deletes all but the latest backups, and what backups that were cut off have left. */
export async function pruneBackups(folder: string, keep: number): Promise<void> {
  const old = (await backupsIn(folder)).slice(0, -keep);
  for (const name of [...old, ...(await cutOff(folder))])
    await rm(join(folder, name), { recursive: true, force: true });
}

async function cutOff(folder: string): Promise<string[]> {
  const left: string[] = [];
  for (const name of await readdir(folder)) {
    if (!name.startsWith(PARTIAL)) continue;
    const { mtimeMs } = await stat(join(folder, name));
    if (Date.now() - mtimeMs > LONGEST_MS) left.push(name);
  }
  return left;
}
