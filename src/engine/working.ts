import { kindDef } from '../quantity/index.ts';
import { placeText } from '../study/index.ts';
import type { BodyResult } from './body-out.ts';
import type { BoundInputs } from './bound-inputs.ts';
import { uncertaintyOf } from './forms/indexed-form.ts';
import type { Found, Out, Question, ScalarInput, StepRow } from './method.ts';

/** The working of an answer: inputs, sums, intermediate results and outputs, in the order of use. */
export function workingOf(
  question: Question,
  bound: BoundInputs,
  result: BodyResult,
  outs: Readonly<Record<string, Out>>,
): StepRow[] {
  return [
    ...question.inputs.flatMap((i) =>
      i.in === 'scalar' ? scalarStep(i, bound.scalars[i.name]) : [],
    ),
    ...sumSteps(question, result, outs),
    ...result.outs.flatMap(({ spec }) => outStep(question, spec.name, outs)),
  ];
}

function scalarStep(input: ScalarInput, found: Found | undefined): StepRow[] {
  if (found === undefined || 'missing' in found) return [];
  return [
    {
      symbol: input.symbol,
      meaning: input.meaning,
      shown: found.from?.from.map((f) => f.reading.asWritten).join('; ') || placeText(found.place),
      kind: input.kind,
      unit: input.unit,
      x: found.form.x,
      u: found.unknownSpread ? 'incomplete' : uncertaintyOf(found.form),
      how: found.how,
      place: found.place,
    },
  ];
}

function sumSteps(
  question: Question,
  result: BodyResult,
  outs: Readonly<Record<string, Out>>,
): StepRow[] {
  const { body } = question;
  if (body.body !== 'tally') return [];
  return body.terms.flatMap((term, i) => {
    const sum = result.sums?.[i];
    // A sum over no rows is no number, and no line of the working.
    if (!sum || !Number.isFinite(sum.x)) return [];
    // A sum that is a result as it stands is listed once, as that.
    if (Object.values(outs).some((o) => o.symbol === term.symbol && o.x === sum.x)) return [];
    const u = sum.missing.length + sum.unknownSpread.length > 0 ? ('incomplete' as const) : sum.u;
    return [
      {
        symbol: term.symbol,
        meaning: `sum over ${sum.rows} rows`,
        shown: term.shown,
        kind: term.kind,
        unit: kindDef(term.kind).show[0],
        x: sum.x,
        u,
      },
    ];
  });
}

function outStep(question: Question, name: string, outs: Readonly<Record<string, Out>>): StepRow[] {
  const spec = question.body.outputs.find((o) => o.name === name);
  const out = outs[name];
  if (!spec || !out) return [];
  const { symbol, meaning, kind, unit, x, u } = out;
  return [{ symbol, meaning, shown: spec.shown, kind, unit, x, u, how: 'calculated' }];
}
