import { createWriteStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { pipeline } from 'node:stream/promises';
import { asFileRefusal } from '../../store/index.ts';
import type { Id } from '../../study/index.ts';
import type { Library } from '../library.ts';
import { writeBundle } from './write-bundle.ts';

/** Writes a study's bundle to a file: there whole and on disk when this returns, or not at all. */
export async function saveBundle(library: Library, study: Id, path: string): Promise<void> {
  const head = await library.findStudy(study);
  const partial = `${path}.part-${library.newStudy()}`;
  try {
    await pipeline(writeBundle(library, head), createWriteStream(partial, { flags: 'wx' }));
    const file = await open(partial, 'r+');
    await file.sync().finally(() => file.close());
    await rename(partial, path);
  } catch (error) {
    await rm(partial, { force: true });
    throw asFileRefusal(error, path);
  }
}
