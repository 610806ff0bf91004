import { describeQuestion, loadAll, type PlainQuestion } from '../engine/index.ts';

/** Every question of the registry as plain data, in the order of the registry. */
export const describeQuestions = async (): Promise<PlainQuestion[]> =>
  [...(await loadAll()).values()].map(describeQuestion);
