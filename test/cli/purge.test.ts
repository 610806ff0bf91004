import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CommandLine } from './run.ts';

let line: CommandLine;
beforeAll(async () => {
  line = await CommandLine.open();
  const parts = join(line.dir, 'parts.csv');
  await writeFile(parts, 'part_no,part_name,mass_kg\nA1,made-up door,12.5\n');
  for (const study of ['goes', 'stays'])
    await line.json('import', parts, '--study', study, '--new', '--invented');
  await line.json('bundle', '--study', 'goes', '-o', join(line.dir, 'goes.hoist.zip'));
});
afterAll(() => line.close());

test('a study is deleted only when its title is given letter for letter', async () => {
  const { code, err } = await line.run('purge', '--study', 'goes', '--yes', 'Goes');
  expect(code).toBe(2);
  expect(err).toContain('Nothing was deleted');
  const { out } = await line.run('purge', '--study', 'goes', '--yes', 'goes');
  expect(out).toContain('goes is deleted');
  const { out: left } = await line.run('list', 'studies');
  expect(left).toContain('stays');
  expect(left).not.toContain('goes');
});

test('its bundle does not come back into this library, and does into another', async () => {
  const file = join(line.dir, 'goes.hoist.zip');
  const { code, err } = await line.run('import', file);
  expect(code).toBe(6);
  expect(err).toContain('purged from this library');
  const other = await CommandLine.open();
  expect((await other.run('import', file)).code).toBe(0);
  await other.close();
});
