import {
  FormBuilder,
  formUncertainty,
  type LinearForm,
  toSi,
  welchSatterthwaite,
} from '../quantity/index.ts';
import { canonicalText, digest, type Finding, type Place } from '../study/index.ts';
import { cautionsOf } from './cautions-of.ts';
import { decideDifference, decideMargin } from './decide.ts';
import { linearDoubts, widens } from './doubts.ts';
import { ownFigures, usualFigures } from './figures-of.ts';
import type {
  Answer,
  BoundInputs,
  Decision,
  DetailTable,
  ModelError,
  Out,
  Question,
  Run,
  Variable,
} from './method.ts';
import { leanOf } from './propagate.ts';
import { type BodyOut, type BodyResult, runBody } from './run-body.ts';
import { workingOf } from './working.ts';

const NO_PROGRESS: Run = { tick: () => undefined };

/** Answers a question from bound inputs. An output that can't be worked out is left out and found. */
export function answer(question: Question, bound: BoundInputs, run: Run = NO_PROGRESS): Answer {
  const result = runBody(question, bound, run);
  const variables = new Map(bound.variables);
  const outs: Record<string, Out> = {};
  const findings: Finding[] = [...bound.findings, ...(result.findings ?? [])];
  for (const out of result.outs) {
    if (Number.isFinite(out.result.form.x))
      outs[out.spec.name] = finishOut(question, out, bound, variables);
    else findings.push(notWorkedOut(out));
  }
  findings.push(
    ...gapsOf(result, reasonsOf(bound)),
    ...(question.valid?.(plainNominal(bound)) ?? []),
  );
  const detail = result.detail ?? tallied(question, bound);
  const drawn = question.figures
    ? ownFigures(question, plainNominal(bound), outs, detail)
    : { figures: [], findings: [] };
  findings.push(...drawn.findings);
  return {
    question: question.id,
    version: question.version,
    key: keyOf(question, bound),
    title: question.title,
    wording: question.wording,
    outs,
    steps: workingOf(question, bound, result, outs),
    ...(result.groups ? { groups: result.groups } : {}),
    ...(detail ? { detail } : {}),
    figures: [...drawn.figures, ...usualFigures(question, outs, result.groups)],
    findings: withoutRepeats(findings),
    basis: bound.basis,
    variables: Object.fromEntries(usedVariables(outs, variables)),
    sources: question.sources,
    assumptions: question.assumptions,
    cautions: cautionsOf(question),
    reads: bound.read.map((r) => ({ of: r.of, there: !('missing' in r) })),
  };
}

function finishOut(
  question: Question,
  out: BodyOut,
  bound: BoundInputs,
  variables: Map<string, Variable>,
): Out {
  const { spec, result, missing, unknownSpread } = out;
  const error = question.modelError[spec.name];
  const form = error
    ? withModelError(
        question,
        spec.name,
        spec.unit,
        spec.kind,
        result.form,
        error,
        bound,
        variables,
      )
    : result.form;
  const knownU = formUncertainty(form);
  const whole = missing.length === 0 && unknownSpread.length === 0;
  const dof = effectiveDof(form, variables);
  const base = {
    name: spec.name,
    symbol: spec.symbol,
    meaning: spec.meaning,
    kind: spec.kind,
    unit: spec.unit,
    x: form.x,
    u: whole ? knownU : ('incomplete' as const),
    knownU,
    dof,
    meanShift: leanOf(form, variables) + result.curvature,
    linear: ranked(form),
    missing: distinctPlaces(missing),
    unknownSpread: distinctPlaces(unknownSpread),
    doubts: linearDoubts({ ...result, form }, variables),
    ...(widens({ ...result, form })
      ? { secondOrderU: Math.sqrt(knownU * knownU + result.addedVariance) }
      : {}),
  };
  const decision = whole && spec.decides ? decide(spec.decides, form.x, knownU, dof) : undefined;
  return decision ? { ...base, decision } : base;
}

const decide = (
  what: 'difference' | 'margin',
  d: number,
  u: number,
  dof: number | null,
): Decision => (what === 'margin' ? decideMargin(d, u, dof) : decideDifference(d, u, dof));

/** The method's own error: one part common to all it is used on, one of this subject's own. */
function withModelError(
  question: Question,
  output: string,
  unit: string,
  kind: Out['kind'],
  form: LinearForm,
  error: ModelError,
  bound: BoundInputs,
  variables: Map<string, Variable>,
): LinearForm {
  const u =
    'relative' in error ? error.relative * Math.abs(form.x) : toSi(error.absolute, unit, kind);
  const out = new FormBuilder().add(form);
  const shared = `model:${question.id}/${output}`;
  const own = `${shared}/${bound.basis.subject ?? ''}`;
  const label = `method of "${question.title}"`;
  const shares = [
    [shared, `${label}, common to all designs`, error.sharedFraction],
    [own, `${label}, this one`, 1 - error.sharedFraction],
  ] as const;
  for (const [id, words, fraction] of shares) {
    const c = u * Math.sqrt(fraction);
    if (c === 0) continue;
    out.contribute(id, c);
    variables.set(id, {
      id,
      label: words,
      what: 'model',
      spread: { s: 'normal', u: c },
      u: c,
      shift: 0,
      dof: null,
      place: { subject: question.id },
    });
  }
  return out.done();
}

