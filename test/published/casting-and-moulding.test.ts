/**
 * Questions die-casting, low-pressure-casting, injection-moulding and compression-moulding.
 * Chvorinov's rule: published examination questions (ME 2015 Q46, ME 2018 Q160), seen. Cooling of
 * a plate: heat equation, first term, beside its whole Fourier series. Clamp force: published
 * examples, seen; die casting own inputs, its margin common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { BARE, numberOf } from '../engine/cost/asked.ts';

const solid = (volume: number, surface: number, mould = 1): Promise<number> =>
  numberOf('low-pressure-casting', 'solid', {
    volume3: `exactly ${volume} cm3`,
    surface: `exactly ${surface} cm2`,
    mould: `exactly ${mould} min/cm2`,
  });

describe('Chvorinov’s rule', () => {
  it('cylinder h = r against a cube of side 2 h: 0.5625', async () => {
    const cylinder = await solid(Math.PI, 4 * Math.PI);
    expect(cylinder / (await solid(8, 24))).toBeCloseTo(0.5625, 9);
  });

  it('cube with an insulated top: 36/25 (ME 2015 Q46)', async () => {
    expect((await solid(1, 5)) / (await solid(1, 6))).toBeCloseTo(36 / 25, 9);
  });

  it('plate 80 × 120 × 20 in 2 min, riser h = d of 51.87 mm in 3 min (ME 2018 Q160)', async () => {
    const plate = [8 * 12 * 2, 2 * (8 * 12 + 8 * 2 + 12 * 2)] as const;
    const mould = 2 / ((await solid(...plate)) / 60);
    const d = 5.187;
    const riser = await solid((Math.PI * d ** 3) / 4, 1.5 * Math.PI * d ** 2, mould);
    expect(riser / 60).toBeCloseTo(3, 2);
  });

  it('a wall cooled from both sides: half its thickness is its modulus', async () => {
    const wall = await numberOf('die-casting', 'solid', {
      wall: 'exactly 20 mm',
      mould: 'exactly 1.2 s/mm2',
    });
    expect(wall).toBeCloseTo(1.2 * 10 ** 2, 9);
  });
});

describe('clamp force', () => {
  it('die casting, 450 cm² at 60 MPa: 2700 kN, with a margin 3105 kN', async () => {
    const at = {
      ...{ projected: 'exactly 450 cm2', runner: 'exactly 0 %', pressure: 'exactly 60 MPa' },
      margin: 'exactly 1.15',
    };
    expect(await numberOf('die-casting', 'opening', at)).toBeCloseTo(2.7e6, 3);
    expect(await numberOf('die-casting', 'clampForce', at)).toBeCloseTo(3.105e6, 3);
  });

  it('four cavities of 60 cm² and a runner of 20 cm² at 40 MPa: 1040 kN', async () => {
    const at = {
      ...{ projected: 'exactly 60 cm2', cavities: '4', pressure: 'exactly 40 MPa' },
      runner: `exactly ${(100 * 20) / 240} %`,
    };
    expect(await numberOf('injection-moulding', 'clampForce', at)).toBeCloseTo(1.04e6, 3);
  });

  it('six discs of 15 cm with a runner of 15 % at 50 MPa: 6096.7 kN', async () => {
    const at = {
      ...{ projected: `exactly ${(Math.PI * 225) / 4} cm2`, cavities: '6' },
      ...{ runner: 'exactly 15 %', pressure: 'exactly 50 MPa' },
    };
    expect((await numberOf('injection-moulding', 'clampForce', at)) / 1e3).toBeCloseTo(6096.7, 1);
  });
});

const plate = (h: number, a: number, melt: number, wall: number, eject: number) => ({
  ...{ wall: `exactly ${h} mm`, diffusivity: `exactly ${a} mm2/s` },
  ...{
    meltTemp: `exactly ${melt} Cel`,
    wallTemp: `exactly ${wall} Cel`,
    ejectTemp: `exactly ${eject} Cel`,
  },
});

/** Temperature in the middle of a plate by the whole series, between 0 at the wall and 1 at first. */
function middle(t: number, h: number, a: number): number {
  let sum = 0;
  for (let k = 0; k < 60; k++) {
    const n = 2 * k + 1;
    sum += ((k % 2 === 0 ? 1 : -1) / n) * Math.exp(-((n * Math.PI) ** 2) * ((a * t) / h ** 2));
  }
  return (4 / Math.PI) * sum;
}

describe('cooling of a wall', () => {
  it.each([
    [3, 0.09, 230, 50, 95, 16.494, 11.918],
    [2, 0.13, 260, 54, 82, 6.975, 5.567],
    [3, 0.13, 260, 54, 82, 15.693, 5.567 * 2.25],
  ])('%d mm, %d mm²/s, %i/%i/%i °C', async (h, a, melt, wall, eject, centre, mean) => {
    const at = plate(h, a, melt, wall, eject);
    const found = await numberOf('injection-moulding', 'cooling', at);
    expect(found).toBeCloseTo(centre, 2);
    expect(await numberOf('injection-moulding', 'coolingMean', at)).toBeCloseTo(mean, 2);
    expect(wall + (melt - wall) * middle(found, h, a)).toBeCloseTo(eject, 1);
  });

  it.each([
    [2.5, 0.08, 218, 38, 88, 12.052],
    [3, 0.13, 302, 91, 127, 14.099],
  ])('%d mm, %d mm²/s, %i/%i/%i °C, middle', async (h, a, melt, wall, eject, centre) => {
    expect(
      await numberOf('injection-moulding', 'cooling', plate(h, a, melt, wall, eject)),
    ).toBeCloseTo(centre, 2);
  });

  it('has no time where the part is to leave hotter than the melt, or colder than the mould', async () => {
    await expect(
      numberOf('injection-moulding', 'cost', plate(3, 0.1, 230, 50, 240)),
    ).rejects.toThrow();
    await expect(
      numberOf('injection-moulding', 'cost', plate(3, 0.1, 230, 50, 40)),
    ).rejects.toThrow();
  });
});

it('compression-moulding of a plate worked by hand', async () => {
  const at = {
    ...BARE,
    ...{ mass: 'exactly 9.5 kg', flash: 'exactly 5 %', price: 'exactly 5 {u}/kg' },
    ...{
      wall: 'exactly 5 mm',
      cure: 'exactly 30 s/mm',
      dead: 'exactly 50 s',
      availability: 'exactly 100 %',
    },
    ...{ projected: 'exactly 10000 cm2', pressure: 'exactly 8 MPa', pressForce: 'exactly 8000 kN' },
    ...{
      machine: 'exactly 180 {u}/h',
      crew: 'exactly 1',
      labour: 'exactly 36 {u}/h',
      setUp: 'exactly 0 min',
    },
    ...{ edge: 'exactly 4 m', edgePrice: 'exactly 1 {u}/m', tool: 'exactly 0 {u}' },
  };
  expect(await numberOf('compression-moulding', 'force', at)).toBeCloseTo(8e6, 3);
  expect(await numberOf('compression-moulding', 'cost', at)).toBeCloseTo(
    50 + 4 + 200 * (0.05 + 0.01),
    9,
  );
});
