import { RefusalError } from '../study/index.ts';
import type { Question, Section } from './method.ts';
import { QUESTION_INDEX } from './registry.generated.ts';

/** What is known of a question before its body is loaded. */
export interface QuestionHead {
  readonly id: string;
  readonly title: string;
  readonly wording: string;
  readonly subject: Question['subject'];
  readonly section: Section;
  readonly load: () => Promise<{ readonly default: Question }>;
}

export { QUESTION_INDEX };

/** A question and those whose answers it reads, by id. */
export type Questions = ReadonlyMap<string, Question>;

/**
 * Loads a question with all it uses.
 * @throws RefusalError `not-found` naming the questions there are.
 */
export async function loadQuestion(
  id: string,
): Promise<{ question: Question; questions: Questions }> {
  const questions = new Map<string, Question>();
  const question = await loadInto(questions, id);
  return { question, questions };
}

/** Loads every question of the registry, in the order of its index. */
export async function loadAll(): Promise<Questions> {
  const questions = new Map<string, Question>();
  for (const head of QUESTION_INDEX) await loadInto(questions, head.id);
  return questions;
}

async function loadInto(questions: Map<string, Question>, id: string): Promise<Question> {
  const held = questions.get(id);
  if (held) return held;
  const head = QUESTION_INDEX.find((h) => h.id === id);
  if (!head) throw unknownQuestion(id);
  const question = (await head.load()).default;
  questions.set(id, question);
  for (const used of question.uses ?? []) await loadInto(questions, used);
  return question;
}

const unknownQuestion = (id: string): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { column: 'question' },
    value: id,
    why: 'there is no question of this name',
    next: `The questions are: ${QUESTION_INDEX.map((h) => h.id).join(', ')}.`,
  });
