/**
 * Questions roll-forming, tube-bending, coating and bought-in: own inputs, sums worked by hand.
 * Their relations are common practice, no source.
 */
import { expect, it } from 'vitest';
import { BARE, numberOf } from '../engine/cost/asked.ts';

const STEADY = {
  ...BARE,
  ...{ availability: 'exactly 100 %', setUp: 'exactly 0 min', scrapPrice: 'exactly 0 {u}/kg' },
  ...{ labour: 'exactly 36 {u}/h', crew: 'exactly 1' },
};

it('roll-forming', async () => {
  const at = {
    ...STEADY,
    ...{
      thickness: 'exactly 1.5 mm',
      strip: 'exactly 200 mm',
      length: 'exactly 1190 mm',
      loss: 'exactly 10 mm',
    },
    ...{
      density: 'exactly 8000 kg/m3',
      speed: 'exactly 18 m/min',
      cut: 'exactly 2 s',
      price: 'exactly 1 {u}/kg',
    },
    ...{
      machine: 'exactly 72 {u}/h',
      stations: '20',
      rolls: 'exactly 6000 {u}',
      toolLife: 'exactly 1500000',
    },
    ...{ volume: 'exactly 60000', years: 'exactly 5', mass: 'exactly 2.8 kg' },
  };
  expect(await numberOf('roll-forming', 'gross', at)).toBeCloseTo(2.88, 9);
  expect(await numberOf('roll-forming', 'cost', at)).toBeCloseTo(
    2.88 + 6 * 0.03 + 120_000 / 300_000,
    9,
  );
});

it('tube-bending', async () => {
  const at = {
    ...STEADY,
    ...{
      diameter: 'exactly 30 mm',
      thickness: 'exactly 2 mm',
      length: 'exactly 960 mm',
      loss: 'exactly 40 mm',
    },
    ...{ density: 'exactly 8000 kg/m3', bends: '3', bend: 'exactly 6 s', dead: 'exactly 12 s' },
    ...{
      machine: 'exactly 72 {u}/h',
      price: 'exactly 1.5 {u}/kg',
      tool: 'exactly 0 {u}',
      mass: 'exactly 1.3 kg',
    },
  };
  const tube = 8000 * Math.PI * 0.028 * 0.002;
  expect(await numberOf('tube-bending', 'cost', at)).toBeCloseTo(1.5 * tube + 30 * 0.03, 9);
});

it('coating', async () => {
  const { scrapPrice: _scrap, setUp: _setUp, ...rest } = STEADY;
  const at = {
    ...rest,
    area: 'exactly 1.5 m2',
    count: '2',
    coat: 'exactly 2.4 {u}/m2',
    hang: 'exactly 10 s',
  };
  expect(await numberOf('coating', 'cost', at)).toBeCloseTo(1.8 + 0.1, 9);
});

it('bought-in: by quotation, by mass, half by each', async () => {
  const at = (trust: number) =>
    numberOf('bought-in', 'cost', {
      ...BARE,
      ...{ quote: 'exactly 40 {u}', mass: 'exactly 3 kg', perMass: 'exactly 10 {u}/kg' },
      ...{ trust: `exactly ${trust} %`, tool: 'exactly 0 {u}' },
    });
  expect(await at(100)).toBeCloseTo(40, 9);
  expect(await at(0)).toBeCloseTo(30, 9);
  expect(await at(50)).toBeCloseTo(35, 9);
});
