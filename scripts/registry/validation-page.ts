import type { CheckRef, Question } from '../../src/engine/method.ts';
import { code, list, MADE_MARK, page, section, table } from './markdown.ts';
import { bySection } from './method-index.ts';
import type { PublishedTest } from './published-tests.ts';

/** What each status lets a reader conclude. */
const STATUS_WORDS: Readonly<Record<CheckRef['status'], string>> = {
  seen: 'inputs and result stand in the source named, and the tool gives the same digits',
  'from memory, recomputed':
    'inputs or formula recalled from the source named, result worked out again independently',
  'own inputs, published formula':
    'numbers of our own through a published formula, worked out independently: guards against a slip, proves no physics',
  'common practice': 'what the trade does, no source',
};

/** docs/validation/README.md: every check of every question, and the published cases beneath them. */
export function validationPage(
  questions: readonly Question[],
  published: readonly PublishedTest[],
): string {
  return page(
    MADE_MARK,
    '# What the numbers are checked against',
    'Every check runs with `npm test`. Demo data are invented and prove nothing; they stand in no line here.',
    section('## What a status means', list(statusLines(questions))),
    ...bySection(questions).map(([title, members]) => section(`## ${title}`, checkTable(members))),
    section('## Cases of test/published, a file a source', publishedTable(published)),
  );
}

function statusLines(questions: readonly Question[]): readonly string[] {
  const all = questions.flatMap((q) => q.checks);
  return Object.entries(STATUS_WORDS).map(
    ([status, words]) =>
      `**${status}** (${all.filter((c) => c.status === status).length}): ${words}`,
  );
}

const checkTable = (questions: readonly Question[]): string =>
  table(
    ['Question', 'What', 'Against', 'Status', 'Test'],
    questions.flatMap((q) =>
      q.checks.map((c) => [
        `[${q.title}](../methods/${q.id}.md)`,
        c.what,
        c.source,
        c.status,
        code(c.test),
      ]),
    ),
  );

const publishedTable = (published: readonly PublishedTest[]): string =>
  table(
    ['Test', 'Source and status, as its head says'],
    published.map((t) => [code(t.file), t.citation]),
  );
