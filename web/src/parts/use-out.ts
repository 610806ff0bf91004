import type { UseQueryResult } from '@tanstack/react-query';
import { useDesk } from '../app/desk-client.ts';
import type { AnswerSheet, SheetOut } from '../worker/answer-sheet.ts';

/** Answers of every subject a question can be asked of as the study stands. */
export const useAnswers = (question: string): UseQueryResult<AnswerSheet[]> =>
  useDesk(['answers', question], (desk) => desk.answers(question));

/** An output of an answer that is there, with what it takes to say where it comes from. */
export interface OutFound {
  readonly sheet: AnswerSheet;
  readonly out: SheetOut;
}

/** One output of the first subject; undefined as long as there is none. */
export function useOut(question: string, output: string): OutFound | undefined {
  const { data } = useAnswers(question);
  return outOf(data?.[0], output);
}

export function outOf(sheet: AnswerSheet | undefined, output: string): OutFound | undefined {
  const out = sheet?.outs.find((o) => o.name === output);
  return sheet && out ? { sheet, out } : undefined;
}
