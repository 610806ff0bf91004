import { createHash } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Store } from '../../src/store/index.ts';
import { type Change, RefusalError } from '../../src/study/index.ts';
import { addNode, Device, studyPut } from './make-changes.ts';

/** How the suite opens a store. */
export interface StoreUnderTest {
  readonly open: (options: { readonly waitMs: number }) => Promise<Store>;
  readonly cleanUp: () => Promise<void>;
}

const STUDY = 'study-1';
const [ONE, TWO] = [Buffer.from('one picture'), Buffer.from('another picture')];

/** What every store does, whatever it keeps things in. What differs is in the two test files. */
export function storeContract(under: StoreUnderTest): void {
  let store: Store;
  let device: Device;

  beforeEach(async () => {
    store = await under.open({ waitMs: 120 });
    device = new Device(STUDY);
  });
  afterEach(async () => {
    await store.close();
    await under.cleanUp();
  });

  const append = (...changes: Change[]) => store.append(STUDY, changes, 'R. Example');
  const held = async () => (await store.since(STUDY, 0, 1000)).changes.map((a) => a.change);

  describe('changes', () => {
    test('come out as they went in, in the order of arrival', async () => {
      const changes = [device.change([studyPut('one')]), device.change([addNode('a', null)])];
      expect(await append(...changes)).toEqual({ cursor: 2, added: 2 });
      const { changes: arrived, next } = await store.since(STUDY, 0, 1000);
      expect(arrived.map((a) => a.change)).toEqual(changes);
      expect(arrived.map((a) => [a.at, a.author])).toEqual([
        [1, 'R. Example'],
        [2, 'R. Example'],
      ]);
      expect(new Date(arrived[0]?.received ?? '').toISOString()).toBe(arrived[0]?.received);
      expect(next).toBe(2);
    });

    test('are handed out page by page, and none twice', async () => {
      const changes = Array.from({ length: 5 }, () => device.change([studyPut('again')]));
      await append(...changes);
      const first = await store.since(STUDY, 0, 2);
      const second = await store.since(STUDY, first.next, 2);
      const third = await store.since(STUDY, second.next, 2);
      const fourth = await store.since(STUDY, third.next, 2);
      const ids = [first, second, third].flatMap((p) => p.changes.map((a) => a.change.id));
      expect(ids).toEqual(changes.map((c) => c.id));
      expect(fourth).toEqual({ changes: [], next: 5 });
    });

    test('of one study keep apart from those of another', async () => {
      const other = new Device('study-2', 'device-a', 2);
      await append(device.change([studyPut('one')]));
      await store.append('study-2', [other.change([studyPut('two')])], 'R. Example');
      expect((await store.since('study-2', 0, 10)).changes.map((a) => a.at)).toEqual([1]);
      expect(await held()).toHaveLength(1);
      expect(await store.since('study-3', 0, 10)).toEqual({ changes: [], next: 0 });
    });

    test('sent again do nothing, whatever the order of their keys', async () => {
      const change = device.change([studyPut('one')]);
      await append(change);
      const turned = Object.fromEntries(Object.entries(change).reverse()) as unknown as Change;
      expect(await append(turned)).toEqual({ cursor: 1, added: 0 });
      const next = device.change([studyPut('two')]);
      expect(await append(change, next, next)).toEqual({ cursor: 2, added: 1 });
    });

    test('what a text can hold comes back: signs, quotes, emoji', async () => {
      const words = 'a "quoted" \\ line\nwith \u0001, ½ µm, 😀 and a lone \ud800';
      const change = device.change([studyPut(words)], { words });
      await append(change);
      expect(await held()).toEqual([change]);
    });

    test('lastSeq counts by study and device', async () => {
      const other = new Device(STUDY, 'device-b', 2);
      await append(device.change([studyPut('1')]), device.change([studyPut('2')]));
      await append(other.change([studyPut('3')]));
      expect(await store.lastSeq(STUDY, 'device-a')).toBe(2);
      expect(await store.lastSeq(STUDY, 'device-b')).toBe(1);
      expect(await store.lastSeq(STUDY, 'device-c')).toBe(0);
      expect(await store.lastSeq('study-2', 'device-a')).toBe(0);
    });
  });

  describe('refused, and nothing of the call kept:', () => {
    const good = () => device.change([studyPut('good')]);
    const cases: readonly [string, string, (stored: Change) => Change][] = [
      ['another change under a stored id', 'conflict', (c) => ({ ...c, words: 'other' })],
      [
        "a device's seq used twice",
        'conflict',
        (c) => ({ ...device.change([studyPut('x')]), seq: c.seq }),
      ],
      ['a change of another study', 'bad-change', () => ({ ...good(), study: 'study-2' })],
      ['an id that is no ULID', 'bad-change', () => ({ ...good(), id: 'change-1' })],
      ['a gesture that is no ULID', 'bad-change', () => ({ ...good(), gesture: '' })],
      ['a seq of zero', 'bad-change', () => ({ ...good(), seq: 0 })],
      ['a clock that can not be read', 'bad-change', () => ({ ...good(), clock: 'noon' })],
      ['a device without id', 'bad-change', () => ({ ...good(), device: '' })],
      [
        'a number that JSON can not say',
        'bad-change',
        () => device.change([{ ...studyPut('x'), v: Number.NaN } as never]),
      ],
      ['a hole in a list', 'bad-change', () => device.change([studyPut('x'), undefined as never])],
    ];
    test.each(cases)('%s', async (_, code, wrong) => {
      const stored = device.change([studyPut('stored')]);
      await append(stored);
      const before = await store.studies();
      const refusal = await refusalOf(append(good(), wrong(stored), good()));
      expect(refusal.code).toBe(code);
      expect(refusal.place.study).toBe(STUDY);
      expect(refusal.value).toBeDefined();
      expect(refusal.next).toContain('Nothing of this call was stored');
      expect(await held()).toEqual([stored]);
      expect(await store.studies()).toEqual(before);
    });

    test('two changes of one batch with one seq', async () => {
      const twice = device.change([studyPut('1')]);
      const other = { ...device.change([studyPut('2')]), seq: twice.seq };
      expect((await refusalOf(append(twice, other))).code).toBe('conflict');
      expect(await held()).toEqual([]);
    });

    test('the store takes good changes after a refusal', async () => {
      await refusalOf(append({ ...good(), clock: '' }));
      expect((await append(good())).added).toBe(1);
    });
  });

  test('blobs are listed with their sizes, and the library is found whole', async () => {
    const hashes = [await store.putBlob([ONE]), await store.putBlob([TWO])].sort();
    await append(device.change([studyPut('one'), addNode('a', null)]));
    const listed = [];
    for await (const blob of store.blobs()) listed.push(blob);
    expect(listed.map((b) => b.hash)).toEqual(hashes);
    expect(listed.map((b) => b.bytes).sort()).toEqual([ONE.length, TWO.length]);
    expect(await store.check()).toEqual({ faults: [], rows: 'as made anew' });
    expect(store.readOnly).toBeUndefined();
  });

  describe('a purge', () => {
    const other = () => new Device('study-2', 'device-b', 2);
    const photo = (blob: string) => ({
      ...{ id: `photo ${blob}`, blob, mediaType: 'image/png', subject: null, caption: 'made up' },
      takenAt: { local: '2026-01-05T09:00:00' },
    });
    const withPhotos = (...blobs: readonly string[]) =>
      blobs.map((blob) => ({ v: 1, e: 'photo.add', photo: photo(blob) }) as const);

    test('takes out one study and the blobs that no other names, and nothing else', async () => {
      const [own, shared] = [await store.putBlob([ONE]), await store.putBlob([TWO])];
      await append(
        device.change([studyPut('goes'), addNode('a', null), ...withPhotos(own, shared)]),
      );
      const stays = other().change([studyPut('stays'), addNode('b', null), ...withPhotos(shared)]);
      await store.append('study-2', [stays], 'R. Example');
      const before = await store.version();
      await store.purge(STUDY);
      expect(await held()).toEqual([]);
      expect((await store.studies()).map((s) => s.title)).toEqual(['stays']);
      expect((await store.find({ limit: 10 })).map((row) => row.id)).toEqual(['b']);
      expect((await store.find({ text: 'name', limit: 10 })).map((row) => row.id)).toEqual(['b']);
      expect([await store.hasBlob(own), await store.hasBlob(shared)]).toEqual([false, true]);
      expect(await store.version()).not.toBe(before);
    });

    test('is for good: no device brings the study back', async () => {
      const change = device.change([studyPut('goes')]);
      await append(change);
      await store.purge(STUDY);
      const refusal = await refusalOf(append(change));
      expect(refusal).toMatchObject({ code: 'not-allowed', value: STUDY });
      expect(refusal.why).toMatch(/purged from this library on \d{4}-/);
      expect(await held()).toEqual([]);
      await store.append('study-2', [other().change([studyPut('other')])], 'R. Example');
      await store.purge(STUDY);
      expect((await store.studies()).map((s) => s.title)).toEqual(['other']);
    });
  });

  describe('a large append in pieces', () => {
    const pieces = () =>
      [1, 2, 3].map((n) => [
        device.change([studyPut(`${n} a`)]),
        device.change([studyPut(`${n} b`)]),
      ]);

    test('is not seen before its commit, and whole after it', async () => {
      const stage = await store.stage(STUDY, 'R. Example');
      for (const piece of pieces()) await stage.add(piece);
      expect(await held()).toEqual([]);
      expect(await store.studies()).toEqual([]);
      expect(await stage.commit()).toEqual({ cursor: 6, added: 6 });
      expect(await held()).toHaveLength(6);
      expect((await store.studies()).map((s) => s.changes)).toEqual([6]);
    });

    test('leaves nothing when dropped, and the library free', async () => {
      const [first, second] = pieces();
      const stage = await store.stage(STUDY, 'R. Example');
      await stage.add(first ?? []);
      await stage.drop();
      await stage.drop();
      expect(await held()).toEqual([]);
      expect((await append(...(second ?? []))).added).toBe(2);
    });

    test('leaves nothing when it meets a conflict', async () => {
      const stored = device.change([studyPut('stored')]);
      await append(stored);
      const stage = await store.stage(STUDY, 'R. Example');
      const add = async () => {
        for (const piece of pieces()) await stage.add(piece);
        await stage.add([{ ...stored, words: 'other' }]);
        await stage.commit();
      };
      expect((await refusalOf(add())).code).toBe('conflict');
      expect(await held()).toEqual([stored]);
      expect((await append(device.change([studyPut('later')]))).added).toBe(1);
    });

    test('another writer waits, then is refused as busy', async () => {
      const stage = await store.stage(STUDY, 'R. Example');
      const refusal = await refusalOf(append(device.change([studyPut('waits')])));
      expect(refusal.code).toBe('busy');
      expect(refusal.place.file).toBeTruthy();
      await stage.drop();
    });

    test('another writer that waits in time has its turn', async () => {
      const stage = await store.stage(STUDY, 'R. Example');
      const waiting = append(device.change([studyPut('waits')]));
      await stage.add([device.change([studyPut('first')])]);
      await stage.commit();
      expect(await waiting).toEqual({ cursor: 2, added: 1 });
    });

    test('can not be used once it has ended', async () => {
      const stage = await store.stage(STUDY, 'R. Example');
      await stage.commit();
      expect((await refusalOf(stage.add([]))).code).toBe('bad-call');
      expect((await refusalOf(stage.commit())).code).toBe('bad-call');
    });
  });

  test('the version is another one after a write, and the same without', async () => {
    const before = await store.version();
    expect(await store.version()).toBe(before);
    await append(device.change([studyPut('one')]));
    expect(await store.version()).not.toBe(before);
  });

  test('writers side by side all get their arrival numbers', async () => {
    const devices = ['a', 'b', 'c', 'd'].map((id, i) => new Device(STUDY, id, i + 1));
    const all = devices.flatMap((d) =>
      Array.from({ length: 5 }, () => append(d.change([studyPut('x')]))),
    );
    const cursors = (await Promise.all(all)).map((ack) => ack.cursor);
    expect(cursors.sort((a, b) => a - b)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
  });

  describe('blobs', () => {
    const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
    const read = async (hash: string) => {
      const chunks: Uint8Array[] = [];
      for await (const chunk of store.getBlob(hash)) chunks.push(chunk);
      return Buffer.concat(chunks);
    };
    const some = (length: number) => Buffer.from(Array.from({ length }, (_, i) => (i * 7) % 251));

    test.each([0, 1, 300_000])('%i bytes come back under their SHA-256', async (length) => {
      const bytes = some(length);
      const hash = await store.putBlob([bytes.subarray(0, 100), bytes.subarray(100)]);
      expect(hash).toBe(sha256(bytes));
      expect(await store.hasBlob(hash)).toBe(true);
      expect((await read(hash)).equals(bytes)).toBe(true);
    });

    test('the same bytes twice are one blob', async () => {
      const first = await store.putBlob([some(10)]);
      expect(await store.putBlob([some(4), some(10).subarray(4)])).toBe(first);
    });

    test('what is not there is refused', async () => {
      const hash = sha256(some(3));
      expect(await store.hasBlob(hash)).toBe(false);
      const refusal = await refusalOf(read(hash));
      expect([refusal.code, refusal.value]).toEqual(['not-found', hash]);
    });

    test.each(['', '../../etc/passwd', 'AB'.repeat(32)])('%j is no name', async (name) => {
      expect((await refusalOf(read(name))).code).toBe('bad-call');
      expect((await refusalOf(store.hasBlob(name))).code).toBe('bad-call');
    });

    test('bytes that break off leave nothing', async () => {
      const breaking = (function* () {
        yield some(5);
        throw new Error('line lost');
      })();
      await expect(store.putBlob(breaking)).rejects.toThrow('line lost');
      expect(await store.hasBlob(sha256(some(5)))).toBe(false);
    });
  });
}

/** The first refusal that `work` ends in. */
export async function refusalOf(work: Promise<unknown>) {
  const error = await work.then(
    () => undefined,
    (e: unknown) => e,
  );
  if (!(error instanceof RefusalError)) throw new Error('no refusal', { cause: error });
  return error.refusals[0];
}
