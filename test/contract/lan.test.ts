import { X509Certificate } from 'node:crypto';
import { mkdtemp, readFile, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { Library } from '../../src/app/index.ts';
import {
  changesAnswer,
  devicesAnswer,
  pairAnswer,
  pairingAnswer,
  type RunningServer,
  startServer,
} from '../../src/server/index.ts';
import { openMemoryStore } from '../../src/store/index.ts';
import { type Call, call } from './http.ts';
import { callTls, type TlsPeer, tlsComplaint } from './https.ts';
import { refusalsOf, Served } from './serve.ts';
import { STUDY, smallStudy } from './small-study.ts';

let dir: string;
let server: RunningServer;
let library: Library;
let peer: TlsPeer;
const paired: string[] = [];
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-lan-'));
  library = new Library(openMemoryStore(), dir, 'desk-test');
  const lan = { paired: ({ name }: { readonly name: string }) => void paired.push(name) };
  server = await startServer({ library, webDir: join(dir, 'no-pages'), lan, log: () => {} });
  const { certificate, port } = server.lan ?? missing();
  const ca = await readFile(join(dir, 'lan', 'authority.pem'), 'utf8');
  peer = { port, ca, name: certificate.names.names[0] ?? '' };
});
afterAll(async () => {
  await server.close();
  await library.close();
  await rm(dir, { recursive: true });
});

function missing(): never {
  throw new Error('the server is not on the network');
}

const bearer = (token: string) => ({ authorization: `Bearer ${token}` });
const atDesk = (path: string, method = 'GET') =>
  call(server.port, path, { method, headers: bearer(server.token) });
const onLan = (path: string, options: Call = {}) => callTls(peer, path, options);
const freshCode = async () => pairingAnswer.parse((await atDesk('/api/pairing', 'POST')).json);
const tryCode = (code: string, name = 'made-up tablet') =>
  onLan('/api/pair', { method: 'POST', body: { code, name } });
const pair = async (name: string) => {
  const answer = await tryCode((await freshCode()).code, name);
  expect(answer.status).toBe(200);
  return pairAnswer.parse(answer.json);
};

describe('the certificate', () => {
  test('is taken by who trusts the authority, under the names of the machine only', async () => {
    expect(await tlsComplaint(peer)).toBeUndefined();
    expect(await tlsComplaint({ ...peer, name: 'evil.example' })).toContain('altnames');
    const other = await mkdtemp(join(tmpdir(), 'hoistside-lan-other-'));
    const stranger = new Library(openMemoryStore(), other, 'desk-other');
    const second = await startServer({ library: stranger, webDir: other, lan: {} });
    const ca = await readFile(join(other, 'lan', 'authority.pem'), 'utf8');
    expect(await tlsComplaint({ ...peer, ca })).toMatch(/unable to verify|self[- ]signed|issuer/);
    await second.close();
    await rm(other, { recursive: true });
  });

  test('can be fetched without sign-in, with the fingerprint that the terminal prints', async () => {
    const { certificate } = server.lan ?? missing();
    const fetched = await onLan('/trust/authority.crt');
    expect(fetched.headers['content-type']).toBe('application/x-x509-ca-cert');
    const cert = new X509Certificate(fetched.bytes);
    expect(cert.fingerprint256).toBe(certificate.fingerprint);
    expect(cert.ca).toBe(true);
    expect((await onLan('/trust')).text).toContain(certificate.fingerprint);
  });

  test('and its keys are for the owner of the library alone', async () => {
    for (const name of ['authority-key.pem', 'server-key.pem', 'authority.pem']) {
      const { mode } = await stat(join(dir, 'lan', name));
      expect(mode & 0o077, name).toBe(0);
    }
    expect((await stat(join(dir, 'lan'))).mode & 0o077).toBe(0);
  });
});

describe('nothing on the network without sign-in', () => {
  test('but pairing, the page that explains trust, and the pages themselves', async () => {
    const { token } = await pair('made-up tablet');
    const document = await onLan('/api/openapi.json', { headers: bearer(token) });
    const { paths } = z
      .looseObject({ paths: z.record(z.string(), z.record(z.string(), z.unknown())) })
      .parse(document.json);
    const routes = Object.entries(paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => [method.toUpperCase(), path] as const),
    );
    expect(routes.length).toBeGreaterThan(10);
    const open: string[] = [];
    for (const [method, path] of routes) {
      const at = path.replace(/\{\w+\}/g, 'x');
      const answer = await onLan(at, { method, ...(method === 'GET' ? {} : { body: {} }) });
      if (answer.status !== 401) open.push(`${method} ${path}`);
      else expect(refusalsOf(answer)[0]?.next).toContain('/pair');
    }
    expect(open).toEqual(['POST /api/pair']);
    expect(routes.map(([, path]) => path)).not.toContain('/api/pairing');
    for (const path of ['/pair', '/pair/page.css', '/pair/page.js', '/trust'])
      expect((await onLan(path)).status).toBe(200);
  });

  test('nor with the token of the desk, nor over plain http', async () => {
    expect((await onLan('/api/studies', { headers: bearer(server.token) })).status).toBe(401);
    await expect(call(peer.port, '/api/studies')).rejects.toThrow();
  });

  test('and never by another name or from another page', async () => {
    const { token } = await pair('made-up tablet');
    const host = `${peer.name}:${peer.port}`;
    for (const [headers, status] of [
      [{}, 200],
      [{ origin: `https://${host}` }, 200],
      [{ origin: `http://${host}` }, 403],
      [{ origin: 'https://evil.example' }, 403],
      [{ host: `evil.example:${peer.port}` }, 403],
      [{ host: `127.0.0.1:${peer.port}` }, 403],
    ] as const) {
      const answer = await onLan('/api/studies', { headers: { ...bearer(token), ...headers } });
      expect([headers, answer.status]).toEqual([headers, status]);
    }
  });
});

