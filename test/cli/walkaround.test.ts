import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CommandLine } from './run.ts';

let line: CommandLine;
let talk: string;
beforeAll(async () => {
  line = await CommandLine.open();
  const parts = join(line.dir, 'parts.csv');
  await writeFile(
    parts,
    'part_no,part_name,mass_kg\nA1,made-up bonnet,12.5\nA2,made-up lid,8 ± 0.2\n',
  );
  await line.json('import', parts, '--study', 'made up', '--new', '--invented');
  talk = join(line.dir, 'talk.srt');
  await writeFile(
    talk,
    '1\n00:00:01,000 --> 00:00:05,000\nthe bonnet is about two millimetres thick\n\n2\n00:00:06,000 --> 00:00:09,000\nand the lid is riveted\n',
  );
});
afterAll(() => line.close());
const run = (...args: string[]) => line.run('walkaround', ...args, '--study', 'made up');

test('speech is read without writing, kept, listed, settled', async () => {
  const seen = await run('read', talk);
  expect(seen.out).toMatch(/SubRip, 2 cues, 2 drafts/);
  expect(seen.out).toMatch(/0:0\d {2}A1 {2}quantity: two millimetres thick \(guessed\)/);
  expect((await run('drafts')).out).toBe('No draft waits to be settled.\n');
  expect((await run('import', talk, '--started', '2026-10-05T09:30')).out).toMatch(
    /2 drafts to be settled/,
  );
  expect((await run('drafts')).out).toMatch(/1\s+0:0\d\s+quantity\s+A1\s+2 mm\s+guessed/);
  expect((await run('accept', '1')).code).toBe(0);
  expect((await run('reject', '2')).out).toBe('rejected\n');
  expect((await line.run('list', 'parts', '--study', 'made up')).out).toMatch(/A1.*2 mm/);
});

test('what can not be is refused with what to do next', async () => {
  expect(await run('accept', '1')).toMatchObject({
    code: 4,
    err: expect.stringContaining('accepted already'),
  });
  expect(await run('accept', '9')).toMatchObject({
    code: 3,
    err: expect.stringContaining('There are 1 to 2'),
  });
  expect(await run('import', talk, '--started', 'noon')).toMatchObject({ code: 2 });
  expect((await run('word', 'whatsit', 'A2')).out).toMatch(/read as A2/);
});

test('how common something is, with its interval', async () => {
  const counted = await line.run('walkaround', 'count', 'bonnet');
  expect(counted.out).toMatch(/in 1 of 1 studies.*between 21 % and 100 % \(Wilson, 95 %\)/);
});
