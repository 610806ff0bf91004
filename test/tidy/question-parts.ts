import type { Question, ScalarInput, TableInput } from '../../src/engine/index.ts';

/** A list of one fault, or of none. */
export const when = (wrong: boolean, fault: string): readonly string[] => (wrong ? [fault] : []);
export const scalarsOf = (q: Question): readonly ScalarInput[] =>
  q.inputs.filter((i): i is ScalarInput => i.in === 'scalar');
export const tablesOf = (q: Question): readonly TableInput[] =>
  q.inputs.filter((i): i is TableInput => i.in === 'table');
