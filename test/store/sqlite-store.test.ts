import { mkdtemp, readdir, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openSqliteStore, type Store } from '../../src/store/index.ts';
import { openWriter } from '../../src/store/sqlite/connection.ts';
import { GuardedDatabase } from '../../src/store/sqlite/guarded-database.ts';
import type { Change } from '../../src/study/index.ts';
import { addNode, Device, studyPut } from './make-changes.ts';
import { refusalOf } from './store-contract.ts';

const STUDY = 'study-1';

let dir: string;
let device: Device;
const opened: Store[] = [];
const open = async (waitMs = 120) => {
  const store = await openSqliteStore(dir, { waitMs });
  opened.push(store);
  return store;
};
const append = (store: Store, ...changes: Change[]) => store.append(STUDY, changes, 'R. Example');
const held = async (store: Store) => (await store.since(STUDY, 0, 100)).changes;

beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-sqlite-'));
  device = new Device(STUDY);
});
afterEach(async () => {
  for (const store of opened.splice(0)) await store.close();
  await rm(dir, { recursive: true });
});

describe('the folder', () => {
  test('holds the database and the blobs, and opens again as it was left', async () => {
    const first = await openSqliteStore(join(dir, 'deep', 'library'));
    await append(first, device.change([studyPut('kept'), addNode('a', null)]));
    const hash = await first.putBlob([Buffer.from('a photograph')]);
    const heads = await first.studies();
    await first.close();
    const names = await readdir(join(dir, 'deep', 'library'));
    expect(names).toEqual(expect.arrayContaining(['blobs', 'library.db']));
    const log = join(dir, 'deep', 'library', 'library.db-wal');
    expect((await stat(log)).size).toBe(0);
    const again = await openSqliteStore(join(dir, 'deep', 'library'));
    expect(await again.studies()).toEqual(heads);
    expect(await again.hasBlob(hash)).toBe(true);
    await again.close();
  });

  test('leaves no temporary files of blobs, whole or broken', async () => {
    const store = await open();
    await store.putBlob([Buffer.from('whole')]);
    const broken = (function* () {
      yield Buffer.from('part');
      throw new Error('line lost');
    })();
    await expect(store.putBlob(broken)).rejects.toThrow();
    const names = await readdir(join(dir, 'blobs'), { recursive: true });
    expect(names.filter((name) => !/^[0-9a-f]{2}(\/[0-9a-f]{64})?$/.test(name))).toEqual([]);
  });

  test('a file in the place of the folder is refused', async () => {
    await writeFile(join(dir, 'taken'), 'not a folder');
    const refusal = await refusalOf(openSqliteStore(join(dir, 'taken')));
    expect(refusal).toMatchObject({ code: 'bad-call' });
    expect(refusal.place.file).toContain('taken');
  });

  test('a file that is no database is refused and left alone', async () => {
    const file = join(dir, 'library.db');
    await writeFile(file, 'no database at all '.repeat(100));
    const before = await readFile(file);
    expect(await refusalOf(open())).toMatchObject({ code: 'bad-value', place: { file } });
    expect((await readFile(file)).equals(before)).toBe(true);
  });

  test('a library of a newer version is read, and nothing of it is changed', async () => {
    const first = await open();
    await append(first, device.change([studyPut('kept'), addNode('a', null)]));
    const [heads, parts] = [await first.studies(), await first.find({ limit: 9 })];
    const hash = await first.putBlob([Buffer.from('a photograph')]);
    const writer = openWriter(join(dir, 'library.db'), 100);
    await writer.db.updateTable('schema').set({ version: 999 }).execute();
    // What rows look like in a version to come is not known.
    await writer.db.schema.dropTable('nodes').execute();
    const newer = await open();
    expect(newer.readOnly).toContain('newer version');
    expect(await newer.studies()).toEqual(heads);
    expect(await newer.find({ text: 'name', limit: 9 })).toEqual(parts);
    expect(await held(newer)).toHaveLength(1);
    expect(await newer.lastSeq(STUDY, device.id)).toBe(1);
    expect(await newer.hasBlob(hash)).toBe(true);
    expect(await newer.check()).toEqual({ faults: [], rows: 'not known' });
    await newer.backup(join(dir, 'copy.db'));
    const writes = [
      append(newer, device.change([studyPut('no')])),
      newer.stage(STUDY, 'R. Example'),
      newer.putBlob([Buffer.from('no')]),
      newer.rebuild(),
      newer.purge(STUDY),
    ];
    for (const write of writes)
      expect(await refusalOf(write)).toMatchObject({
        ...{ code: 'read-only', place: { file: join(dir, 'library.db') } },
        why: expect.stringContaining('newer version'),
      });
    const schema = await writer.db.selectFrom('schema').selectAll().execute();
    expect(schema).toEqual([{ version: 999 }]);
    writer.close();
  });

  test('a damaged file is refused at the opening, and left alone', async () => {
    const store = await openSqliteStore(dir);
    const parts = Array.from({ length: 400 }, (_, i) => addNode(`part ${i}`, null));
    await append(store, device.change([studyPut('kept'), ...parts]));
    await store.close();
    const file = join(dir, 'library.db');
    const bytes = await readFile(file);
    bytes.fill(0xff, 5 * 4096, 9 * 4096);
    await writeFile(file, bytes);
    for (const checkAll of [false, true]) {
      const refusal = await refusalOf(openSqliteStore(dir, { checkAll }));
      expect(refusal).toMatchObject({ code: 'bad-value', place: { file } });
      expect(refusal.next).toContain('latest backup');
    }
    expect((await readFile(file)).equals(bytes)).toBe(true);
  });

  test('rows that are not those of the changes are told', async () => {
    const store = await open();
    await append(store, device.change([studyPut('kept'), addNode('a', null)]));
    expect(await store.check()).toEqual({ faults: [], rows: 'as made anew' });
    const writer = openWriter(join(dir, 'library.db'), 100);
    await writer.db.updateTable('nodes').set({ name: 'other' }).execute();
    writer.close();
    expect(await store.check()).toEqual({ faults: [], rows: 'other' });
    // The check itself has mended nothing.
    expect((await store.find({ limit: 9 }))[0]?.name).toBe('other');
    await store.rebuild();
    expect(await store.check()).toEqual({ faults: [], rows: 'as made anew' });
  });

  test('what cut-off uploads left is taken away after a day', async () => {
    await (await open()).close();
    opened.length = 0;
    const [old, fresh] = ['incoming-old', 'incoming-fresh'].map((n) => join(dir, 'blobs', n));
    for (const path of [old, fresh]) await writeFile(path ?? '', 'half');
    const yesterday = new Date(Date.now() - 25 * 3_600_000);
    await utimes(old ?? '', yesterday, yesterday);
    await open();
    expect(await readdir(join(dir, 'blobs'))).toEqual(['incoming-fresh']);
  });
});

