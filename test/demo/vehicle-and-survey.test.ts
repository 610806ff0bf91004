import { describe, expect, test } from 'vitest';
import { cellText, type TextRow } from '../../demo/csv.ts';
import { hungPoints } from '../../demo/posture/hung-posture.ts';
import { VAN_27 } from '../../demo/source/van-27.ts';
import { isWay } from '../../src/quantity/index.ts';
import { NODE_KINDS, propertyDef } from '../../src/study/index.ts';
import { committed, sumOf } from './record.ts';

// Checks of made-up data: they show that the demo is what it says, and prove nothing else.

describe('vehicle.csv', () => {
  const rows = committed('clean', 'vehicle.csv');
  const of = (property: string): TextRow[] => rows.filter((row) => row.property === property);

  test('every row has a known kind, property and way of knowing; measured names its instrument', () => {
    for (const row of rows) {
      expect(NODE_KINDS, row.property).toContain(row.kind);
      expect(propertyDef(cellText(row, 'property')), row.property).toBeDefined();
      expect(isWay(cellText(row, 'how')), row.property).toBe(true);
      expect(row.instrument === '', row.property).toBe(row.how !== 'measured');
    }
  });

  test('corner scales: 1,645.5 kg, the front axle 919.5', () => {
    const corners = rows.filter((row) => row.property?.startsWith('cornerLoad.'));
    expect(sumOf(corners, 'value')).toBe(1645.5);
    expect(sumOf([...of('cornerLoad.FL'), ...of('cornerLoad.FR')], 'value')).toBe(919.5);
  });

  test('axle lift: three angles, each with what the front axle gained', () => {
    expect(of('liftAngle').map((row) => row.value)).toEqual(['4', '8', '12']);
    expect(of('frontLoadGain').map((row) => row.value)).toEqual(['7.8', '15.6', '23.6']);
  });

  test('the pack as lowered agrees with its parts less the body bolts, within 3 u', () => {
    const parts = committed('clean', 'parts.csv');
    const pack = parts.filter((row) => row.assembly === '40' && row.number !== '40-028');
    expect(Math.abs(sumOf(pack, 'mass_kg') - 462.1)).toBeLessThan(3 * 0.34);
    expect(of('moduleMass').map((row) => row.value)).toEqual(['462.1', '219.8']);
  });

  test('claims name subjects of the record', () => {
    const known = new Set([
      ...rows.map((row) => row.subject),
      ...committed('clean', 'parts.csv').map((row) => row.number),
      ...committed('clean', 'assemblies.csv').map((row) => row.number),
      ...committed('clean', 'fastenings.csv').map((row) => row.subject),
    ]);
    const claims = committed('clean', 'claims.csv');
    expect(claims).toHaveLength(7);
    expect(claims.filter((claim) => !known.has(claim.subject))).toEqual([]);
  });
});

describe('planted faults outside parts and joints', () => {
  const changed = (file: string): TextRow[] => {
    const clean = committed('clean', file).map((row) => JSON.stringify(row));
    return committed('faulty', file).filter((row) => !clean.includes(JSON.stringify(row)));
  };

  test('a bag without a parent, a turned locator, a mistyped length, a second thickness', () => {
    expect(changed('bags.csv')).toEqual([
      { bag: 'B-J103', joint: 'J103', spec: 'M12x90 10.9', count: '17' },
      { bag: 'B-stray', joint: '', spec: 'M6x16', count: '31' },
    ]);
    expect(changed('locators.csv')).toMatchObject([{ locator: 'two-way slot', holds: 'X' }]);
    expect(changed('chain.csv')).toMatchObject([
      { from: 'beam front', to: 'drive unit front', value_mm: '670' },
    ]);
    expect(changed('readings.csv')).toMatchObject([{ subject: '40-002', value: '2.25' }]);
  });

  test('the clean chain closes exactly; the faulty one does not', () => {
    const at = new Map([['cover', 0]]);
    const unlike = (record: 'clean' | 'faulty') =>
      committed(record, 'chain.csv').filter(({ from = '', to = '', value_mm }) => {
        const sum = (at.get(from) ?? Number.NaN) + Number(value_mm);
        if (!at.has(to)) at.set(to, sum);
        return at.get(to) !== sum;
      });
    expect(unlike('clean')).toEqual([]);
    expect(unlike('faulty')).toHaveLength(1);
  });

  test('points: the set marked kerb on the left hangs in the faulty record', () => {
    const centre = (record: 'clean' | 'faulty') =>
      committed(record, 'points.csv')
        .filter((row) => row.point === 'wheel centre' && row.side === 'left')
        .map((row) => [row.posture, row.z_mm]);
    expect(centre('clean')).toEqual([
      ['kerb', '325.0'],
      ['hung', '255.0'],
    ]);
    expect(centre('faulty')).toEqual([['kerb', '255.0']]);
  });
});

test('hanging keeps the length of every link, of the knuckle and of what stands on the spring link', () => {
  const kerb: Readonly<Record<string, readonly number[]>> = VAN_27.chassis.rearFiveLink.pointsMm;
  const hung: Readonly<Record<string, readonly number[]>> = hungPoints(70);
  const apart = (points: typeof kerb, a: string, b: string) =>
    Math.hypot(...(points[a] ?? []).map((x, i) => x - (points[b]?.[i] ?? Number.NaN)));
  for (const [a, b] of [
    ['lower front link outer', 'lower front link inner'],
    ['spring link outer', 'spring link inner'],
    ['toe link outer', 'toe link inner'],
    ['camber link outer', 'camber link inner'],
    ['trailing link outer', 'trailing link inner'],
    ['wheel centre', 'toe link outer'],
    ['camber link outer', 'spring link outer'],
    ['spring lower', 'spring link inner'],
    ['damper lower', 'spring link outer'],
  ] as const)
    expect(apart(hung, a, b), `${a} to ${b}`).toBeCloseTo(apart(kerb, a, b), 6);
  expect(hung['wheel centre']?.[2]).toBeCloseTo(255, 6);
});
