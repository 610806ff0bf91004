import {
  type Answer,
  askStudy,
  askWritten,
  type ClaimState,
  claimStates,
  type MeasureNext,
  measureNext,
  type Question,
  type Questions,
  type SampleOptions,
  sampleStudy,
  subjectsFor,
  type WrittenInputs,
} from '../../../src/engine/index.ts';
import { type Id, RefusalError, type StudyView } from '../../../src/study/index.ts';
import { type AnswerSheet, answerSheet } from './answer-sheet.ts';

/** Answers of one revision of a study, each worked out once. */
export class AnswersOf {
  readonly #kept = new Map<string, Answer>();
  #claims: readonly ClaimState[] | undefined;
  #next: MeasureNext | undefined;

  constructor(
    private readonly view: StudyView,
    private readonly questions: Questions,
  ) {}

  /** Of every node that the question can be asked of as things stand. */
  all(id: string): AnswerSheet[] {
    const question = questionOf(this.questions, id);
    return subjectsFor(question, this.questions, this.view).map((subject) =>
      answerSheet(question, this.#answer(question, subject), subject),
    );
  }

  /** Of one node, with values written over what the study has. */
  one(id: string, subject: Id | undefined, over: WrittenInputs): AnswerSheet {
    const question = questionOf(this.questions, id);
    const at = subject ?? this.view.root()?.id;
    const answer =
      at !== undefined && Object.keys(over).length === 0
        ? this.#answer(question, at)
        : askStudy(question, this.questions, {
            view: this.view,
            ...(at ? { subject: at } : {}),
            over,
          });
    return answerSheet(question, answer, at);
  }

  /** A Monte Carlo run of one answer; void once the study has gone on. */
  sampling(id: string, subject: Id | undefined, over: WrittenInputs, options: SampleOptions) {
    const question = questionOf(this.questions, id);
    const at = subject ?? this.view.root()?.id;
    return sampleStudy(
      question,
      this.questions,
      { view: this.view, over, ...(at ? { subject: at } : {}) },
      options,
    );
  }

  claims(): readonly ClaimState[] {
    this.#claims ??= claimStates(this.view, this.questions);
    return this.#claims;
  }

  /** The readings worth taking next, of one node or of all, the first `limit` of each sort. */
  next(limit: number, subject?: Id): MeasureNext {
    this.#next ??= measureNext(this.view, this.questions, { limit: Number.POSITIVE_INFINITY });
    const { open, readings } = this.#next;
    const own = readings.filter((r) => subject === undefined || r.of?.subject === subject);
    const lacks = own.filter((r) => r.why !== 'spread').slice(0, limit);
    const narrows = own.filter((r) => r.why === 'spread').slice(0, limit);
    const told = [...lacks, ...narrows];
    return { open, readings: told, leftOut: own.length - told.length };
  }

  #answer(question: Question, subject: Id): Answer {
    const key = `${question.id} ${subject}`;
    const answer =
      this.#kept.get(key) ?? askStudy(question, this.questions, { view: this.view, subject });
    this.#kept.set(key, answer);
    return answer;
  }
}

/** Of bare values, as people write them. @throws RefusalError for what can not be read. */
export const answerValues = (
  questions: Questions,
  id: string,
  written: WrittenInputs,
): AnswerSheet => {
  const question = questionOf(questions, id);
  return answerSheet(question, askWritten(question, written));
};

export function questionOf(questions: Questions, id: string): Question {
  const question = questions.get(id);
  if (question) return question;
  throw new RefusalError({
    code: 'not-found',
    place: { column: 'question' },
    value: id,
    why: 'there is no question of this name',
    next: 'Choose one from the list of questions.',
  });
}
