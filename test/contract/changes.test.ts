import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ackAnswer, changesAnswer } from '../../src/server/index.ts';
import type { Change } from '../../src/study/index.ts';
import { addNode, Device } from '../store/make-changes.ts';
import { refusalsOf, Served } from './serve.ts';
import { mass, STUDY, smallStudy } from './small-study.ts';

let served: Served;
const path = `/api/studies/${STUDY}/changes`;
const { device, changes } = smallStudy();

beforeAll(async () => {
  served = await Served.start();
});
afterAll(() => served.close());

const held = async () => changesAnswer.parse((await served.call(path)).json).changes;
const post = (...some: unknown[]) => served.post(path, { changes: some });

test('keeps changes and hands them out in the order of arrival', async () => {
  const ack = await post(...changes);
  expect(ack.status).toBe(200);
  expect(ackAnswer.parse(ack.json)).toEqual({ cursor: 3, added: 3 });
  const arrived = await served.call(path);
  expect(changesAnswer.parse(arrived.json).changes.map((a) => a.change)).toEqual(changes);
  const stable = arrived.text.replaceAll(/"received":"[^"]+"/g, '"received":"(time)"');
  const pretty = `${JSON.stringify(JSON.parse(stable), null, 2)}\n`;
  await expect(pretty).toMatchFileSnapshot('snapshots/changes.json');
});

test('pages: after, limit and next', async () => {
  const first = changesAnswer.parse((await served.call(`${path}?limit=2`)).json);
  expect([first.changes.length, first.next]).toEqual([2, 2]);
  const rest = changesAnswer.parse((await served.call(`${path}?after=${first.next}`)).json);
  expect(rest.changes.map((a) => a.change)).toEqual(changes.slice(2));
  const none = changesAnswer.parse((await served.call(`${path}?after=${rest.next}`)).json);
  expect(none).toEqual({ changes: [], next: rest.next });
});

test('the same changes twice change nothing', async () => {
  const again = await post(...changes);
  expect(again.json).toEqual({ cursor: 3, added: 0 });
  expect(await held()).toHaveLength(3);
});

test('what a newer version stored is handed out as it is', async () => {
  const entries = [{ v: 2, e: 'node.paint', colour: 'red' }] as never;
  const newer = new Device('study-newer', 'device-n', 9).change(entries);
  await served.library.store.append('study-newer', [newer], 'local');
  const answer = await served.call('/api/studies/study-newer/changes');
  expect(answer.status).toBe(200);
  expect((answer.json as { changes: unknown[] }).changes).toMatchObject([{ change: { entries } }]);
});

describe('refuses, and keeps nothing of the call', () => {
  const good = (): Change => new Device(STUDY, 'device-b', 2).change([addNode('x', 'van')]);
  const entryWith = (more: object) => ({
    ...good(),
    entries: [{ ...addNode('x', 'van'), ...more }],
  });
  const nodeOfKind = (kind: string) =>
    entryWith({ node: { id: 'x', kind, parent: 'van', label: 'x', name: 'x' } });

  test.each<[string, object, number, string, string]>([
    ['an unknown field', { ...good(), mood: 'good' }, 400, 'bad-call', 'no field named "mood"'],
    ['an unknown field of an entry', entryWith({ extra: 1 }), 400, 'bad-call', '"extra"'],
    ['an unknown kind of entry', entryWith({ e: 'node.paint' }), 400, 'bad-call', 'does not fit'],
    ['a newer version of an entry', entryWith({ v: 2 }), 400, 'bad-call', 'does not fit'],
    ['an unknown kind of node', nodeOfKind('wheelbarrow'), 400, 'bad-call', 'does not fit'],
    ['a missing clock', { ...good(), clock: undefined }, 400, 'bad-call', 'missing'],
    ['a clock that can not be read', { ...good(), clock: 'noon' }, 422, 'bad-change', 'clock'],
    ['an id that is no ULID', { ...good(), id: 'first' }, 422, 'bad-change', 'no ULID'],
    ['nothing to do', { ...good(), entries: [] }, 422, 'bad-change', 'changes nothing'],
    [
      'a part that is its own parent',
      { ...good(), entries: [addNode('x', 'x')] },
      422,
      'bad-change',
      'its own parent',
    ],
    ['another study', { ...good(), study: 'elsewhere' }, 422, 'bad-change', 'another study'],
    ['an id that is taken', { ...good(), id: changes[0]?.id }, 409, 'conflict', 'this id'],
    ['a count that is taken', { ...changes[0], id: device.newId() }, 409, 'conflict', 'seq'],
  ])('%s', async (_what, bad, status, code, why) => {
    const before = await held();
    const answer = await post(good(), bad);
    expect(answer.status).toBe(status);
    const [first] = refusalsOf(answer);
    expect(first?.code).toBe(code);
    expect(first?.why).toContain(why);
    expect(first?.next).not.toBe('');
    expect(await held()).toEqual(before);
  });

  test('a negative mass, in the words of the record', async () => {
    const answer = await post(device.change([mass('door', -1), mass('bonnet', -1)]));
    expect(answer.status).toBe(422);
    expect(refusalsOf(answer).map((r) => [r.code, r.place.subject])).toEqual([
      ['bad-value', 'door'],
      ['bad-value', 'bonnet'],
    ]);
    await expect(`${JSON.stringify(answer.json, null, 2)}\n`).toMatchFileSnapshot(
      'snapshots/refusals-negative-mass.json',
    );
  });

  test('no changes at all', async () => {
    expect((await post()).status).toBe(400);
  });

  test('a body that is no JSON, is cut off, or has another type', async () => {
    const json = { 'content-type': 'application/json' };
    const send = (body: string, headers: Record<string, string>) =>
      served.call(path, { method: 'POST', body, headers });
    for (const answer of [
      await send('{"changes": [', json),
      await send('', json),
      await send('{"changes": [], "__proto__": {"x": 1}}', json),
      await send('<changes/>', { 'content-type': 'text/xml' }),
    ]) {
      expect(answer.status).toBe(400);
      expect(refusalsOf(answer)[0]?.code).toBe('bad-call');
    }
  });

  test('a body of more than 16 MB', async () => {
    const change = { ...good(), words: 'x'.repeat(17 * 2 ** 20) };
    const answer = await post(change);
    expect(answer.status).toBe(413);
    expect(refusalsOf(answer)[0]?.code).toBe('too-large');
  });
});

test.each(['after=-1', 'after=x', 'limit=0', 'limit=5001', 'limit=2.5', 'page=1'])(
  'refuses ?%s',
  async (query) => {
    const answer = await served.call(`${path}?${query}`);
    expect(answer.status).toBe(400);
    expect(refusalsOf(answer)[0]?.place.column).toMatch(/^querystring/);
  },
);

test('a study that is not there', async () => {
  const answer = await served.call('/api/studies/nowhere/changes');
  expect(answer.status).toBe(404);
  expect(refusalsOf(answer)[0]).toMatchObject({ code: 'not-found', value: 'nowhere' });
});
