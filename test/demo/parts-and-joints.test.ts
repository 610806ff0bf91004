import { describe, expect, test } from 'vitest';
import { cellText, type TextRow } from '../../demo/csv.ts';
import { BAD_ORDER, HOIST_STAGES } from '../../demo/source/hoist-check.ts';
import { JOINT_ENDS } from '../../demo/source/joint-ends.ts';
import { committed, sumOf } from './record.ts';

// Checks of made-up data: they show that the demo is what it says, and prove nothing else.

const numbers = (rows: readonly TextRow[]) => rows.map((row) => cellText(row, 'number'));

describe('parts.csv', () => {
  const clean = committed('clean', 'parts.csv');
  const faulty = committed('faulty', 'parts.csv');

  test('clean: 248 rows, 625 pieces, 1,645.291 kg, each row with mass and spread', () => {
    expect(clean).toHaveLength(248);
    expect(new Set(numbers(clean)).size).toBe(248);
    expect(sumOf(clean, 'pieces')).toBe(625);
    expect(sumOf(clean, 'mass_kg')).toBeCloseTo(1645.291, 6);
    expect(clean.filter((row) => row.mass_kg === '' || row.mass_u_kg === '')).toEqual([]);
  });

  test('faulty: 26.9 kg short of the scales, with two masses not taken', () => {
    expect(numbers(faulty)).toEqual(numbers(clean));
    const empty = faulty.filter((row) => row.mass_kg === '');
    expect(numbers(empty)).toEqual(['80-002', '90-001']);
    expect(empty.every((row) => row.mass_u_kg === '' && row.instrument === '')).toBe(true);
    expect(sumOf(faulty, 'mass_kg') - 1645.5).toBeCloseTo(-26.898, 6);
  });

  test('the planted faults are the eight rows told of, and the count of cells', () => {
    const changed = faulty.filter((row, i) => row.mass_kg !== clean[i]?.mass_kg);
    expect(numbers(changed).sort()).toEqual(
      ['10-021', '10-052', '30-014', '40-001', '60-001', '61-004', '80-002', '90-001'].sort(),
    );
    const recounted = faulty.filter((row, i) => row.pieces !== clean[i]?.pieces);
    expect(recounted.map((row) => [row.number, row.pieces])).toEqual([['40-001', '96']]);
  });

  test('no thickness is written as zero, and every assembly is listed', () => {
    expect(
      clean.filter((row) => Number(row.thickness_mm) === 0 && row.thickness_mm !== ''),
    ).toEqual([]);
    const assemblies = new Set(numbers(committed('clean', 'assemblies.csv')));
    expect(new Set(clean.map((row) => cellText(row, 'assembly')))).toEqual(assemblies);
  });
});

describe('joints.csv', () => {
  const clean = committed('clean', 'joints.csv');

  test('63 groups, 474 elements', () => {
    expect(clean).toHaveLength(63);
    expect(sumOf(clean, 'count_holes')).toBe(474);
  });

  test.each(['clean', 'faulty'] as const)('%s: every end is a part or an assembly', (record) => {
    const known = new Set([
      ...numbers(committed(record, 'parts.csv')),
      ...numbers(committed(record, 'assemblies.csv')),
    ]);
    const ends = committed(record, 'joints.csv').flatMap((row) =>
      [cellText(row, 'from'), cellText(row, 'to')].flatMap((end) => end.split(';')),
    );
    expect(ends.filter((end) => !known.has(end))).toEqual([]);
  });

  test('the map of ends has no words that nobody said', () => {
    const said = new Set(clean.flatMap((row) => [row.from_words, row.to_words]));
    expect(Object.keys(JOINT_ENDS).filter((words) => !said.has(words))).toEqual([]);
  });

  test('bags agree with holes but for the one planted', () => {
    const unlike = (rows: readonly TextRow[]) =>
      rows.filter((row) => row.count_bag !== '' && row.count_bag !== row.count_holes);
    expect(unlike(clean)).toEqual([]);
    expect(
      unlike(committed('faulty', 'joints.csv')).map((row) => [
        row.number,
        row.count_bag,
        row.count_holes,
      ]),
    ).toEqual([['J103', '17', '18']]);
  });
});

describe('what is left on the hoist', () => {
  const parts = committed('clean', 'parts.csv');
  const is = (row: TextRow, ...assemblies: string[]) => assemblies.includes(row.assembly ?? '');
  const x = (row: TextRow) => Number(row.x_mm);
  const frontModule = (row: TextRow) =>
    is(row, '60', '64') || row.number === '90-002' || (is(row, '50', '63') && x(row) < 200);
  const removals: ((row: TextRow) => boolean)[] = [
    () => false,
    (row) => is(row, '62'),
    (row) => is(row, '40'),
    frontModule,
    (row) => is(row, '61') || (is(row, '63') && x(row) > 2000),
    (row) => is(row, '11', '12'),
    (row) => is(row, '30'),
  ];
  const moment = (rows: readonly TextRow[], axis: string) =>
    rows.reduce((sum, row) => sum + Number(row.mass_kg) * Number(row[axis]), 0);

  test.each(HOIST_STAGES.map((stage, i) => [stage.left, stage, i] as const))(
    '%s: mass and centre of gravity as the sums made apart',
    (_, stage, i) => {
      const off = removals.slice(0, i + 1);
      const left = parts.filter((row) => !off.some((gone) => gone(row)));
      const kg = sumOf(left, 'mass_kg');
      // The sums were made of the true masses, these are of the weighed ones: within 0.4 kg and 1 mm.
      expect(Math.abs(kg - stage.kg)).toBeLessThan(0.4);
      expect(Math.abs(moment(left, 'x_mm') / kg - stage.xMm)).toBeLessThan(1);
      expect(Math.abs(moment(left, 'y_mm') / kg - stage.yMm)).toBeLessThan(1);
      expect(Math.abs(moment(left, 'z_mm') / kg - stage.zMm)).toBeLessThan(1);
    },
  );

  test('the bad order ends near the front pads', () => {
    const rearDoors = ['11-009', '11-010', '11-011'];
    const left = parts.filter(
      (row) =>
        !is(row, '61', '62', '40') &&
        !(is(row, '63') && x(row) > 2000) &&
        !rearDoors.includes(row.number ?? '') &&
        !cellText(row, 'name').startsWith('Cargo'),
    );
    const kg = sumOf(left, 'mass_kg');
    expect(Math.abs(kg - BAD_ORDER.kg)).toBeLessThan(0.4);
    expect(Math.abs(moment(left, 'x_mm') / kg - BAD_ORDER.xMm)).toBeLessThan(1);
  });
});
