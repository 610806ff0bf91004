import {
  cp,
  mkdir,
  readdir,
  readFile,
  rm,
  stat,
  truncate,
  utimes,
  writeFile,
} from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import {
  type Backup,
  backupLibrary,
  checkLibrary,
  deviceOf,
  type Library,
  restoreBackup,
  ScheduledBackup,
} from '../../src/app/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';
import { type Refusal, RefusalError } from '../../src/study/index.ts';
import { recordFullStudy } from '../whole/full-study.ts';
import { changesIn, Libraries } from './libraries.ts';

let libraries: Libraries;
let library: Library;
let study: string;
let to: string;
let made = 0;
beforeAll(async () => {
  libraries = await Libraries.start();
  library = await libraries.open('here');
  study = await recordFullStudy(library);
});
beforeEach(() => {
  to = libraries.path(`backups-${++made}`);
});
afterAll(() => libraries.end());

const restored = () => libraries.path(`restored-${made}`);
const restore = (from = to) => restoreBackup(from, restored(), (dir) => openSqliteStore(dir));
const refusalOf = async (work: Promise<unknown>): Promise<Refusal> => {
  const error = await work.catch((e: unknown) => e);
  expect(error).toBeInstanceOf(RefusalError);
  return (error as RefusalError).refusals[0];
};
const blobFile = (dir: string, hash: string) => join(dir, 'blobs', hash.slice(0, 2), hash);
const photoOf = async () => (await library.view(study)).photos()[0]?.blob ?? '';
const rename = (name: string) => [{ v: 1, e: 'node.name', id: 'p1', name }] as const;

describe('a backup', () => {
  test('is restored to the same library, checked from end to end', async () => {
    await backupLibrary(library, to);
    const { studies, check } = await restore();
    const { length: changes } = await changesIn(library, study);
    expect(studies).toEqual([{ study, title: 'every kind of entry, made up', changes }]);
    expect(check).toEqual({
      ...{ database: { faults: [], rows: 'as made anew' }, blobs: 1 },
      ...{ damaged: [], missing: [], unused: [] },
    });
    const again = await libraries.open(`restored-${made}`);
    expect(await changesIn(again, study)).toEqual(await changesIn(library, study));
    expect(await again.store.find({ limit: 99 })).toEqual(await library.store.find({ limit: 99 }));
    expect((await again.view(study)).revision).toBe((await library.view(study)).revision);
  });

  test('of which there are several: the latest is taken, or the one that is named', async () => {
    const first = await backupLibrary(library, to);
    const before = await library.view(study);
    const revision = before.revision;
    await library.record(study, 'R. Example', 'later', rename('later'));
    const second = await backupLibrary(library, to);
    expect((await restore()).folder).toBe(second.folder);
    await rm(restored(), { recursive: true });
    await restore(first.folder);
    expect((await (await libraries.open(`restored-${made}`)).view(study)).revision).toBe(revision);
  });

  test('shares blobs with the one before, and can be deleted without it', async () => {
    const first = await backupLibrary(library, to);
    const second = await backupLibrary(library, to);
    const hash = await photoOf();
    expect((await stat(blobFile(second.folder, hash))).ino).toBe(
      (await stat(blobFile(first.folder, hash))).ino,
    );
    await rm(first.folder, { recursive: true });
    expect((await restore()).check.blobs).toBe(1);
  });

  test('gives the copy a device name of its own', async () => {
    await backupLibrary(library, to);
    await restore();
    expect(await deviceOf(restored())).not.toBe(library.device);
  });

  test('goes around a damaged blob and names it', async () => {
    const damaged = await libraries.open(`damaged-${made}`);
    const hash = await damaged.store.putBlob([Buffer.from('a photograph')]);
    const good = await damaged.store.putBlob([Buffer.from('another')]);
    await writeFile(blobFile(damaged.dir, hash), 'a photogrhpa');
    const backup = await backupLibrary(damaged, to);
    expect([backup.damaged, backup.blobs.map((b) => b.hash)]).toEqual([[hash], [good]]);
    expect((await checkLibrary(damaged)).damaged).toEqual([hash]);
  });

  test('that was cut off is never taken for one, and goes after a day', async () => {
    const whole = await backupLibrary(library, to);
    const cut = join(to, '.part-2026-01-01T00-00-00-000Z-x');
    await cp(whole.folder, cut, { recursive: true });
    const noManifest = join(to, '2099-01-01T00-00-00-000Z');
    await cp(whole.folder, noManifest, { recursive: true });
    await rm(join(noManifest, 'manifest.json'));
    expect((await restore()).folder).toBe(whole.folder);
    const old = new Date(Date.now() - 25 * 3_600_000);
    await utimes(cut, old, old);
    await scheduled(1).stop();
    expect(await readdir(to)).not.toContain('.part-2026-01-01T00-00-00-000Z-x');
  });
});

