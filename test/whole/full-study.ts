import type { Library } from '../../src/app/index.ts';
import type { Value } from '../../src/quantity/index.ts';
import {
  ENTRY_KINDS,
  type Entry,
  type Id,
  type Reading,
  type TableChunk,
} from '../../src/study/index.ts';
import { lapse, mark, override, record } from '../study/gate-records.ts';
import { spokenEntries } from './spoken-entries.ts';

const BY = 'R. Example';
const TAKEN = { local: '2026-01-05T09:00:00', zone: 'UTC' };
/** The bytes of a photograph, so far as a record looks at them: the PNG signature, then words. */
export const PICTURE: Uint8Array = Buffer.concat([
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  Buffer.from('a made-up picture'),
]);

const kg = (x: number, u: number): Value => ({
  ...{ t: 'scalar', kind: 'mass', x, spread: { s: 'normal', u } },
});

const reading = (id: Id, subject: Id, property: string, value: Value, more = {}): Reading => ({
  ...{ id, of: { subject, property, condition: 'kerb' }, value, asWritten: JSON.stringify(value) },
  ...{ how: 'measured', by: BY, takenAt: TAKEN, instrument: 'scale A', evidence: [], causes: [] },
  ...more,
});

const read = (...from: Parameters<typeof reading>): Entry => ({
  ...{ v: 1, e: 'reading.add', reading: reading(...from) },
});

const node = (id: Id, kind: 'vehicle' | 'assembly' | 'part', parent: Id | null): Entry => ({
  ...{ v: 1, e: 'node.add', node: { id, kind, parent, label: `N-${id}`, name: `made-up ${id}` } },
});

/** Each entry a gesture of its own, in this order. */
function entriesWith(picture: string): readonly (readonly Entry[])[] {
  const title = 'every kind of entry, made up';
  const evidence = [{ blob: picture, words: 'on the scale' }];
  return [
    [
      {
        v: 1,
        e: 'study.put',
        set: { title, vehicle: 'made-up van', condition: 'kerb', invented: true },
      },
    ],
    [{ v: 1, e: 'condition.put', id: 'kerb', words: 'kerb, as received' }],
    [node('van', 'vehicle', null), node('a1', 'assembly', 'van'), node('a2', 'assembly', 'van')],
    [node('p1', 'part', 'a1'), node('p2', 'part', 'a1'), node('p3', 'part', 'van')],
    [{ v: 1, e: 'node.move', id: 'p2', parent: 'a2' }],
    [{ v: 1, e: 'node.name', id: 'p2', name: 'made-up lid' }],
    [{ v: 1, e: 'node.retire', id: 'p3', why: 'counted twice' }],
    [{ v: 1, e: 'link.add', link: { id: 'l1', kind: 'mirror', from: 'p1', to: 'p2' } }],
    [
      {
        v: 1,
        e: 'link.add',
        link: { id: 'l2', kind: 'blocks', from: 'p1', to: null, words: 'the bin' },
      },
    ],
    [{ v: 1, e: 'link.retire', id: 'l2' }],
    [
      {
        v: 1,
        e: 'instrument.put',
        instrument: { id: 'scale A', label: 'scale A', note: '0.01 kg' },
      },
    ],
    [
      {
        ...{ v: 1, e: 'cause.put' },
        cause: {
          id: 'gain',
          what: 'gain',
          kind: 'ratio',
          spread: { s: 'normal', u: 0.001 },
          label: 'gain of scale A',
        },
      },
    ],
    [
      read('r1', 'p1', 'mass', kg(12.345678901234567, 0.1), {
        causes: [{ cause: 'gain', effect: 12.3 }],
        evidence,
      }),
    ],
    [read('r2', 'p1', 'mass', kg(12.1, 0.1))],
    [read('r3', 'p2', 'mass', kg(8.25, 0.05), { how: 'guessed' })],
    [{ v: 1, e: 'reading.withdraw', id: 'r3', subject: 'p2', why: 'misread' }],
    [read('r4', 'p2', 'mass', kg(8.75, 0.05)), read('r5', 'p2', 'mass', kg(8.5, 0.05))],
    [
      {
        v: 1,
        e: 'choose',
        of: { subject: 'p2', property: 'mass', condition: 'kerb' },
        reading: 'r4',
      },
    ],
    corners(),
    [{ v: 1, e: 'rates.put', book: BOOK }],
    [
      {
        ...{ v: 1, e: 'claim.put' },
        claim: {
          id: 'c1',
          words: 'over ten kilos',
          how: 'guessed',
          by: BY,
          heard: TAKEN.local,
          about: ['p1'],
          evidence,
        },
      },
    ],
    [
      {
        ...{ v: 1, e: 'claim.tie' },
        tie: {
          ...{ id: 't1', claim: 'c1', question: 'mass-roll-up', subject: 'p1', output: 'mass' },
          test: { is: 'at least', value: 10, asWritten: '10 kg' },
        },
      },
    ],
    [{ v: 1, e: 'claim.untie', id: 't0' }],
    [{ v: 1, e: 'claim.withdraw', id: 'c0', why: 'said in jest' }],
    [
      {
        ...{ v: 1, e: 'photo.add' },
        photo: {
          id: 'ph1',
          blob: picture,
          mediaType: 'image/png',
          subject: 'p1',
          caption: 'as found',
          takenAt: TAKEN,
        },
      },
    ],
    ...spokenEntries(),
    [record('lower', 'fluids'), override('lower', 'dust'), mark('lower')],
    [lapse('break')],
    [{ v: 1, e: 'table.add', table: TABLE }],
  ];
}

