import { loadQuestion } from '../engine/index.ts';
import { parseQuantity, type Way } from '../quantity/index.ts';
import {
  type Claim,
  type Entry,
  type Id,
  type Refusal,
  RefusalError,
  type Tie,
} from '../study/index.ts';
import type { Library } from './library.ts';

/** The question that answers a claim, and what would make it true. */
export interface NewTie {
  readonly question: string;
  readonly output: string;
  readonly is: 'at least' | 'at most';
  /** As written, with its unit; the output's own unit when none is. */
  readonly value: string;
}

export interface NewClaim {
  readonly words: string;
  readonly subject: Id;
  /** Absent for a claim that no question is known for yet. */
  readonly tie?: NewTie;
  readonly how: Way;
  readonly by: string;
}

/**
 * Records a claim, with its tie where it has one, as one gesture; returns the claim's id.
 * @throws RefusalError when the question, the output or the value is none.
 */
export async function recordClaim(library: Library, study: Id, spec: NewClaim): Promise<Id> {
  const id = library.newStudy();
  const { words, how, by, subject, tie } = spec;
  const heard = new Date().toISOString().slice(0, 19);
  const claim: Claim = { id, words, how, by, heard, about: [subject], evidence: [] };
  await library.record(study, by, `claim: ${words}`, [
    { v: 1, e: 'claim.put', claim },
    ...(tie ? [await tieEntry(library, claim, subject, tie)] : []),
  ]);
  return id;
}

async function tieEntry(
  library: Library,
  claim: Claim,
  subject: Id,
  { question, output, is, value }: NewTie,
): Promise<Entry> {
  const test: Tie['test'] = {
    is,
    value: await testValue(question, output, value),
    asWritten: value,
  };
  const tie: Tie = { id: library.newStudy(), claim: claim.id, question, subject, output, test };
  return { v: 1, e: 'claim.tie', tie };
}

/** What was written, in SI of the output's kind. */
async function testValue(id: string, name: string, written: string): Promise<number> {
  const { question } = await loadQuestion(id);
  const output = question.body.outputs.find((o) => o.name === name);
  if (!output) {
    const names = question.body.outputs.map((o) => o.name).join(', ');
    throw new RefusalError(
      refusal('output', name, `${id} has no such output`, `Its outputs are: ${names}.`),
    );
  }
  const parsed = parseQuantity(written, output.kind, { unit: output.unit });
  if (!parsed.ok) throw new RefusalError(refusal('value', written, parsed.why, parsed.next));
  return parsed.value.x;
}

const refusal = (column: string, value: string, why: string, next: string): Refusal => ({
  code: 'bad-value',
  place: { column },
  value,
  why,
  next,
});
