import { createWriteStream } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import type { FastifyRequest } from 'fastify';
import { bodyOf } from './raw-body.ts';

/** Puts a body where it can be read several times, and takes it away afterwards. */
export async function onDisk<T>(
  request: FastifyRequest,
  limit: number,
  file: string,
  work: (path: string) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'hoistside-import-'));
  try {
    const path = join(folder, 'body');
    await pipeline(bodyOf(request, limit, { file }), createWriteStream(path));
    return await work(path);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
