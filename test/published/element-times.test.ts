/**
 * Question install-time: a worked sum of predetermined element times, values after the published
 * 1948 method (Maynard, Stegemerten and Schwab, Methods-Time Measurement). Unit of 0.036 s,
 * elements and total of 86.44 units = 3.1118 s seen in a published worked example, recomputed.
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
