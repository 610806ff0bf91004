import { createHash } from 'node:crypto';
import { readdir, readFile, truncate, writeFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answersOf, importBundle, type Library, saveBundle } from '../../src/app/index.ts';
import { bundleManifest } from '../../src/schema/index.ts';
import { type Refusal, RefusalError } from '../../src/study/index.ts';
import { PICTURE, recordFullStudy } from '../whole/full-study.ts';
import { blobIn, changesIn, Libraries } from './libraries.ts';
import { type Packed, pack, rename, unpack } from './zip-tools.ts';

let libraries: Libraries;
let library: Library;
let study: string;
let path: string;
beforeAll(async () => {
  libraries = await Libraries.start();
  library = await libraries.open('here');
  study = await recordFullStudy(library);
  path = libraries.path('study.hoist.zip');
  await saveBundle(library, study, path);
});
afterAll(() => libraries.end());

let made = 0;
const freshLibrary = () => libraries.open(`fresh-${++made}`);

describe('a bundle out and in', () => {
  test('gives the same changes, blobs, revision and answers to the last digit', async () => {
    const other = await freshLibrary();
    const done = await importBundle(other, path, 'B. Receiver');
    const { length } = await changesIn(library, study);
    expect(done).toMatchObject({ study, changes: length, added: length, blobs: 1, addedBlobs: 1 });
    expect(await changesIn(other, study)).toEqual(await changesIn(library, study));
    const [was, is] = [await library.view(study), await other.view(study)];
    expect(is.revision).toBe(was.revision);
    expect(is.findings).toEqual(was.findings);
    expect(await answersOf(is)).toEqual(await answersOf(was));
    expect(await other.store.find({ limit: 100 })).toEqual(
      await library.store.find({ limit: 100 }),
    );
    const photo = is.photos()[0];
    expect(await blobIn(other, photo?.blob ?? '')).toEqual(Buffer.from(PICTURE));
  });

  test('keeps who brought each change, and who brings it now', async () => {
    const other = await freshLibrary();
    await importBundle(other, path, 'B. Receiver');
    const [first] = (await other.store.since(study, 0, 1)).changes;
    expect(first?.author).toMatch(/^B\. Receiver ← R\. Example, \d{4}-\d\d-\d\d$/);
  });

  test('twice changes nothing', async () => {
    const other = await freshLibrary();
    await importBundle(other, path, 'B. Receiver');
    const again = await importBundle(other, path, 'B. Receiver');
    expect(again).toMatchObject({ added: 0, addedBlobs: 0 });
    expect(await changesIn(other, study)).toEqual(await changesIn(library, study));
  });

  test('merges into a library that went on with the study', async () => {
    const other = await freshLibrary();
    await importBundle(other, path, 'B. Receiver');
    const entry = (name: string) => [{ v: 1, e: 'node.name', id: 'p1', name } as const];
    await other.record(study, 'B. Receiver', 'there', entry('there'));
    await library.record(study, 'R. Example', 'here', entry('here'));
    const [out, back] = [libraries.path('there.zip'), libraries.path('here.zip')];
    await saveBundle(other, study, out);
    await saveBundle(library, study, back);
    expect(await importBundle(library, out, 'R. Example')).toMatchObject({ added: 1 });
    expect(await importBundle(other, back, 'B. Receiver')).toMatchObject({ added: 1 });
    const [a, b] = [await library.view(study), await other.view(study)];
    expect(a.revision).toBe(b.revision);
    expect(a.node('p1')).toEqual(b.node('p1'));
    expect(a.findings.map((f) => f.code)).toContain('edited-at-once');
  });

  test('tells of a blob that is named and not there', async () => {
    const other = await freshLibrary();
    const absent = 'ab'.repeat(32);
    const id = await recordFullStudy(other);
    await other.record(id, 'R. Example', 'photo', [
      {
        ...{ v: 1, e: 'photo.add' },
        photo: {
          ...{ id: 'ph2', blob: absent, mediaType: 'image/png', subject: null, caption: 'later' },
          takenAt: { local: '2026-01-05T10:00:00' },
        },
      },
    ]);
    const file = libraries.path('pending.zip');
    await saveBundle(other, id, file);
    expect((await importBundle(await freshLibrary(), file, 'B')).missing).toEqual([absent]);
  });
});

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** The bundle with its files changed by `alter`. */
async function altered(name: string, alter: (files: Packed) => void): Promise<string> {
  const files = await unpack(path);
  alter(files);
  const file = libraries.path(`${name}.zip`);
  await pack(files, file);
  return file;
}

const manifestOf = (files: Packed) =>
  bundleManifest.parse(JSON.parse(files.get('manifest.json')?.toString() ?? ''));
const putManifest = (files: Packed, manifest: object) =>
  void files.set('manifest.json', Buffer.from(JSON.stringify(manifest)));

/** Puts other changes in, with a manifest that says so: only their ids can tell. */
function forge(files: Packed, from: string, to: string): void {
  const text = files.get('changes.ndjson')?.toString() ?? '';
  expect(text).toContain(from);
  const changes = Buffer.from(text.replace(from, to));
  const manifest = manifestOf(files);
  const sum = { ...manifest.changes, bytes: changes.length, sha256: sha256(changes) };
  files.set('changes.ndjson', changes);
  putManifest(files, { ...manifest, changes: sum });
}

async function refusalOf(target: Library, file: string): Promise<Refusal> {
  const error = await importBundle(target, file, 'B').catch((e: unknown) => e);
  expect(error).toBeInstanceOf(RefusalError);
  return (error as RefusalError).refusals[0];
}

