import type { AnsweredClaim } from './build-model.ts';
import type { ReportClaim } from './model.ts';
import { howWords, lineUnder, shownNumber } from './wording.ts';

/** A claim in words: open, or answered with a number, a spread and a word by a rule. */
export function reportClaim({ claim, about, tie, out, decision, why }: AnsweredClaim): ReportClaim {
  return {
    words: claim.words,
    by: claim.by,
    heard: claim.heard,
    how: howWords(claim.how),
    line: lineUnder(claim.how),
    about,
    state: decision?.word ?? 'open',
    test: tie ? `${tie.test.is} ${tie.test.asWritten}, by ${tie.question}: ${tie.output}` : '',
    ...(out ? { shown: shownNumber({ ...out, how: 'calculated' }) } : {}),
    rule: decision?.rule ?? '',
    why: decision
      ? ''
      : (why ?? (tie ? 'the question has no complete answer yet' : 'tied to no question')),
  };
}
