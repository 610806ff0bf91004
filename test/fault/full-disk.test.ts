import { readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  backupLibrary,
  checkLibrary,
  deviceOf,
  importBundle,
  importTableInto,
  Library,
  saveBundle,
} from '../../src/app/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';
import { type Change, type Refusal, RefusalError } from '../../src/study/index.ts';
import { addNode, Device, studyPut } from '../store/make-changes.ts';
import { SmallDisk } from './small-disk.ts';

const STUDY = 'study-small-disk';
const KILOBYTES = 3000;

let disk: SmallDisk;
let dir: string;
let library: Library;
let device: Device;
const open = async (folder = dir) =>
  new Library(await openSqliteStore(folder), folder, await deviceOf(folder));
beforeEach(async () => {
  disk = await SmallDisk.mount(KILOBYTES);
  dir = join(disk.path, 'library');
  library = await open();
  device = new Device(STUDY);
  await accept(device.change([studyPut('small disk, made up'), addNode('van', null, 'vehicle')]));
});
afterEach(async () => {
  await library.close();
  await disk.unmount();
});

const accept = (change: Change) => library.accept(STUDY, [change], 'R. Example');
const held = async () => (await library.store.since(STUDY, 0, 10_000)).changes.map((a) => a.change);
async function refusalOf(work: Promise<unknown>): Promise<Refusal> {
  const error = await work.catch((e: unknown) => e);
  if (!(error instanceof RefusalError)) throw error;
  return error.refusals[0];
}
const fill = (bytes: number) => writeFile(join(disk.path, 'filler'), Buffer.alloc(bytes));
const makeRoom = () => rm(join(disk.path, 'filler'), { force: true });

/** Nothing is damaged, and it goes on. */
async function isWholeAndGoesOn(): Promise<void> {
  await library.close();
  library = await open();
  expect(await checkLibrary(library)).toMatchObject({
    ...{ database: { faults: [], rows: 'as made anew' }, damaged: [] },
  });
  const last = await library.store.lastSeq(STUDY, device.id);
  const goesOn = { ...device.change([addNode('goes on', 'van')]), seq: last + 1 };
  expect((await accept(goesOn)).added).toBe(1);
}

describe('a disk that is full', () => {
  test('while changes come in: refused, all that was acknowledged is kept', async () => {
    const acknowledged: Change[] = [...(await held())];
    let refusal: Refusal | undefined;
    for (let i = 0; i < 5000 && !refusal; i++) {
      const parts = Array.from({ length: 20 }, (_, n) => addNode(`part ${i} ${n}`, 'van'));
      const change = device.change(parts);
      const result = await accept(change).catch((error: unknown) => error);
      if (result instanceof RefusalError) refusal = result.refusals[0];
      else if (result instanceof Error) throw result;
      else acknowledged.push(change);
    }
    expect(refusal).toMatchObject({ code: 'disk-full', place: { file: join(dir, 'library.db') } });
    expect(refusal?.next).toContain('Make room');
    expect(acknowledged.length).toBeGreaterThan(10);
    expect(await held()).toEqual(acknowledged);
    disk.resize(3 * KILOBYTES);
    await isWholeAndGoesOn();
    expect((await held()).slice(0, -1)).toEqual(acknowledged);
  });

  test('while a table comes in: nothing of it is kept', async () => {
    const before = await held();
    const rows = Array.from({ length: 40_000 }, (_, i) => `P${i},made-up part,1.5\n`).join('');
    const refusal = await refusalOf(
      importTableInto(library, STUDY, {
        ...{ form: 'parts', file: 'parts.csv', by: 'R. Example' },
        open: async function* () {
          yield Buffer.from(`part_no,part_name,mass_kg\n${rows}`);
        },
      }),
    );
    expect(refusal.code).toBe('disk-full');
    expect(await held()).toEqual(before);
    await isWholeAndGoesOn();
  });

  test('while a blob comes in: nothing of it is left', async () => {
    const refusal = await refusalOf(library.store.putBlob([Buffer.alloc(KILOBYTES * 1024, 1)]));
    expect(refusal).toMatchObject({ code: 'disk-full', place: { file: join(dir, 'blobs') } });
    expect(await readdir(join(dir, 'blobs'))).toEqual([]);
    const hash = await library.store.putBlob([Buffer.alloc(10_000, 1)]);
    expect(await library.store.hasBlob(hash)).toBe(true);
    await isWholeAndGoesOn();
  });

  test('while a backup or a bundle is written: nothing of it is left', async () => {
    const hash = await library.store.putBlob([Buffer.alloc(600_000, 1)]);
    const photo = { id: 'p', blob: hash, mediaType: 'image/png', subject: null, caption: '' };
    const takenAt = { local: '2026-01-05T09:00:00' };
    await accept(device.change([{ v: 1, e: 'photo.add', photo: { ...photo, takenAt } }]));
    await fill(2_000_000);
    const to = join(disk.path, 'backups');
    expect((await refusalOf(backupLibrary(library, to))).code).toBe('disk-full');
    expect(await readdir(to)).toEqual([]);
    const file = join(disk.path, 'study.hoist.zip');
    expect((await refusalOf(saveBundle(library, STUDY, file))).code).toBe('disk-full');
    expect(await readdir(disk.path)).not.toContain('study.hoist.zip');
    await makeRoom();
    expect((await backupLibrary(library, to)).blobs).toHaveLength(1);
    await isWholeAndGoesOn();
  });

  test('while a bundle comes in: nothing of its changes is kept', async () => {
    const other = await SmallDisk.mount(KILOBYTES);
    const there = await open(join(other.path, 'library'));
    try {
      const parts = Array.from({ length: 3000 }, (_, n) => addNode(`part ${n}`, 'van'));
      await accept(device.change(parts));
      const file = join(disk.path, 'study.hoist.zip');
      await saveBundle(library, STUDY, file);
      await writeFile(join(other.path, 'filler'), Buffer.alloc(2_500_000));
      expect((await refusalOf(importBundle(there, file, 'R. Example'))).code).toBe('disk-full');
      expect(await there.studies()).toEqual([]);
      other.resize(3 * KILOBYTES);
      expect((await importBundle(there, file, 'R. Example')).added).toBe(2);
    } finally {
      await there.close();
      await other.unmount();
    }
  });
});

describe('a disk that is read-only', () => {
  test('refuses what would be stored, with its path; nothing is lost', async () => {
    const before = await held();
    const folder = join(await disk.readOnly(), 'library');
    const refused = (refusal: Refusal) => {
      expect([refusal.code, refusal.place.file?.startsWith(folder)]).toEqual(['read-only', true]);
      expect(refusal.next).toContain('Allow this user to write');
    };
    // While another program has it open it can be read.
    const reader = await openSqliteStore(folder);
    expect((await reader.since(STUDY, 0, 10)).changes.map((a) => a.change)).toEqual(before);
    const more = device.change([addNode('more', 'van')]);
    refused(await refusalOf(reader.append(STUDY, [more], 'R. Example')));
    refused(await refusalOf(reader.putBlob([Buffer.from('more')])));
    await reader.close();
    expect(await held()).toEqual(before);
    await isWholeAndGoesOn();
  });

  test('refuses a new library, and a backup, with its path', async () => {
    const view = await disk.readOnly();
    const [folder, to] = [join(view, 'new'), join(view, 'backups')];
    const opening = await refusalOf(openSqliteStore(folder));
    expect([opening.code, opening.place.file]).toEqual(['read-only', folder]);
    const backup = await refusalOf(backupLibrary(library, to));
    expect([backup.code, backup.place.file]).toEqual(['read-only', to]);
  });
});
