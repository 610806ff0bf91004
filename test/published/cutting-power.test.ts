/**
 * Question machining: Pc = Q kc / η and rates of removal. Power at 3 × 0.2 × 120 m/min: handbook
 * of cutting, seen. Face mill, turned bars: published examination questions and Kalpakjian (from
 * memory), recomputed. A router's three seconds a thread: own inputs.
 */
import { describe, expect, it } from 'vitest';
import { BARE, numberOf } from '../engine/cost/asked.ts';

const cut = (depth: number, width: number, feed: number) => ({
  ...{ depth: `exactly ${depth} mm`, width: `exactly ${width} mm`, feed: `exactly ${feed} m/min` },
});

describe('power and rate of removal', () => {
  it('3 mm deep, 0.2 mm a turn, 120 m/min, 3100 MPa, 80 %: 4.65 kW', async () => {
    const at = { ...cut(3, 0.2, 120), cutting: 'exactly 3100 MPa', efficiency: 'exactly 80 %' };
    expect((await numberOf('machining', 'spindle', at)) / 1e3).toBeCloseTo(4.65, 9);
  });

  it('4 mm deep, 0.25 mm a turn, 120 m/min, 1 J/mm³: 2.0 kW', async () => {
    const at = { ...cut(4, 0.25, 120), cutting: 'exactly 1000 MPa', efficiency: 'exactly 100 %' };
    expect((await numberOf('machining', 'spindle', at)) / 1e3).toBeCloseTo(2, 9);
  });

  it('face mill, 60 wide, 4 deep, 12 teeth of 0.1 at 120 m/min on 120 dia: 1527.9 mm³/s', async () => {
    const turns = 120 / (Math.PI * 0.12);
    const at = cut(4, 60, (turns * 12 * 0.1) / 1000);
    expect((await numberOf('machining', 'removal', at)) * 1e9).toBeCloseTo(1527.9, 1);
  });

  it('bar from 12.5 to 12 mm at 200 mm/min: 1924 mm³/min, 128.3 W at 4 W·s/mm³', async () => {
    const at = {
      ...cut(0.25, Math.PI * 12.25, 0.2),
      ...{ cutting: 'exactly 4000 MPa', efficiency: 'exactly 100 %' },
    };
    expect((await numberOf('machining', 'removal', at)) * 60e9).toBeCloseTo(1924, 0);
    expect(await numberOf('machining', 'spindle', at)).toBeCloseTo(128.3, 1);
  });
});

it('62 threads of 3 s at 95 an hour cost 4.91', async () => {
  const at = {
    ...{
      ...BARE,
      ...cut(3, 40, 2.5),
      removed: 'exactly 0 cm3',
      edge: 'exactly 0 m',
      holes: '62',
      hole: 'exactly 3 s',
    },
    ...{ handling: 'exactly 0 s', availability: 'exactly 100 %', setUp: 'exactly 0 min' },
    ...{ machine: 'exactly 95 {u}/h', cutting: 'exactly 800 MPa', efficiency: 'exactly 80 %' },
    power: 'exactly 5 kW',
  };
  expect(await numberOf('machining', 'cost', at)).toBeCloseTo((62 * 3 * 95) / 3600, 9);
});
