import { expect, test } from 'vitest';
import { defectAnswer } from '../../src/server/index.ts';
import { openMemoryStore, type Store } from '../../src/store/index.ts';
import { RefusalError } from '../../src/study/index.ts';
import { call } from './http.ts';
import { refusalsOf, Served } from './serve.ts';

/** A store whose list of studies fails as told. */
const failing = (error: Error): Store =>
  Object.assign(openMemoryStore(), { studies: () => Promise.reject(error) });

test('a fault of ours goes into the log under an id, and only the id to the caller', async () => {
  const served = await Served.start({ store: failing(new TypeError('secret detail')) });
  const answer = await served.call('/api/studies?token=not-for-the-log');
  expect(answer.status).toBe(500);
  const { defect } = defectAnswer.parse(answer.json);
  expect(answer.text).toBe(JSON.stringify({ defect }));
  expect(served.logged).toHaveLength(1);
  expect(served.logged[0]).toContain(defect);
  expect(served.logged[0]).toContain('TypeError: secret detail');
  expect(served.logged[0]).toContain('errors.test.ts');
  expect(served.logged[0]).not.toContain('not-for-the-log');
  expect((await served.call('/api/about')).status).toBe(200);
  await served.close();
});

test.each([
  ['disk-full', 507],
  ['read-only', 503],
  ['busy', 503],
  ['conflict', 409],
] as const)('a refusal %s has the status of the table', async (code, status) => {
  const refusal = { code, place: { file: 'library.db' }, why: 'so it is', next: 'Do this.' };
  const served = await Served.start({ store: failing(new RefusalError(refusal)) });
  const answer = await served.call('/api/studies');
  expect(answer.status).toBe(status);
  expect(refusalsOf(answer)).toEqual([refusal]);
  expect(served.logged).toEqual([]);
  await served.close();
});

test('routes that are not there, and addresses that can not be read', async () => {
  const served = await Served.start();
  for (const [method, path] of [
    ['GET', '/api/none'],
    ['DELETE', '/api/studies'],
    ['GET', '/api/studies/'],
    ['POST', '/'],
    ['GET', '/missing.js'],
  ] as const) {
    const answer = await served.call(path, { method });
    expect([path, answer.status]).toEqual([path, 404]);
    expect(refusalsOf(answer)[0]).toMatchObject({ code: 'not-found', value: `${method} ${path}` });
  }
  const bad = await call(served.port, '/api/%zz', {});
  expect(bad.status).toBe(400);
  expect(refusalsOf(bad)[0]?.code).toBe('bad-call');
  await served.close();
});
