/**
 * Leak arithmetic. Conversions of units and of test gases as printed in tables of vacuum and
 * leak-test practice (seen; gases within 1 %); loss of pressure from the ideal gas, fine holes
 * after Poiseuille and Knudsen (formulas from memory, own inputs, recomputed); immersion and jets
 * after IEC 60529 and ISO 20653 (seen).
 */
import { describe, expect, it } from 'vitest';
import { out } from '../engine/made-question.ts';
import { asked, codes, detailRow, off, shown } from '../engine/structure/asked.ts';

const DECAY = {
  ...{ V: 'exactly 20 L', drop: 'exactly 50 Pa', t: 'exactly 60 s', p: 'exactly 106.325 kPa' },
  ...{ T: 'exactly 0 Cel', warming: 'exactly 0 K', growth: 'exactly 0 %', C: 'exactly 0 mL/kPa' },
};
const decay = (more: Readonly<Record<string, string>> = {}) =>
  asked('leak-from-decay', { ...DECAY, ...more });

describe('leak-from-decay', () => {
  it('20 L, 50 Pa in 60 s', async () => {
    const answer = await decay();
    expect(shown(answer, 'flow')).toBeCloseTo(0.016667, 6);
    expect(off(shown(answer, 'standard'), 9.869)).toBeLessThan(1e-4);
    expect(off(shown(answer, 'molar'), 7.339)).toBeLessThan(1e-4);
  });

  it('110 L, 50 Pa in 60 s: 0.092 Pa·m³/s', async () => {
    expect(shown(await decay({ V: 'exactly 110 L' }), 'flow')).toBeCloseTo(0.092, 3);
  });

  it.each([
    ['106.325', 36.3],
    ['100', 34.1],
  ])('0.1 K at 20 °C and %s kPa is %f Pa', async (p, pascal) => {
    const answer = await decay({
      ...{ T: 'exactly 20 Cel', warming: 'exactly -0.1 K', p: `exactly ${p} kPa` },
    });
    expect(shown(answer, 'warmed')).toBeCloseTo(-pascal, 1);
    expect(shown(answer, 'signal')).toBeCloseTo(50 - pascal, 1);
  });

  it('0.05 % of volume is 53.2 Pa, more than the signal: the leak seems to be a gain', async () => {
    const answer = await decay({ growth: 'exactly 0.05 %' });
    expect(shown(answer, 'grown')).toBeCloseTo(53.2, 1);
    expect(shown(answer, 'flow')).toBeLessThan(0);
  });

  it('walls that give way hold more gas', async () => {
    const rigid = await decay();
    const soft = await decay({ C: 'exactly 100 mL/kPa' });
    // 100 mL/kPa at 106.325 kPa are 10.6325 L beside the 20 L.
    expect(shown(soft, 'flow') / shown(rigid, 'flow')).toBeCloseTo(30.6325 / 20, 10);
  });

  it('without a known temperature the leak of 110 L is not told from none', async () => {
    const usual = { V: '110 ± 3 L', drop: '50 ± 3 Pa', T: '20 ± 0.3 Cel' };
    const unsure = await asked('leak-from-decay', {
      ...{ ...usual, t: '60 ± 0.2 s', p: '100 ± 0.1 kPa' },
      ...{ warming: '0 ± 0.2 K', growth: '0 ± 0.01 %' },
    });
    expect(out(unsure, 'flow').decision?.word).toBe('not distinguishable');
    const sure = await asked('leak-from-decay', {
      ...{ ...usual, t: '60 ± 0.2 s', p: '100 ± 0.1 kPa' },
      ...{ warming: '0 ± 0.01 K', growth: '0 ± 0.002 %' },
    });
    expect(out(sure, 'flow').decision?.direction).toBe('leaks');
  });
});

