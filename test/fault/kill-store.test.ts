import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { openSqliteStore, type Store } from '../../src/store/index.ts';

const ROUNDS = 50;
const STUDY = 'study-1';
/** The kill comes up to so long after the first acknowledgement. */
const LONGEST_MS = 60;

let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-killed-store-'));
});
afterAll(() => rm(dir, { recursive: true }));

/** Lets a child record, kills it at some moment, and returns the ids it was acknowledged. */
async function killedWhileRecording(how: 'append' | 'stage'): Promise<string[]> {
  const args = ['bin/run-ts.js', 'test/fault/store-child.ts', dir, how, '100000'];
  const child = spawn(process.execPath, args, { cwd: ROOT, stdio: ['ignore', 'pipe', 'inherit'] });
  const acknowledged: string[] = [];
  const lines = createInterface({ input: child.stdout });
  lines.on('line', (line) => {
    if (acknowledged.length === 0) killLater(child);
    expect(line).toMatch(/^ack /);
    acknowledged.push(line.slice('ack '.length));
  });
  await Promise.all([once(child, 'exit'), once(lines, 'close')]);
  expect(child.signalCode).toBe('SIGKILL');
  return acknowledged;
}

const killLater = (child: ChildProcess): void => {
  setTimeout(() => child.kill('SIGKILL'), Math.random() * LONGEST_MS);
};

async function heldIds(store: Store): Promise<string[]> {
  const { changes } = await store.since(STUDY, 0, 1_000_000);
  expect(changes.map((a) => a.at)).toEqual(changes.map((_, i) => i + 1));
  return changes.map((a) => a.change.id);
}

test(`${ROUNDS} kills: nothing acknowledged is lost, and rows agree with changes`, async () => {
  let acknowledged = 0;
  let before: string[] = [];
  let unsaid = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const how = round % 2 ? 'stage' : 'append';
    const ids = await killedWhileRecording(how);
    const store = await openSqliteStore(dir);
    const held = await heldIds(store);
    // What was there is there, then all that was acknowledged, then at most one batch that was not.
    const kept = [...before, ...ids];
    expect(held.slice(0, kept.length)).toEqual(kept);
    const more = held.length - kept.length;
    expect(how === 'stage' ? [0, 1, 2, 3, 4, 5] : [0, 1]).toContain(more);
    if (how === 'stage') expect((held.length - before.length) % 5).toBe(0);
    // The first change adds the vehicle, each other one part.
    const parts = held.length - 1;
    expect((await store.studies())[0]).toMatchObject({ changes: held.length, parts });
    expect(await store.find({ limit: 1_000_000 })).toHaveLength(parts);
    await store.close();
    before = held;
    acknowledged += ids.length;
    unsaid += more;
  }
  console.log(
    `${ROUNDS} kills of the store, ${acknowledged} changes acknowledged, none lost; ${unsaid} were on disk before their acknowledgement could go out`,
  );
});
