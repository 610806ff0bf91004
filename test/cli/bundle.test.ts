import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CommandLine } from './run.ts';

let [here, there]: readonly CommandLine[] = [];
let file = '';
beforeAll(async () => {
  here = await CommandLine.open();
  there = await CommandLine.open();
  const parts = join(here.dir, 'parts.csv');
  file = join(here.dir, 'made-up.hoist.zip');
  await writeFile(parts, 'part_no,part_name,mass_kg\nA1,made-up door,12.5\n');
  await here.json('import', parts, '--study', 'made up', '--new', '--invented');
});
afterAll(async () => {
  await here?.close();
  await there?.close();
});

test('a study is written to a file and comes in elsewhere', async () => {
  expect(await here?.json('bundle', '--study', 'made up', '-o', file)).toMatchObject({ file });
  const { out } = (await there?.run('import', file)) ?? {};
  expect(out).toBe('made up: 2 of 2 changes and 0 of 0 blobs were new here.\n');
  const [a, b] = [await here?.json('list', 'parts'), await there?.json('list', 'parts')];
  expect(a).toEqual(b);
});

test.each([
  [4, 'is there already', () => ['bundle', '--study', 'made up', '-o', file]],
  [2, 'is a zip, by its name too', () => ['bundle', '--study', 'made up', '-o', 'made-up.bin']],
  [2, 'brings its own study', () => ['import', file, '--study', 'made up']],
  [2, '--study is missing', () => ['import', join(here?.dir ?? '', 'parts.csv')]],
])('refused with %d: %s', async (code, why, args) => {
  const ran = await here?.run(...args());
  expect(ran?.code).toBe(code);
  expect(ran?.err).toContain(why);
});
