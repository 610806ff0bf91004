import type { Question } from '../../src/engine/method.ts';
import { MADE_MARK, page, section, table } from './markdown.ts';

/** docs/methods/README.md: all questions by section, each with a link to its page. */
export function methodIndex(questions: readonly Question[]): string {
  return page(
    MADE_MARK,
    '# Methods',
    'Each question the tool can answer has a page: what it needs, the formula, sources, limits and checks. ' +
      'How to add one: [adding a question](adding-a-question.md). What backs them: [validation](../validation/README.md).',
    ...bySection(questions).map(([title, members]) =>
      section(`## ${title}`, questionTable(members)),
    ),
  );
}

/** Questions of each section, sections in their own order. */
export function bySection(
  questions: readonly Question[],
): readonly (readonly [title: string, members: readonly Question[]])[] {
  const sections = new Map<string, Question[]>();
  for (const q of questions)
    sections.set(q.section.title, [...(sections.get(q.section.title) ?? []), q]);
  const order = (members: readonly Question[]): number =>
    Math.min(...members.map((q) => q.section.order));
  return [...sections].sort(([s, a], [t, b]) => order(a) - order(b) || (s < t ? -1 : 1));
}

const questionTable = (questions: readonly Question[]): string =>
  table(
    ['Question', 'Asked of', 'In the client’s words'],
    questions.map((q) => [`[${q.title}](${q.id}.md)`, q.subject, q.wording]),
  );
