import { afterAll, beforeAll, expect, test } from 'vitest';
import { createStudy, importBundle, type Library, saveBundle } from '../../src/app/index.ts';
import { Libraries } from './libraries.ts';

let libraries: Libraries;
let [one, two]: readonly Library[] = [];
beforeAll(async () => {
  libraries = await Libraries.start();
  [one, two] = [await libraries.open('shared'), await libraries.open('shared')];
});
afterAll(() => libraries.end());

const spec = { title: 'made up', vehicle: 'V', by: 'R. Example', invented: true };
const put = (title: string) => [{ v: 1, e: 'study.put', set: { title } }] as const;

test('each of two programs on one library sees what the other records, deletes and brings in', async () => {
  if (!one || !two) throw new Error('not open');
  const study = await createStudy(one, spec);
  expect((await two.view(study)).header.title).toBe('made up');
  await one.record(study, 'R. Example', 'title', put('new title'));
  expect((await two.view(study)).header.title).toBe('new title');
  const file = libraries.path('later.zip');
  await saveBundle(one, study, file);
  await one.purge(study);
  expect([(await one.view(study)).changes, (await two.view(study)).changes]).toEqual([0, 0]);
  const third = await libraries.open('third');
  await importBundle(third, file, 'R. Example');
  expect((await third.view(study)).header.title).toBe('new title');
});
