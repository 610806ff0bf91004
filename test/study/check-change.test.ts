import { describe, expect, it } from 'vitest';
import type { Spread, Value } from '../../src/quantity/index.ts';
import {
  type Change,
  type ColumnUse,
  checkChange,
  type Entry,
  type Reading,
  type Refusal,
  refusalText,
} from '../../src/study/index.ts';
import { count, MadeStudy, mass, node, point, reading, scalar } from './made-study.ts';
import { LABEL, madeTable, massIn, property } from './made-table.ts';

const made = new MadeStudy();
const change = (entries: readonly Entry[], more: Partial<Change> = {}): Change => ({
  ...made.act(entries),
  ...more,
});
const refusals = (...entries: readonly Entry[]): readonly Refusal[] => checkChange(change(entries));
const add = (r: Reading): Entry => ({ v: 1, e: 'reading.add', reading: r });
const ofValue = (value: Value, prop = 'mass') => refusals(add(reading('p1', prop, value)));
const normal = (u: number, dof?: number): Spread => ({
  ...{ s: 'normal', u },
  ...(dof === undefined ? {} : { dof }),
});

describe('a change', () => {
  it('of good entries is not refused', () => {
    expect(refusals(node('p1', 'van'), add(reading('p1', 'mass', mass(10, 0.1))))).toEqual([]);
  });

  it.each([
    ['id', { id: 'not-a-ulid' }, 'the id of a change is no ULID'],
    ['clock', { clock: 'noon' }, 'the clock of a change can not be read'],
    ['count', { seq: 0 }, 'no whole number from 1'],
    ['content', { entries: [] }, 'the change changes nothing'],
  ])('with a bad %s is refused', (_, more, why) => {
    const found = checkChange(change([node('p1', 'van')], more));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ code: 'bad-change' });
    expect(found[0]?.why).toContain(why);
  });

  it('that undoes needs no entries', () => {
    expect(checkChange(change([], { undoes: 'g' }))).toEqual([]);
  });

  it('of a newer version is refused at the door, by name', () => {
    const newer = { v: 2, e: 'node.add' } as unknown as Entry;
    expect(refusals(newer)).toMatchObject([{ code: 'bad-change', value: 'node.add v2' }]);
  });

  it('that makes a node its own parent, or one without a number, is refused', () => {
    expect(refusals(node('p1', 'p1', 'part', 'P1'))).toMatchObject([{ value: 'P1' }]);
    expect(refusals({ v: 1, e: 'node.move', id: 'p1', parent: 'p1' })).toHaveLength(1);
    expect(refusals(node('p1', 'van', 'part', ' '))).toMatchObject([
      { why: 'a node needs a number or a name' },
    ]);
  });
});

describe('a reading is refused', () => {
  it.each<[string, Value, string]>([
    ['NaN', mass(Number.NaN, 0.1), 'not finite'],
    ['infinite', mass(Number.POSITIVE_INFINITY, 0.1), 'not finite'],
    ['a negative spread', mass(10, normal(-0.1)), 'is negative'],
    ['a spread that is NaN', mass(10, normal(Number.NaN)), 'not a number'],
    ['no degrees of freedom', mass(10, normal(0.1, 0)), 'degrees of freedom'],
    ['a negative half-width', mass(10, { s: 'rectangular', half: -1 }), 'is negative'],
    ['limits the wrong way round', mass(10, { s: 'triangular', low: 12, high: 8 }), 'is above'],
    ['a mode outside its limits', mass(10, { s: 'triangular', low: 11, high: 12 }), 'is outside'],
    ['one repeat', mass(10, { s: 'repeats', xs: [10] }), 'fewer than two'],
    ['repeats of another mean', mass(10, { s: 'repeats', xs: [1, 2] }), 'is not the mean'],
    ['a negative mass', mass(-1, 0.1), 'is negative'],
    ['metres for a mass', scalar('length', 1, 0.1), 'is a mass, not a length'],
  ])('with %s', (_, value, why) => {
    const found = ofValue(value);
    expect(found).toMatchObject([
      { code: 'bad-value', place: { subject: 'p1', property: 'mass' } },
    ]);
    expect(found[0]?.why).toContain(why);
    expect(found[0]?.next).not.toBe('');
  });

  it.each<[string, Value, string]>([
    ['half a piece', count(2.5), 'whole number'],
    ['fewer than none', count(-1), 'whole number'],
  ])('with a count of %s', (_, value, why) => {
    expect(ofValue(value, 'count')[0]?.why).toContain(why);
  });

  it('but a count between two may be broken', () => {
    const between: Value = { t: 'count', n: 9.5, spread: { s: 'rectangular', half: 0.5 } };
    expect(ofValue(between, 'count')).toEqual([]);
  });

  it('with a position that is not finite, or whose spread is no covariance', () => {
    const cov = (c: readonly number[]): Value => ({ ...point([1, 2, 3]), cov: c }) as Value;
    expect(ofValue(point([1, Number.NaN, 3], 0.1), 'position')).toHaveLength(1);
    expect(ofValue(cov([1, 2]), 'position')[0]?.why).toContain('no covariance');
    expect(ofValue(cov([-1, 0, 0, 0, 1, 0, 0, 0, 1]), 'position')[0]?.why).toContain('covariance');
    expect(ofValue(cov([]), 'position')).toEqual([]);
    expect(ofValue(point([-1, 2, 3], 0.1), 'position')).toEqual([]);
  });

  it('as measured without an instrument, but not as guessed', () => {
    const { instrument: _, ...without } = reading('p1', 'mass', mass(10, 0.1));
    expect(refusals(add(without))[0]?.why).toContain('no instrument');
    expect(refusals(add({ ...without, how: 'guessed' }))).toEqual([]);
  });

  it('with a share of a cause that is not finite', () => {
    const causes = [{ cause: 'gain', effect: Number.NaN }];
    expect(refusals(add(reading('p1', 'mass', mass(10, 0.1), { causes })))).toHaveLength(1);
  });

  it('with all that is wrong in one gesture', () => {
    const entries = [mass(-1, 0.1), mass(1, 0.1), mass(1, -1)].map((v, i) =>
      add(reading(`p${i}`, 'mass', v)),
    );
    expect(refusals(...entries).map((r) => r.place.subject)).toEqual(['p0', 'p2']);
  });
});

