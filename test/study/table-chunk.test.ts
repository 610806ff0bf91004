import { describe, expect, it } from 'vitest';
import {
  type ColumnUse,
  chunkOf,
  type Entry,
  expandTable,
  type Reading,
  type TableChunk,
} from '../../src/study/index.ts';
import { askRegistered, out } from '../engine/made-question.ts';
import { studyOf } from './made-study.ts';
import { CHUNK_ID, LABEL, madeTable, massIn, property } from './made-table.ts';

type Of<E extends Entry['e']> = Extract<Entry, { e: E }>;
const only = <E extends Entry['e']>(table: TableChunk, e: E): Of<E>[] =>
  [...expandTable(table)].filter((entry): entry is Of<E> => entry.e === e);
const readings = (table: TableChunk): Reading[] => only(table, 'reading.add').map((r) => r.reading);
const SKIP: ColumnUse = { use: 'skip' };
const U = ['mass_u', SKIP] as const;

describe('rows of a table', () => {
  it('become nodes with ids made of the chunk and the row in the file', () => {
    const table = madeTable(
      [LABEL, ['name', { use: 'name' }], ['assembly', { use: 'parent' }]],
      [
        ['10-001', 'rail', '10'],
        ['', '', 'elsewhere'],
      ],
      { firstRow: 7, resolved: { '10': 'a10' } },
    );
    const nodes = only(table, 'node.add').map((e) => e.node);
    expect(nodes).toEqual([
      { id: `${CHUNK_ID}.r00000007`, kind: 'part', parent: 'a10', label: '10-001', name: 'rail' },
      { id: `${CHUNK_ID}.r00000008`, kind: 'part', parent: 'van', label: 'row 8', name: 'row 8' },
    ]);
    expect(nodes.map((n) => chunkOf(n.id))).toEqual([CHUNK_ID, CHUNK_ID]);
    expect(chunkOf('p1')).toBeUndefined();
  });

  it('do not take a word of the language for a parent', () => {
    const table = madeTable([LABEL, ['assembly', { use: 'parent' }]], [['1', 'constructor']]);
    expect(only(table, 'node.add')[0]?.node.parent).toBe('van');
  });

  it('give the same entries each time', () => {
    const table = madeTable([LABEL, ['mass', massIn('kg')]], [['1', '2 ± 0.1']]);
    expect([...expandTable(table)]).toEqual([...expandTable(structuredClone(table))]);
  });
});

describe('numbers of a table', () => {
  it.each([
    ['6.9', '0.01', { x: 6.9, spread: { s: 'normal', u: 0.01 } }],
    ['6.9', '0', { x: 6.9, spread: { s: 'exact' } }],
    ['6.9', '', { x: 6.9, spread: { s: 'unknown' } }],
    ['6.9 ± 0.2 kg', '', { x: 6.9, spread: { s: 'normal', u: 0.2 } }],
    ['2 lb', '', { x: 0.90718474, spread: { s: 'unknown' } }],
  ])('%s with %s beside it', (text, u, value) => {
    const table = madeTable([LABEL, ['mass', massIn('kg', { uColumn: 2 })], U], [['1', text, u]]);
    expect(readings(table)[0]?.value).toEqual({ t: 'scalar', kind: 'mass', ...value });
  });

  it('take the unit of their spread from its column, and a comma where the table has one', () => {
    const table = madeTable(
      [LABEL, ['mass', massIn('kg', { uColumn: 2, uUnit: 'g' })], U],
      [['1', '6,9', '12,5']],
      { decimal: ',' },
    );
    expect(readings(table)[0]).toMatchObject({
      value: { x: 6.9, spread: { s: 'normal', u: 0.0125 } },
      asWritten: '6,9 kg',
      source: { file: 'parts.csv', row: 2, column: 'mass' },
    });
  });

  it('take a spread that the column gives where they have none', () => {
    const spreadIfNone = { s: 'rectangular', half: 0.05 } as const;
    const table = madeTable(
      [LABEL, ['mass', massIn('kg', { spreadIfNone })]],
      [
        ['1', '6.9'],
        ['2', '6.9 ± 0.2'],
      ],
    );
    const spreads = readings(table).map((r) => (r.value.t === 'scalar' ? r.value.spread.s : ''));
    expect(spreads).toEqual(['rectangular', 'normal']);
  });

  it('are counts, exact where counted, not where said to be about so many', () => {
    const pieces = property('count', { kind: 'count', uColumn: 2 });
    const table = madeTable(
      [LABEL, ['pieces', pieces], ['u', SKIP]],
      [
        ['1', '62', ''],
        ['2', 'about 62', ''],
        ['3', '62', '1.5'],
      ],
    );
    expect(readings(table).map((r) => r.value)).toEqual([
      { t: 'count', n: 62, spread: { s: 'exact' } },
      { t: 'count', n: 62, spread: { s: 'unknown' } },
      { t: 'count', n: 62, spread: { s: 'normal', u: 1.5 } },
    ]);
  });

  it('are known by their instrument, of the row or of the column', () => {
    const table = madeTable(
      [LABEL, ['mass', massIn('kg', { instrumentColumn: 2 })], ['instrument', SKIP]],
      [
        ['1', '6.9', 'scale B'],
        ['2', '6.9', ''],
      ],
    );
    expect(readings(table).map((r) => [r.instrument, r.how])).toEqual([
      ['scale B', 'measured'],
      [undefined, 'seen'],
    ]);
  });

  it('that are empty are no readings', () => {
    const table = madeTable(
      [LABEL, ['mass', massIn('kg')], ['material', property('material')]],
      [['1', ' ', '']],
    );
    expect(readings(table)).toEqual([]);
  });
});

