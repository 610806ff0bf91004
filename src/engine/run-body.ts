import {
  type BodyOut,
  type BodyResult,
  formsOf,
  placesMissing,
  placesUnknown,
} from './body-out.ts';
import type { BoundInputs } from './bound-inputs.ts';
import { Aligned } from './forms/aligned.ts';
import type { Found, Question, RowBody, Run } from './method.ts';
import { throughFormula } from './propagate.ts';
import { runSolve } from './run-solve.ts';
import { runTally } from './run-tally.ts';

/** Runs a question's body over bound inputs. */
export function runBody(question: Question, bound: BoundInputs, run: Run): BodyResult {
  const { body } = question;
  const scalars = scalarsOf(question, bound);
  if (body.body === 'row') return runRow(body, bound, scalars);
  if (body.body === 'tally') return runTally(body, bound, scalars, run);
  return runSolve(question, body, bound, scalars, run);
}

/** The scalar inputs in the order declared. */
export function scalarsOf(question: Question, bound: BoundInputs): Found[] {
  const names = question.inputs.filter((i) => i.in === 'scalar').map((i) => i.name);
  return names.flatMap((name) => bound.scalars[name] ?? []);
}

function runRow(body: RowBody, { variables }: BoundInputs, scalars: readonly Found[]): BodyResult {
  const args = Aligned.of(formsOf(scalars, variables), variables);
  return { outs: body.outputs.map((spec) => formulaOut(spec, args, scalars)), findings: [] };
}

/** One output of a formula; a missing argument matters only where the formula depends on it. */
function formulaOut(
  spec: RowBody['outputs'][number],
  args: Aligned,
  cells: readonly Found[],
): BodyOut {
  const result = throughFormula(spec.of, args, spec.derivatives);
  const used = cells.filter((_, i) => result.depends[i]);
  return { spec, result, missing: placesMissing(used), unknownSpread: placesUnknown(used) };
}
