import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bindGuard } from '../../src/store/sqlite/bind-guard.ts';
import { GuardedDatabase } from '../../src/store/sqlite/guarded-database.ts';

let dir: string;
let database: GuardedDatabase;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-guard-'));
  database = new GuardedDatabase(join(dir, 'guard.db'));
});
afterAll(async () => {
  database.close();
  await rm(dir, { recursive: true });
});

const back = (value: unknown): unknown =>
  Object.values(database.prepare('select ?').all([value])[0] as object)[0];

test.each<[unknown, unknown]>([
  [true, 1],
  [false, 0],
  [0, 0],
  [-1.5, -1.5],
  [2 ** 53 - 1, 2 ** 53 - 1],
  [12n, 12],
  ['', ''],
  ['½ µm "quoted" 😀', '½ µm "quoted" 😀'],
  [null, null],
])('%o comes back from the database as %o', (value, expected) => {
  expect(back(value)).toBe(expected);
});

test('bytes come back as bytes, alone among the parameters too', () => {
  expect(new Uint8Array(back(Buffer.from([0, 1, 255])) as ArrayBuffer)).toEqual(
    new Uint8Array([0, 1, 255]),
  );
});

test.each([
  undefined,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  {},
  [],
  new Date(0),
  () => 1,
  Symbol('s'),
  'a\0b',
])('%o is refused, with its place', (value) => {
  expect(() => bindGuard(['first', value], 2)).toThrow(/^parameter 2 can not be bound/);
  expect(() => database.prepare('select ?, ?').all(['first', value])).toThrow(TypeError);
  expect(() => database.prepare('select ?, ?').run(['first', value])).toThrow(TypeError);
});

test.each([[[]], [['first']], [['a', 'b', 'c']]])('%j for two is refused', (parameters) => {
  const statement = database.prepare(`select ? as "a?", '?', ?`);
  expect(() => statement.all(parameters)).toThrow(/takes 2 parameters/);
});
