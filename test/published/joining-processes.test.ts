/**
 * Questions spot-weld, arc-weld, friction-stir-weld, adhesive-bead, screw, rivet-nut and clip: own
 * inputs, sums worked by hand. Areas of fillets and beads are geometry; times are common practice,
 * no source.
 */
import { describe, expect, it } from 'vitest';
import { BARE, numberOf } from '../engine/cost/asked.ts';

const STEADY = {
  ...BARE,
  availability: 'exactly 100 %',
  labour: 'exactly 36 {u}/h',
  crew: 'exactly 1',
};
const CELL = { ...STEADY, machine: 'exactly 72 {u}/h' };

describe('welds and beads', () => {
  it('spot-weld: twenty spots', async () => {
    const at = {
      ...CELL,
      ...{ count: '20', weld: 'exactly 1 s', beside: 'exactly 2 s', handling: 'exactly 10 s' },
      ...{ tip: 'exactly 3 {u}', tipLife: 'exactly 3000', energy: 'exactly 0.02 kW.h' },
      energyPrice: 'exactly 0.15 {u}/(kW.h)',
    };
    expect(await numberOf('spot-weld', 'worn', at)).toBeCloseTo(20 * (0.001 + 0.003), 9);
    expect(await numberOf('spot-weld', 'cost', at)).toBeCloseTo(0.08 + 70 * 0.03, 9);
  });

  it('arc-weld: a fillet of throat a has the area a²', async () => {
    const at = {
      ...CELL,
      ...{
        count: '4',
        length: 'exactly 0.25 m',
        throat: 'exactly 4 mm',
        density: 'exactly 8000 kg/m3',
      },
      ...{
        deposit: 'exactly 80 %',
        speed: 'exactly 0.6 m/min',
        beside: 'exactly 5 s',
        handling: 'exactly 20 s',
      },
      ...{ gas: 'exactly 3.6 {u}/h', price: 'exactly 2 {u}/kg' },
    };
    expect(await numberOf('arc-weld', 'gross', at)).toBeCloseTo((16e-6 * 8000) / 0.8, 12);
    expect(await numberOf('arc-weld', 'cost', at)).toBeCloseTo(0.32 + 100 * 0.001 + 140 * 0.03, 9);
  });

  it('friction-stir-weld: nine seams of 1.46 m at 1 m/min', async () => {
    const at = {
      ...CELL,
      ...{ count: '9', length: 'exactly 1.46 m', speed: 'exactly 1 m/min', beside: 'exactly 10 s' },
      ...{ handling: 'exactly 60 s', pin: 'exactly 100 {u}', pinLife: 'exactly 1000 m' },
    };
    const time = 9 * (87.6 + 10) + 60;
    expect(await numberOf('friction-stir-weld', 'cost', at)).toBeCloseTo(1.314 + time * 0.03, 9);
  });

  it('adhesive-bead: section by length by density', async () => {
    const at = {
      ...CELL,
      ...{ count: '2', length: 'exactly 2 m', width: 'exactly 10 mm', gap: 'exactly 1 mm' },
      ...{ density: 'exactly 1200 kg/m3', waste: 'exactly 4 %', speed: 'exactly 12 m/min' },
      ...{ beside: 'exactly 2 s', handling: 'exactly 10 s', price: 'exactly 5 {u}/kg' },
    };
    expect(await numberOf('adhesive-bead', 'gross', at)).toBeCloseTo(0.05, 12);
    expect(await numberOf('adhesive-bead', 'cost', at)).toBeCloseTo(0.25 + 34 * 0.03, 9);
  });
});

describe('fasteners of a lid, before overhead and without a tool', () => {
  const bare = {
    ...STEADY,
    machine: 'exactly 0 {u}/h',
    seat: 'exactly 0 {u}',
    access: 'exactly 0 s',
  };
  const cost = (id: string, count: number, piece: number, drive: number) =>
    numberOf(id, 'cost', {
      ...bare,
      ...{ count: String(count), piece: `exactly ${piece} {u}`, drive: `exactly ${drive} s` },
    });

  it.each([
    ['screw', 62, 0.05, 4.6, 5.952],
    ['rivet-nut', 62, 0.09, 3.2, 7.564],
    ['clip', 58, 0.12, 2.4, 8.352],
  ])('%s: %i at %d and %d s', async (id, count, piece, drive, expected) => {
    expect(await cost(id, count, piece, drive)).toBeCloseTo(expected, 9);
  });
});
