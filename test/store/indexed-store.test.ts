import { IDBFactory, IDBKeyRange, IDBObjectStore } from 'fake-indexeddb';
import { expect, test, vi } from 'vitest';
import { openIndexedStore } from '../../src/store/index.ts';
import { Device, studyPut } from './make-changes.ts';
import { refusalOf } from './store-contract.ts';

const STUDY = 'study-1';
const open = (indexedDB = new IDBFactory()) =>
  openIndexedStore({ indexedDB, IDBKeyRange }, 'made-up');

test('a store in a browser can not be copied to a file, and says so', async () => {
  const refusal = await refusalOf((await open()).backup('/tmp/copy.db'));
  expect(refusal).toMatchObject({ code: 'bad-call', place: { file: '/tmp/copy.db' } });
});

test('it opens again as it was left', async () => {
  const factory = new IDBFactory();
  const device = new Device(STUDY);
  const store = await open(factory);
  await store.append(STUDY, [device.change([studyPut('kept')])], 'R. Example');
  const hash = await store.putBlob([Buffer.from('one picture')]);
  await store.close();
  const again = await open(factory);
  expect((await again.studies()).map((s) => [s.title, s.changes])).toEqual([['kept', 1]]);
  expect(await again.hasBlob(hash)).toBe(true);
  expect(await again.check()).toEqual({ faults: [], rows: 'as made anew' });
});

test('two pages of one browser see and number what the other has kept', async () => {
  const factory = new IDBFactory();
  const [one, two] = [await open(factory), await open(factory)];
  const [a, b] = [new Device(STUDY, 'page-a', 1), new Device(STUDY, 'page-b', 2)];
  await two.studies();
  const acks = await Promise.all(
    [1, 2, 3, 4].map((i) => {
      const [store, device] = i % 2 ? [one, a] : [two, b];
      return store.append(STUDY, [device.change([studyPut(`${i}`)])], 'R. Example');
    }),
  );
  expect(acks.map((ack) => ack.cursor).sort()).toEqual([1, 2, 3, 4]);
  expect(await two.version()).toBe(4);
  for (const store of [one, two]) expect((await store.studies())[0]?.changes).toBe(4);
});

test('where the browser gives no more room it is a full disk, and nothing is kept', async () => {
  const store = await open();
  const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  const device = new Device(STUDY);
  const change = device.change([studyPut('lost')]);
  const works = [
    () => store.append(STUDY, [change], 'R. Example'),
    () => store.putBlob([Buffer.from('x')]),
  ];
  for (const work of works) expect(await refusalOf(work())).toMatchObject({ code: 'disk-full' });
  full.mockRestore();
  expect(await store.studies()).toEqual([]);
  expect((await store.append(STUDY, [change], 'R. Example')).added).toBe(1);
});

test('a store of a newer version is refused and left alone', async () => {
  const factory = new IDBFactory();
  await new Promise((resolve) => {
    factory.open('made-up', 99).onsuccess = resolve;
  });
  const refusal = await refusalOf(open(factory));
  expect(refusal).toMatchObject({
    code: 'read-only',
    place: { file: 'the store of this browser' },
  });
});

test('a change that was altered in the database is found', async () => {
  const factory = new IDBFactory();
  const device = new Device(STUDY);
  const store = await open(factory);
  await store.append(
    STUDY,
    [1, 2].map(() => device.change([studyPut('kept')])),
    'R. Example',
  );
  const db = await new Promise<IDBDatabaseLike>((resolve) => {
    const opening = factory.open('made-up');
    opening.onsuccess = () => resolve(opening.result as unknown as IDBDatabaseLike);
  });
  await new Promise<void>((resolve) => {
    const rows = db.transaction('changes', 'readwrite').objectStore('changes');
    const got = rows.get([STUDY, 2]);
    got.onsuccess = () => {
      const body = got.result.body.replace('kept', 'bent');
      rows.put({ ...got.result, body, seq: 7 }).onsuccess = () => resolve();
    };
  });
  expect((await store.check()).faults).toHaveLength(1);
});

/** As much of a browser's database as the test above alters a row with. */
interface IDBDatabaseLike {
  transaction(
    name: string,
    mode: 'readwrite',
  ): {
    objectStore(name: string): {
      get(key: unknown): { result: { body: string }; onsuccess: (() => void) | null };
      put(row: unknown): { onsuccess: (() => void) | null };
    };
  };
}
