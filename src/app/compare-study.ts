import { compareAnswers, type OutDifference } from '../engine/index.ts';
import {
  compareViews,
  type Moment,
  type StudyDifference,
  type StudyView,
  viewAt,
} from '../study/index.ts';
import { answersOf } from './ask.ts';

export interface Comparison extends StudyDifference {
  /** Only where they were asked for. */
  readonly answers?: readonly OutDifference[];
}

/**
 * Compares two moments of a study, its answers too when asked.
 * @throws RefusalError `not-found` for a gesture that the study does not have.
 */
export async function compareStudy(
  view: StudyView,
  from: Moment,
  to: Moment,
  withAnswers: boolean,
): Promise<Comparison> {
  const [before, after] = [viewAt(view, from), viewAt(view, to)];
  const difference = compareViews(before, after);
  if (!withAnswers) return difference;
  const answers = compareAnswers(
    (await answersOf(before)).answers,
    (await answersOf(after)).answers,
  );
  return { ...difference, answers };
}
