import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { fold } from '../../src/study/index.ts';
import { ChildServer } from './child-server.ts';
import { heldBy, PART, RecordingClient, STUDY } from './recording-client.ts';

const ROUNDS = 50;
/** Acknowledgements in a round at most, and how long after the last one the kill may come. */
const MOST_CHANGES = 12;
const LONGEST_WAIT_MS = 4;

let dir: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-killed-'));
});
afterAll(() => rm(dir, { recursive: true }));

const below = (n: number): number => Math.floor(Math.random() * n);

/** Records until a random acknowledgement, kills the server while the next change is on its way. */
async function recordUntilKilled(server: ChildServer, client: RecordingClient): Promise<void> {
  const rounds = 1 + below(MOST_CHANGES);
  for (let i = 0; i < rounds; i++) await client.record(server);
  const next = client.record(server).catch(() => undefined);
  const wait = below(LONGEST_WAIT_MS + 1);
  if (wait > 0) await new Promise((resolve) => setTimeout(resolve, wait));
  server.kill();
  await Promise.all([next, server.ended()]);
}

test(`nothing acknowledged is lost in ${ROUNDS} kills`, async () => {
  const client = new RecordingClient();
  let keptUnacknowledged = 0;
  for (let round = 1; round <= ROUNDS; round++) {
    const server = await ChildServer.start(dir);
    const held = round === 1 ? [] : await heldBy(server);
    const { acknowledged, open } = client;
    expect(held.slice(0, acknowledged.length)).toEqual(acknowledged);
    expect([[], open]).toContainEqual(held.slice(acknowledged.length));
    keptUnacknowledged += held.length - acknowledged.length;
    await recordUntilKilled(server, client);
  }
  const server = await ChildServer.start(dir);
  await client.record(server);
  const held = await heldBy(server);
  server.kill();
  await server.ended();
  expect(held).toEqual(client.acknowledged);
  // Each weighing stands beside the ones before it; the first change made the part.
  const weighings = fold(STUDY, held).readings(PART, 'mass');
  expect(weighings).toHaveLength(held.length - 1);
  console.log(
    `${ROUNDS} kills, ${held.length} changes acknowledged, none lost; ${keptUnacknowledged} were on disk before their acknowledgement could go out`,
  );
});