describe('a device', () => {
  test('signs in by its code once, and is the author of what it sends', async () => {
    const { code, addresses, expires, fingerprint } = await freshCode();
    expect(code).toMatch(/^\d{4} \d{4}$/);
    expect(Date.parse(expires) - Date.now()).toBeLessThanOrEqual(600_000);
    expect(addresses).toContain(`https://${peer.name}:${peer.port}`);
    expect(fingerprint).toBe(server.lan?.certificate.fingerprint);
    const answer = await tryCode(code, 'tablet at hoist 2');
    const { token } = pairAnswer.parse(answer.json);
    expect(paired.at(-1)).toBe('tablet at hoist 2');
    expect((await tryCode(code)).status).toBe(401);
    const { changes } = smallStudy();
    const path = `/api/studies/${STUDY}/changes`;
    const put = await onLan(path, { method: 'POST', body: { changes }, headers: bearer(token) });
    expect(put.status).toBe(200);
    const held = changesAnswer.parse((await onLan(path, { headers: bearer(token) })).json);
    expect(held.changes.map((a) => a.author)).toEqual(Array(3).fill('tablet at hoist 2'));
    expect((await call(server.port, '/api/studies', { headers: bearer(token) })).status).toBe(401);
    const study = await onLan('/api/studies', {
      ...{ method: 'POST', headers: bearer(token) },
      body: { title: 'from a tablet', vehicle: 'V', by: 'somebody else' },
    });
    const made = z.object({ study: z.string() }).parse(study.json).study;
    expect((await library.store.since(made, 0, 1)).changes[0]?.author).toBe('tablet at hoist 2');
  });

  test('has a token that the server keeps by its digest only', async () => {
    const { token, device } = await pair('tablet with a secret');
    const text = await readFile(join(dir, 'lan', 'devices.json'), 'utf8');
    expect(text).toContain(device.id);
    expect(text).not.toContain(token);
    expect(Buffer.from(token, 'base64url')).toHaveLength(32);
  });

  test('can not take the name of the desk or of another device', async () => {
    const [first, second] = [await pair('tablet of one name'), await pair('Tablet of one name')];
    expect(second.device.name).toBe('Tablet of one name 2');
    expect(second.token).not.toBe(first.token);
    const { token, device } = await pair('local');
    expect(device.name).toBe('local 2');
    const study = await onLan('/api/studies', {
      ...{ method: 'POST', headers: bearer(token) },
      body: { title: 'by a device called local', vehicle: 'V', by: 'the boss' },
    });
    const made = z.object({ study: z.string() }).parse(study.json).study;
    expect((await library.store.since(made, 0, 1)).changes[0]?.author).toBe('local 2');
  });

  test('that is forgotten is out at once', async () => {
    const { token, device } = await pair('lost tablet');
    expect((await onLan('/api/studies', { headers: bearer(token) })).status).toBe(200);
    const before = devicesAnswer.parse((await atDesk('/api/devices')).json).devices;
    expect(before).toContainEqual(device);
    expect((await atDesk(`/api/devices/${device.id}`, 'DELETE')).status).toBe(200);
    expect((await onLan('/api/studies', { headers: bearer(token) })).status).toBe(401);
    expect((await atDesk(`/api/devices/${device.id}`, 'DELETE')).status).toBe(404);
  });

  test('that guesses is slowed down, and is not let in', async () => {
    const { code } = await freshCode();
    const wrong = code === '0000 0000' ? '0000 0001' : '0000 0000';
    const statuses: number[] = [];
    for (let i = 0; i < 14; i++) statuses.push((await tryCode(wrong)).status);
    expect(statuses).not.toContain(200);
    expect(statuses.at(-1)).toBe(503);
    // Not even by the right one, while it is slowed down.
    expect((await tryCode(code)).status).toBe(503);
  });
});

test('pages to pair and to trust have no script or style in them, and say so to the browser', async () => {
  for (const path of ['/pair', '/trust']) {
    const { text, headers } = await onLan(path);
    expect(headers['content-security-policy']).toContain("default-src 'self'");
    expect(text).not.toMatch(/<script>|<style|style="|onclick/);
    expect(text).toContain('<html lang="en">');
  }
});

test('a server for this machine alone says how to be on the network', async () => {
  const served = await Served.start();
  for (const [method, path] of [
    ['POST', '/api/pairing'],
    ['GET', '/api/devices'],
  ] as const) {
    const answer = await served.call(path, { method });
    expect(answer.status).toBe(404);
    expect(refusalsOf(answer)[0]?.next).toContain('serve --lan');
  }
  await served.close();
});
