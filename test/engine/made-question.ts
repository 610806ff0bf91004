import {
  type Answer,
  askStudy,
  type Body,
  type InputSpec,
  loadQuestion,
  type Out,
  type Question,
  question,
  type ScalarInput,
  type WrittenInputs,
} from '../../src/engine/index.ts';
import type { Kind } from '../../src/quantity/index.ts';
import type { StudyView } from '../../src/study/index.ts';

/** A number read from the property of its own name. */
export const number = (
  name: string,
  kind: Kind = 'ratio',
  unit = '1',
  more: Partial<ScalarInput> = {},
): ScalarInput => ({
  in: 'scalar',
  name,
  symbol: name,
  kind,
  unit,
  meaning: `the ${name}`,
  range: [-1e12, 1e12],
  where: `property ${name} of the subject`,
  find: (at) => at.number(at.subject, name),
  ...more,
});

/** A made-up question: only what the test is about, the rest as short as the types allow. */
export const madeQuestion = (
  inputs: readonly InputSpec[],
  body: Body,
  more: Partial<Question> = {},
): Question =>
  question({
    id: 'made-up',
    version: 1,
    wording: 'What comes out?',
    title: 'A made-up question',
    subject: 'study',
    section: { id: 'made-up', title: 'Made up', order: 99 },
    inputs,
    body,
    modelError: {},
    sources: [{ title: 'made up for a test', status: 'common practice, no source' }],
    assumptions: [],
    cautions: [],
    checks: [
      {
        what: 'none',
        source: 'none',
        status: 'common practice',
        test: 'test/engine/made-question.ts',
      },
    ],
    example: {},
    ...more,
  });

/** One output `y` of a formula over the inputs in their order. */
export const formula = (
  of: (...x: number[]) => number,
  more: { kind?: Kind; unit?: string; decides?: 'difference' | 'margin' } = {},
): Body => ({
  body: 'row',
  outputs: [
    {
      name: 'y',
      symbol: 'y',
      kind: more.kind ?? 'ratio',
      unit: more.unit ?? '1',
      meaning: 'what comes out',
      shown: 'y = f(x)',
      ...(more.decides ? { decides: more.decides } : {}),
      of,
    },
  ],
});

export const ask = (q: Question, view: StudyView): Answer =>
  askStudy(q, new Map([[q.id, q]]), { view });

/** Asks a question of the registry of a study. */
export async function askRegistered(
  id: string,
  view: StudyView,
  subject?: string,
  over?: WrittenInputs,
) {
  const { question: q, questions } = await loadQuestion(id);
  return askStudy(q, questions, {
    view,
    ...(subject === undefined ? {} : { subject }),
    ...(over === undefined ? {} : { over }),
  });
}

/** The output of this name. @throws Error when the answer has none. */
export function out(answer: Answer, name: string): Out {
  const found = answer.outs[name];
  if (!found) throw new Error(`no ${name} in ${answer.question}: ${Object.keys(answer.outs)}`);
  return found;
}

/** Size of the contribution of every variable whose id ends in one of these, together. */
export const share = (from: Out, ...ids: readonly string[]): number =>
  Math.hypot(
    ...from.linear.filter(([id]) => ids.some((end) => id.endsWith(end))).map(([, c]) => c),
  );
