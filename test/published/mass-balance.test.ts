/**
 * ISO 10392:2011, Road vehicles – Determination of centre of gravity (question mass-balance):
 * the horizontal position by moments of the wheel loads, own inputs, published formula,
 * recomputed. Parts that stand where the wheels do must close against the loads in force and in
 * moments; a load moved to another place must show in the moments alone.
 */
import { describe, expect, it } from 'vitest';
import { askWritten, loadQuestion, type WrittenInputs } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

const { question } = await loadQuestion('mass-balance');

const LOADS = { fl: '452 ± 0.5 kg', fr: '438 ± 0.5 kg', rl: '381 ± 0.5 kg', rr: '369 ± 0.5 kg' };
const VEHICLE = {
  ...LOADS,
  wheelbase: '2700 ± 2 mm',
  frontTrack: 'exactly 1560 mm',
  rearTrack: 'exactly 1540 mm',
  height: '550 ± 8 mm',
};
const at = (number: string, mass: string, x: number, y: number, z: number) => ({
  ...{ number, mass: `exactly ${mass} kg` },
  ...{ x: `exactly ${x} mm`, y: `exactly ${y} mm`, z: `exactly ${z} mm` },
});
const WHEELS = [
  at('FL', '452', 0, -780, 550),
  at('FR', '438', 0, 780, 550),
  at('RL', '381', 2700, -770, 550),
  at('RR', '369', 2700, 770, 550),
];
const balance = (parts: WrittenInputs[string], modules: WrittenInputs[string] = []) =>
  askWritten(question, { ...VEHICLE, parts, modules });

describe('four parts where the wheels stand', () => {
  const answer = balance(WHEELS);

  it.each(['force', 'momentX', 'momentY', 'momentZ', 'shiftX', 'shiftY', 'shiftZ'])(
    'close in %s',
    (name) => expect(Math.abs(out(answer, name).x)).toBeLessThan(1e-9),
  );

  it('with the spread of the scales: 1.0 kg in force; in X that of the published case, 1.23 mm', () => {
    expect(out(answer, 'force').u).toBeCloseTo(1, 9);
    expect(Number(out(answer, 'shiftX').u) * 1000).toBeCloseTo(1.23, 2);
    expect(Number(out(answer, 'momentX').u)).toBeCloseTo(1640 * 0.00123, 1);
    expect(Number(out(answer, 'shiftZ').u) * 1000).toBeCloseTo(8, 9);
  });

  it('are not distinguishable from the scales', () => {
    expect(out(answer, 'force').decision?.word).toBe('not distinguishable');
    expect(out(answer, 'momentX').decision?.word).toBe('not distinguishable');
  });
});

it('ten kilograms recorded at the rear instead of the front show in X, not in force', () => {
  const [fl, fr, ...rear] = WHEELS;
  const moved = [{ ...fl, mass: 'exactly 442 kg' }, fr, ...rear, at('tool', '10', 2700, -780, 550)];
  const answer = balance(moved as never);
  expect(out(answer, 'force').x).toBeCloseTo(0, 9);
  expect(out(answer, 'momentX').x).toBeCloseTo(10 * 2.7, 9);
  expect(out(answer, 'momentX').decision?.word).toBe('different');
  expect(out(answer, 'momentY').x).toBeCloseTo(0, 9);
});

it('three kilograms too many at a place make a moment about the centre of gravity by the scales', () => {
  const answer = balance([...WHEELS, at('extra', '3', 2000, 500, 900)]);
  expect(out(answer, 'force').x).toBeCloseTo(3, 9);
  expect(out(answer, 'momentX').x).toBeCloseTo(3 * (2 - 1.234756), 5);
  expect(out(answer, 'momentZ').x).toBeCloseTo(3 * (0.9 - 0.55), 9);
});

describe('modules', () => {
  const row = (word: string, gap: number) => [
    ...['modules 1', 2, 0, 750],
    ...[expect.closeTo(750 - gap, 9), expect.closeTo(gap, 9), expect.closeTo(0.3, 9), word],
    // Mass centre of the two rear corners.
    ...[2.7, expect.closeTo((0.77 * (369 - 381)) / 750, 9), expect.closeTo(0.55, 9)],
  ];

  it.each([
    ['750.2 ± 0.3 kg', 'not distinguishable', -0.2],
    ['749.5 ± 0.3 kg', 'indicated', 0.5],
    ['749.0 ± 0.3 kg', 'different', 1],
  ])('weighed as %s are %s', (moduleMass, word, gap) => {
    const { detail } = balance(WHEELS, [{ moduleMass, holds: 'RL; RR' }]);
    expect(detail?.rows).toEqual([row(word, gap)]);
  });

  it('with a number that no part has, or without a list, are named and get no word', () => {
    const modules = [
      { moduleMass: '750 ± 0.3 kg', holds: 'RL; R9' },
      { moduleMass: '750 ± 0.3 kg', holds: '' },
    ];
    const { detail, findings } = balance(WHEELS, modules);
    expect(detail?.rows.map((r) => r[7])).toEqual(['incomplete', 'no list of parts']);
    expect(findings.map((f) => f.code)).toEqual(
      expect.arrayContaining(['module-part-unknown', 'module-without-parts']),
    );
  });
});
