import type { Out, Question } from '../engine/index.ts';
import { printedLine, printedNumber } from '../quantity/index.ts';
import type { Tie } from '../study/index.ts';
import type { AnsweredClaim } from './build-model.ts';
import type { ReportClaim } from './model.ts';
import { openWords } from './summary.ts';
import { howWords, lineUnder, placeWords, shownNumber } from './wording.ts';

/** Reasons printed beside an open claim. */
const REASONS = 2;

/** A claim in words: open, or answered with a number, a spread and a word by a rule. */
export function reportClaim(answered: AnsweredClaim): ReportClaim {
  const { claim, about, tie, out, decision } = answered;
  return {
    words: claim.words,
    by: claim.by,
    heard: claim.heard.replace('T', ' '),
    how: howWords(claim.how),
    line: lineUnder(claim.how),
    about,
    state: decision?.word ?? 'open',
    test: tie ? tieWords(tie, answered.question, out) : '',
    ...(out ? { shown: shownNumber({ ...out, how: 'calculated' }) } : {}),
    rule: decision?.rule ?? '',
    why: decision ? '' : whyOpen(answered),
  };
}

/**
 * "at most 530 mm, by “Height of the centre of gravity”: height over the ground": what was typed,
 * in the unit in which the result is printed. The ids stand where the question is not at hand.
 */
export function tieWords(
  { test, question: id, output: name }: Tie,
  question?: Question,
  out?: Out,
): string {
  const output = out ?? question?.body.outputs.find((o) => o.name === name);
  const limit = output
    ? printedLine(printedNumber({ x: test.value, u: 0, kind: output.kind, unit: output.unit }))
    : test.asWritten;
  const title = question ? `“${question.title}”` : id;
  return `${test.is} ${limit}, by ${title}: ${output?.meaning ?? name}`;
}

/** What its result lacks, by number; else the reason handed in. */
function whyOpen({ tie, out, why }: AnsweredClaim): string {
  const lacking = out ? openWords([placesOf(out)]) : '';
  if (lacking !== '') return lacking;
  if (why !== undefined) return shortened(why);
  return tie ? 'the question has no complete answer yet' : 'tied to no question';
}

/** Of many reasons the first ones: asking the question shows them all. */
function shortened(why: string): string {
  const reasons = why.split('; ');
  const rest = reasons.length - REASONS;
  return rest > 0 ? `${reasons.slice(0, REASONS).join('; ')}; and ${rest} more reasons` : why;
}

const placesOf = (out: Out) => ({
  missing: out.missing.map(placeWords),
  unknownSpread: out.unknownSpread.map(placeWords),
});
