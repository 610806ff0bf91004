import { afterAll, beforeAll, expect, test } from 'vitest';
import { ackAnswer, bundleAnswer } from '../../src/server/index.ts';
import { refusalsOf, Served } from './serve.ts';
import { STUDY, smallStudy } from './small-study.ts';

let [here, there]: readonly Served[] = [];
beforeAll(async () => {
  here = await Served.start();
  there = await Served.start();
  const { changes } = smallStudy();
  const answer = await here.post(`/api/studies/${STUDY}/changes`, { changes });
  ackAnswer.parse(answer.json);
});
afterAll(async () => {
  await here?.close();
  await there?.close();
});

const bring = (to: Served | undefined, body: Uint8Array, query = 'file=small.hoist.zip') =>
  to?.call(`/api/bundles?${query}`, { method: 'POST', body });

test('a study goes from one server to another as a file', async () => {
  const got = await here?.call(`/api/studies/${STUDY}/bundle`);
  expect(got?.status).toBe(200);
  expect(got?.headers['content-type']).toBe('application/zip');
  expect(got?.headers['content-disposition']).toBe(
    'attachment; filename="small-made-up.hoist.zip"',
  );
  const put = await bring(there, got?.bytes ?? new Uint8Array());
  expect(bundleAnswer.parse(put?.json)).toMatchObject({ study: STUDY, changes: 3, added: 3 });
  const changes = async (at: Served | undefined) =>
    (await at?.library.store.since(STUDY, 0, 10))?.changes.map((a) => a.change);
  expect(await changes(there)).toEqual(await changes(here));
  const again = await bring(there, got?.bytes ?? new Uint8Array());
  expect(bundleAnswer.parse(again?.json).added).toBe(0);
});

test('what is no bundle is refused by its name, and nothing is kept', async () => {
  const answer = await bring(there, Buffer.from('PK no zip'), 'file=evil.zip');
  expect(answer?.status).toBe(422);
  expect(refusalsOf(answer ?? ({} as never))[0]).toMatchObject({
    code: 'bad-bundle',
    place: { file: 'evil.zip' },
  });
  expect(await there?.library.studies()).toHaveLength(1);
});

test('a study that is not there has no bundle', async () => {
  expect((await here?.call('/api/studies/none/bundle'))?.status).toBe(404);
});
