import { createHash } from 'node:crypto';
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { blobAnswer } from '../../src/server/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';
import { Served } from './serve.ts';

let served: Served;
let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-cut-off-'));
  served = await Served.start({ store: await openSqliteStore(dir) });
});
afterAll(async () => {
  await served.close();
  await rm(dir, { recursive: true });
});

/** Sends a body up to a point, and then is gone. */
const sendPart = (path: string, method: string, part: Uint8Array, whole: number): Promise<void> =>
  new Promise((resolve) => {
    const headers = { authorization: `Bearer ${served.token}`, 'content-length': String(whole) };
    const sent = request({ host: '127.0.0.1', port: served.port, path, method, headers });
    sent.on('error', () => resolve());
    sent.write(part, () => setTimeout(() => sent.destroy(new Error('gone')), 50));
  });

const blobs = () => readdir(join(dir, 'blobs'));

test('an upload that is cut off leaves nothing, and can be sent again', async () => {
  const bytes = Buffer.alloc(400_000, 'a made-up picture');
  await sendPart('/api/blobs', 'PUT', bytes.subarray(0, 250_000), bytes.length);
  await vi.waitFor(async () => expect(await blobs()).toEqual([]));
  const again = await served.call('/api/blobs', { method: 'PUT', body: bytes });
  const { hash } = blobAnswer.parse(again.json);
  expect(hash).toBe(createHash('sha256').update(bytes).digest('hex'));
  expect((await served.call(`/api/blobs/${hash}`)).bytes.equals(bytes)).toBe(true);
});

test('changes and a bundle that are cut off leave nothing', async () => {
  await sendPart('/api/studies/s/changes', 'POST', Buffer.from('{"changes": [{"id": "01'), 5000);
  await sendPart('/api/bundles?file=x.zip', 'POST', Buffer.from('PK\u0003\u0004'), 5000);
  expect((await served.call('/api/about')).status).toBe(200);
  expect(await served.library.studies()).toEqual([]);
});
