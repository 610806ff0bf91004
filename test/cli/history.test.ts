import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { z } from 'zod';
import { CommandLine } from './run.ts';

const history = z.object({
  gestures: z.array(z.object({ gesture: z.string(), words: z.string() })),
});
const compared = z.object({
  difference: z.object({
    nodes: z.object({ added: z.array(z.object({ label: z.string() })) }),
    values: z.array(z.unknown()),
    answers: z.array(z.object({ output: z.string() })).optional(),
  }),
});

let line: CommandLine;
let gestures: z.infer<typeof history>['gestures'];
beforeAll(async () => {
  line = await CommandLine.open();
  const parts = join(line.dir, 'parts.csv');
  await writeFile(
    parts,
    'part_no,part_name,mass_kg\nA1,made-up door,12.5\nA2,made-up lid,8 ± 0.2\n',
  );
  await line.json('import', parts, '--study', 'made up', '--new', '--invented');
  gestures = history.parse(await line.json('history', '--study', 'made up')).gestures;
});
afterAll(() => line.close());

const compare = async (...args: string[]) =>
  compared.parse(await line.json('history', '--study', 'made up', ...args)).difference;

test('two moments are compared by the ids of their gestures', async () => {
  const { nodes, values, answers } = await compare('--from', gestures[0]?.gesture ?? '');
  expect(nodes.added.map((n) => n.label)).toEqual(['A1', 'A2']);
  expect(values).toHaveLength(2);
  expect(answers).toBeUndefined();
});

test('answers are compared when asked for', async () => {
  const { answers } = await compare('--from', gestures[0]?.gesture ?? '', '--answers');
  expect(answers?.map((a) => a.output)).toContain('mass');
});

test('an undo shows against the moment before, in words', async () => {
  const last = gestures.at(-1)?.gesture ?? '';
  await line.json('history', '--study', 'made up', '--undo', last);
  const { out } = await line.run('history', '--study', 'made up', '--from', last);
  expect(out).toContain('undone: A1 made-up door (part)');
  expect(out).toContain('A2 made-up lid, mass, all pieces, kerb: 8 ± 0.2 (seen)');
});

test('what is no moment is refused', async () => {
  const { code, err } = await line.run('history', '--study', 'made up', '--from', 'yesterday');
  expect(code).toBe(2);
  expect(err).toContain('from: this is no moment of a study (found: "yesterday")');
});