describe('numbers outside readings are refused', () => {
  const cause = (spread: Spread): Entry => ({
    ...{ v: 1, e: 'cause.put' },
    cause: { id: 'gain', what: 'gain', kind: 'ratio', label: 'gain of scale B', spread },
  });
  const book = (x: number, spread: Spread): Entry => ({
    ...{ v: 1, e: 'rates.put' },
    book: {
      ...{ id: 'r1', version: 'R1', region: 'none', date: '2026-01-01', currency: 'u' },
      ...{ volumePerYear: 60_000, years: 5, invented: true },
      cells: [
        {
          ...{ cause: 'c', id: 'material/steel', words: 'steel', kind: 'moneyPerMass', x, spread },
          ...{ how: 'guessed', source: 'invented', match: ['steel'] },
        },
      ],
    },
  });
  const tie = (value: number): Entry => ({
    ...{ v: 1, e: 'claim.tie' },
    tie: {
      ...{ id: 't', claim: 'c', question: 'mass-roll-up', subject: 'van', output: 'mass' },
      test: { is: 'at least', value, asWritten: '?' },
    },
  });

  it('in a cause', () => {
    expect(refusals(cause(normal(-1)))).toMatchObject([{ place: { subject: 'gain of scale B' } }]);
    expect(refusals(cause(normal(0.01)))).toEqual([]);
  });

  it('in a rate book', () => {
    const low: Spread = { s: 'triangular', low: 2, high: 1 };
    expect(refusals(book(1.5, low))).toMatchObject([{ place: { subject: 'material/steel' } }]);
    expect(refusals(book(Number.NaN, { s: 'exact' }))).toHaveLength(1);
    expect(refusals(book(1.5, { s: 'triangular', low: 1, high: 2 }))).toEqual([]);
  });

  it('in the test of a claim', () => {
    expect(refusals(tie(Number.NaN))).toHaveLength(1);
    expect(refusals(tie(5))).toEqual([]);
  });
});

describe('a table is refused', () => {
  const table = (rows: readonly (readonly string[])[]): Entry => ({
    ...{ v: 1, e: 'table.add' },
    table: madeTable(
      [LABEL, ['mass_kg', massIn('kg', { uColumn: 2 })], ['u', { use: 'skip' } as ColumnUse]],
      rows,
    ),
  });

  it('with file, row, column, value and what to do', () => {
    const [found, ...more] = refusals(
      table([
        ['1', '6.9', '0.1'],
        ['2', 'heavy', '0.1'],
      ]),
    );
    expect(more).toEqual([]);
    expect(found).toMatchObject({
      ...{ code: 'bad-table', value: 'heavy' },
      place: { file: 'parts.csv', row: 3, column: 'mass_kg' },
    });
    expect(found && refusalText(found)).toMatch(
      /^parts\.csv, row 3, column mass_kg: .*heavy.*Write/,
    );
  });

  it.each([
    ['a negative mass', ['1', '-6.9', '0.1'], 'mass_kg'],
    ['a negative spread', ['1', '6.9', '-0.1'], 'u'],
    ['a spread that is no number', ['1', '6.9', 'small'], 'u'],
  ])('with %s', (_, row, column) => {
    expect(refusals(table([row]))).toMatchObject([{ place: { row: 2, column } }]);
  });

  it('with a part of a position', () => {
    const at = (component: 0 | 1 | 2) =>
      property('position', { kind: 'length', unit: 'mm', component });
    const positions = (...row: string[]): Entry => ({
      ...{ v: 1, e: 'table.add' },
      table: madeTable([LABEL, ['x', at(0)], ['y', at(1)], ['z', at(2)]], [['1', ...row]]),
    });
    expect(refusals(positions('-1', '', '3'))).toMatchObject([{ place: { column: 'y' } }]);
    expect(refusals(positions('-1', 'two', '3'))).toMatchObject([{ place: { column: 'y' } }]);
    expect(refusals(positions('-1', '2', '3'), positions('', '', ''))).toEqual([]);
  });
});
