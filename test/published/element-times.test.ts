/**
 * Questions install-time and element-time: a worked sum of predetermined element times, values
 * after the published 1948 method (Maynard, Stegemerten and Schwab, Methods-Time Measurement).
 * Unit of 0.036 s, elements and total of 86.44 units = 3.1118 s seen in a published worked
 * example, recomputed; single values as legible in reprints of the tables.
 */
import { describe, expect, it } from 'vitest';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

/** 100,000 units an hour. */
const SECONDS_A_UNIT = 3600 / 100_000;
/** A move of up to 7.5 lb: factor times the base value, plus a constant. */
const moveUpTo7lb = (base: number): number => 1.06 * base + 2.2;

const ELEMENTS = [
  ['R16C', 17.0],
  ['G4A', 7.3],
  ['M10B5', moveUpTo7lb(12.2)],
  ['RL1', 2.0],
  ['R14B', 14.4],
  ['G1B', 3.5],
  ['M8C3', moveUpTo7lb(11.8)],
  ['P1NSE', 10.4],
  ['RL1', 2.0],
] as const;

const seconds = (units: number): string => `exactly ${units * SECONDS_A_UNIT} s`;
const time = async (joints: readonly Record<string, string>[]) =>
  out(askWritten((await loadQuestion('install-time')).question, { joints }), 'time');

describe('element times', () => {
  it('have a unit of 0.036 s, 1666.67 of them a minute', () => {
    expect(SECONDS_A_UNIT).toBeCloseTo(0.036, 9);
    expect(60 / SECONDS_A_UNIT).toBeCloseTo(1666.67, 2);
  });

  it('of a move of 5 lb over 10 in and of 3 lb over 8 in go by the weight rule', () => {
    expect(moveUpTo7lb(12.2)).toBeCloseTo(15.132, 3);
    expect(moveUpTo7lb(11.8)).toBeCloseTo(14.708, 3);
  });

  it('sum to 86.44 units = 3.1118 s, each element a row', async () => {
    const rows = ELEMENTS.map(([type, units]) => ({
      ...{ count: '1', access: 'exactly 0 s', drive: seconds(units), type },
    }));
    const total = await time(rows);
    expect(total.x / SECONDS_A_UNIT).toBeCloseTo(86.44, 2);
    expect(total.x).toBeCloseTo(3.1118, 4);
    expect(total.u).toBe(0);
  });

  it('sum to the same with reaching and driving apart, and to twice as much for two', async () => {
    const [reach, drive] = [41.8, 86.44 - 41.8];
    const row = { access: seconds(reach), drive: seconds(drive), type: 'screw' };
    expect((await time([{ count: '1', ...row }])).x).toBeCloseTo(3.1118, 4);
    expect((await time([{ count: '2', ...row }])).x).toBeCloseTo(2 * 3.1118, 3);
  });
});

/** Answers a sequence; own values as rows. */
const sequence = async (codes: readonly string[], own: Record<string, string>[] = []) => {
  const { question } = await loadQuestion('element-time');
  return askWritten(question, {
    elements: codes.map((element) => ({ element })),
    own,
  });
};

describe('a sequence by its codes', () => {
  const worked = ['R16C', 'G4A', 'M10B5', 'RL1', 'R14B', 'G1B', 'M8C3', 'P1NSE', 'RL1'];

  it('worked in print gives 86.44 units = 3.1118 s', async () => {
    const answer = await sequence(worked);
    expect(out(answer, 'units').x).toBeCloseTo(86.44, 2);
    expect(out(answer, 'time').x).toBeCloseTo(3.1118, 4);
    expect(answer.detail?.rows.map((row) => row[0])).toEqual(worked);
    expect(answer.findings).toEqual([]);
  });

  it.each([
    ['R1A', 2.5],
    ['R4D', 8.4],
    ['R24E', 19.2],
    ['R30B', 25.8],
    ['R32A', 18.3],
    ['R34B', 28.6],
    ['M30C', 30.7],
    ['M34A', 30.3],
    ['M12B20', 1.22 * 13.4 + 7.4],
    ['M20B47', 1.5 * 18.2 + 16],
    ['G1C3', 10.8],
    ['G5', 0],
    ['EF', 7.3],
  ])('%s takes %d units', async (code, units) => {
    expect(out(await sequence([code]), 'units').x).toBeCloseTo(units, 9);
  });

  it('between two listed distances goes by straight line, and says so', async () => {
    const answer = await sequence(['R7B']);
    expect(out(answer, 'units').x).toBeCloseTo((8.6 + 10.1) / 2, 9);
    expect(answer.findings.map((f) => f.code)).toEqual(['element-between']);
  });

  it.each(['R40C', 'M10B10', 'M10B42', 'T30S', 'P2SSD', 'XYZ'])(
    '%s is not in what could be read of the tables: no time, and its place',
    async (code) => {
      const answer = await sequence(['G1A', code]);
      expect(answer.outs.time).toBeUndefined();
      const found = answer.findings.find((f) => f.code === 'element-unknown');
      expect(found).toMatchObject({ value: code, place: { subject: 'elements 2' } });
    },
  );

  it('takes a value of the shop’s own first', async () => {
    const own = [
      { element: 'T30S', units: 'exactly 2.8' },
      { element: 'G1A', units: 'exactly 2.4' },
    ];
    const answer = await sequence(['G1A', 'T30S', 'RL1'], own);
    expect(out(answer, 'units').x).toBeCloseTo(2.4 + 2.8 + 2.0, 9);
    expect(answer.detail?.rows.map((row) => row[2])).toEqual([
      'own table',
      'own table',
      expect.stringContaining('1948'),
    ]);
  });
});
