/**
 * Question run-down-time: turns from engaged length and pitch, closed form, own inputs; coarse
 * pitches of ISO 261:1998 and ISO 262:1998, seen in reprints of the table; pitch or length in a
 * designation (ISO 965-1: without a pitch the coarse one is meant).
 */
import { describe, expect, it } from 'vitest';
import { COARSE_PITCHES } from '../../src/data/index.ts';
import { askWritten, loadQuestion, parseFastenerSpec } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

const runDown = async (engaged: string, pitch: string, speed: string) =>
  askWritten((await loadQuestion('run-down-time')).question, { engaged, pitch, speed });

describe('run-down', () => {
  it('of 20 mm at a pitch of 1.25 mm is 16 turns, and 2 s at 480 a minute', async () => {
    const answer = await runDown('exactly 20 mm', 'exactly 1.25 mm', 'exactly 480 /min');
    expect(out(answer, 'turns').x).toBeCloseTo(16, 12);
    expect(out(answer, 'time').x).toBeCloseTo(2, 12);
  });

  it('carries the spread of length and speed: 3 % and 4 % make 5 %', async () => {
    const { x, u } = out(
      await runDown('20 ± 0.6 mm', 'exactly 1.25 mm', '480 ± 19.2 /min'),
      'time',
    );
    expect(Number(u) / x).toBeCloseTo(0.05, 4);
  });

  it.each([
    ['no length', '0 mm', '1.25 mm', '480 /min'],
    ['no pitch', '20 mm', '0 mm', '480 /min'],
    ['a negative speed', '20 mm', '1.25 mm', '-480 /min'],
  ])('with %s is refused', async (_, ...inputs) => {
    await expect(runDown(...inputs)).rejects.toThrow();
  });
});

describe('coarse pitches of ISO 261', () => {
  it.each([
    [3, 0.5],
    [4, 0.7],
    [5, 0.8],
    [6, 1],
    [8, 1.25],
    [10, 1.5],
    [12, 1.75],
    [14, 2],
    [16, 2],
    [18, 2.5],
    [20, 2.5],
    [24, 3],
    [30, 3.5],
    [36, 4],
    [42, 4.5],
    [48, 5],
    [56, 5.5],
    [64, 6],
  ])('M%d has %d mm', (d, pitch) => expect(COARSE_PITCHES.get(d)).toBe(pitch));
});

describe('specifications', () => {
  it.each([
    ['M12x90 10.9', { thread: 'M12', pitch: 0.00175, length: 0.09, grade: '10.9' }],
    ['M24x1.5', { thread: 'M24x1.5', pitch: 0.0015 }],
    ['M10x1', { thread: 'M10x1', pitch: 0.001 }],
    ['M12x1.5x60', { thread: 'M12x1.5', pitch: 0.0015, length: 0.06 }],
    ['M6x20 8.8 captive washer', { thread: 'M6', length: 0.02, rest: 'captive washer' }],
    ['M3x3', { thread: 'M3', pitch: 0.0005, length: 0.003 }],
    ['M8 × 30, A2-70', { thread: 'M8', length: 0.03, grade: 'A2-70' }],
    ['M6 / 8 mm', { thread: 'M6', rest: '8 mm' }],
    ['8 mm', { diameter: 0.008 }],
  ])('%s', (text, expected) => expect(parseFastenerSpec(text)).toMatchObject(expected));

  it.each(['', 'push-turn', 'a4 weld 180 mm', '9 seams x 1.46 m', 'hose 8 to 20 mm', 'EPDM'])(
    '"%s" gives no size',
    (text) => expect(parseFastenerSpec(text)).toBeUndefined(),
  );
});
