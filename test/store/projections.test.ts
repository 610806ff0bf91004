import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openMemoryStore, openSqliteStore, type Store } from '../../src/store/index.ts';
import { type Change, rowId } from '../../src/study/index.ts';
import { addNode, Device, studyPut } from './make-changes.ts';
import { randomArrivals, table } from './random-study.ts';

const everything = async (store: Store) => ({
  heads: await store.studies(),
  parts: await store.find({ limit: 1_000_000 }),
});

const append = (store: Store, batch: readonly Change[]) =>
  store.append('study-1', batch, 'R. Example');

async function appendOneByOne(store: Store, batch: readonly Change[]): Promise<void> {
  const stage = await store.stage('study-1', 'R. Example');
  for (const change of batch) await stage.add([change]);
  await stage.commit();
}

/** Appends batch after batch to both stores, and compares what they show after each. */
async function compare(batches: readonly (readonly Change[])[]): Promise<void> {
  const dir = await mkdtemp(join(tmpdir(), 'hoistside-projections-'));
  const [kept, folded] = [await openSqliteStore(dir), openMemoryStore()];
  try {
    for (const [i, batch] of batches.entries()) {
      await (i % 3 === 2 ? appendOneByOne(kept, batch) : append(kept, batch));
      await append(folded, batch);
      expect(await everything(kept)).toEqual(await everything(folded));
    }
    await kept.rebuild();
    expect(await everything(kept)).toEqual(await everything(folded));
  } finally {
    await kept.close();
    await rm(dir, { recursive: true });
  }
}

/** The memory store folds all changes for each answer; the projections never do. */
test('rows kept up change by change are those of a fold of all changes', async () => {
  await fc.assert(fc.asyncProperty(randomArrivals, compare), { numRuns: 60, seed: 20260105 });
});

describe('orders of arrival that are rare by chance', () => {
  const device = new Device('study-1');
  const root = device.change([studyPut('order'), addNode('root', null, 'vehicle')]);
  const id = device.newId();
  const rows = [
    ['1', 'bracket', '', '1.5', 'steel'],
    ['2', 'clip', '', '0.1', 'rubber'],
  ];
  const imported = device.change([{ v: 1, e: 'table.add', table: table(id, {}, rows) }]);
  const below = device.change([addNode('below', rowId(id, 2))]);
  const renamed = device.change([{ v: 1, e: 'node.name', id: rowId(id, 3), name: 'pin' }]);
  const retired = device.change([{ v: 1, e: 'node.retire', id: rowId(id, 2), why: 'lost' }]);
  const undone = device.undo(imported.gesture);
  const twice = device.change([
    { v: 1, e: 'table.add', table: table(id, {}, [['1', 'other', '', '9', 'brass']]) },
  ]);

  test.each([
    ['a node before the table whose row it stands below', [[root], [below], [imported]]],
    ['a name before the table whose row it names', [[root], [renamed], [imported]]],
    ['a retirement before the table', [[root], [below], [retired], [imported]]],
    ['an undoing before the table', [[root], [below], [undone], [imported]]],
    ['the root last', [[below], [imported], [retired], [root]]],
    ['a table twice', [[root], [imported], [below], [twice]]],
    ['a table twice, the later first', [[root], [twice], [below], [imported]]],
    ['a table twice, the first undone', [[root], [imported, twice], [below], [undone]]],
  ])('%s', async (_, batches) => {
    await compare(batches);
  });
});
