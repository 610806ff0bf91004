import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { call } from './http.ts';
import { refusalsOf, Served } from './serve.ts';

const BROWSER = { accept: 'text/html,*/*' };

describe('built pages', () => {
  let served: Served;
  let webDir: string;
  beforeAll(async () => {
    webDir = await mkdtemp(join(tmpdir(), 'hoistside-pages-'));
    await mkdir(join(webDir, 'assets'));
    await writeFile(join(webDir, 'index.html'), '<!doctype html><p>pages');
    await writeFile(join(webDir, 'assets', 'main-1a2b.js'), 'export {};');
    await writeFile(join(webDir, 'assets', 'part-1a2b.wasm'), Buffer.from([0, 0x61, 0x73, 0x6d]));
    served = await Served.start({ webDir });
  });
  afterAll(async () => {
    await served.close();
    await rm(webDir, { recursive: true });
  });
  const get = (path: string, headers: Record<string, string> = BROWSER) =>
    call(served.port, path, { headers });

  test.each(['/', '/index.html', '/studies/abc/parts'])('%s is the application', async (path) => {
    const page = await get(path);
    expect([page.status, page.text]).toEqual([200, '<!doctype html><p>pages']);
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(page.headers['cache-control']).toBe('no-cache');
  });

  test('files come with their kind, and are kept by their name', async () => {
    const script = await get('/assets/main-1a2b.js', { accept: '*/*' });
    expect([script.status, script.text]).toEqual([200, 'export {};']);
    expect(script.headers['content-type']).toContain('/javascript');
    expect(script.headers['cache-control']).toContain('immutable');
    const wasm = await get('/assets/part-1a2b.wasm', { accept: '*/*' });
    expect(wasm.headers['content-type']).toBe('application/wasm');
  });

  test('a file that is missing is no page, and nothing outside is served', async () => {
    const missing = await get('/assets/other.js', { accept: '*/*' });
    expect(missing.status).toBe(404);
    expect(refusalsOf(missing)[0]?.code).toBe('not-found');
    for (const path of ['/..%2f..%2fetc%2fpasswd', '/assets/..%2f..%2f..%2fetc%2fpasswd'])
      expect((await get(path, { accept: '*/*' })).text).not.toContain('root:');
  });

  test('what a page may do', async () => {
    const { headers } = await get('/');
    const policy = Object.fromEntries(
      (headers['content-security-policy'] as string)
        .split(';')
        .map((directive) => directive.split(/ (.*)/).slice(0, 2)),
    );
    expect(policy['script-src']).toBe("'self' 'wasm-unsafe-eval'");
    expect(policy['worker-src']).toBe("'self'");
    expect(policy['img-src']).toBe("'self' blob:");
    expect(policy['default-src']).toBe("'self'");
    expect(policy).not.toHaveProperty('upgrade-insecure-requests');
    expect(headers['strict-transport-security']).toBeUndefined();
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['referrer-policy']).toBe('no-referrer');
  });
});

test('where nothing was built a page says what to do, and /api answers', async () => {
  const served = await Served.start();
  const page = await call(served.port, '/', { headers: BROWSER });
  expect(page.status).toBe(503);
  expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
  expect(page.text).toContain('npm run build:web');
  expect((await served.call('/api/about')).status).toBe(200);
  await served.close();
});