describe('leak-units', () => {
  const units = (q: string) => asked('leak-units', { Q: `exactly ${q}`, T: 'exactly 0 Cel' });
  it.each([
    ['1 atm.cm3/s', 'pascal', 0.101325],
    ['1 atm.cm3/s', 'millibar', 1.01325],
    ['1 atm.cm3/s', 'torr', 0.76],
    ['1 Pa.m3/s', 'millibar', 10],
    ['1 Pa.m3/s', 'atmosphere', 9.869],
    ['1 mm[Hg].L/s', 'millibar', 1.333],
    ['1.68875e-3 Pa.m3/s', 'standard', 1],
    ['0.0168875 mbar.L/s', 'standard', 1],
    ['0.016667 Pa.m3/s', 'atmosphere', 0.16449],
    ['1 mbar.L/s', 'pascal', 0.1],
  ] as const)('%s is %s %f', async (q, name, x) => {
    expect(off(shown(await units(q), name), x)).toBeLessThan(3e-4);
  });

  it('a standard volume hangs on its reference temperature', async () => {
    const at = async (Tref: string) =>
      shown(await asked('leak-units', { Q: 'exactly 1 Pa.m3/s', Tref }), 'standard');
    expect((await at('exactly 20 Cel')) / (await at('exactly 0 Cel'))).toBeCloseTo(
      293.15 / 273.15,
      10,
    );
  });
});

describe('leak-gas, factors from helium', () => {
  it.each([
    ['air', 1.08, 0.3717],
    ['argon', 0.883, 0.3165],
    ['neon', 0.626, 0.4454],
    ['hydrogen', 2.23, 1.409],
    ['nitrogen', 1.12, 0.378],
    ['water vapour', 2.09, 0.4714],
  ])('%s: laminar %f, molecular %f', async (wanted, laminar, molecular) => {
    const answer = await asked('leak-gas', {
      ...{ Q: 'exactly 1 Pa.m3/s', measuredWith: 'helium', wanted },
    });
    expect(off(shown(answer, 'laminar'), laminar)).toBeLessThan(0.01);
    expect(off(shown(answer, 'molecular'), molecular)).toBeLessThan(5e-4);
  });

  it('helium over air, molecular, is 2.690', async () => {
    const answer = await asked('leak-gas', {
      ...{ Q: 'exactly 1 Pa.m3/s', measuredWith: 'air', wanted: 'helium' },
    });
    expect(shown(answer, 'molecularRatio')).toBeCloseTo(2.69, 3);
    expect(off(shown(answer, 'laminarRatio'), 18.2 / 19.6)).toBeLessThan(1e-9);
  });

  it('a gas of no table is refused', async () => {
    const answer = await asked('leak-gas', {
      ...{ Q: 'exactly 1 Pa.m3/s', measuredWith: 'helium', wanted: 'air' },
      wanted: 'swamp gas',
    }).catch((error: Error) => error.message);
    expect(typeof answer === 'string' ? answer : codes(answer).join()).toMatch(/swamp gas|unknown/);
  });
});

const hole = (um: number, mm: number, p1: number, p2: number, more = {}) =>
  asked('leak-through-hole', {
    ...{ d: `exactly ${um} um`, L: `exactly ${mm} mm` },
    ...{ p1: `exactly ${p1} kPa`, p2: `exactly ${p2} kPa`, ...more },
  });

