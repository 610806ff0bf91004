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

/** Outputs that are not homogeneous by what they are, and why. */
const NOT_HOMOGENEOUS: Readonly<Record<string, string>> = {
  'bolt-strength': 'stresses of the property class are numbers of the standard',
  'leak-from-decay molar': 'the gas constant stands in it as a number',
  'leak-units molar': 'the gas constant stands in it as a number',
  'leak-through-hole molecular': 'the gas constant stands in it as a number',
  'leak-through-hole knudsen': 'the gas constant stands in it as a number',
  'crossing-count litre': 'a litre is a number of cubic metres',
  'crossing-count sealLitre': 'a litre is a number of cubic metres',
  'crossing-count energy': 'a kilowatt hour is a number of joules',
  'crossing-count sealEnergy': 'a kilowatt hour is a number of joules',
  'leak-budget metre': 'a metre stands in it as a number',
  'water-ingress': 'gravity stands in it as a number',
  'water-test': 'depths, times and flows are numbers of the standard',
  'standard-hollow-section': 'the standard changes its radii at walls of 6 and 10 mm',
  'stiffness-substitution index': 'an index in the handbook’s own fixed units',
  'stiffness-substitution otherIndex': 'an index in the handbook’s own fixed units',
};
/** Example numbers that only tables beside the outputs, or words, rest on: they stand there without spread. */
const BESIDE_THE_OUTPUTS: Readonly<Record<string, RegExp>> = {
  'fastener-ends': /fasteners/,
  'line-census': /bend/,
  'water-test': /area/,
  'alternative-costs': /lines\.(3\.thickness|4\.service)/,
  'floor-options': /designs\.[2-9]/,
  'laminate-strain': /materials\.1\.(c1|c2|s12|t1)/,
  'mass-balance': /modules\.1\.moduleMass/,
  'mass-faults': /frontTrack|rearTrack|wheelbase|tares|moduleMass|expected/,
};
/** Structured bodies are differenced over a share of u: some curvature over that step stays. */
const SLOPES_AGREE = { row: 1e-5, tally: 1e-5, solve: 1e-3 } as const;
/** Plastic moduli of a traced outline come by bisection between its corners: slopes to a twentieth. */
const BISECTED: Readonly<Record<string, number>> = { 'polygon-section': 0.05 };
/** Rounding of an output that is nothing but rounding, against its like. */
const ROUNDING = 1e-12;

/** Five-point stencil with a step of its own: exact up to fourth powers (Abramowitz and Stegun, 25.3.6, from memory). */
function slope(f: (x: number) => number, x: number, step: number): number {
  return (f(x - 2 * step) - 8 * f(x - step) + 8 * f(x + step) - f(x + 2 * step)) / (12 * step);
}

describe.each(questions)('%s', (_, q) => {
  const slots = slotsOf(q);
  const numbers = slots.map((s) => s.x);
  const plain = runPlain(q, numbers);
  const answer = askWritten(q, q.example);

  /** What rounding is measured against where an output cancels to nothing: its spread, its like. */
  const sizeBeside = (name: string): number => {
    const kind = q.body.outputs.find((o) => o.name === name)?.kind;
    const alike = q.body.outputs.filter((o) => o.kind === kind);
    return Math.max(
      kind === 'ratio' || kind === 'angle' ? 1 : 0,
      out(answer, name).knownU,
      ...alike.map((o) => Math.abs(plain[o.name] ?? 0)),
    );
  };

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
        for (const { name, kind } of homogeneous(q))
          expect((scaled[name] ?? Number.NaN) / scaleOf(kind, base)).toSatisfy(
            near(plain[name], sizeBeside(name)),
          );
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
        // What is no share of the whole spread could not be printed.
        const whole = Math.max(Math.abs(expected), out(answer, name).knownU);
        const agree =
          (BISECTED[q.id] ?? SLOPES_AGREE[q.body.body]) * whole + ROUNDING * sizeBeside(name);
        expect(Math.abs(found - expected)).toBeLessThanOrEqual(agree);
      }
    });
  });

  it('rests on every number of its example that has a spread', () => {
    const used = new Set(Object.values(answer.outs).flatMap((o) => o.linear.map(([id]) => id)));
    const spread = slots.map((s) => s.variable).filter((id) => hasSpread(q, id));
    const beside = BESIDE_THE_OUTPUTS[q.id];
    expect(spread.filter((id) => !used.has(id) && !beside?.test(id))).toEqual([]);
  });
});

const homogeneous = (q: Question) =>
  q.body.outputs.filter(
    ({ name }) => !(q.id in NOT_HOMOGENEOUS) && !(`${q.id} ${name}` in NOT_HOMOGENEOUS),
  );

/** Variables of the example are found among those of the answer only where they are used. */
function hasSpread(q: Question, variable: string): boolean {
  const [, input = '', row, column = ''] = /^given:(\w+)(?:\.(\d+)\.(\w+))?$/.exec(variable) ?? [];
  const written = q.example[input];
  const text = typeof written === 'string' ? written : written?.[Number(row) - 1]?.[column];
  return /±|\/.*\//.test(text ?? '');
}

const near = (x: number | undefined, beside: number) => (found: number) =>
  x !== undefined && Math.abs(found - x) <= 1e-9 * Math.max(Math.abs(x), beside);
