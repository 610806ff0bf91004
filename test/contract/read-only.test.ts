import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aboutAnswer, changesAnswer, studiesAnswer } from '../../src/server/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';
import { openWriter } from '../../src/store/sqlite/connection.ts';
import { refusalsOf, Served } from './serve.ts';
import { STUDY, smallStudy } from './small-study.ts';

let served: Served;
let dir: string;
const { changes, device } = smallStudy();
/** A library that a version to come has written. */
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-newer-'));
  const store = await openSqliteStore(dir);
  await store.append(STUDY, changes, 'R. Example');
  await store.close();
  const writer = openWriter(join(dir, 'library.db'), 100);
  await writer.db.updateTable('schema').set({ version: 999 }).execute();
  writer.close();
  served = await Served.start({ store: await openSqliteStore(dir) });
});
afterAll(async () => {
  await served.close();
  await rm(dir, { recursive: true });
});

test('a newer library is read as any other, and says that it is only read', async () => {
  const about = aboutAnswer.parse((await served.call('/api/about')).json);
  expect(about.readOnly).toContain('newer version');
  const { studies } = studiesAnswer.parse((await served.call('/api/studies')).json);
  expect(studies).toMatchObject([{ study: STUDY, changes: 3, parts: 2 }]);
  const held = await served.call(`/api/studies/${STUDY}/changes`);
  expect(changesAnswer.parse(held.json).changes.map((a) => a.change)).toEqual(changes);
  expect((await served.call(`/api/studies/${STUDY}/answers`)).status).toBe(200);
});

test.each([
  [
    'changes',
    () =>
      served.post(`/api/studies/${STUDY}/changes`, {
        changes: [device.undo(changes[2]?.gesture ?? '')],
      }),
  ],
  ['a study', () => served.post('/api/studies', { title: 'new', vehicle: 'V' })],
  ['a blob', () => served.call('/api/blobs', { method: 'PUT', body: 'a drawing' })],
])('%s are refused, with a reason', async (_what, write) => {
  const answer = await write();
  expect(answer.status).toBe(503);
  expect(refusalsOf(answer)[0]).toMatchObject({ code: 'read-only' });
  expect(refusalsOf(answer)[0]?.next).toContain('Use the newer version');
});