describe('positions', () => {
  const at = (component: 0 | 1 | 2) =>
    property('position', { kind: 'length', unit: 'mm', component, uColumn: 4 });
  const columns = [LABEL, ['x', at(0)], ['y', at(1)], ['z', at(2)], ['u', SKIP]] as const;

  it('are one reading with the spread of each component', () => {
    const [reading, ...more] = readings(madeTable(columns, [['1', '-180', '430.5', '470', '5']]));
    expect(more).toEqual([]);
    expect(reading?.value).toMatchObject({
      t: 'vector',
      x: [-0.18, 0.4305, 0.47],
      frame: 'vehicle',
    });
    const u = expect.closeTo(25e-6, 12);
    expect(reading?.value).toMatchObject({ cov: [u, 0, 0, 0, u, 0, 0, 0, u] });
    expect(reading?.asWritten).toBe('-180, 430.5, 470');
  });

  it('without a spread have an unknown one', () => {
    const table = madeTable(columns, [['1', '-180', '430.5', '470', '']]);
    expect(readings(table)[0]?.value).toMatchObject({ cov: [] });
  });

  it('of which numbers or columns are missing are no readings', () => {
    expect(readings(madeTable(columns, [['1', '-180', '', '470', '5']]))).toEqual([]);
    const withoutY = madeTable(
      [LABEL, ['x', at(0)], ['', SKIP], ['z', at(2)], ['u', SKIP]],
      [['1', '-180', '', '470', '5']],
    );
    expect(readings(withoutY)).toEqual([]);
    const onlyZ = madeTable(
      [LABEL, ['z', property('position', { component: 2 })]],
      [['1', '47 mm']],
    );
    expect(readings(onlyZ)).toEqual([]);
  });
});

describe('causes of a column', () => {
  const share = (effect: number | 'relative') =>
    madeTable(
      [LABEL, ['mass', massIn('kg', { uColumn: 2, causes: [{ cause: 'gain', effect }] })], U],
      [
        ['1', '30', '0.01'],
        ['2', '70', '0.01'],
      ],
    );

  it('act by a fixed amount, or in proportion to each value', () => {
    const effects = (table: TableChunk) => readings(table).flatMap((r) => r.causes);
    expect(effects(share(1)).map((c) => c.effect)).toEqual([1, 1]);
    expect(effects(share('relative')).map((c) => c.effect)).toEqual([30, 70]);
  });

  it('that are relative do not average out in the sum', async () => {
    const gain: Entry = {
      ...{ v: 1, e: 'cause.put' },
      cause: {
        ...{ id: 'gain', what: 'gain', kind: 'ratio', label: 'gain of scale B' },
        spread: { s: 'normal', u: 0.001 },
      },
    };
    const view = studyOf(gain, { v: 1, e: 'table.add', table: share('relative') });
    const total = out(await askRegistered('mass-roll-up', view), 'mass');
    expect(total.u).toBeCloseTo(Math.hypot(0.1, 0.01, 0.01), 12);
  });
});

describe('ends of joints', () => {
  const table = madeTable(
    [LABEL, ['from', { use: 'from' }], ['to', { use: 'to' }]],
    [['J1', '40-010', '40-005; 40-006;the rear header']],
    { nodeKind: 'joint', resolved: { '40-010': 'n10', '40-005': 'n5', '40-006': 'n6' } },
  );

  it('are links with a side; what names no node keeps its words', () => {
    const joint = `${CHUNK_ID}.r00000002`;
    const links = only(table, 'link.add').map(({ link }) => [link.role, link.to, link.words]);
    expect(links).toEqual([
      ['from', 'n10', '40-010'],
      ['to', 'n5', '40-005'],
      ['to', 'n6', '40-006'],
      ['to', null, 'the rear header'],
    ]);
    expect(new Set(only(table, 'link.add').map(({ link }) => link.id)).size).toBe(4);
    expect(only(table, 'link.add').every(({ link }) => link.from === joint)).toBe(true);
  });
});
