import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startServer } from '../../src/server/index.ts';
import { RefusalError } from '../../src/study/index.ts';
import { call } from './http.ts';
import { refusalsOf, Served } from './serve.ts';

let served: Served;
beforeAll(async () => {
  served = await Served.start();
});
afterAll(() => served.close());

const withToken = (headers: Record<string, string>, path = '/api/studies') =>
  served.call(path, { headers });

describe('Host', () => {
  test.each(['127.0.0.1', 'localhost'])('%s is us', async (name) => {
    expect((await withToken({ host: `${name}:${served.port}` })).status).toBe(200);
  });

  test.each([
    'evil.example:PORT',
    '127.0.0.1',
    'localhost:1',
    '127.0.0.1.evil.example:PORT',
    '[::1]:PORT',
  ])('%s is refused, on pages too', async (host) => {
    for (const path of ['/api/studies', '/']) {
      const answer = await withToken({ host: host.replace('PORT', `${served.port}`) }, path);
      expect(answer.status).toBe(403);
      expect(refusalsOf(answer)[0]?.code).toBe('not-allowed');
    }
  });
});

describe('Origin', () => {
  test('our own, and none, are let in', async () => {
    const host = `127.0.0.1:${served.port}`;
    expect((await withToken({ origin: `http://${host}`, host })).status).toBe(200);
    expect((await withToken({})).status).toBe(200);
  });

  test.each(['https://evil.example', 'null', 'http://127.0.0.1:1', 'http://localhost:PORT'])(
    '%s is refused',
    async (origin) => {
      const host = `127.0.0.1:${served.port}`;
      const answer = await withToken({ host, origin: origin.replace('PORT', `${served.port}`) });
      expect(answer.status).toBe(403);
      expect(refusalsOf(answer)[0]?.place.column).toBe('Origin');
    },
  );
});

describe('token', () => {
  test('is in the fragment of the address, 32 bytes long, and another on each start', async () => {
    const address = new URL(served.address);
    expect(address.hash).toBe(`#token=${served.token}`);
    expect(address.host).toBe(`127.0.0.1:${served.port}`);
    expect(address.search).toBe('');
    expect(Buffer.from(served.token, 'base64url')).toHaveLength(32);
    const other = await Served.start();
    expect(other.token).not.toBe(served.token);
    await other.close();
  });

  test.each([
    ['none', undefined],
    ['another', `Bearer ${'x'.repeat(43)}`],
    ['a part of it', 'Bearer x'],
    ['another scheme', 'Basic eDp4'],
    ['nothing after the scheme', 'Bearer '],
  ])('%s is refused on every route', async (_what, authorization) => {
    const headers: Record<string, string> = authorization === undefined ? {} : { authorization };
    const paths = ['/api/about', '/api/studies', '/api/openapi.json', '/api/none', '/%61pi/about'];
    for (const path of paths) {
      const answer = await call(served.port, path, { headers });
      expect(answer.status).toBe(401);
      expect(refusalsOf(answer)[0]?.code).toBe('not-signed-in');
      expect(answer.text).not.toContain(served.token);
    }
  });

  test('wrong ones are slowed down, the right one never', async () => {
    const other = await Served.start();
    const guess = () => call(other.port, '/api/about', { headers: { authorization: 'Bearer x' } });
    const statuses = [];
    for (let i = 0; i < 32; i++) statuses.push((await guess()).status);
    expect(statuses.slice(0, 30)).toEqual(Array(30).fill(401));
    expect(statuses.slice(30)).toEqual([503, 503]);
    expect(Number((await guess()).headers['retry-after'])).toBeGreaterThan(0);
    expect((await other.call('/api/about')).status).toBe(200);
    await other.close();
  });
});

describe('port', () => {
  test('a taken one is refused by its number', async () => {
    const { library, port } = served;
    const error = await startServer({ library, webDir: '', port }).catch((e: unknown) => e);
    expect(error).toBeInstanceOf(RefusalError);
    expect((error as RefusalError).refusals[0]).toMatchObject({
      code: 'busy',
      place: { column: 'port' },
      value: String(port),
    });
    expect((error as RefusalError).message).toContain(`port ${port}`);
  });

  test('one that can not be is refused', async () => {
    const { library } = served;
    const error = await startServer({ library, webDir: '', port: 70_000 }).catch((e: unknown) => e);
    expect((error as RefusalError).refusals[0]?.code).toBe('not-allowed');
  });

  test('other addresses of this machine do not answer', async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter((one) => one.address !== '127.0.0.1' && !one.address.startsWith('fe80'))
      .map((one) => one.address);
    // Linux answers on the whole of 127.0.0.0/8, so there is always another one to try.
    for (const host of [...others, '127.0.0.2']) expect(await opens(host)).toBe(false);
    expect(await opens('127.0.0.1')).toBe(true);
  });
});

/** Whether a connection to the server by this address can be made. */
const opens = (host: string): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connect({ host, port: served.port });
    const end = (made: boolean) => {
      socket.destroy();
      resolve(made);
    };
    socket.setTimeout(2000, () => end(false));
    socket.on('connect', () => end(true)).on('error', () => end(false));
  });