describe('two handles on one library', () => {
  test('see what the other has stored, and notice that it has', async () => {
    const [one, two] = [await open(), await open()];
    const before = await two.version();
    expect(await two.version()).toBe(before);
    await append(one, device.change([studyPut('by one'), addNode('a', null)]));
    expect(await two.version()).not.toBe(before);
    expect(await held(two)).toEqual(await held(one));
    expect(await two.studies()).toEqual(await one.studies());
  });

  test('number their changes one after the other', async () => {
    const [one, two] = [await open(2000), await open(2000)];
    const other = new Device(STUDY, 'device-b', 2);
    await Promise.all(
      Array.from({ length: 10 }, () => [
        append(one, device.change([studyPut('one')])),
        append(two, other.change([studyPut('two')])),
      ]).flat(),
    );
    expect((await held(one)).map((a) => a.at)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
  });

  test('a large append of one keeps the other waiting, not the process, then busy', async () => {
    const [one, two] = [await open(), await open(200)];
    const stage = await one.stage(STUDY, 'R. Example');
    let ticks = 0;
    const clock = setInterval(() => ticks++, 10);
    const refusal = await refusalOf(append(two, device.change([studyPut('waits')])));
    clearInterval(clock);
    expect(refusal).toMatchObject({ code: 'busy', place: { file: join(dir, 'library.db') } });
    expect(refusal.next).toContain('Nothing was stored');
    expect(ticks).toBeGreaterThan(5);
    expect(await held(two)).toEqual([]);
    await stage.drop();
    expect((await append(two, device.change([studyPut('now')]))).added).toBe(1);
  });

  test('a large append of one lets the other open and read', async () => {
    const one = await open();
    await append(one, device.change([studyPut('before')]));
    const stage = await one.stage(STUDY, 'R. Example');
    await stage.add([device.change([studyPut('not yet')])]);
    const two = await open();
    expect((await two.studies()).map((s) => s.title)).toEqual(['before']);
    await stage.commit();
    expect((await two.studies()).map((s) => s.title)).toEqual(['not yet']);
  });

  test('closing drops what was not committed', async () => {
    const [one, two] = [await openSqliteStore(dir, { waitMs: 50 }), await open()];
    const stage = await one.stage(STUDY, 'R. Example');
    await stage.add([device.change([studyPut('lost')])]);
    await one.close();
    expect(await held(two)).toEqual([]);
    expect((await append(two, device.change([studyPut('free')]))).added).toBe(1);
  });
});

describe('a backup', () => {
  test('opens as a library of its own, with everything committed', async () => {
    const store = await open();
    await append(store, device.change([studyPut('kept'), addNode('a', null)]));
    await store.backup(join(dir, 'copy.db'));
    const copy = new GuardedDatabase(join(dir, 'copy.db'));
    expect(copy.prepare('select title, parts from studies').all([])).toEqual([
      { title: 'kept', parts: 1 },
    ]);
    expect(copy.prepare('pragma integrity_check').all([])).toEqual([{ integrity_check: 'ok' }]);
    copy.close();
  });

  test('never overwrites a file', async () => {
    const store = await open();
    await writeFile(join(dir, 'older.db'), 'older');
    const refusal = await refusalOf(store.backup(join(dir, 'older.db')));
    expect(refusal).toMatchObject({ code: 'conflict', place: { file: join(dir, 'older.db') } });
    expect(await readFile(join(dir, 'older.db'), 'utf8')).toBe('older');
  });

  test('to a folder that is not there leaves nothing', async () => {
    const store = await open();
    const refusal = await refusalOf(store.backup(join(dir, 'absent', 'copy.db')));
    expect(refusal).toMatchObject({
      code: 'not-found',
      place: { file: join(dir, 'absent', 'copy.db') },
    });
    expect(await readdir(dir)).not.toContain('absent');
  });
});

test('each connection that writes has WAL and synchronous=FULL', () => {
  const database = new GuardedDatabase(join(dir, 'library.db'));
  openWriter(join(dir, 'library.db'), 100).close();
  expect(database.prepare('pragma journal_mode').all([])).toEqual([{ journal_mode: 'wal' }]);
  database.close();
});
