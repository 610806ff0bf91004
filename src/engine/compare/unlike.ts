import { type Refusal, RefusalError } from '../../study/index.ts';
import type { Answer, Basis } from '../method.ts';

/**
 * Refuses to compare what was not measured or priced alike.
 * @throws RefusalError `unlike-conditions` naming both conditions, rates or currencies, and
 * `bad-call` for answers to different questions.
 */
export function needAlike(a: Answer, b: Answer): void {
  const refusals = [
    ...differing('question', [a.question], [b.question], 'Compare answers to one question.'),
    ...differing(
      'condition',
      a.basis.conditions,
      b.basis.conditions,
      'Bring both into one condition: add or take off what differs, or measure again.',
    ),
    ...differing(
      'rates',
      rates(a.basis),
      rates(b.basis),
      'Ask both with one version of the rates.',
    ),
    ...differing('currency', currency(a.basis), currency(b.basis), 'Price both in one currency.'),
  ];
  const [first, ...more] = refusals;
  if (first) throw new RefusalError(first, ...more);
}

const rates = ({ rates: version }: Basis) => (version === undefined ? [] : [version]);
const currency = ({ currency: code }: Basis) => (code === undefined ? [] : [code]);

/** What is not said on one side, as with bare values, is taken to be alike. */
const isOpen = (words: readonly string[]): boolean =>
  words.length === 0 || words.every((word) => word === 'as given');

function differing(
  what: string,
  a: readonly string[],
  b: readonly string[],
  next: string,
): Refusal[] {
  const [one, other] = [[...a].sort().join(', '), [...b].sort().join(', ')];
  if (one === other || isOpen(a) || isOpen(b)) return [];
  return [
    {
      code: what === 'question' ? 'bad-call' : 'unlike-conditions',
      place: { column: what },
      value: `${one} / ${other}`,
      why: `unlike things are not compared: one side is of ${what} "${one}", the other of "${other}"`,
      next,
    },
  ];
}
