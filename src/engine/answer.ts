import { canonicalText, digest, type Finding } from '../study/index.ts';
import { indexedFormOf, keepModels } from './answer-forms.ts';
import { type BodyOut, type BodyResult, isMissing } from './body-out.ts';
import type { BoundInputs } from './bound-inputs.ts';
import { cautionsOf } from './cautions-of.ts';
import { soundFigures, usualFigures } from './figures-of.ts';
import { finishOut } from './finish-out.ts';
import { gapsOf, notWorkedOut, withoutRepeats } from './gaps.ts';
import { withLazy } from './lazy.ts';
import type { Answer, Found, Out, Question, Run, Variable } from './method.ts';
import { runBody } from './run-body.ts';
import { plainInputs } from './run-solve.ts';
import { workingOf } from './working.ts';

const NO_PROGRESS: Run = { tick: () => undefined };

/**
 * Answers a question from bound inputs. An output that can't be worked out is left out and
 * found. What grows with the study and is not always wanted (the full ranking of contributions,
 * every cell read) is worked out when it is first looked at.
 */
export function answer(question: Question, bound: BoundInputs, run: Run = NO_PROGRESS): Answer {
  const result = runBody(question, bound, run);
  const models = new Map(bound.models);
  const worked = result.outs.filter((out) => isWorkedOut(out));
  const outs = Object.fromEntries(
    worked.map((out) => [out.spec.name, finishOut(question, out, bound, models)]),
  );
  const { body, valid, figures } = question;
  const isPlain = valid || figures || (body.body === 'tally' && body.detail);
  const plain = isPlain ? plainInputs(bound) : undefined;
  const looked = question.look?.(bound, run);
  const detail =
    looked?.detail ??
    result.detail ??
    (plain && body.body === 'tally' ? body.detail?.(plain) : undefined);
  const drawn = soundFigures([
    ...(looked?.figures ?? []),
    ...((plain && figures?.(plain, outs, detail)) ?? []),
  ]);
  const invalid = [
    ...((plain && valid?.(plain)) ?? []),
    ...(looked?.findings ?? []),
    ...drawn.findings,
  ];
  const base = {
    question: question.id,
    version: question.version,
    title: question.title,
    wording: question.wording,
    outs,
    steps: workingOf(question, bound, result, outs),
    ...(detail ? { detail } : {}),
    ...(looked?.further ? { further: looked.further } : {}),
    findings: findingsOf(bound, result, invalid),
    basis: bound.basis,
    sources: question.sources,
    assumptions: question.assumptions,
    cautions: cautionsOf(question),
  };
  const made: Answer = withLazy<typeof base, Omit<Answer, keyof typeof base>>(base, {
    key: () => keyOf(question, bound),
    variables: () => usedVariables(Object.values(outs), bound, models),
    reads: () => bound.read().map((r) => ({ of: r.of, there: !('missing' in r) })),
    figures: () => [...drawn.figures, ...usualFigures(question, outs, made.groups)],
    ...(result.groups ? { groups: result.groups } : {}),
  });
  keepModels(made, models);
  return made;
}

const isWorkedOut = ({ result: { form } }: BodyOut): boolean => Number.isFinite(form.x);

const findingsOf = (
  bound: BoundInputs,
  result: BodyResult,
  invalid: readonly Finding[],
): Finding[] =>
  withoutRepeats([
    ...bound.findings,
    ...(result.findings ?? []),
    ...result.outs.filter((out) => !isWorkedOut(out)).map(notWorkedOut),
    ...gapsOf(result, bound),
    ...invalid,
  ]);

/** The variables that an answer's outputs move with, by id. */
function usedVariables(
  outs: readonly Out[],
  { variables }: BoundInputs,
  models: ReadonlyMap<number, Variable>,
): Record<string, Variable> {
  const used: Record<string, Variable> = {};
  for (const form of outs.flatMap((out) => indexedFormOf(out) ?? []))
    for (let i = 0; i < form.vars.length; i++) {
      const number = form.vars[i] ?? -1;
      const variable = models.get(number) ?? variables.at(number);
      if (form.c[i]) used[variable.id] = variable;
    }
  return used;
}

/** question@version and a digest of all that went in. */
function keyOf(question: Question, bound: BoundInputs): string {
  const spreads = (cells: readonly Found[]) =>
    cells.map((cell) => (isMissing(cell) ? [] : [...cell.form.by]));
  const rows = Object.values(bound.tables).flat();
  const all = [
    plainInputs(bound),
    spreads(Object.values(bound.scalars)),
    rows.map((row) => spreads(row.numbers)),
    bound.basis.rates,
  ];
  return `${question.id}@${question.version}:${digest(canonicalText(all))}`;
}