function effectiveDof(form: LinearForm, variables: ReadonlyMap<string, Variable>): number | null {
  const parts = [...form.by].map(([id, c]) => ({
    c,
    dof: variables.get(id)?.dof ?? Number.POSITIVE_INFINITY,
  }));
  const dof = welchSatterthwaite(parts);
  return Number.isFinite(dof) ? dof : null;
}

const ranked = (form: LinearForm): (readonly [string, number])[] =>
  [...form.by]
    .filter(([, c]) => c !== 0)
    .sort(([a, x], [b, y]) => Math.abs(y) - Math.abs(x) || (a < b ? -1 : 1));

function usedVariables(
  outs: Readonly<Record<string, Out>>,
  variables: ReadonlyMap<string, Variable>,
): Map<string, Variable> {
  const used = new Map<string, Variable>();
  for (const out of Object.values(outs))
    for (const [id] of out.linear) {
      const v = variables.get(id);
      if (v) used.set(id, v);
    }
  return used;
}

function distinctPlaces(places: readonly Place[]): Place[] {
  const seen = new Map(places.map((p) => [canonicalText(p), p]));
  return [...seen.values()];
}

function withoutRepeats(findings: readonly Finding[]): Finding[] {
  return [...new Map(findings.map((f) => [canonicalText(f), f])).values()];
}

/** Why each place that is missing has nothing. */
function reasonsOf(bound: BoundInputs): ReadonlyMap<string, string> {
  const rows = Object.values(bound.tables).flat();
  const cells = [...Object.values(bound.scalars), ...rows.flatMap((r) => Object.values(r.cells))];
  return new Map(cells.flatMap((c) => ('missing' in c ? [[canonicalText(c.place), c.why]] : [])));
}

/** What is missing from the answer and why, each place once. */
function gapsOf(result: BodyResult, reasons: ReadonlyMap<string, string>): Finding[] {
  const missing = distinctPlaces(result.outs.flatMap((o) => o.missing));
  const unknown = distinctPlaces(result.outs.flatMap((o) => o.unknownSpread));
  return [
    ...missing.map(
      (place): Finding => ({
        code: 'missing',
        level: 'gap',
        place,
        what: `missing, and not counted as zero: what depends on it is incomplete (${reasons.get(canonicalText(place)) ?? 'there are no rows to sum'})`,
        next: 'Take the reading, or say why there is none.',
      }),
    ),
    ...unknown.map(
      (place): Finding => ({
        code: 'spread-unknown',
        level: 'gap',
        place,
        what: 'the spread of this value is not known: what depends on it is incomplete',
        next: 'State how well it is known, or measure it again with a named instrument.',
      }),
    ),
  ];
}

const notWorkedOut = (out: BodyOut): Finding => ({
  code: 'not-worked-out',
  level: 'gap',
  place: { property: out.spec.name },
  what: `${out.spec.meaning} could not be worked out`,
  next:
    out.missing.length > 0
      ? 'Take the missing readings first.'
      : 'Check the inputs: the formula has no finite value there.',
});

function plainNominal(bound: BoundInputs): Parameters<NonNullable<Question['valid']>>[0] {
  const number = (found: (typeof bound.scalars)[string]) =>
    'missing' in found ? Number.NaN : found.form.x;
  const record = <A, B>(of: Readonly<Record<string, A>>, f: (a: A) => B) =>
    Object.fromEntries(Object.entries(of).map(([k, v]) => [k, f(v)]));
  return {
    scalars: record(bound.scalars, number),
    terms: record(bound.terms, (t) => t.text),
    tables: record(bound.tables, (rows) =>
      rows.map((r) => ({
        subject: r.label,
        ...record(r.terms, (t) => t.text),
        ...record(r.cells, number),
      })),
    ),
  };
}

/** The rows that a tally hands out beside its sums. */
const tallied = ({ body }: Question, bound: BoundInputs): DetailTable | undefined =>
  body.body === 'tally' ? body.detail?.(plainNominal(bound)) : undefined;

/** question@version and a digest of all that went in. */
function keyOf(question: Question, bound: BoundInputs): string {
  const plain = plainNominal(bound);
  const us = [...bound.variables.values()].map((v) => [v.id, v.u]);
  return `${question.id}@${question.version}:${digest(canonicalText([plain, us, bound.basis.rates]))}`;
}
