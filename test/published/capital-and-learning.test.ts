/**
 * Questions machine-hour-rate and learning-curve. Capital recovery factors: published tables of
 * engineering economy (seen, recomputed); a page that prints 12,560.80 for the case of 100,000
 * worked with rounded factors. Learning: worked examples of both models (seen, recomputed); the
 * case of 85 % is from memory, recomputed.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../engine/cost/asked.ts';

describe('capital recovery', () => {
  it.each([
    [10, 10, 0.16275],
    [8, 10, 0.14903],
    [10, 8, 0.18744],
    [6, 4, 0.28859],
  ])('at %i %% over %i years', async (i, n, factor) => {
    const at = { interest: `exactly ${i} %`, life: `exactly ${n}` };
    expect(await numberOf('machine-hour-rate', 'factor', at)).toBeCloseTo(factor, 5);
  });

  it('of 100,000 less 20,000 over 15 years at 10 % is 12,517.90 a year', async () => {
    const at = {
      ...{ investment: 'exactly 100000 {u}', salvage: 'exactly 20000 {u}' },
      ...{ interest: 'exactly 10 %', life: 'exactly 15' },
    };
    expect(await numberOf('machine-hour-rate', 'capital', at)).toBeCloseTo(12_517.9, 1);
  });

  it('is 1/n without interest, and joins it smoothly', async () => {
    const factor = (i: string) =>
      numberOf('machine-hour-rate', 'factor', { interest: i, life: 'exactly 8' });
    expect(await factor('exactly 0 %')).toBeCloseTo(1 / 8, 12);
    expect(await factor('exactly 0.0001 %')).toBeCloseTo(1 / 8 + 1e-6 * (9 / 16), 10);
  });

  it('makes a rate with floor, energy and maintenance worked by hand', async () => {
    const at = {
      ...{
        investment: 'exactly 400000 {u}',
        salvage: 'exactly 0 {u}',
        interest: 'exactly 0 %',
        life: 'exactly 10',
      },
      ...{ floor: 'exactly 50 m2', floorPrice: 'exactly 100 {u}/m2', maintenance: 'exactly 5 %' },
      ...{
        power: 'exactly 20 kW',
        energyPrice: 'exactly 0.15 {u}/(kW.h)',
        hours: 'exactly 4000 h',
      },
    };
    const perHour = (40_000 + 5_000 + 20_000) / 4000 + 20 * 0.15;
    expect(3600 * (await numberOf('machine-hour-rate', 'rate', at))).toBeCloseTo(perHour, 9);
  });
});

describe('learning', () => {
  const at = (model: string, slope: number, units: number, first = 1) => ({
    ...{ model, slope: `exactly ${slope} %`, units: String(units), first: `exactly ${first} h` },
  });
  const hours = async (output: string, over: Record<string, string>) =>
    (await numberOf('learning-curve', output, over)) / 3600;

  it.each([
    [1, 1],
    [2, 0.8],
    [4, 0.64],
    [8, 0.512],
    [10, 0.47651],
    [100, 0.22706],
  ])('unit model, 80 %%: unit %i', async (n, expected) => {
    expect(await hours('unit', at('unit', 80, n))).toBeCloseTo(expected, 5);
  });

  it('unit model: totals', async () => {
    expect(await hours('total', at('unit', 80, 10))).toBeCloseTo(6.3154, 4);
    expect(await hours('unit', at('unit', 90, 10))).toBeCloseTo(0.70469, 5);
    expect(await hours('total', at('unit', 90, 10))).toBeCloseTo(7.9945, 4);
    expect(await hours('unit', at('unit', 85, 15, 250))).toBeCloseTo(132.49, 2);
    expect(await hours('total', at('unit', 85, 15, 250))).toBeCloseTo(2465.3, 1);
  });

  it('cumulative average: means, totals and the second unit', async () => {
    expect(await hours('mean', at('cumulative average', 80, 10))).toBeCloseTo(0.47651, 5);
    expect(await hours('total', at('cumulative average', 80, 10))).toBeCloseTo(4.7651, 4);
    expect(await hours('unit', at('cumulative average', 80, 2))).toBeCloseTo(0.6, 9);
    expect(await hours('mean', at('cumulative average', 80, 4))).toBeCloseTo(0.64, 9);
    expect(await hours('total', at('cumulative average', 85, 15, 250))).toBeCloseTo(1987.4, 1);
  });

  it('of many units is the sum of them one by one', async () => {
    const n = 5000;
    const sum = Array.from({ length: n }, (_, i) => (i + 1) ** Math.log2(0.9)).reduce(
      (a, b) => a + b,
    );
    expect(await hours('total', at('unit', 90, n))).toBeCloseTo(sum, 6);
  });
});
