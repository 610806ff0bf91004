import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { refusalsAnswer } from '../../src/server/index.ts';
import type { Change } from '../../src/study/index.ts';
import { addNode, Device } from '../store/make-changes.ts';
import { ChildServer } from './child-server.ts';
import { heldBy, RecordingClient, STUDY } from './recording-client.ts';

/** Changes that each device sends to its own server. */
const EACH = 60;

let dir: string;
let [one, two]: readonly ChildServer[] = [];
const both = (): readonly [ChildServer, ChildServer] => {
  if (!one || !two) throw new Error('the servers are not up');
  return [one, two];
};
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-two-'));
  [one, two] = await Promise.all([ChildServer.start(dir), ChildServer.start(dir)]);
});
afterAll(async () => {
  for (const server of both()) {
    server.kill();
    await server.ended();
  }
  await rm(dir, { recursive: true });
});

/** Sends changes one by one; one that is refused as busy is sent again. */
async function send(server: ChildServer, device: Device, count: number): Promise<Change[]> {
  const sent: Change[] = [];
  for (let i = 0; i < count; i++) {
    const change = device.change([addNode(`${device.id} ${i}`, 'van')]);
    for (;;) {
      const path = `/api/studies/${STUDY}/changes`;
      const answer = await server.call(path, { method: 'POST', body: { changes: [change] } });
      if (answer.status === 200) break;
      expect(refusalsAnswer.parse(answer.json).refusals[0].code).toBe('busy');
    }
    sent.push(change);
  }
  return sent;
}

test('two servers on one library keep what either acknowledges, and show all of it', async () => {
  const [a, b] = both();
  await new RecordingClient().record(a);
  const devices = [new Device(STUDY, 'tablet-1', 3), new Device(STUDY, 'tablet-2', 4)] as const;
  const [first, second] = await Promise.all([send(a, devices[0], EACH), send(b, devices[1], EACH)]);
  const ids = (changes: readonly Change[]) => changes.map((c) => c.id).sort();
  const [heldByA, heldByB] = [await heldBy(a), await heldBy(b)];
  expect(heldByA).toEqual(heldByB);
  expect(ids(heldByA.slice(1))).toEqual(ids([...first, ...second]));
  const answers = await Promise.all([a, b].map((s) => s.call(`/api/studies/${STUDY}/answers`)));
  expect(answers[0]?.json).toEqual(answers[1]?.json);
});

test('a large import into one is whole or not there, whatever the other records meanwhile', async () => {
  const [a, b] = both();
  const rows = Array.from({ length: 20_000 }, (_, i) => `row ${i},made up,1.5\n`).join('');
  const importing = a.call(`/api/studies/${STUDY}/import?form=parts&file=parts.csv`, {
    ...{ method: 'POST', body: `part_no,part_name,mass_kg\n${rows}` },
  });
  const sent = await send(b, new Device(STUDY, 'tablet-3', 5), 20);
  expect((await importing).status).toBe(200);
  const held = await heldBy(b);
  expect(held.filter((c) => c.device === 'tablet-3')).toEqual(sent);
  const imported = held.flatMap((c) =>
    c.entries.flatMap((e) => (e.e === 'table.add' ? e.table.rows : [])),
  );
  expect(imported).toHaveLength(20_000);
});

test('one that is killed leaves the other at work', async () => {
  const [a, b] = both();
  const before = await heldBy(b);
  a.kill();
  await a.ended();
  const sent = await send(b, new Device(STUDY, 'tablet-4', 6), 3);
  expect(await heldBy(b)).toEqual([...before, ...sent]);
});
