import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CommandLine } from './run.ts';

let line: CommandLine;
let to: string;
beforeAll(async () => {
  line = await CommandLine.open();
  to = join(line.dir, 'backups');
  const parts = join(line.dir, 'parts.csv');
  await writeFile(parts, 'part_no,part_name,mass_kg\nA1,made-up door,12.5\n');
  await line.json('import', parts, '--study', 'made up', '--new', '--invented');
});
afterAll(() => line.close());

test('a library is backed up, lost, and restored', async () => {
  const before = await line.json('list', 'parts');
  expect((await line.run('backup', to)).out).toMatch(/^\S+Z: 1 studies, 0 blobs\n$/);
  expect((await line.run('restore', to)).err).toContain('the folder is not empty');
  await rm(line.library, { recursive: true });
  const { code, out } = await line.run('restore', to);
  expect(code).toBe(0);
  expect(out).toContain('database: whole; rows: as made anew\nblobs: 0, 0 damaged\n');
  expect(await line.json('list', 'parts')).toEqual(before);
  expect((await line.run('check-library')).code).toBe(0);
});

test('a damaged blob is told by the check and by the backup, which is made', async () => {
  const hash = 'ab'.repeat(32);
  const folder = join(line.library, 'blobs', 'ab');
  await mkdir(folder);
  await writeFile(join(folder, hash), 'other bytes');
  const check = await line.run('check-library');
  expect(check.code).toBe(2);
  expect(check.err).toContain(`a blob is damaged (found: "${hash}")`);
  const asJson = await line.run('check-library', '--json');
  expect(asJson.code).toBe(2);
  expect(JSON.parse(asJson.out)).toMatchObject({ check: { damaged: [hash] } });
  const made = (await readdir(to)).length;
  const backup = await line.run('backup', to);
  expect(backup.code).toBe(2);
  expect(backup.err).toContain('the backup was made without it');
  expect(await readdir(to)).toHaveLength(made + 1);
});

test.each([
  ['--backup-every', 'often', 'this is no span of time'],
  ['--backup-keep', '0', 'this is no backup-keep'],
  ['--port', '70000', 'this is no port'],
])('serve refuses %s %s', async (option, value, why) => {
  const { code, err } = await line.run('serve', option, value);
  expect(code).toBe(2);
  expect(err).toContain(why);
});
