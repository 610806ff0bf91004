import { describe, expect, test } from 'vitest';
import { STEPS } from '../../demo/source/way-in.ts';
import { propertyDef } from '../../src/study/index.ts';
import { committed } from './record.ts';

// Checks of made-up data: they show that the demo is what it says, and prove nothing else.

const joints = committed('clean', 'joints.csv');
const known = new Set([
  ...committed('clean', 'parts.csv').map((row) => row.number),
  ...committed('clean', 'assemblies.csv').map((row) => row.number),
  ...joints.map((row) => row.number),
  ...STEPS.map((step) => step.number),
]);

describe('precedence.csv', () => {
  const rows = committed('clean', 'precedence.csv');

  test('names what is in the record; each step is made once', () => {
    expect(rows.flatMap((r) => [r.first, r.before]).filter((n) => !known.has(n))).toEqual([]);
    const made = rows.filter((r) => r.kind === 'step').map((r) => r.first);
    expect(made.sort()).toEqual(STEPS.map((step) => step.number).sort());
  });

  test('the low-voltage plug of the pack is one lever connector of 4 s', () => {
    const [plug] = rows.filter((r) => r.before === '40' && r.kind === 'step');
    expect(plug).toMatchObject({ name: 'low-voltage plug, one lever connector', time_s: '4' });
  });
});

describe('joints.csv', () => {
  test('each has a tool, people, and what becomes of it; what is renewed has a price', () => {
    expect(joints.filter((j) => j.tool === '' || Number(j.people) < 1)).toEqual([]);
    const ways = new Set(joints.map((j) => j.on_removal));
    expect([...ways].sort()).toEqual(['destroys part', 'renew fastener', 'reusable']);
    const renewed = joints.filter((j) => j.on_removal === 'renew fastener');
    expect(renewed.filter((j) => !(Number(j['renewal [{u}]']) > 0))).toEqual([]);
  });

  test('lengths of weld are those of the specification', () => {
    const metres = (j: (typeof joints)[number]) => Number(j.seam_mm) / 1000;
    const of = (number: string) => metres(joints.find((j) => j.number === number) ?? {});
    expect(of('J104')).toBe(1.46);
    expect(of('J115')).toBe(5.5);
    expect(of('J106')).toBe(0.18);
  });
});

test('work.csv, fastenings.csv and alternatives.csv use properties that mean something', () => {
  for (const file of ['work.csv', 'fastenings.csv', 'alternatives.csv'])
    for (const row of committed('clean', file))
      expect(propertyDef(row.property ?? ''), row.property).toBeDefined();
});
