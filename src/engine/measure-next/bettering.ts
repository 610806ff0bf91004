import { isMissing, propertyWords, type StudyView } from '../../study/index.ts';
import { indexedFormOf } from '../answer-forms.ts';
import { largestOf } from '../forms/largest.ts';
import type { Answer, Variable } from '../method.ts';
import { nodeLabel } from '../node-label.ts';
import { instrumentsFor, uWith } from './at-hand.ts';
import { Contributions } from './contributions.ts';
import { foretold } from './foretell.ts';
import type { AtHand, Effect, MeasureNextOptions, NextReading } from './measure-next-types.ts';
import type { OpenAnswer } from './open-things.ts';

/** Contributions of each open thing that are looked at: smaller ones could not bring much. */
const LOOKED_AT = 40;

/** Something that could be read again, and what a new spread of it would do. */
interface Candidate {
  readonly key: string;
  readonly label: string;
  readonly variable: Variable;
  readonly betters: AtHand['betters'];
  readonly property: string;
  readonly kind: AtHand['kind'];
  readonly x: number;
  /** Spread of an output's form with the new reading. */
  readonly spreadAfter: (form: Contributions, u: number) => number | undefined;
}

/** Readings that would narrow complete open things, the largest gain a minute first. */
export function betteringReadings(
  open: readonly OpenAnswer[],
  view: StudyView,
  instruments: readonly AtHand[],
  { rates }: MeasureNextOptions,
): NextReading[] {
  const forms = open.map(({ out }) => {
    const form = out && out.u !== 'incomplete' ? indexedFormOf(out) : undefined;
    return form && new Contributions(form);
  });
  const candidates = new Map<string, Candidate>();
  for (const [i, form] of forms.entries())
    for (const [id] of form ? largestOf(form.form, LOOKED_AT).top : []) {
      const variable = form?.form.variables.named(id);
      const candidate = variable && candidateOf(variable, view, rates, open[i]?.answer);
      if (candidate) candidates.set(candidate.key, candidate);
    }
  return [...candidates.values()]
    .flatMap((candidate) => best(candidate, forms, instruments))
    .sort((a, b) => b.perMinute - a.perMinute || (a.label < b.label ? -1 : 1));
}

function candidateOf(
  variable: Variable,
  view: StudyView,
  rates: string | undefined,
  answer: Answer | undefined,
): Candidate | undefined {
  if (variable.what === 'reading') return readingCandidate(variable, view);
  if (variable.what === 'gain') {
    const kind = answer && kindSharing(variable.id, answer, view);
    return kind && sharedCandidate(variable, 'gain', kind, 1);
  }
  if (variable.what !== 'rate') return undefined;
  const cell = view.rates(rates)?.cells.find((c) => `rate:${c.cause}` === variable.id);
  return cell && sharedCandidate(variable, 'rate', cell.kind, cell.x);
}

/** Kind of the readings that share a cause, by the first of them that the answer read. */
function kindSharing(cause: string, answer: Answer, view: StudyView): AtHand['kind'] | undefined {
  for (const { of, there } of answer.reads) {
    const cell = there ? view.cell(of.subject, of.property, of.condition, of.posture) : undefined;
    if (!cell || isMissing(cell) || cell.value.t !== 'scalar') continue;
    if (cell.from.some(({ reading }) => reading.causes.some((c) => c.cause === cause)))
      return cell.value.kind;
  }
  return undefined;
}

function readingCandidate(variable: Variable, view: StudyView): Candidate | undefined {
  const { of } = variable;
  const cell = of && view.cell(of.subject, of.property, of.condition, of.posture);
  if (!of || !cell || isMissing(cell) || cell.rule === 'chosen') return undefined;
  const { value } = cell;
  if (value.t !== 'scalar' && value.t !== 'vector' && value.t !== 'count') return undefined;
  return {
    key: [of.subject, of.property, of.condition, of.posture].join('\n'),
    label: `${nodeLabel(view, of.subject)}, ${propertyWords(of.property)}`,
    ...{ variable, betters: 'reading', property: of.property },
    kind: value.t === 'count' ? 'count' : value.kind,
    x: value.t === 'scalar' ? value.x : value.t === 'count' ? value.n : 0,
    spreadAfter: (form, u) => foretold(form, cell, u, view),
  };
}

/** What many readings share: a scale's gain, a price. Its share of an output falls with its spread. */
function sharedCandidate(
  variable: Variable,
  betters: AtHand['betters'],
  kind: AtHand['kind'],
  x: number,
): Candidate {
  return {
    ...{ key: variable.id, label: variable.label, variable, betters, kind, x, property: '' },
    spreadAfter: (form, u) => {
      const c = form.of(variable.id);
      const share = Math.min(1, u / variable.u);
      return Math.sqrt(Math.max(0, form.u * form.u - c * c * (1 - share * share)));
    },
  };
}

/** With the instrument that gains most a minute; nothing where none would narrow anything. */
function best(
  candidate: Candidate,
  forms: readonly (Contributions | undefined)[],
  instruments: readonly AtHand[],
): NextReading[] {
  const { betters, kind, property, x } = candidate;
  const tried = instrumentsFor(instruments, betters, kind, property, x).map((instrument) =>
    withInstrument(candidate, forms, instrument),
  );
  const gaining = tried.filter((t) => t.perMinute > 0).sort((a, b) => b.perMinute - a.perMinute);
  return gaining.slice(0, 1);
}

function withInstrument(
  candidate: Candidate,
  forms: readonly (Contributions | undefined)[],
  instrument: AtHand,
): NextReading {
  const u = uWith(instrument, candidate.x);
  const effects = forms.flatMap((form, open): Effect[] => {
    const after = form && candidate.spreadAfter(form, u);
    // A fall below rounding is none.
    return form && after !== undefined && after < form.u * (1 - 1e-9)
      ? [{ open, u: form.u, after }]
      : [];
  });
  const fall = effects.reduce((sum, { u: now = 1, after = now }) => sum + 1 - after / now, 0);
  const { label, kind, minutes } = instrument;
  const { variable } = candidate;
  return {
    ...{ why: 'spread', label: candidate.label, what: variable.what, place: variable.place },
    ...(variable.of ? { of: variable.of } : {}),
    instrument: { label, kind, u, minutes },
    ...{ effects, fall, perMinute: fall / minutes },
  };
}
