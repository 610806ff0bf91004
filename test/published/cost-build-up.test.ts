/**
 * Question cost-build-up: the resource cost model C = m Cm / (1 − f) + (Ct/n) sets + time, after
 * Esawi and Ashby (2003), own inputs, recomputed. Whole sets are the count rounded up: where the
 * textbook writes Int(n/nt + 0.51), truncation would give no set at all for few pieces.
 */
import { describe, expect, it } from 'vitest';
import { BARE, numberOf } from '../engine/cost/asked.ts';

/** 1.2 kg at 2.50 with a tenth lost; 60 an hour; 800,000 over 43,800 h at a load of 0.5, and 90 an hour. */
const CASE = {
  ...BARE,
  gross: `exactly ${1.2 / 0.9} kg`,
  net: 'exactly 1.2 kg',
  price: 'exactly 2.5 {u}/kg',
  scrapPrice: 'exactly 0 {u}/kg',
  purchased: 'exactly 0 {u}',
  cycle: 'exactly 60 s',
  machine: `exactly ${800_000 / (0.5 * 43_800) + 90} {u}/h`,
  crew: 'exactly 0',
  availability: 'exactly 100 %',
  setUp: 'exactly 0 min',
  slope: 'exactly 100 %',
  profit: 'exactly 0 %',
  tool: 'exactly 60000 {u}',
  toolLife: 'exactly 50000',
  years: 'exactly 1',
};

describe('resource cost', () => {
  it.each([
    [100, 605.442],
    [1000, 65.442],
    [10_000, 11.442],
    [100_000, 6.642],
  ])('of %i pieces', async (n, expected) => {
    expect(
      await numberOf('cost-build-up', 'cost', { ...CASE, volume: `exactly ${n}` }),
    ).toBeCloseTo(expected, 3);
  });

  it('has a material of 3.3333 and a time of 2.1088', async () => {
    const at = { ...CASE, volume: 'exactly 100' };
    expect(await numberOf('cost-build-up', 'material', at)).toBeCloseTo(3.3333, 4);
    expect(await numberOf('cost-build-up', 'machine', at)).toBeCloseTo(2.1088, 4);
  });

  it.each([
    [1, 1],
    [50_000, 1],
    [50_001, 2],
    [100_000, 2],
    [100_001, 3],
  ])('pays whole sets: %i pieces take %i', async (n, sets) => {
    const tooling = await numberOf('cost-build-up', 'tooling', { ...CASE, volume: `exactly ${n}` });
    expect((tooling * n) / 60_000).toBeCloseTo(sets, 9);
  });
});

describe('the build-up of a piece', () => {
  it('is what the sums worked by hand give', async () => {
    const at = {
      ...CASE,
      ...{
        rejects: 'exactly 5 %',
        availability: 'exactly 80 %',
        cavities: '2',
        crew: 'exactly 0.5',
      },
      ...{
        labour: 'exactly 36 {u}/h',
        machine: 'exactly 72 {u}/h',
        scrapPrice: 'exactly 0.5 {u}/kg',
      },
      ...{
        setUp: 'exactly 30 min',
        batch: 'exactly 900',
        overhead: 'exactly 1.2',
        profit: 'exactly 5 %',
      },
      ...{
        packaging: 'exactly 0.1 {u}',
        freight: 'exactly 0.2 {u}',
        volume: 'exactly 25000',
        years: 'exactly 4',
      },
      ...{ gross: 'exactly 1.5 kg' },
    };
    const time = 60 / 2 / (0.8 * 0.95) + 1800 / 900;
    const material = (1.5 * 2.5 - (1.5 - 1.2 * 0.95) * 0.5) / 0.95;
    const tooling = (60_000 * 2) / 100_000;
    const before = material + 0.02 * time + 0.5 * 0.01 * time + tooling;
    expect(await numberOf('cost-build-up', 'time', at)).toBeCloseTo(time, 9);
    expect(await numberOf('cost-build-up', 'material', at)).toBeCloseTo(material, 9);
    expect(await numberOf('cost-build-up', 'cost', at)).toBeCloseTo(1.2 * 1.05 * before + 0.3, 9);
  });

  it('learns where it is asked, by the model that is named', async () => {
    const at = { ...CASE, crew: 'exactly 1', slope: 'exactly 80 %', volume: 'exactly 10' };
    const bare = await numberOf('cost-build-up', 'labour', { ...at, learning: '' });
    const unit = await numberOf('cost-build-up', 'labour', { ...at, learning: 'unit' });
    const mean = await numberOf('cost-build-up', 'labour', {
      ...at,
      learning: 'cumulative average',
    });
    expect(unit / bare).toBeCloseTo(0.63154, 5);
    expect(mean / bare).toBeCloseTo(0.47651, 5);
  });
});
