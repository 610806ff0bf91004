// Made from the question files by scripts/registry.ts: run `npm run registry`, do not edit.
import type { QuestionHead } from './registry.ts';

export const QUESTION_INDEX: readonly QuestionHead[] = [
];
