import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ensureDebian } from '../../scripts/ensure-debian.ts';
import { ChildServer } from './child-server.ts';
import { RecordingClient } from './recording-client.ts';
import { answersIn, readTrace, type SystemCall, traced, unsyncedAnswers } from './system-calls.ts';

const CHANGES = 5;
const ANSWER = /"HTTP\/1\.1 200 OK/;

let calls: readonly SystemCall[];
let dir: string;

/** A server under strace takes changes one by one, then a blob; then it is killed. */
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-traced-'));
  const file = join(dir, 'trace.txt');
  const strace = ensureDebian('strace', 'strace');
  const server = await ChildServer.start(join(dir, 'library'), traced(strace, file));
  const client = new RecordingClient();
  for (let i = 0; i < CHANGES; i++) await client.record(server);
  const kept = await server.call('/api/blobs', { method: 'PUT', body: 'a drawing' });
  expect(kept.status).toBe(200);
  server.kill();
  await server.ended();
  calls = readTrace(await readFile(file, 'utf8'));
});
afterAll(() => rm(dir, { recursive: true }));

test('each change is synced to the disk before its acknowledgement goes out', () => {
  const answers = answersIn(calls, ANSWER);
  expect(answers).toHaveLength(CHANGES + 1);
  const untilBlob = calls.filter((call) => call.began < (answers.at(-1)?.began ?? 0));
  expect(unsyncedAnswers(untilBlob, /\/library\.db-wal$/, ANSWER)).toEqual([]);
});

test('a blob is written, synced, renamed and its folder synced before its answer', () => {
  const answers = answersIn(calls, ANSWER);
  const [from, to] = [answers.at(-2)?.ended ?? 0, answers.at(-1)?.began ?? 0];
  const steps = calls
    .filter(
      (call) =>
        call.began > from && call.ended < to && /\/blobs\/(incoming|[0-9a-f]{2}>)/.test(call.text),
    )
    .map((call) => `${call.name}${call.text.includes('incoming') ? ' incoming' : ' folder'}`);
  expect(steps).toEqual(['write incoming', 'fsync incoming', 'rename incoming', 'fsync folder']);
});
