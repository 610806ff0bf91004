import {
  type Bars,
  causeBars,
  differenceByCause,
  type Questions,
} from '../../../src/engine/index.ts';
import type { StudyView } from '../../../src/study/index.ts';

/** Cost of the parts from the rates before to the latest, in steps. */
export interface CostSteps {
  readonly figure: Bars;
  readonly averaging: string;
}

/** Null where the study has no two versions of its rates, or no question of costs is loaded. */
export function costSteps(view: StudyView, questions: Questions): CostSteps | null {
  const [before, latest] = view.rateVersions().slice(-2);
  const question = questions.get('part-cost');
  if (before === undefined || latest === undefined || !question) return null;
  const facts = { view };
  const sides = [
    { facts, rates: before },
    { facts, rates: latest },
  ] as const;
  const d = differenceByCause(question, questions, 'cost', sides);
  return { figure: causeBars(d, before, latest), averaging: d.averaging };
}
