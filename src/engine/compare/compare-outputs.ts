import { formUncertainty, welchSatterthwaite } from '../../quantity/index.ts';
import { type Place, RefusalError } from '../../study/index.ts';
import { decideDifference } from '../decide.ts';
import { directionOf } from '../direction.ts';
import type { Answer, Decision, Out } from '../method.ts';
import type { About, ComparedSide, CompareOptions, Comparison, Scatter } from './comparison.ts';
import { type DifferenceForm, differenceForm, formOf, sharedCauses } from './difference-form.ts';
import { scatterFor, scatterOf } from './unit-scatter.ts';
import { needAlike } from './unlike.ts';

/**
 * The difference of one output between two answers to one question: d with its spread, the
 * correlation by what the two share, and the word that follows. One specimen is not its design:
 * about the designs, unit-to-unit scatter is added for each side.
 * @throws RefusalError for unlike conditions or rates, another question, an output that is not there.
 */
export function compareOutputs(
  a: Answer,
  b: Answer,
  output: string,
  options: CompareOptions = {},
): Comparison {
  needAlike(a, b);
  const [outA, outB] = [outOf(a, output), outOf(b, output)];
  const about: About = options.about ?? 'these specimens';
  const scatter = about === 'the designs' ? scatterFor(outA.kind, options) : undefined;
  const sides = [sideOf(a, outA, scatter), sideOf(b, outB, scatter)] as const;
  const form = differenceForm({ answer: a, out: outA }, { answer: b, out: outB }, options);
  const scattered = Math.hypot(sides[0].scatter ?? 0, sides[1].scatter ?? 0);
  const knownU = Math.hypot(formUncertainty(formOf(form)), scattered);
  const lacks = lacksOf(about, scatter, outA, outB);
  const u = lacks.length > 0 ? ('incomplete' as const) : knownU;
  const dof = dofOf(form, scattered);
  const { symbol, meaning, kind, unit } = outA;
  return {
    ...{ question: a.question, title: a.title, output, symbol, meaning, kind, unit, about },
    ...{ a: sides[0], b: sides[1], d: form.x, u, knownU, dof, lacks },
    independentU: Math.hypot(outA.knownU, outB.knownU, scattered),
    correlation: correlationOf(form, outA, outB),
    shared: sharedCauses(form),
    ...(scatter ? { scatter } : {}),
    ...(u === 'incomplete' ? {} : { decision: decide(form.x, u, dof, outA) }),
  };
}

function outOf(answer: Answer, output: string): Out {
  const out = answer.outs[output];
  if (out) return out;
  const names = Object.keys(answer.outs).join(', ');
  throw new RefusalError({
    code: 'no-answer',
    place: { subject: answer.basis.subject ?? '', column: output },
    value: output,
    why: `"${answer.title}" has no number of this name here`,
    next:
      names === ''
        ? 'Nothing could be worked out: take the missing readings first.'
        : `It has: ${names}.`,
  });
}

function sideOf(answer: Answer, out: Out, scatter: Scatter | undefined): ComparedSide {
  const { x, u, knownU } = out;
  const own = scatter ? { scatter: scatterOf(scatter, x) } : {};
  return { x, u, knownU, ...own, basis: answer.basis };
}

function lacksOf(about: About, scatter: Scatter | undefined, a: Out, b: Out): Place[] {
  const places = [a, b].flatMap((out) => [...out.missing, ...out.unknownSpread]);
  const noScatter = about === 'the designs' && !scatter;
  return noScatter ? [...places, { property: `unit-to-unit scatter of ${a.meaning}` }] : places;
}

/** Scatter of units counts as known exactly: what is judged is its size, once. */
function dofOf({ by }: DifferenceForm, scattered: number): number | null {
  const parts = [...by.values()].map(({ a, b, variable }) => ({
    c: a - b,
    dof: variable.dof ?? Number.POSITIVE_INFINITY,
  }));
  const dof = welchSatterthwaite([...parts, { c: scattered, dof: Number.POSITIVE_INFINITY }]);
  return Number.isFinite(dof) ? dof : null;
}

function correlationOf({ by }: DifferenceForm, a: Out, b: Out): number {
  if (a.knownU === 0 || b.knownU === 0) return 0;
  let cov = 0;
  for (const side of by.values()) cov += side.a * side.b;
  return Math.max(-1, Math.min(1, cov / (a.knownU * b.knownU)));
}

function decide(d: number, u: number, dof: number | null, out: Out): Decision {
  const decision = decideDifference(d, u, dof);
  const direction = directionOf(decision.word, d, out);
  return direction === undefined ? decision : { ...decision, direction };
}
