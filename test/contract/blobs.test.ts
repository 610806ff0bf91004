import { createHash } from 'node:crypto';
import { request } from 'node:http';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { blobAnswer } from '../../src/server/index.ts';
import { refusalsOf, Served } from './serve.ts';

let served: Served;
beforeAll(async () => {
  served = await Served.start();
});
afterAll(() => served.close());

const PNG = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 1, 2]);
const JPEG = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 3, 4]);
const put = (body: unknown, headers: Record<string, string> = {}) =>
  served.call('/api/blobs', { method: 'PUT', body, headers });

test.each([
  ['a PNG', PNG, 'image/png', 'inline'],
  ['a JPEG', JPEG, 'image/jpeg', 'inline'],
  ['a page', Buffer.from('<script>alert(1)</script>'), 'application/octet-stream', 'attachment'],
  [
    'a drawing that could hold a script',
    Buffer.from('<svg onload="x()"/>'),
    'application/octet-stream',
    'attachment',
  ],
  ['one byte', Buffer.from([0x89]), 'application/octet-stream', 'attachment'],
  ['half a megabyte', Buffer.alloc(2 ** 19, 7), 'application/octet-stream', 'attachment'],
])('%s comes back as it went in, marked by its bytes', async (_what, bytes, type, disposition) => {
  const kept = await put(bytes, { 'content-type': 'text/html' });
  expect(kept.status).toBe(200);
  const { hash } = blobAnswer.parse(kept.json);
  expect(hash).toBe(createHash('sha256').update(bytes).digest('hex'));
  const got = await served.call(`/api/blobs/${hash}`);
  expect(got.status).toBe(200);
  expect(got.bytes.equals(bytes)).toBe(true);
  expect(got.headers['content-type']).toBe(type);
  expect(got.headers['content-disposition']?.split(';')[0]).toBe(disposition);
  expect(got.headers['x-content-type-options']).toBe('nosniff');
  expect(got.headers['content-security-policy']).toBe("default-src 'none'; sandbox");
});

test('JSON is bytes here, and the same bytes twice are one blob', async () => {
  const json = '{"a": 1}';
  const first = await put(json, { 'content-type': 'application/json' });
  const second = await put(json, {});
  expect(second.json).toEqual(first.json);
  await expect(`${JSON.stringify(first.json, null, 2)}\n`).toMatchFileSnapshot(
    'snapshots/blob.json',
  );
});

test('nothing is refused', async () => {
  const answer = await put(undefined);
  expect(answer.status).toBe(400);
  expect(refusalsOf(answer)[0]).toMatchObject({ code: 'bad-call', value: '0 bytes' });
});

test('more than 50 MB is refused, by what it says and by what comes', async () => {
  const large = Buffer.alloc(50 * 2 ** 20 + 1);
  const said = await put(undefined, { 'content-length': String(large.length) }).catch((e) => e);
  expect(said.status).toBe(413);
  expect(await sendUnsaid(large)).toBe(413);
  const hash = createHash('sha256').update(large).digest('hex');
  expect(await served.library.store.hasBlob(hash)).toBe(false);
});

/** Sends bytes without saying how many; the status that comes back. */
function sendUnsaid(bytes: Buffer): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const headers = { authorization: `Bearer ${served.token}` };
    const put = request(
      { host: '127.0.0.1', port: served.port, path: '/api/blobs', method: 'PUT', headers },
      (response) => {
        response.resume();
        resolve(response.statusCode);
      },
    );
    put.on('error', reject);
    for (let at = 0; at < bytes.length; at += 2 ** 20) put.write(bytes.subarray(at, at + 2 ** 20));
    put.end();
  });
}

test.each([
  ['no hash', 'door.png', 400, 'bad-call'],
  ['a hash in capitals', 'A'.repeat(64), 400, 'bad-call'],
  ['a way out of the folder', '..%2F..%2Fetc%2Fpasswd', 400, 'bad-call'],
  ['a blob that is not there', 'a'.repeat(64), 404, 'not-found'],
])('refuses %s', async (_what, hash, status, code) => {
  const answer = await served.call(`/api/blobs/${hash}`);
  expect(answer.status).toBe(status);
  expect(refusalsOf(answer)[0]?.code).toBe(code);
});
