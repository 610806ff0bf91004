import { describe, expect, it } from 'vitest';
import { findQuestions } from '../../scripts/registry/find-questions.ts';
import { ROOT } from '../../scripts/root.ts';
import { askWritten, type Question } from '../../src/engine/index.ts';
import { questionFaults } from './question-faults.ts';

const questions = (await findQuestions(ROOT)).map((f) => f.question);

describe('questions', () => {
  it('are there', () => expect(questions.length).toBeGreaterThan(0));

  it.each(questions.map((q) => [q.id, q] as const))('%s is written down whole', (_, q) => {
    expect(questionFaults(q)).toEqual([]);
  });

  it.each(questions.map((q) => [q.id, q] as const))('%s answers its own example', (_, q) => {
    const { outs } = askWritten(q, q.example);
    expect(Object.keys(outs).sort()).toEqual(q.body.outputs.map((o) => o.name).sort());
    expect(Object.values(outs).flatMap((out) => out.missing)).toEqual([]);
  });

  it('read only answers of questions that exist', () => {
    const ids = new Set(questions.map((q) => q.id));
    const lost = questions.flatMap((q) => (q.uses ?? []).filter((id) => !ids.has(id)));
    expect(lost).toEqual([]);
  });

  it('of one section agree on its title and place', () => {
    const sections = new Set(questions.map((q) => JSON.stringify(q.section)));
    expect(sections.size).toBe(new Set(questions.map((q) => q.section.id)).size);
  });

  it('badly written are seen', () => {
    const [good] = questions;
    if (good === undefined) throw new Error('no question');
    const bad: Question = {
      ...good,
      wording: 'A statement.',
      sources: [],
      example: {},
      modelError: { nothing: { relative: 0.1, sharedFraction: 1 } },
      checks: [{ what: '', source: '', status: 'seen', test: 'test/none.test.ts' }],
    };
    expect(questionFaults(bad).length).toBeGreaterThanOrEqual(5);
  });
});
