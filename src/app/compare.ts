import {
  type Answer,
  askStudy,
  type CompareOptions,
  type ComparisonTable,
  compareAll,
  compareOutputs,
  loadQuestion,
  tableOf,
} from '../engine/index.ts';
import type { Id, StudyView } from '../study/index.ts';

/** What one side of a comparison is asked of. */
export interface SideRequest {
  readonly view: StudyView;
  /** Node by number or id; the study's own root when absent. */
  readonly subject?: Id;
}

export interface CompareRequest {
  readonly question: string;
  readonly first: SideRequest;
  readonly with: readonly SideRequest[];
  /** One output; all that both sides have when absent. */
  readonly output?: string;
  readonly rates?: string;
  readonly options: CompareOptions;
}

/**
 * Compares what a question says of one thing with what it says of others.
 * @throws RefusalError for unlike conditions or rates, and for what is not there.
 */
export async function compareDesigns(request: CompareRequest): Promise<ComparisonTable> {
  const { question, questions } = await loadQuestion(request.question);
  const { rates, output, options } = request;
  const ask = ({ view, subject }: SideRequest): Answer =>
    askStudy(question, questions, {
      view,
      ...(subject === undefined ? {} : { subject }),
      ...(rates === undefined ? {} : { rates }),
    });
  const first = ask(request.first);
  return tableOf(
    request.with
      .map(ask)
      .flatMap((other) =>
        output === undefined
          ? compareAll(first, other, options).comparisons
          : compareOutputs(first, other, output, options),
      ),
  );
}
