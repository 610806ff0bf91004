import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openSqliteStore, type Store } from '../../src/store/index.ts';
import { GuardedDatabase } from '../../src/store/sqlite/guarded-database.ts';
import type { Entry } from '../../src/study/index.ts';
import { addNode, Device, studyPut } from './make-changes.ts';
import { table } from './random-study.ts';
import { refusalOf } from './store-contract.ts';

/** Stands in everything that is recorded of the study, and nowhere else. */
const SECRET = 'Zwiebelfisch';
const STUDY = 'study-secret';

let dir: string;
let store: Store;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-purge-'));
  store = await openSqliteStore(dir, { waitMs: 200 });
});
afterEach(async () => {
  await store.close();
  await rm(dir, { recursive: true });
});

function ifGone(error: NodeJS.ErrnoException): undefined {
  if (error.code !== 'ENOENT') throw error;
}

/** Files in the library's folder whose bytes hold the word, in any of the ways text is kept. */
async function filesWithSecret(): Promise<string[]> {
  const found: string[] = [];
  for (const name of await readdir(dir, { recursive: true })) {
    const path = join(dir, name);
    // The database drops its files beside it when a connection closes: what is gone holds nothing.
    const kind = await stat(path).catch(ifGone);
    if (!kind || kind.isDirectory()) continue;
    const bytes = await readFile(path).catch(ifGone);
    if (!bytes) continue;
    // The index of words folds case, and keeps words that begin alike as what they differ by.
    const text = bytes.toString('latin1').toLowerCase();
    if (text.includes(SECRET.toLowerCase()) || text.includes('elfisch')) found.push(name);
  }
  return found.sort();
}

const photo = (blob: string): Entry => ({
  ...{ v: 1, e: 'photo.add' },
  photo: {
    ...{ id: 'p', blob, mediaType: 'image/png', subject: null, caption: SECRET },
    takenAt: { local: '2026-01-05T09:00:00' },
  },
});

async function recordSecret(parts: number): Promise<string> {
  const device = new Device(STUDY);
  const blob = await store.putBlob([Buffer.from(`a picture of ${SECRET}`)]);
  const rows = Array.from({ length: parts }, (_, i) => [
    `${SECRET} ${i}`,
    SECRET,
    '',
    '1.5',
    SECRET,
  ]);
  const entries = [studyPut(SECRET), addNode('van', null, 'vehicle', SECRET), photo(blob)];
  const imported: Entry = { v: 1, e: 'table.add', table: table(device.newId(), {}, rows) };
  for (const entry of [...entries, imported])
    await store.append(STUDY, [device.change([entry], { words: SECRET })], SECRET);
  return blob;
}

async function recordOther(): Promise<void> {
  const device = new Device('study-other', 'device-b', 2);
  const parts = Array.from({ length: 300 }, (_, i) => addNode(`part ${i}`, 'van'));
  const entries = [studyPut('stays'), addNode('van', null, 'vehicle'), ...parts];
  await store.append('study-other', [device.change(entries)], 'R. Example');
}

test('leaves no trace of a study in any file of the library, and the rest whole', async () => {
  await recordOther();
  const before = await store.find({ limit: 1000 });
  const blob = await recordSecret(500);
  expect((await filesWithSecret()).length).toBeGreaterThanOrEqual(2);
  await store.purge(STUDY);
  expect(await filesWithSecret()).toEqual([]);
  expect(await readdir(join(dir, 'blobs', blob.slice(0, 2)))).toEqual([]);
  expect(await store.find({ limit: 1000 })).toEqual(before);
  expect(await store.find({ text: 'part 299', limit: 9 })).toHaveLength(1);
  await store.rebuild();
  expect(await store.find({ limit: 1000 })).toEqual(before);
  await store.close();
  expect(await filesWithSecret()).toEqual([]);
  store = await openSqliteStore(dir);
});

test('says so when another program keeps traces, and the next opening wipes them', async () => {
  await recordSecret(10);
  const other = new GuardedDatabase(join(dir, 'library.db'));
  for (const sql of ['begin', 'select count(*) from changes']) other.run(sql);
  const refusal = await refusalOf(store.purge(STUDY));
  expect(refusal).toMatchObject({ code: 'busy', place: { file: join(dir, 'library.db') } });
  expect(await store.studies()).toEqual([]);
  expect(await filesWithSecret()).not.toEqual([]);
  other.close();
  await store.close();
  store = await openSqliteStore(dir);
  expect(await filesWithSecret()).toEqual([]);
});

test('a blob that came back into use meanwhile is kept', async () => {
  const blob = await recordSecret(1);
  await writeFile(join(dir, 'note.txt'), 'no part of the library');
  const device = new Device('study-other', 'device-b', 2);
  await store.append('study-other', [device.change([photo(blob)])], 'R. Example');
  await store.purge(STUDY);
  expect(await store.hasBlob(blob)).toBe(true);
});
