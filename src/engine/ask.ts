import { type Id, type Refusal, RefusalError, type StudyView } from '../study/index.ts';
import { answer } from './answer.ts';
import { bindStudy } from './bind/bind-study.ts';
import { bindWritten } from './bind/bind-written.ts';
import { Kept, keptFor } from './bind/kept.ts';
import type { AskWithin } from './bind/study-finder.ts';
import type { BoundInputs } from './bound-inputs.ts';
import type { Answer, Question, Run, WrittenInputs } from './method.ts';
import type { Questions } from './registry.ts';

export interface AskStudy {
  readonly view: StudyView;
  /** Node asked about; the root of the study when absent. */
  readonly subject?: Id;
  readonly rates?: string;
  /** Inputs written over what the study has. */
  readonly over?: WrittenInputs;
  readonly run?: Run;
}

/** Asks a question of a study. @throws RefusalError when the subject is not there or of another kind. */
export function askStudy(question: Question, questions: Questions, from: AskStudy): Answer {
  const { over = {}, run } = from;
  return Object.keys(over).length === 0
    ? askKept(askingFrom(questions, from), question, subjectOf(question, from), new Set())
    : answer(question, boundInStudy(question, questions, from), run);
}

/**
 * The inputs of a question as a study has them, with what is written over them. Those of the study
 * are brought up to date in place when they are bound for a later revision.
 * @throws RefusalError as askStudy.
 */
export function boundInStudy(
  question: Question,
  questions: Questions,
  from: AskStudy,
): BoundInputs {
  const subject = subjectOf(question, from);
  const asking = askingFrom(questions, from);
  const { over = {} } = from;
  return Object.keys(over).length === 0
    ? bindKept(asking, question, subject, new Set())
    : bindOver(asking, question, subject, over);
}

const askingFrom = (questions: Questions, { view, rates, run }: AskStudy): Asking => ({
  ...{ questions, view, rates, run, kept: keptFor(view, questions, rates) },
});

/** Asks a question of values as people write them. @throws RefusalError for what can't be read. */
export const askWritten = (question: Question, written: WrittenInputs, run?: Run): Answer =>
  answer(question, bindWritten(question, written), run);

interface Asking {
  readonly questions: Questions;
  readonly view: StudyView;
  readonly rates: string | undefined;
  readonly run: Run | undefined;
  readonly kept: Kept;
}

/** Questions that are being answered, each with its subject. */
type Within = ReadonlySet<string>;
const key = (question: Question, subject: Id): string => `${question.id} ${subject}`;

/** The answer kept for this revision, else one worked out from what is bound. */
function askKept(asking: Asking, question: Question, subject: Id, within: Within): Answer {
  const { kept, run } = asking;
  const held = kept.answer(question, subject);
  if (held) return held;
  const circles = kept.circles;
  const made = answer(question, bindKept(asking, question, subject, within), run);
  if (kept.circles === circles) kept.keepAnswer(question, subject, made);
  return made;
}

function bindKept(asking: Asking, question: Question, subject: Id, within: Within): BoundInputs {
  const askWithin = askerFrom(asking, new Set([...within, key(question, subject)]));
  return bindStudy({ ...asking, question, subject, askWithin });
}

/** What is written over inputs has variables of its own, so none of it is kept. */
function bindOver(
  asking: Asking,
  question: Question,
  subject: Id,
  over: WrittenInputs,
): BoundInputs {
  const askWithin = askerFrom(asking, new Set([key(question, subject)]));
  const kept = new Kept(asking.view);
  const bound = bindStudy({ ...asking, question, subject, kept, askWithin, over });
  return written(question, bound, over);
}

/** Answers questions asked from within others; in words, why one can't be. */
const askerFrom =
  (asking: Asking, within: Within): AskWithin =>
  (id, at) => {
    const used = asking.questions.get(id);
    if (!used) return `the question ${id} is not among those this one uses`;
    if (!within.has(key(used, at))) return askKept(asking, used, at, within);
    asking.kept.circles++;
    return 'the question leads back to itself';
  };

/** Puts written inputs in the place of those found. */
function written(question: Question, bound: BoundInputs, over: WrittenInputs): BoundInputs {
  const given = bindWritten(question, over, bound.variables);
  const chosen = <A>(found: Readonly<Record<string, A>>, put: Readonly<Record<string, A>>) =>
    Object.fromEntries(Object.entries(found).map(([k, v]) => [k, k in over ? (put[k] ?? v) : v]));
  const { cells: _cells, ...rest } = bound;
  return {
    ...rest,
    before: {},
    scalars: chosen(bound.scalars, given.scalars),
    terms: chosen(bound.terms, given.terms),
    tables: chosen(bound.tables, given.tables),
    findings: [...bound.findings, ...given.findings],
  };
}

function subjectOf(question: Question, from: AskStudy): Id {
  const wanted = from.subject;
  const node = wanted === undefined ? from.view.root() : from.view.find(wanted);
  if (!node) throw new RefusalError(noSubject(from.view, wanted));
  if (
    wanted !== undefined &&
    question.subject !== 'study' &&
    node.kind !== question.subject &&
    node.parent !== null
  )
    throw new RefusalError(wrongSubject(question, `${node.label} ${node.name}`, node.kind));
  return node.id;
}

const noSubject = (view: StudyView, wanted: string | undefined): Refusal => ({
  code: 'not-found',
  place: { study: view.header.title, subject: wanted ?? 'vehicle' },
  value: wanted ?? '',
  why:
    wanted === undefined
      ? 'the study has no vehicle yet'
      : 'there is nothing of this number in the study',
  next: wanted === undefined ? 'Import a record first.' : 'See the parts of the study.',
});

const wrongSubject = (question: Question, label: string, kind: string): Refusal => ({
  code: 'bad-value',
  place: { subject: label },
  value: kind,
  why: `"${question.wording}" is asked of a ${question.subject}, not of a ${kind}`,
  next: `Name a ${question.subject} of the study.`,
});