describe('fine holes', () => {
  it.each([
    [10, 2.868e-6],
    [20, 4.588e-5],
    [30, 2.323e-4],
  ])('leak-through-hole %f µm of 5 mm at 10 kPa: %f Pa·m³/s', async (d, q) => {
    expect(off(shown(await hole(d, 5, 111.325, 101.325), 'laminar'), q)).toBeLessThan(3e-4);
  });

  it.each([
    ['helium', 4.0026, 3.303e-8],
    ['air', 28.965, 1.228e-8],
  ])('molecular flow of %s through 1 µm of 1 mm into vacuum', async (_gas, M, q) => {
    const answer = await hole(1, 1, 101.325, 0, { molarMass: `exactly ${M} g/mol` });
    expect(off(shown(answer, 'molecular'), q)).toBeLessThan(4e-4);
  });

  it('equivalent-hole: 1 sccm is 49.26 µm', async () => {
    const answer = await asked('equivalent-hole', {
      ...{ Q: 'exactly 1.68875e-3 Pa.m3/s', L: 'exactly 5 mm' },
      ...{ p1: 'exactly 111.325 kPa', p2: 'exactly 101.325 kPa' },
    });
    expect(shown(answer, 'd')).toBeCloseTo(49.26, 2);
    expect(shown(answer, 'meniscus')).toBeCloseTo((4 * 72.8e-3) / 49.26e-6 / 1000, 2);
  });

  it('laminar flow goes with d⁴, molecular with d³; helium to air 1/1.077 and 2.690', async () => {
    const [one, two] = [await hole(5, 1, 200, 100), await hole(10, 1, 200, 100)];
    expect(shown(two, 'laminar') / shown(one, 'laminar')).toBeCloseTo(16, 9);
    expect(shown(two, 'molecular') / shown(one, 'molecular')).toBeCloseTo(8, 9);
    expect(shown(one, 'knudsen') / shown(two, 'knudsen')).toBeCloseTo(2, 9);
    const helium = { molarMass: 'exactly 4.0026 g/mol', viscosity: 'exactly 19.6 uPa.s' };
    const he = await hole(5, 1, 200, 100, helium);
    expect(shown(he, 'laminar') / shown(one, 'laminar')).toBeCloseTo(1 / 1.077, 3);
    expect(shown(he, 'molecular') / shown(one, 'molecular')).toBeCloseTo(2.69, 3);
  });

  it('a short hole is said to hold back less sure', async () => {
    expect(codes(await hole(300, 1, 111, 101))).toContain('short-hole');
  });
});

describe('water-ingress', () => {
  const wet = (d: string) => asked('water-ingress', { d, L: 'exactly 5 mm' });
  it('100 µm of 5 mm, 1 m deep for 30 min, by hand', async () => {
    const answer = await wet('exactly 100 um');
    const head = 998 * 9.80665;
    const flow = (Math.PI * 1e-16 * head) / (128 * 1.002e-3 * 5e-3);
    expect(off(shown(answer, 'head'), head / 1000)).toBeLessThan(1e-9);
    expect(off(shown(answer, 'volume'), flow * 1800 * 1e6)).toBeLessThan(1e-9);
    expect(off(shown(answer, 'meniscus'), 2.912)).toBeLessThan(1e-9);
  });

  it('goes with d⁴; a hole below some 30 µm may be held by its meniscus', async () => {
    const [one, two] = [await wet('exactly 20 um'), await wet('exactly 40 um')];
    expect(shown(two, 'volume') / shown(one, 'volume')).toBeCloseTo(16, 9);
    expect(codes(one)).toContain('held-by-meniscus');
    expect(codes(two)).not.toContain('held-by-meniscus');
    expect(codes(await wet('exactly 1500 um'))).toContain('not-laminar');
  });
});

describe('water-test', () => {
  const test = (code: string, height = 170, area = 2) =>
    asked('water-test', { code, height: `exactly ${height} mm`, area: `exactly ${area} m2` });
  it('IPX7: 1 m, or 0.15 m over the highest point; 30 min', async () => {
    expect(shown(await test('IPX7'), 'depth')).toBe(1000);
    expect(shown(await test('IPX7', 1200), 'depth')).toBeCloseTo(1350, 9);
    expect(shown(await test('IPX7'), 'time')).toBeCloseTo(30, 9);
  });
  it.each([
    ['IPX5', 2, 3, 37.5],
    ['IPX6', 2, 3, 300],
    ['IPX6', 5, 5, 500],
    ['IPX9K', 5, 2, 30],
  ])('%s of %f m²: %f min, %f L', async (code, area, time, water) => {
    const answer = await test(code, 170, area);
    expect(shown(answer, 'time')).toBeCloseTo(time, 9);
    expect(shown(answer, 'water')).toBeCloseTo(water, 9);
    expect(shown(answer, 'depth')).toBe(0);
  });
  it('its table holds the other tests of the same enclosure', async () => {
    expect(detailRow(await test('IPX5'), 'IPX7')[2]).toBe(1);
  });
});

