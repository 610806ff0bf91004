import { copyFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CommandLine } from './run.ts';

const WEIGHTS = fileURLToPath(new URL('../fixtures/workbooks/weights.xlsx', import.meta.url));

let line: CommandLine;
beforeAll(async () => {
  line = await CommandLine.open();
  await copyFile(WEIGHTS, join(line.dir, 'parts.xlsx'));
});
afterAll(() => line.close());

const bring = (...more: string[]) =>
  line.run('import', join(line.dir, 'parts.xlsx'), '--study', 'made up', ...more);
const masses = async () => {
  const { parts } = (await line.json('list', 'parts')) as {
    parts: { label: string; mass: number; massU: number | null; thickness: number }[];
  };
  return parts.map((p) => [p.label, p.mass, p.massU, p.thickness]);
};

test('a preview says which sheet is read, and what of it deserves a word', async () => {
  await bring('--new', '--invented', '--sheet', 'Day 2');
  const { out } = await bring('--preview');
  expect(out).toContain('sheet: Parts (the first; others are Hidden, Day 2)');
  expect(out).toContain('mass');
  expect(await masses()).toEqual([['W-1', 6.5, null, null]]);
});

test('cells come in as written: units in words, units of the number format, spreads', async () => {
  expect((await bring()).code).toBe(0);
  expect((await masses()).slice(1)).toEqual([
    ['00123', 12.34567890123457, null, 0.0015],
    ['A-2', 8.25, 0.05, 0.0095],
    ['A-3', 0.25, null, null],
    ['A-4', 1e-5, null, 0.0003],
  ]);
});

test.each([
  ['a sheet that is not there', ['--sheet', 'Day 3'], 'it has no sheet of this name'],
  ['a delimiter', ['--delimiter', ';'], 'nothing parts the cells of a workbook'],
])('%s is refused', async (_what, more, why) => {
  const { code, err } = await bring(...more);
  expect(code).toBe(2);
  expect(err).toContain(why);
  expect(await masses()).toHaveLength(5);
});
