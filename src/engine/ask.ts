import { type Id, type Refusal, RefusalError, type StudyView } from '../study/index.ts';
import { answer } from './answer.ts';
import { bindStudy } from './bind/bind-study.ts';
import { bindWritten } from './bind/bind-written.ts';
import type { Answer, BoundInputs, Question, Run, WrittenInputs } from './method.ts';
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
  return answer(question, boundFrom(question, questions, from, new Set()), from.run);
}

/** Asks a question of values as people write them. @throws RefusalError for what can't be read. */
export const askWritten = (question: Question, written: WrittenInputs, run?: Run): Answer =>
  answer(question, bindWritten(question, written), run);

function boundFrom(
  question: Question,
  questions: Questions,
  from: AskStudy,
  asking: ReadonlySet<string>,
): BoundInputs {
  const subject = subjectOf(question, from);
  const within = new Set([...asking, `${question.id} ${subject}`]);
  const askWithin = (id: string, at: Id): Answer | string => {
    const used = questions.get(id);
    if (!used) return `the question ${id} is not among those this one uses`;
    if (within.has(`${id} ${at}`)) return 'the question leads back to itself';
    return answer(used, boundFrom(used, questions, { ...from, subject: at, over: {} }, within));
  };
  const bound = bindStudy(question, from.view, subject, from.rates, askWithin, from.over);
  return from.over && Object.keys(from.over).length > 0
    ? written(question, bound, from.over)
    : bound;
}

/** Puts written inputs in the place of those found. */
function written(question: Question, bound: BoundInputs, over: WrittenInputs): BoundInputs {
  const given = bindWritten(question, over);
  const chosen = <A>(found: Readonly<Record<string, A>>, put: Readonly<Record<string, A>>) =>
    Object.fromEntries(Object.entries(found).map(([k, v]) => [k, k in over ? (put[k] ?? v) : v]));
  return {
    ...bound,
    scalars: chosen(bound.scalars, given.scalars),
    terms: chosen(bound.terms, given.terms),
    tables: chosen(bound.tables, given.tables),
    variables: new Map([...bound.variables, ...given.variables]),
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
  next:
    wanted === undefined
      ? 'Import a record first.'
      : 'List what there is with: hoistside list parts <study>.',
});

const wrongSubject = (question: Question, label: string, kind: string): Refusal => ({
  code: 'bad-value',
  place: { subject: label },
  value: kind,
  why: `"${question.wording}" is asked of a ${question.subject}, not of a ${kind}`,
  next: `Name a ${question.subject} of the study.`,
});
