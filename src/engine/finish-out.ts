import { toSi } from '../quantity/index.ts';
import { keepForm } from './answer-forms.ts';
import type { BodyOut } from './body-out.ts';
import type { BoundInputs } from './bound-inputs.ts';
import { decideDifference, decideMargin } from './decide.ts';
import { directionOf } from './direction.ts';
import { linearDoubts, widens } from './doubts.ts';
import { IndexedForm } from './forms/indexed-form.ts';
import { rankedOf } from './forms/largest.ts';
import { distinctPlaces } from './gaps.ts';
import { withLazy } from './lazy.ts';
import type { Decision, Out, OutputSpec, Question, Variable } from './method.ts';

/** One result from what its body gave; errors of methods that it meets are noted in `models`. */
export function finishOut(
  question: Question,
  { spec, result, missing, unknownSpread }: BodyOut,
  bound: BoundInputs,
  models: Map<number, Variable>,
): Out {
  const form = withModelError(question, spec, result.form, bound, models);
  const whole = missing.length === 0 && unknownSpread.length === 0;
  const dof = form.variables.dofOf(form);
  const { name, symbol, meaning, kind, unit, decides } = spec;
  const base = {
    ...{ name, symbol, meaning, kind, unit, dof },
    x: form.x,
    u: whole ? form.u : ('incomplete' as const),
    knownU: form.u,
    meanShift: form.variables.leanOf(form) + result.curvature,
    missing: distinctPlaces(missing),
    unknownSpread: distinctPlaces(unknownSpread),
    doubts: linearDoubts({ ...result, form }),
    ...(widens({ ...result, form })
      ? { secondOrderU: Math.sqrt(form.u * form.u + result.addedVariance) }
      : {}),
    ...(whole && decides ? { decision: decide(spec, form.x, form.u, dof) } : {}),
  };
  const out: Out = withLazy<typeof base, Pick<Out, 'linear'>>(base, {
    linear: () => rankedOf(form),
  });
  keepForm(out, form);
  return out;
}

function decide(spec: OutputSpec, d: number, u: number, dof: number | null): Decision {
  if (spec.decides === 'margin') return decideMargin(d, u, dof);
  const decision = decideDifference(d, u, dof);
  const direction = directionOf(decision.word, d, spec);
  return direction === undefined ? decision : { ...decision, direction };
}

/** The method's own error: one part common to all it is used on, one of this subject's own. */
function withModelError(
  question: Question,
  { name, unit, kind }: OutputSpec,
  form: IndexedForm,
  bound: BoundInputs,
  models: Map<number, Variable>,
): IndexedForm {
  const error = question.modelError[name];
  if (!error) return form;
  const u =
    'relative' in error ? error.relative * Math.abs(form.x) : toSi(error.absolute, unit, kind);
  const shared = `model:${question.id}/${name}`;
  const label = `method of "${question.title}"`;
  const parts = [
    modelVariable(question, shared, `${label}, common to all designs`, u, error.sharedFraction),
    modelVariable(
      question,
      `${shared}/${bound.of}`,
      `${label}, this one`,
      u,
      1 - error.sharedFraction,
    ),
  ].filter((v) => v.u > 0);
  for (const v of parts) models.set(bound.variables.put(v), v);
  return withVariables(form, parts);
}

function modelVariable(
  question: Question,
  id: string,
  label: string,
  u: number,
  fraction: number,
): Variable {
  const own = u * Math.sqrt(fraction);
  return {
    ...{ id, label, what: 'model', spread: { s: 'normal', u: own } },
    ...{ u: own, shift: 0, dof: null, place: { subject: question.id } },
  };
}

/** A form with one standard uncertainty of each of these variables added to it. */
function withVariables(form: IndexedForm, more: readonly Variable[]): IndexedForm {
  const numbers = more.map((v) => form.variables.numberFor(v.id, () => v));
  const n = form.vars.length;
  const vars = new Int32Array(n + more.length);
  const c = new Float64Array(n + more.length);
  vars.set(form.vars);
  c.set(form.c);
  let length = n;
  for (const [k, number] of numbers.entries()) {
    const held = vars.subarray(0, n).indexOf(number);
    const at = held < 0 ? length++ : held;
    vars[at] = number;
    c[at] = (c[at] ?? 0) + (more[k]?.u ?? 0);
  }
  return new IndexedForm(form.x, vars.subarray(0, length), c.subarray(0, length), form.variables);
}
