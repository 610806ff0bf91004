import { CAUTIONS } from '../data/index.ts';
import type { Caution, Question } from './method.ts';

/** A question's cautions in full. @throws TypeError when it names one that is not in the table. */
export function cautionsOf(question: Question): Caution[] {
  return question.cautions.map((c) => {
    if (typeof c !== 'string') return c;
    const found = CAUTIONS.find((known) => known.id === c);
    if (!found) throw new TypeError(`question ${question.id} names an unknown caution ${c}`);
    return found;
  });
}
