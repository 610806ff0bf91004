import { didYouMean, RefusalError } from '../study/index.ts';
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

interface Loaded {
  readonly question: Question;
  readonly questions: Questions;
}

/** Questions are loaded once: what is kept of a study's answers is kept for one set of them. */
let every: Promise<Questions> | undefined;
const each = new Map<string, Promise<Loaded>>();

/**
 * Loads a question with all it uses.
 * @throws RefusalError `not-found` naming the questions there are.
 */
export async function loadQuestion(id: string): Promise<Loaded> {
  const question = (await every)?.get(id);
  if (every && question) return { question, questions: await every };
  if (!QUESTION_INDEX.some((head) => head.id === id)) throw unknownQuestion(id);
  const loading = each.get(id) ?? loadWithUsed(id);
  each.set(id, loading);
  return loading;
}

/** Loads every question of the registry, in the order of its index. */
export function loadAll(): Promise<Questions> {
  every ??= loadEvery();
  return every;
}

async function loadWithUsed(id: string): Promise<Loaded> {
  const questions = new Map<string, Question>();
  const question = await loadInto(questions, id);
  return { question, questions };
}

async function loadEvery(): Promise<Questions> {
  const loaded = new Map<string, Question>();
  for (const head of QUESTION_INDEX) await loadInto(loaded, head.id);
  // What a question uses is loaded with it, ahead of its turn.
  const inOrder = QUESTION_INDEX.flatMap(({ id }) => loaded.get(id) ?? []);
  return new Map(inOrder.map((question) => [question.id, question]));
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
    next: `${didYouMean(
      id,
      QUESTION_INDEX.map((h) => h.id),
    )}The questions are: ${QUESTION_INDEX.map((h) => h.id).join(', ')}.`,
  });
