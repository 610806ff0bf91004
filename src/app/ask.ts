import {
  type Answer,
  answerStudy,
  askStudy,
  askWritten,
  loadAll,
  loadQuestion,
  type Run,
  type StudyAnswers,
  subjectsFor,
  type WrittenInputs,
} from '../engine/index.ts';
import { type Id, RefusalError, type StudyView } from '../study/index.ts';

/** The index of questions, passed on for help and lists. */
export { loadQuestion, QUESTION_INDEX } from '../engine/index.ts';

export interface AskRequest {
  readonly question: string;
  /** Node asked about, by number or id; whatever the question can be asked of when absent. */
  readonly subject?: string;
  readonly rates?: string;
  /** Inputs as written: all of them without a study, put over the study's with one. */
  readonly values?: WrittenInputs;
  readonly run?: Run;
}

/** Asks a question of plain values. @throws RefusalError for what can't be read. */
export async function askValues(request: AskRequest): Promise<Answer> {
  const { question } = await loadQuestion(request.question);
  return askWritten(question, request.values ?? {}, request.run);
}

/** Asks a question of a study: of one subject, or of each that it can be asked of. */
export async function askOfStudy(view: StudyView, request: AskRequest): Promise<Answer[]> {
  const { question, questions } = await loadQuestion(request.question);
  const { rates, values, run } = request;
  return (await subjectsAsked(view, request)).map((at: Id) =>
    askStudy(question, questions, {
      view,
      subject: at,
      ...(rates === undefined ? {} : { rates }),
      ...(values === undefined ? {} : { over: values }),
      ...(run === undefined ? {} : { run }),
    }),
  );
}

/**
 * The nodes that a request asks about: the one it names, or each that can be asked.
 * @throws RefusalError when there is none, or no such rate book.
 */
export async function subjectsAsked(view: StudyView, request: AskRequest): Promise<readonly Id[]> {
  const { question, questions } = await loadQuestion(request.question);
  const { subject, rates } = request;
  if (rates !== undefined && !view.rates(rates)) throw noSuchRates(view, rates);
  const subjects = subject === undefined ? subjectsFor(question, questions, view) : [subject];
  if (subjects.length === 0) throw noSubject(question.wording, question.subject);
  return subjects;
}

/** Every answer and claim of a study as it stands. */
export const answersOf = async (view: StudyView, run?: Run): Promise<StudyAnswers> =>
  answerStudy(view, await loadAll(), run ? { run } : {});

const noSuchRates = (view: StudyView, version: string): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { study: view.header.title, column: 'rates' },
    value: version,
    why: 'there is no rate book of this version in the study',
    next: `Its versions are: ${view.rateVersions().join(', ') || 'none; import one'}.`,
  });

const noSubject = (wording: string, kind: string): RefusalError =>
  new RefusalError({
    code: 'no-answer',
    place: { column: 'subject' },
    value: '',
    why: `nothing in the study has what "${wording}" needs`,
    next: `Name the ${kind} with --subject to see what is missing.`,
  });
