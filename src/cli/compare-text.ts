import type { ComparedSide, Comparison, ComparisonTable } from '../engine/index.ts';
import { numberText, placeWords, plain, shownNumber, wrap } from '../report/index.ts';

/** Comparisons with their words, the rule, and what chance alone would give. */
export function comparisonText({ comparisons, words }: ComparisonTable): string {
  const lines = comparisons.flatMap((c, i) => [
    ...(sameSides(c, comparisons[i - 1]) ? [] : headLines(c)),
    ...oneLines(c),
  ]);
  const rules = [...new Set(comparisons.map((c) => c.decision?.rule ?? ''))].filter(Boolean);
  const foot = [...rules.map((rule) => `Rule: ${rule}.`), words].filter((line) => line !== '');
  return `${[...lines, '', ...foot.flatMap((line) => wrap(line))].join('\n')}\n`;
}

const sameSides = (a: Comparison, b: Comparison | undefined): boolean =>
  b !== undefined && sideWords(a.a) === sideWords(b.a) && sideWords(a.b) === sideWords(b.b);

const headLines = (c: Comparison): string[] => [
  '',
  ...wrap(`${c.title}: ${c.about}`),
  ...wrap(sideWords(c.a), '  first:  ', '          '),
  ...wrap(sideWords(c.b), '  second: ', '          '),
];

const sideWords = ({ basis }: ComparedSide): string =>
  [basis.study, basis.subject, basis.conditions.join(', '), basis.rates && `rates ${basis.rates}`]
    .filter(Boolean)
    .join(' · ');

/** Width of the words before a number. */
const LABEL = 12;

function oneLines(c: Comparison): string[] {
  const { kind, unit } = c;
  const number = (x: number, u: number | 'incomplete', knownU: number) =>
    numberText(shownNumber({ x, u, knownU, kind, unit, how: 'calculated' }));
  const line = (label: string, text: string) =>
    wrap(text, `    ${label.padEnd(LABEL)}`, ' '.repeat(LABEL + 6));
  return [
    '',
    ...wrap(c.meaning, '  '),
    ...line('first', number(c.a.x, c.a.u, c.a.knownU)),
    ...line('second', number(c.b.x, c.b.u, c.b.knownU)),
    ...line('difference', `${signed(number(c.d, c.u, c.knownU), c.d)}: ${wordsOf(c)}`),
    ...remarks(c).flatMap((remark) => wrap(remark, '    - ', '      ')),
  ];
}

const signed = (text: string, d: number): string => (d > 0 ? `+${text}` : text);

const wordsOf = ({ decision, lacks }: Comparison): string =>
  decision
    ? [decision.word, decision.direction].filter(Boolean).join(', ')
    : `no word: ${lacks.map(placeWords).join('; ')}`;

function remarks(c: Comparison): string[] {
  const shown = (u: number) =>
    plain(shownNumber({ x: u, u, kind: c.kind, unit: c.unit, how: 'calculated' }).value);
  const shared = c.shared.map((s) => s.label).join('; ');
  return [
    ...(shared === ''
      ? []
      : [
          `both share ${shared}; were they independent the spread would be ${shown(c.independentU)}`,
        ]),
    ...(c.scatter
      ? [`unit-to-unit scatter ${scatterSize(c)}: ${c.scatter.how}, ${c.scatter.source}`]
      : []),
  ];
}

function scatterSize({ scatter, kind, unit }: Comparison): string {
  if (!scatter) return '';
  if ('relative' in scatter) return `${Number((100 * scatter.relative).toPrecision(3))} %`;
  const number = { x: scatter.absolute, u: 0, kind, unit, how: 'supplied' } as const;
  return plain(numberText(shownNumber(number)));
}
