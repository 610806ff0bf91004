/**
 * Beams on an elastic bed after Hetényi, Beams on Elastic Foundation (1946). Boresi and Schmidt,
 * Advanced Mechanics of Materials, example 10.1: a rail under one load and under three (seen).
 * Rows of fasteners in closed form (from memory), against a sum of 801 loads and finite differences
 * of the beam's equation. TEMA form of the pitch rule (seen). Questions beam-on-bed,
 * seal-line-load and bolt-pitch-rule.
 */
import { describe, expect, it } from 'vitest';
import { out } from '../engine/made-question.ts';
import { asked, exactly, off, shown } from '../engine/structure/asked.ts';

const rail = (...at: number[]) =>
  asked('beam-on-bed', {
    loads: at.map((x) => ({ P: 'exactly 170 kN', x: `exactly ${x} mm` })),
    ...{ E: 'exactly 200 GPa', I: 'exactly 36900000 mm4', k: 'exactly 14 MPa' },
    c: 'exactly 99.1 mm',
  });

describe('a rail, 200 GPa, 36.9e6 mm⁴, bed 14 N/mm²', () => {
  it('one load of 170 kN', async () => {
    const answer = await rail(0);
    expect(off(shown(answer, 'beta'), 0.82986)).toBeLessThan(1e-4);
    expect(off(shown(answer, 'w'), 5.038)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'M'), 51.21)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'sigma'), 137.5)).toBeLessThan(1e-3);
  });
  it('three of them, 1.7 m apart', async () => {
    const answer = await rail(0, 1700, 3400);
    expect(off(shown(answer, 'w'), 7.86)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'M'), 37.02)).toBeLessThan(1e-3);
    expect(off(shown(answer, 'sigma'), 99.4)).toBeLessThan(1e-3);
  });
});

/** A lid whose flange and gasket give a chosen β s at a pitch of 80 mm: bed 10 N/mm². */
const lid = (EI: number, pitch: number, more: Readonly<Record<string, string>> = {}) => {
  const thickness = 6;
  const width = 20;
  const modulus = EI / ((width * thickness ** 3) / 12);
  return asked('seal-line-load', {
    ...exactly({ pitch, cornerPitch: pitch, width, thickness, free: 2, squeezed: 1.5 }, 'mm'),
    ...{ perimeter: 'exactly 5 m', area: 'exactly 1 m2', modulus: `exactly ${modulus} MPa` },
    ...{ rest: 'exactly 5 N/mm', demand: 'exactly 1 N/mm', pressure: 'exactly 0 kPa' },
    ...{ force: 'exactly 400 N', ...more },
  });
};
const ALUMINIUM = 70_000 * ((20 * 6 ** 3) / 12);

describe('bolts at a pitch on a gasket', () => {
  it('aluminium flange 20 × 6 mm, bed 10, pitch 80, 400 N: u 1.4198, 0.4902 mm half-way, mean 0.5', async () => {
    const answer = await lid(ALUMINIUM, 80);
    expect(answer.steps.find((s) => s.symbol === 'u')?.x).toBeCloseTo(1.4198, 4);
    expect(shown(answer, 'pressed') / 10).toBeCloseTo(0.4902, 4);
    expect(shown(answer, 'mean') / 10).toBeCloseTo(0.5, 9);
  });

  it.each([
    [0.5, 0.9993],
    [1, 0.9897],
    [1.5, 0.9493],
    [2, 0.8524],
    [Math.PI, 0.4345],
    [4, 0.1441],
  ])(
    'βs = %f: load half-way over load under a bolt %f; the same over rest with limiters',
    async (u, ratio) => {
      const pitch = (u * 80) / 1.4198;
      const answer = await lid(ALUMINIUM, pitch);
      const beta = u / pitch;
      const under = sumOfLoads(beta, pitch, 0, 400);
      const between = sumOfLoads(beta, pitch, pitch / 2, 400);
      expect(off(shown(answer, 'pressed'), between)).toBeLessThan(2e-4);
      expect(shown(answer, 'pressed') / under).toBeCloseTo(ratio, 3);
      expect(off(shown(answer, 'pressedCorner'), between)).toBeLessThan(2e-4);
      expect(shown(answer, 'held') / 5).toBeCloseTo(clamped(u), 4);
    },
  );

  it('with limiters: pressure inside takes more, a wider corner too', async () => {
    const answer = await lid(ALUMINIUM, 120, {
      ...{ cornerPitch: 'exactly 160 mm', pressure: 'exactly 20 kPa' },
    });
    // 20 kPa on 1 m² over 5 m lift with 4 N/mm.
    expect(shown(answer, 'lift')).toBeCloseTo(4, 9);
    const [held, lifted] = [shown(answer, 'held'), shown(answer, 'heldPressure')];
    expect(lifted).toBeCloseTo(5 - ((5 + 4) * (5 - held)) / 5, 9);
    expect(shown(answer, 'heldCorner')).toBeLessThan(held);
    expect(shown(answer, 'each')).toBeCloseTo(9 * 120, 6);
  });

  it('at the pitch it names, the load is the demand: with limiters and without', async () => {
    const answer = await lid(ALUMINIUM, 80);
    const held = await lid(ALUMINIUM, shown(answer, 'heldPitch'));
    expect(shown(held, 'heldMargin')).toBeCloseTo(0, 6);
    const pressed = await lid(ALUMINIUM, shown(answer, 'pressedPitch'));
    expect(shown(pressed, 'pressedMargin')).toBeCloseTo(0, 6);
  });

  it('a demand above the load at rest has no pitch, and that is said', async () => {
    const answer = await lid(ALUMINIUM, 80, { demand: 'exactly 6 N/mm' });
    expect(answer.outs.heldPitch).toBeUndefined();
    expect(out(answer, 'heldMargin').decision?.word).toBe('fails');
    expect(answer.findings.map((f) => f.code)).toContain('not-worked-out');
  });
});