/** Refused into a fresh library, in which nothing is left. */
async function refused(file: string): Promise<Refusal> {
  const target = await freshLibrary();
  const refusal = await refusalOf(target, file);
  expect(await target.studies()).toEqual([]);
  expect(await readdir(`${target.dir}/blobs`)).toEqual([]);
  return refusal;
}

describe('is refused with a reason, nothing written:', () => {
  test('a file cut short', async () => {
    const file = await altered('cut', () => {});
    const { length } = await readFile(file);
    for (const keep of [length - 1, Math.floor(length / 2), 30, 0]) {
      await truncate(file, keep);
      expect(await refused(file)).toMatchObject({ code: 'bad-bundle', place: { file: 'cut.zip' } });
    }
  });

  test('no zip at all', async () => {
    const file = libraries.path('text.zip');
    await writeFile(file, 'part_no,mass_kg\n');
    expect((await refused(file)).why).toContain('no whole zip file');
  });

  test.each([
    ['../../../evil', 'invalid relative path'],
    ['/absolute/evil', 'absolute path'],
    ['C:/drive/evil', 'absolute path'],
    ['blobs\\evil', 'invalid characters'],
    ['blobs/nohash', 'no part of a bundle'],
  ])('a file named %s', async (name, why) => {
    const innocent = 'x'.repeat(name.length);
    const file = await altered('names', (files) => files.set(innocent, Buffer.from('evil')));
    await rename(file, innocent, name);
    const refusal = await refused(file);
    expect(refusal.code).toBe('bad-bundle');
    expect(refusal.why).toContain(why);
  });

  test('a file that unpacks to far too much', async () => {
    const zeros = Buffer.alloc(300 * 2 ** 20);
    const file = await altered('bomb', (files) => files.set(`blobs/${'00'.repeat(32)}`, zeros));
    expect((await refused(file)).why).toMatch(/^its \d{6} bytes would unpack to 314\d{6}$/);
  });

  test('a file that unpacks to more than it says', async () => {
    const file = await altered('liar', (files) => {
      files.set('changes.ndjson', Buffer.concat([files.get('changes.ndjson') ?? Buffer.alloc(0)]));
    });
    const bytes = await readFile(file);
    // Uncompressed size stands at 24 of a header of the central directory, the name at 46.
    const at = bytes.lastIndexOf('changes.ndjson') - 46 + 24;
    bytes.writeUInt32LE(bytes.readUInt32LE(at) - 100, at);
    await writeFile(file, bytes);
    expect((await refused(file)).code).toBe('bad-bundle');
  });

  test('two files of one name', async () => {
    const files = await unpack(path);
    const file = libraries.path('twice.zip');
    await pack([...files, ['manifest.json', Buffer.from('{}')]], file);
    expect((await refused(file)).why).toContain('two files of one name');
  });

  test('another version, told before anything else', async () => {
    const file = await altered('version', (files) =>
      putManifest(files, { format: 'hoistside-bundle', version: 2, somethingNew: true }),
    );
    expect(await refused(file)).toMatchObject({
      value: '2',
      why: 'the bundle is of version 2, this program reads version 1',
    });
  });

  test('a manifest that is none', async () => {
    const file = await altered('manifest', (files) => putManifest(files, { name: 'a web page' }));
    expect((await refused(file)).why).toContain('no bundle of a study');
  });

  test('a blob that was changed', async () => {
    const file = await altered('blob', (files) => {
      const name = [...files.keys()].find((n) => n.startsWith('blobs/')) ?? '';
      const bytes = Buffer.from(files.get(name) ?? []);
      bytes[bytes.length - 1] = (bytes.at(-1) ?? 0) ^ 1;
      files.set(name, bytes);
    });
    expect((await refused(file)).why).toBe('a blob was changed: its SHA-256 differs');
  });

  test('a blob that is missing, and one too many', async () => {
    const hash = sha256(Buffer.from('more'));
    const more = await altered('more', (files) => files.set(`blobs/${hash}`, Buffer.from('more')));
    expect((await refused(more)).why).toContain('does not list');
    const fewer = await altered('fewer', (files) => {
      for (const name of [...files.keys()]) if (name.startsWith('blobs/')) files.delete(name);
    });
    expect((await refused(fewer)).why).toContain('is missing');
  });

  test('changes that were changed', async () => {
    const file = await altered('changes', (files) => {
      const text = files.get('changes.ndjson')?.toString() ?? '';
      files.set(
        'changes.ndjson',
        Buffer.from(text.replace('12.345678901234567', '12.345678901234568')),
      );
    });
    expect((await refused(file)).why).toContain('their SHA-256 differs');
  });

  test('a change of no known shape, with its line', async () => {
    const file = await altered('shape', (files) => forge(files, '"v":1', '"v":9'));
    const refusal = await refused(file);
    expect(refusal).toMatchObject({
      code: 'bad-bundle',
      place: { row: 1, column: 'changes.ndjson' },
    });
    expect(refusal.why).toContain('entries.0.v');
  });

  test('a change that no calculation could read', async () => {
    const file = await altered('negative', (files) => forge(files, '"x":8.25', '"x":-8.25'));
    expect(await refused(file)).toMatchObject({
      code: 'bad-value',
      why: 'mass, all pieces is negative',
    });
  });

  test('a change that differs from the one that is here', async () => {
    const file = await altered('conflict', (files) => forge(files, '"x":8.25', '"x":8.26'));
    const target = await freshLibrary();
    await importBundle(target, path, 'B');
    const before = await changesIn(target, study);
    expect((await refusalOf(target, file)).code).toBe('conflict');
    expect(await changesIn(target, study)).toEqual(before);
    // The library goes on.
    await target.record(study, 'B', 'on', [{ v: 1, e: 'node.name', id: 'p1', name: 'on' }]);
  });
});
