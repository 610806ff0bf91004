import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Value } from '../../src/quantity/index.ts';
import type { PartQuery, Store } from '../../src/store/index.ts';
import { type Change, type Entry, type Reading, rowId } from '../../src/study/index.ts';
import { addNode, Device, studyPut } from './make-changes.ts';
import { table } from './random-study.ts';
import type { StoreUnderTest } from './store-contract.ts';

const STUDY = 'study-1';

/** What every store finds of the parts, and says of the studies. */
export function foundParts(under: StoreUnderTest): void {
  let store: Store;
  let device: Device;
  let chunk: string;

  const append = (...changes: Change[]) => store.append(STUDY, changes, 'R. Example');
  const ids = async (query: Omit<PartQuery, 'limit'> = {}, limit = 100) =>
    (await store.find({ ...query, limit })).map((row) => row.id);
  const labels = async (query: Omit<PartQuery, 'limit'> = {}) =>
    (await store.find({ ...query, limit: 100 })).map((row) => row.label).sort();

  const reading = (subject: string, property: string, value: Value, more: Partial<Reading> = {}) =>
    ({
      v: 1,
      e: 'reading.add',
      reading: {
        id: device.newId(),
        of: { subject, property, condition: 'kerb' },
        value,
        asWritten: 'as written',
        how: 'measured',
        by: 'R. Example',
        takenAt: { local: '2026-01-05T08:00:00' },
        instrument: 'scale',
        evidence: [],
        causes: [],
        ...more,
      },
    }) satisfies Entry;
  const kg = (x: number): Value => ({
    t: 'scalar',
    kind: 'mass',
    x,
    spread: { s: 'normal', u: 0.05 },
  });
  const mm = (x: number): Value => ({
    t: 'scalar',
    kind: 'length',
    x: x / 1000,
    spread: { s: 'unknown' },
  });
  const text = (words: string): Value => ({ t: 'text', text: words });

  beforeEach(async () => {
    store = await under.open({ waitMs: 120 });
    device = new Device(STUDY);
    chunk = device.newId();
    await append(
      device.change([
        studyPut('made-up van'),
        addNode('root', null, 'vehicle'),
        addNode('body', 'root', 'assembly'),
        addNode('floor', 'body', 'part', 'Floor panel, left'),
        reading('floor', 'mass', kg(12.5)),
        reading('floor', 'thickness', mm(0.8)),
        reading('floor', 'material', text('steel sheet')),
        reading('floor', 'process', text('stamp')),
        reading('floor', 'count', { t: 'count', n: 2, spread: { s: 'exact' } }),
        reading('floor', 'position', {
          t: 'vector',
          kind: 'length',
          x: [1.2, -0.3, 0.4],
          cov: [],
          frame: 'vehicle',
        }),
      ]),
      device.change([
        {
          v: 1,
          e: 'table.add',
          table: table(chunk, { B: 'body' }, [
            ['10-001', 'Türgriff außen', 'B', '0.25', 'plastic'],
            ['10-002', 'Bracket', 'B', '1.5', 'steel sheet'],
            ['10-003', 'Clip M6', '', '', ''],
          ]),
        },
      ]),
    );
  });
  afterEach(async () => {
    await store.close();
    await under.cleanUp();
  });

  test('a part is shown with its values in force, SI', async () => {
    expect(await store.find({ text: 'floor', limit: 2 })).toEqual([
      {
        study: STUDY,
        id: 'floor',
        label: 'L-floor',
        name: 'Floor panel, left',
        parent: 'body',
        count: 2,
        mass: 12.5,
        massU: 0.05,
        thickness: 0.0008,
        x: 1.2,
        y: -0.3,
        z: 0.4,
        material: 'steel sheet',
        process: 'stamp',
      },
    ]);
  });

  test('a row of a table is shown too; what it does not say is null', async () => {
    const [clip] = await store.find({ text: '10-003', limit: 2 });
    expect(clip).toMatchObject({
      id: rowId(chunk, 4),
      name: 'Clip M6',
      parent: 'root',
      mass: null,
      massU: null,
      material: null,
    });
    expect(await store.find({ text: 'griff', limit: 2 })).toEqual([]);
    expect(await store.find({ text: 'türgriff', limit: 2 })).toMatchObject([
      { mass: 0.25, parent: 'body', material: 'plastic' },
    ]);
  });

  test.each<[string, Omit<PartQuery, 'limit'>, string[]]>([
    ['all', {}, ['10-001', '10-002', '10-003', 'L-floor']],
    ['by material', { material: 'steel sheet' }, ['10-002', 'L-floor']],
    ['by process', { process: 'stamp' }, ['L-floor']],
    ['by both', { material: 'plastic', process: 'stamp' }, []],
    ['by thickness, ends included', { thickness: [0.0008, 0.0009] }, ['L-floor']],
    ['outside the thickness', { thickness: [0.0009, 1] }, []],
    ['by the beginning of words', { text: 'STEEL brack' }, ['10-002']],
    ['by words of different fields', { text: 'left stamp' }, ['L-floor']],
    ['by number', { text: '10' }, ['10-001', '10-002', '10-003']],
    ['without accents, large or small', { text: 'TURGRIFF' }, ['10-001']],
    ['by no word at all', { text: ' - ' }, ['10-001', '10-002', '10-003', 'L-floor']],
    ['by words that are query language elsewhere', { text: '"m6" OR * NEAR(' }, []],
    ['in the study', { study: STUDY, material: 'plastic' }, ['10-001']],
    ['in another study', { study: 'study-2' }, []],
    ['in another study by material', { study: 'study-2', material: 'plastic' }, []],
  ])('finds %s', async (_, query, expected) => {
    expect(await labels(query)).toEqual(expected);
  });

  test('no more than asked for, in the order of study and id', async () => {
    const all = await ids();
    expect(all).toEqual([...all].sort());
    expect(await ids({}, 2)).toEqual(all.slice(0, 2));
  });

  test('finds across studies', async () => {
    const other = new Device('study-0', 'device-b', 2);
    const shared = [addNode('root', null, 'vehicle'), addNode('floor', 'root')];
    await store.append('study-0', [other.change(shared)], 'R. Example');
    const found = await store.find({ text: 'floor', limit: 10 });
    expect(found.map((row) => row.study)).toEqual(['study-0', STUDY]);
    expect(found[0]).toMatchObject({ name: 'name of floor', mass: null });
  });

  test('a second reading, its withdrawal and a choice move the value', async () => {
    const mass = async () => (await store.find({ text: 'floor', limit: 1 }))[0]?.mass;
    const second = reading('floor', 'mass', kg(11), { how: 'guessed' });
    await append(device.change([second]));
    expect(await mass()).toBe(12.5);
    const of = { subject: 'floor', property: 'mass', condition: 'kerb' };
    await append(device.change([{ v: 1, e: 'choose', of, reading: second.reading.id }]));
    expect(await mass()).toBe(11);
    const { id } = second.reading;
    await append(
      device.change([{ v: 1, e: 'reading.withdraw', id, subject: 'floor', why: 'wrong' }]),
    );
    expect(await mass()).toBe(12.5);
  });

  test('a reading of a row of a table moves its value', async () => {
    const row = rowId(chunk, 3);
    const weighed = reading(row, 'mass', kg(1.45));
    await append(device.change([weighed]));
    expect((await store.find({ text: 'bracket', limit: 1 }))[0]).toMatchObject({
      mass: 1.45,
      material: 'steel sheet',
    });
  });

  test('a new name is found, the old one no more', async () => {
    await append(device.change([{ v: 1, e: 'node.name', id: rowId(chunk, 4), name: 'Screw' }]));
    expect(await labels({ text: 'screw' })).toEqual(['10-003']);
    expect(await labels({ text: 'clip' })).toEqual([]);
  });

  test('retiring hides a part with all below it; undoing shows it, and redoing hides it', async () => {
    const retire = device.change([{ v: 1, e: 'node.retire', id: 'body', why: 'not on this one' }]);
    await append(retire);
    expect(await labels()).toEqual(['10-003']);
    const undo = device.undo(retire.gesture);
    await append(undo);
    expect(await labels()).toHaveLength(4);
    await append(device.undo(undo.gesture));
    expect(await labels()).toEqual(['10-003']);
  });

  test('undoing an import of several changes takes all its rows out, redoing puts them back', async () => {
    const gesture = device.newId();
    const part = (n: number) =>
      device.change(
        [
          {
            v: 1,
            e: 'table.add',
            table: table(device.newId(), {}, [[`20-00${n}`, 'Seal', '', '0.1', 'rubber']]),
          },
        ],
        { gesture },
      );
    await append(part(1), part(2));
    expect(await labels({ material: 'rubber' })).toEqual(['20-001', '20-002']);
    const undo = device.undo(gesture);
    await append(undo);
    expect(await labels({ text: 'seal' })).toEqual([]);
    expect((await store.studies())[0]?.parts).toBe(4);
    await append(device.undo(undo.gesture));
    expect(await labels({ text: 'seal' })).toEqual(['20-001', '20-002']);
    expect((await store.studies())[0]?.parts).toBe(6);
  });

  test('what arrives late falls into its place by its clock', async () => {
    const late = new Device(STUDY, 'device-b', 2);
    late.setClock(-1000);
    const early = late.change([{ v: 1, e: 'node.name', id: 'floor', name: 'Earlier name' }]);
    late.setClock(1000);
    const later = late.change([{ v: 1, e: 'node.name', id: 'floor', name: 'Later name' }]);
    await append(later);
    await append(early);
    expect((await store.find({ text: 'later', limit: 1 }))[0]?.id).toBe('floor');
  });

  test('another condition of the study shows the readings taken in it', async () => {
    const of = { subject: 'floor', property: 'mass', condition: 'hung' };
    await append(device.change([reading('floor', 'mass', kg(12.4), { of })]));
    await append(device.change([studyPut('made-up van', 'hung')]));
    const rows = await store.find({ limit: 100 });
    expect(rows.map((row) => row.mass).sort()).toEqual([12.4, null, null, null]);
  });

  test('the head of a study', async () => {
    const last = device.change([studyPut('another title')]);
    await append(last);
    expect(await store.studies()).toEqual([
      {
        study: STUDY,
        title: 'another title',
        vehicle: 'made-up van',
        invented: true,
        changes: 3,
        parts: 4,
        clock: last.clock,
      },
    ]);
  });

  test('a study whose header has not arrived has a head all the same', async () => {
    const other = new Device('study-2', 'device-b', 2);
    await store.append('study-2', [other.change([addNode('a', null)])], 'R. Example');
    expect((await store.studies())[1]).toMatchObject({ study: 'study-2', parts: 1, changes: 1 });
  });

  describe('rebuilding', () => {
    test('makes the same heads and rows again', async () => {
      const before = [await store.studies(), await store.find({ limit: 100 })];
      await store.rebuild();
      expect([await store.studies(), await store.find({ limit: 100 })]).toEqual(before);
    });

    test('leaves the store taking changes', async () => {
      await store.rebuild();
      await append(device.change([addNode('hood', 'body')]));
      expect(await labels({ text: 'hood' })).toEqual(['L-hood']);
      expect((await store.studies())[0]?.parts).toBe(5);
    });
  });
}