const corners = (): Entry[] =>
  ['FL', 'FR', 'RL', 'RR'].map((corner, i) =>
    read(`corner-${corner}`, 'van', `cornerLoad.${corner}`, kg(7 + i / 3, 0.05)),
  );

const BOOK: Extract<Entry, { e: 'rates.put' }>['book'] = {
  ...{ id: 'made-up-R1', version: 'R1', region: 'made up', date: '2026-01-01', currency: 'u' },
  ...{ volumePerYear: 1000, years: 5, invented: true },
  cells: [
    {
      ...{ cause: 'steel', id: 'material/steel', words: 'steel', kind: 'moneyPerMass', x: 1.2 },
      ...{ spread: { s: 'triangular', low: 1, high: 1.5 }, how: 'guessed', source: 'made up' },
      match: ['steel'],
    },
  ],
};

const TABLE: TableChunk = {
  ...{ id: '01KE6ZZZZZ0000000000000000', parse: 1, nodeKind: 'part', file: 'parts.csv' },
  headings: ['number', 'assembly', 'mass_kg', 'u', 'material'],
  columns: [
    { use: 'label' },
    { use: 'parent' },
    { use: 'property', property: 'mass', kind: 'mass', unit: 'kg', uColumn: 3 },
    { use: 'skip' },
    { use: 'property', property: 'material' },
  ],
  firstRow: 2,
  rows: [
    ['T-1', 'N-a1', '1.5', '0.01', 'steel'],
    ['T-2', 'N-a2', '0.25', '', 'Pölycarbonat'],
  ],
  ...{ decimal: '.', resolved: { 'N-a1': 'a1', 'N-a2': 'a2' }, root: 'van', condition: 'kerb' },
  ...{
    frame: 'vehicle',
    howWithInstrument: 'measured',
    howWithout: 'seen',
    by: BY,
    takenAt: TAKEN,
  },
};

/** A made-up study with an entry of every kind, an undo and a redo, and a picture. */
export async function recordFullStudy(library: Library): Promise<Id> {
  const study = library.newStudy();
  const picture = await library.store.putBlob([PICTURE]);
  const steps = entriesWith(picture);
  const kinds = new Set(steps.flat().map((entry) => entry.e));
  const lacks = ENTRY_KINDS.filter((kind) => !kinds.has(kind));
  if (lacks.length > 0) throw new Error(`the full study lacks ${lacks.join(', ')}`);
  for (const entries of steps) await library.record(study, BY, entries[0]?.e ?? '', entries);
  const undone = await library.record(study, BY, 'rename', [
    { v: 1, e: 'node.name', id: 'p1', name: 'a slip' },
  ]);
  const undo = await library.record(study, BY, 'undo: rename', [], undone.gesture);
  await library.record(study, BY, 'redo: rename', [], undo.gesture);
  return study;
}