describe('is refused, and nothing restored:', () => {
  const expectNothing = async () => {
    const names = await readdir(libraries.dir);
    expect(names.filter((name) => name.startsWith(`restored-${made}`))).toEqual([]);
  };
  const spoil = async (change: (backup: Backup) => Promise<void>) => {
    await change(await backupLibrary(library, to));
    return refusalOf(restore());
  };

  test('a database with a changed byte', async () => {
    const refusal = await spoil(async ({ folder }) => {
      const file = join(folder, 'library.db');
      const bytes = await readFile(file);
      bytes[40_000] = (bytes[40_000] ?? 0) ^ 1;
      await writeFile(file, bytes);
    });
    expect(refusal).toMatchObject({
      code: 'bad-value',
      why: 'the file is damaged: its SHA-256 differs',
    });
    expect(refusal.place.file).toMatch(/library\.db$/);
    await expectNothing();
  });

  test('a blob cut short, and one that is gone', async () => {
    const hash = await photoOf();
    const cut = await spoil(({ folder }) => truncate(blobFile(folder, hash), 3));
    expect(cut.place.file).toContain(hash);
    await rm(to, { recursive: true });
    const gone = await spoil(({ folder }) => rm(blobFile(folder, hash)));
    expect(gone.why).toBe('the file is missing');
    await expectNothing();
  });

  test('a list that is none', async () => {
    const refusal = await spoil(({ folder }) => writeFile(join(folder, 'manifest.json'), '{'));
    expect(refusal.why).toContain('no list of a backup');
    await expectNothing();
  });

  test('no backup at all, and a folder that is in use', async () => {
    expect((await refusalOf(restore())).code).toBe('not-found');
    await backupLibrary(library, to);
    await mkdir(restored());
    await writeFile(join(restored(), 'library.db'), 'mine');
    expect((await refusalOf(restore())).code).toBe('conflict');
    expect(await readFile(join(restored(), 'library.db'), 'utf8')).toBe('mine');
  });

  test('a file where the backups are to go', async () => {
    await writeFile(to, 'taken');
    expect(await refusalOf(backupLibrary(library, to))).toMatchObject({ code: 'bad-call' });
  });
});

/** Backs up at once, then every `everyMs`. */
function scheduled(everyMs: number, keep = 30) {
  const told: string[] = [];
  const plan = { library, to, everyMs, keep };
  const backups = new ScheduledBackup({
    ...plan,
    done: ({ folder }) => void told.push(folder),
    failed: (error) => void told.push(`failed: ${error}`),
  });
  const until = async (count: number) => {
    while (told.length < count) await new Promise((resolve) => setTimeout(resolve, 5));
  };
  const stop = async () => {
    await until(1);
    await backups.stop();
  };
  return { told, until, stop };
}

describe('a schedule', () => {
  test('makes backup after backup, and keeps as many as it is told', async () => {
    const backups = scheduled(20, 2);
    await backups.until(4);
    await backups.stop();
    expect(backups.told.filter((t) => t.startsWith('failed'))).toEqual([]);
    expect(await readdir(to)).toEqual(
      backups.told.slice(-2).map((path) => path.slice(to.length + 1)),
    );
  });

  test('waits while the last backup is young enough', async () => {
    await backupLibrary(library, to);
    const told: string[] = [];
    const backups = new ScheduledBackup({
      ...{ library, to, everyMs: 3_600_000, keep: 5 },
      done: () => void told.push('done'),
      failed: () => void told.push('failed'),
    });
    await new Promise((resolve) => setTimeout(resolve, 200));
    await backups.stop();
    expect(told).toEqual([]);
  });

  test('tells what fails, and goes on', async () => {
    await writeFile(to, 'in the way');
    const backups = scheduled(20);
    await backups.until(1);
    expect(backups.told[0]).toContain('failed: RefusalError');
    await rm(to);
    await backups.until(3);
    await backups.stop();
    expect(backups.told.at(-1)).not.toContain('failed');
  });
});

test('a check tells of blobs that are missing and of those that no study names', async () => {
  const other = await libraries.open(`checked-${made}`);
  const id = await recordFullStudy(other);
  const spare = await other.store.putBlob([Buffer.from('spare')]);
  const photo = (await other.view(id)).photos()[0]?.blob ?? '';
  await rm(blobFile(other.dir, photo));
  expect(await checkLibrary(other)).toMatchObject({
    ...{ blobs: 1, damaged: [], unused: [spare] },
    missing: [{ study: 'every kind of entry, made up', hash: photo }],
  });
});
