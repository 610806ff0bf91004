/**
 * Properties that every question of the registry must have, whatever it asks: its formulas are
 * homogeneous in the base units, and the derivatives behind its spread are those of its formulas.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askWritten, loadAll, type Question } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';
import { runPlain, scaleOf, slotsOf } from './plain-questions.ts';

const questions = [...(await loadAll())];

/** Five-point stencil with a step of its own: exact up to fourth powers (Abramowitz and Stegun, 25.3.6, from memory). */
function slope(f: (x: number) => number, x: number, step: number): number {
  return (f(x - 2 * step) - 8 * f(x - step) + 8 * f(x + step) - f(x + 2 * step)) / (12 * step);
}

describe.each(questions)('%s', (_, q) => {
  const slots = slotsOf(q);
  const numbers = slots.map((s) => s.x);
  const plain = runPlain(q, numbers);
  const answer = askWritten(q, q.example);

  it('gives the plain value of its formulas', () => {
    expect(Object.keys(plain).sort()).toEqual(q.body.outputs.map((o) => o.name).sort());
    for (const { name } of q.body.outputs)
      expect(out(answer, name).x).toBeCloseTo(plain[name] ?? Number.NaN, 12);
  });

  it('is homogeneous: its outputs scale with their dimension', () => {
    const factors = fc.array(fc.double({ min: 0.1, max: 10, noNaN: true }), {
      minLength: 8,
      maxLength: 8,
    });
    fc.assert(
      fc.property(factors, (base) => {
        const scaled = runPlain(
          q,
          slots.map((s) => s.x * scaleOf(s.spec.kind, base)),
        );
        for (const { name, kind } of q.body.outputs)
          expect((scaled[name] ?? Number.NaN) / scaleOf(kind, base)).toSatisfy(near(plain[name]));
      }),
      { numRuns: 50 },
    );
  });

  it('has the contributions that another finite difference of its formulas gives', () => {
    slots.forEach((s, i) => {
      const u = answer.variables[s.variable]?.u ?? 0;
      if (u === 0) return;
      for (const { name } of q.body.outputs) {
        const along = (x: number) => runPlain(q, numbers.with(i, x))[name] ?? Number.NaN;
        const found = out(answer, name).linear.find(([id]) => id === s.variable)?.[1] ?? 0;
        const expected = u * slope(along, s.x, 0.003 * Math.max(Math.abs(s.x), u));
        const size = Math.max(Math.abs(expected), 1e-6 * out(answer, name).knownU);
        expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-5 * size);
      }
    });
  });

  it('rests on every number of its example that has a spread', () => {
    const used = new Set(Object.values(answer.outs).flatMap((o) => o.linear.map(([id]) => id)));
    const spread = slots.map((s) => s.variable).filter((id) => hasSpread(q, id));
    expect(spread.filter((id) => !used.has(id))).toEqual([]);
  });
});

/** Variables of the example are found among those of the answer only where they are used. */
function hasSpread(q: Question, variable: string): boolean {
  const [, input = '', row, column = ''] = /^given:(\w+)(?:\.(\d+)\.(\w+))?$/.exec(variable) ?? [];
  const written = q.example[input];
  const text = typeof written === 'string' ? written : written?.[Number(row) - 1]?.[column];
  return /±|\/.*\//.test(text ?? '');
}

const near = (x: number | undefined) => (found: number) =>
  x !== undefined && Math.abs(found - x) <= 1e-10 * Math.max(Math.abs(x), 1e-300);
