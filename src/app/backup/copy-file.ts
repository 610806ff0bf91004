import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { link } from 'node:fs/promises';
import type { Hashed } from '../../store/index.ts';

/** Length and SHA-256 of a file. */
export async function hashOf(path: string): Promise<Hashed> {
  const digest = createHash('sha256');
  let bytes = 0;
  for await (const chunk of createReadStream(path)) {
    digest.update(chunk);
    bytes += chunk.length;
  }
  return { hash: digest.digest('hex'), bytes };
}

/** Gives a file a second name, where the disk has such names; false where it has none. */
export const linked = (from: string, to: string): Promise<boolean> =>
  link(from, to).then(
    () => true,
    () => false,
  );
