/**
 * Question extrusion: Johnson's extrusion strain a + b ln r with the mean flow stress
 * K ε^n / (1 + n). Billet 50 × 100 to 20 mm, indirect: textbook example, seen. Direct from 25 to
 * 12.5 mm with the friction 2 L/D: Groover, from memory. Throughput: own inputs.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../engine/cost/asked.ts';

const disc = (d: number) => `exactly ${(Math.PI * d * d) / 4} mm2`;

describe('extrusion', () => {
  const indirect = {
    ...{
      billet: 'exactly 50 mm',
      billetLength: 'exactly 0 mm',
      section: disc(20),
      shape: 'exactly 1',
    },
    ...{
      redundant: 'exactly 0.8',
      work: 'exactly 1.4',
      strength: 'exactly 800 MPa',
      hardening: 'exactly 0.13',
    },
  };

  it('indirect, 50 to 20 mm', async () => {
    expect(await numberOf('extrusion', 'reduction', indirect)).toBeCloseTo(6.25, 9);
    expect((await numberOf('extrusion', 'flow', indirect)) / 1e6).toBeCloseTo(766, 0);
    expect(Math.abs((await numberOf('extrusion', 'pressure', indirect)) / 1e6 - 2578)).toBeLessThan(
      1,
    );
    expect((await numberOf('extrusion', 'force', indirect)) / 1e6).toBeCloseTo(5.062, 2);
  });

  it.each([
    [75, 3312],
    [50, 2566],
    [25, 1820],
    [0, 1074],
  ])('direct, 25 to 12.5 mm, %i mm left', async (length, pressure) => {
    const found = await numberOf('extrusion', 'pressure', {
      ...{ billet: 'exactly 25 mm', billetLength: `exactly ${length} mm`, section: disc(12.5) },
      ...{ redundant: 'exactly 0.8', work: 'exactly 1.5', shape: 'exactly 1' },
      ...{ strength: 'exactly 415 MPa', hardening: 'exactly 0.18' },
    });
    expect(Math.abs(found / 1e6 - pressure)).toBeLessThan(1);
  });

  it('350 mm² at 30 m/min is 1701 kg/h', async () => {
    const at = {
      ...{ section: 'exactly 350 mm2', speed: 'exactly 30 m/min', density: 'exactly 2700 kg/m3' },
      ...{ length: 'exactly 3 m', kerf: 'exactly 0 mm', lost: 'exactly 0 %', dead: 'exactly 0 s' },
      ...{ availability: 'exactly 100 %', rejects: 'exactly 0 %', setUp: 'exactly 0 min' },
    };
    const gross = await numberOf('extrusion', 'gross', at);
    expect((gross / (await numberOf('extrusion', 'time', at))) * 3600).toBeCloseTo(1701, 6);
  });
});
