import {
  type Answer,
  askWritten,
  loadQuestion,
  type WrittenInputs,
} from '../../../src/engine/index.ts';
import { out } from '../made-question.ts';

/** The answer of a question to its example with some inputs in place of its own. */
export async function asked(id: string, over: WrittenInputs = {}): Promise<Answer> {
  const { question } = await loadQuestion(id);
  return askWritten(question, { ...question.example, ...over });
}

/** One number of it, SI. */
export const numberOf = async (
  id: string,
  output: string,
  over: WrittenInputs = {},
): Promise<number> => out(await asked(id, over), output).x;

/** Inputs that leave nothing but the work itself: no overhead, losses, delivery. */
export const BARE: WrittenInputs = {
  ...{ overhead: 'exactly 1', packaging: 'exactly 0 {u}', freight: 'exactly 0 {u}' },
  ...{ rejects: 'exactly 0 %' },
};