/** Line load, N/mm, at x by 801 loads on an endless beam. */
function sumOfLoads(beta: number, pitch: number, x: number, F: number): number {
  let sum = 0;
  for (let i = -400; i <= 400; i++) {
    const v = beta * Math.abs(x - i * pitch);
    sum += ((F * beta) / 2) * Math.exp(-v) * (Math.cos(v) + Math.sin(v));
  }
  return sum;
}

/** What is left half-way of an even bed pressure on a clamped beam, by finite differences. */
function clamped(u: number): number {
  const n = 401;
  const h = u / (n - 1);
  const f = h ** 4;
  const rows = Array.from({ length: n }, (_, i) => {
    const row = new Float64Array(n);
    if (i === 0 || i === n - 1) {
      row[i] = 1;
      return { row, b: 0 };
    }
    for (const [k, c] of [1, -4, 6, -4, 1].entries()) {
      const at = i + k - 2;
      // Beyond a clamped end the deflection mirrors what is within.
      const inside = at < 0 ? -at : at > n - 1 ? 2 * (n - 1) - at : at;
      row[inside] = (row[inside] ?? 0) + c;
    }
    row[i] = (row[i] ?? 0) + 4 * f;
    return { row, b: 4 * f };
  });
  const w = solved(rows);
  return 1 - (w[(n - 1) / 2] ?? Number.NaN);
}

/** Gauss elimination of a narrow band. */
function solved(rows: { row: Float64Array; b: number }[]): Float64Array {
  const n = rows.length;
  for (const [i, { row, b }] of rows.entries())
    for (const below of rows.slice(i + 1, i + 3)) {
      const m = (below.row[i] ?? 0) / (row[i] ?? 1);
      for (let k = i; k < Math.min(n, i + 5); k++)
        below.row[k] = (below.row[k] ?? 0) - m * (row[k] ?? 0);
      below.b -= m * b;
    }
  const x = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    const { row, b } = rows[i] ?? { row: x, b: 0 };
    let sum = b;
    for (let k = i + 1; k < Math.min(n, i + 5); k++) sum -= (row[k] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (row[i] ?? 1);
  }
  return x;
}

describe('bolt-pitch-rule', () => {
  const rule = (a: number, t: number, m: number, pitch: number) =>
    asked('bolt-pitch-rule', { ...exactly({ a, t, pitch }, 'mm'), m: `exactly ${m}` });
  it('a 16, t 20, m 2: 80 mm, and 1.387 at a pitch of 100', async () => {
    const answer = await rule(16, 20, 2, 100);
    expect(shown(answer, 'most')).toBeCloseTo(80, 9);
    expect(shown(answer, 'factor')).toBeCloseTo(1.387, 3);
  });
  it('a 6, t 8, m 0.5: 60 mm', async () => {
    expect(shown(await rule(6, 8, 0.5, 60), 'most')).toBeCloseTo(60, 9);
  });
});
