/**
 * Question pack-energy-density: quotients of energy, mass and volume. Own inputs, definitions of
 * specific energy and energy density (from memory), results recomputed: 288 cells of 60 Ah and
 * 3.65 V, 0.84 kg and 0.45 L each, in a pack of 390 kg and 300 L.
 */
import { describe, expect, it } from 'vitest';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import { fromSi } from '../../src/quantity/index.ts';
import { out } from '../engine/made-question.ts';

const CELLS = { n: 288, ampereHours: 60, volts: 3.65, kg: 0.84, litres: 0.45 };
const wattHours = CELLS.n * CELLS.ampereHours * CELLS.volts;

async function densities(kg: number, litres: number) {
  const { question } = await loadQuestion('pack-energy-density');
  // A box of 1 m by 1 m whose height in mm is its volume in litres.
  const answer = askWritten(question, {
    energy: `exactly ${wattHours} W.h`,
    mass: `exactly ${kg} kg`,
    length: 'exactly 1000 mm',
    width: 'exactly 1000 mm',
    height: `exactly ${litres} mm`,
  });
  return {
    byMass: fromSi(out(answer, 'specific').x, 'W.h/kg', 'specificEnergy'),
    byVolume: fromSi(out(answer, 'volumetric').x, 'W.h/L', 'energyDensity'),
    volume: fromSi(out(answer, 'volume').x, 'L', 'volume'),
  };
}

describe('energy of a pack by mass and volume', () => {
  it('holds 63.072 kWh', () => expect(wattHours / 1000).toBeCloseTo(63.072, 3));

  it('of the pack is 161.72 Wh/kg and 210.24 Wh/L', async () => {
    const pack = await densities(390, 300);
    expect(pack.volume).toBeCloseTo(300, 9);
    expect(pack.byMass).toBeCloseTo(161.72, 2);
    expect(pack.byVolume).toBeCloseTo(210.24, 2);
  });

  it('of the cells is 260.71 Wh/kg and 486.67 Wh/L', async () => {
    const cells = await densities(CELLS.n * CELLS.kg, CELLS.n * CELLS.litres);
    expect(cells.byMass).toBeCloseTo(260.71, 2);
    expect(cells.byVolume).toBeCloseTo(486.67, 2);
  });

  it('of the pack is that of its cells times their share of its mass and volume', async () => {
    const [pack, cells] = [
      await densities(390, 300),
      await densities(CELLS.n * CELLS.kg, CELLS.n * CELLS.litres),
    ];
    expect(pack.byMass / cells.byMass).toBeCloseTo(0.6203, 4);
    expect(pack.byVolume / cells.byVolume).toBeCloseTo(0.432, 4);
  });
});