describe('many-leak-paths', () => {
  it('16 for one: half the width, four times the area, twice the molecular flow', async () => {
    const answer = await asked('many-leak-paths', { d: 'exactly 100 um', n: 'exactly 16' });
    expect(shown(answer, 'each')).toBeCloseTo(50, 9);
    expect(shown(answer, 'areaRatio')).toBeCloseTo(4, 9);
    expect(shown(answer, 'molecularRatio')).toBeCloseTo(2, 9);
    expect(shown(answer, 'holdEach') / shown(answer, 'holdOne')).toBeCloseTo(2, 9);
  });
  it('and 16 such holes let through as much as the one', async () => {
    const [one, small] = [await hole(100, 5, 111, 101), await hole(50, 5, 111, 101)];
    expect(16 * shown(small, 'laminar')).toBeCloseTo(shown(one, 'laminar'), 12);
    expect((16 * shown(small, 'molecular')) / shown(one, 'molecular')).toBeCloseTo(2, 9);
  });
});

describe('leak-resolution', () => {
  const resolved = (more: Readonly<Record<string, string>>) =>
    asked('leak-resolution', {
      ...{ V: 'exactly 110 L', t: 'exactly 60 s', p: 'exactly 100 kPa', T: 'exactly 20 Cel' },
      ...{ drift: 'exactly 0 Pa', warmth: 'exactly 0 K', swell: 'exactly 0 %' },
      ...{ C: 'exactly 0 mL/kPa', limit: 'exactly 0.1 Pa.m3/s', ...more },
    });
  it('0.1 K alone are 34 Pa and hide twice 0.0625 Pa·m³/s', async () => {
    const answer = await resolved({ warmth: 'exactly 0.1 K' });
    expect(shown(answer, 'disturbance')).toBeCloseTo(34.1, 1);
    expect(shown(answer, 'least')).toBeCloseTo((2 * 0.11 * 34.112) / 60, 5);
    expect(shown(answer, 'time')).toBeCloseTo((2 * 0.11 * 34.112) / 0.1, 2);
  });
  it('0.05 % of volume at 106.325 kPa are 53.2 Pa', async () => {
    const answer = await resolved({ swell: 'exactly 0.05 %', p: 'exactly 106.325 kPa' });
    expect(shown(answer, 'disturbance')).toBeCloseTo(53.2, 1);
    expect(out(answer, 'margin').decision?.word).toBe('fails');
  });
  it('a longer test tells smaller leaks', async () => {
    const longer = await resolved({ drift: 'exactly 3 Pa', t: 'exactly 600 s' });
    expect(shown(longer, 'least')).toBeCloseTo((2 * 0.11 * 3) / 600, 9);
    expect(out(longer, 'margin').decision?.word).toBe('holds');
  });
});

describe('test-pressure', () => {
  it('5 kPa on 1.7 m²: 8.5 kN; the energy is that of an expansion in small steps', async () => {
    const answer = await asked('test-pressure', {
      ...{ V: 'exactly 110 L', area: 'exactly 1.7 m2', over: 'exactly 5 kPa', count: '62' },
      ...{ outside: 'exactly 100 kPa', vent: '8 ± 0.5 kPa' },
    });
    expect(shown(answer, 'force')).toBeCloseTo(8.5, 9);
    expect(shown(answer, 'each')).toBeCloseTo(8500 / 62, 6);
    expect(off(shown(answer, 'energy'), expansion(0.11, 105e3, 100e3))).toBeLessThan(1e-5);
    expect(out(answer, 'margin').decision?.word).toBe('holds');
    expect(answer.cautions.map((c) => c.id)).toContain('pressure-test');
  });
});

/** Work of an adiabatic expansion, summed over small steps of the pressure. */
function expansion(v: number, from: number, to: number): number {
  const steps = 20000;
  let [p, volume, work] = [from, v, 0];
  for (let i = 0; i < steps; i++) {
    const next = from + ((to - from) * (i + 1)) / steps;
    const larger = volume * (p / next) ** (1 / 1.4);
    work += ((p + next) / 2) * (larger - volume);
    [p, volume] = [next, larger];
  }
  return work;
}
