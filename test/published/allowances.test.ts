/**
 * Questions standard-time, work-content and station-count: normal time is observed time times
 * rating (seen in texts on work study); allowances as a share of normal time and of the shift,
 * own inputs: 0.75 min at 110 % with 12 % gives 0.9240 and 0.9375 min, with 11 % 0.91575. Sums
 * of work worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { askWritten, loadQuestion, type WrittenInputs } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

const ask = async (id: string, inputs: WrittenInputs) =>
  askWritten((await loadQuestion(id)).question, inputs);
const MINUTE = 60;

const standard = (allowance: string, base?: string) =>
  ask('standard-time', {
    observed: 'exactly 0.75 min',
    rating: 'exactly 110 %',
    allowance,
    ...(base === undefined ? {} : { base }),
  });

describe('standard time', () => {
  it.each([
    ['exactly 12 %', 'normal time', 0.924],
    ['exactly 12 %', 'shift time', 0.9375],
    ['exactly 11 %', 'normal time', 0.91575],
  ])('with %s of %s is %d min, its base named', async (allowance, base, minutes) => {
    const answer = await standard(allowance, base);
    expect(out(answer, 'standard').x / MINUTE).toBeCloseTo(minutes, 9);
    expect(out(answer, 'normal').x / MINUTE).toBeCloseTo(0.825, 9);
    expect(answer.detail?.rows[0]?.[1]).toBe(base);
    expect(answer.findings.find((f) => f.code === 'allowance-base')?.value).toBe(base);
  });

  it('without a base is not worked out: none is chosen in silence', async () => {
    const answer = await standard('exactly 12 %');
    expect(answer.outs.standard).toBeUndefined();
    expect(out(answer, 'normal').x).toBeGreaterThan(0);
    expect(answer.findings.map((f) => f.code)).toContain('allowance-base-open');
    expect(answer.detail?.rows[0]?.[1]).toBe('not said');
  });

  it('with another base is refused, naming the two', async () => {
    await expect(standard('12 %', 'cycle')).rejects.toThrow(/normal time, shift time/);
  });

  it('of a whole shift has no end', async () => {
    expect((await standard('exactly 100 %', 'shift time')).outs.standard).toBeUndefined();
  });
});

describe('work content', () => {
  const none = { stopwatch: 'exactly 0 s', estimate: 'exactly 0 s', hold: 'exactly 0 s' };
  const work = (joints: readonly Record<string, string>[]) =>
    ask('work-content', {
      joints,
      changes: '2',
      change: 'exactly 6 s',
      lifts: '1',
      lift: 'exactly 40 s',
    });

  it('is the sum of joints, tool changes and lift aids; holding stands beside it', async () => {
    const answer = await work([
      { count: '10', each: 'exactly 5 s', ...none, type: 'screw' },
      { count: '4', each: 'exactly 8 s', ...none, hold: 'exactly 30 s', type: 'bolt' },
    ]);
    expect(out(answer, 'content').x).toBeCloseTo(50 + 32 + 12 + 40, 9);
    expect(out(answer, 'hold').x).toBeCloseTo(120, 9);
    expect(out(answer, 'difference').x).toBe(0);
  });

  it('shows by how much a stopwatch differs from the estimate, and the word for it', async () => {
    const joint = (watch: string) => [
      {
        count: '18',
        each: watch,
        stopwatch: watch,
        estimate: '8.7 ± 0.2 s',
        hold: '0 s',
        type: 'x',
      },
    ];
    const far = out(await work(joint('9.6 ± 0.1 s')), 'difference');
    expect(far.x).toBeCloseTo(18 * 0.9, 9);
    expect(far.decision?.word).toBe('different');
    const near = out(await work(joint('8.8 ± 0.1 s')), 'difference');
    expect(near.decision?.word).toBe('not distinguishable');
  });
});

it('24 min of work at a takt of 4 min take 6 stations', async () => {
  const answer = await ask('station-count', {
    standard: 'exactly 24 min',
    takt: 'exactly 4 min',
    base: 'normal time',
  });
  expect(out(answer, 'stations').x).toBeCloseTo(6, 12);
  expect(answer.detail?.rows).toEqual([['normal time']]);
});
