import { loadQuestion } from '../engine/index.ts';
import { parseQuantity, type Way } from '../quantity/index.ts';
import { type Id, type Refusal, RefusalError, type Tie } from '../study/index.ts';
import type { Library } from './library.ts';

export interface NewClaim {
  readonly words: string;
  readonly subject: Id;
  readonly question: string;
  readonly output: string;
  readonly is: 'at least' | 'at most';
  /** As written, with its unit; the output's own unit when none is. */
  readonly value: string;
  readonly how: Way;
  readonly by: string;
}

/**
 * Records a claim with its tie as one gesture; returns the claim's id.
 * @throws RefusalError when the question, the output or the value is none.
 */
export async function recordClaim(library: Library, study: Id, spec: NewClaim): Promise<Id> {
  const [claim, tie] = [library.newStudy(), library.newStudy()];
  const test = await testOf(spec);
  await library.record(study, spec.by, `claim: ${spec.words}`, [
    {
      v: 1,
      e: 'claim.put',
      claim: {
        id: claim,
        words: spec.words,
        how: spec.how,
        by: spec.by,
        heard: new Date().toISOString().slice(0, 19),
        about: [spec.subject],
        evidence: [],
      },
    },
    {
      v: 1,
      e: 'claim.tie',
      tie: {
        id: tie,
        claim,
        question: spec.question,
        subject: spec.subject,
        output: spec.output,
        test,
      },
    },
  ]);
  return claim;
}

async function testOf(spec: NewClaim): Promise<Tie['test']> {
  const { question } = await loadQuestion(spec.question);
  const output = question.body.outputs.find((o) => o.name === spec.output);
  if (!output) {
    const names = question.body.outputs.map((o) => o.name).join(', ');
    throw new RefusalError(
      refusal(
        'output',
        spec.output,
        `${spec.question} has no such output`,
        `Its outputs are: ${names}.`,
      ),
    );
  }
  const parsed = parseQuantity(spec.value, output.kind, { unit: output.unit });
  if (!parsed.ok) throw new RefusalError(refusal('value', spec.value, parsed.why, parsed.next));
  return { is: spec.is, value: parsed.value.x, asWritten: spec.value };
}

const refusal = (column: string, value: string, why: string, next: string): Refusal => ({
  code: 'bad-value',
  place: { column },
  value,
  why,
  next,
});
