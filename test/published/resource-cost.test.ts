/**
 * Question part-cost: material term m·Cm/(1 − f) of the resource cost model after Esawi and
 * Ashby (2003), and its time term taken by mass. Formula published (from memory), own inputs,
 * recomputed. The tooling term of that model has no place in this question.
 */
import { describe, expect, it } from 'vitest';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

const CASE = { kg: 1.2, perKg: 2.5, scrap: 0.1 };
/** Capital of 800,000 written off over 43,800 h at a load of 0.5, overhead 90 an hour, 60 pieces an hour. */
const TIME_TERM = (800_000 / (0.5 * 43_800) + 90) / 60;

async function cost(gross: number, conversion: number) {
  const { question } = await loadQuestion('part-cost');
  return askWritten(question, {
    parts: [
      {
        mass: `exactly ${CASE.kg} kg`,
        price: `exactly ${CASE.perKg} {u}/kg`,
        gross: `exactly ${gross}`,
        conversion: `exactly ${conversion} {u}/kg`,
        ...{ tool: 'exactly 0 {u}', life: 'exactly 1', pieces: '1', made: 'exactly 1' },
        materialAssumed: 'exactly 0',
        conversionAssumed: 'exactly 1',
        assembly: 'case',
      },
    ],
    overhead: 'exactly 1',
    total: `exactly ${CASE.kg} kg`,
  });
}

describe('resource cost', () => {
  it('has a material term of 3.3333', async () => {
    const answer = await cost(1 / (1 - CASE.scrap), 0);
    expect(out(answer, 'material').x).toBeCloseTo(3.3333, 4);
  });

  it('divides by 1 − f: a gross factor of 1 + f would give 3.30', async () => {
    expect(out(await cost(1 + CASE.scrap, 0), 'material').x).toBeCloseTo(3.3, 9);
  });

  it('has a time term of 2.1088, so that a piece without tooling costs 5.442', async () => {
    expect(TIME_TERM).toBeCloseTo(2.1088, 4);
    const answer = await cost(1 / (1 - CASE.scrap), TIME_TERM / CASE.kg);
    expect(out(answer, 'conversion').x).toBeCloseTo(2.1088, 4);
    expect(out(answer, 'cost').x).toBeCloseTo(605.442 - 600, 3);
    expect(out(answer, 'assumedShare').x).toBeCloseTo(2.1088 / 5.4421, 4);
  });
});
