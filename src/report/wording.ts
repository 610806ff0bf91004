import type { Answer, Variable } from '../engine/index.ts';
import {
  type Kind,
  lackWords,
  type Printable,
  printedLine,
  printedNumber,
  unitSymbol,
  type Way,
} from '../quantity/index.ts';
import { type Finding, type Place, placeText, propertyWords } from '../study/index.ts';
import type { ShownNumber } from './model.ts';

/** Line under a number, after the line types of drawings: how it is known. */
export type LineUnder = 'continuous' | 'chain' | 'dashed' | 'dotted' | 'none';
export type How = Way | 'assumed' | 'exact';

const WAYS: Readonly<Record<How, { readonly words: string; readonly line: LineUnder }>> = {
  measured: { words: 'measured', line: 'continuous' },
  supplied: { words: 'supplied', line: 'continuous' },
  calculated: { words: 'calculated', line: 'chain' },
  seen: { words: 'seen', line: 'dashed' },
  inferred: { words: 'inferred', line: 'dashed' },
  guessed: { words: 'guessed', line: 'dotted' },
  assumed: { words: 'assumed', line: 'dotted' },
  exact: { words: 'exact by definition', line: 'none' },
};

export const howWords = (how: How): string => WAYS[how].words;
export const lineUnder = (how: How): LineUnder => WAYS[how].line;

/** What the lines stand for, for the key of the first sheet. */
export const LINE_KEY: readonly { readonly line: LineUnder; readonly words: string }[] = [
  { line: 'continuous', words: 'measured or supplied' },
  { line: 'chain', words: 'calculated' },
  { line: 'dashed', words: 'seen or inferred' },
  { line: 'dotted', words: 'guessed or assumed' },
];

export const LEVEL_WORDS: Readonly<Record<Finding['level'], string>> = {
  gap: 'open',
  doubt: 'doubt',
  note: 'note',
};

/** What kind of cause a share comes from; readings and given values need no word. */
export const VARIABLE_WORDS: Readonly<Record<Variable['what'], string>> = {
  reading: '',
  given: '',
  gain: 'gain of an instrument, shared',
  offset: 'offset of an instrument, shared',
  frame: 'frame, shared',
  rate: 'rate, shared',
  density: 'density, shared',
  model: 'error of the method itself',
  specimen: 'specimen, shared',
};

/** What has no name of its own goes by its label alone: "J101 J101" is "J101". */
export const subjectWords = (subject: string): string => subject.replace(/^(.+) \1$/, '$1');

/**
 * A place in words: "80-002 Body harness, mass, all pieces". The id of a reading says nothing on
 * paper where its subject is named.
 */
export function placeWords({ reading, ...place }: Place): string {
  const { subject, property } = place;
  return placeText({
    ...place,
    ...(subject === undefined ? {} : { subject: subjectWords(subject) }),
    ...(property === undefined ? {} : { property: propertyWords(property) }),
    ...(reading !== undefined && subject === undefined ? { reading } : {}),
  });
}

export const SPREAD_RULE = 'The number after ± is one standard uncertainty.';
/** Where a number should be and none could be worked out. */
export const NO_NUMBER = '–';

/** What a number to be printed has: SI, as engine results carry it. */
export interface NumberGiven {
  readonly x: number;
  readonly u: number | 'incomplete' | 'unknown';
  readonly knownU?: number;
  readonly kind: Kind;
  readonly unit: string;
  readonly how: How;
  /** What it lacks, where that is known: with nothing missing only its spread is incomplete. */
  readonly missing?: readonly unknown[];
}

/**
 * A number in words: rounded by its spread, or by what of its spread is known. Together with
 * `beside`, the numbers it is compared with, all to one place.
 */
export function shownNumber(given: NumberGiven, beside: readonly NumberGiven[] = []): ShownNumber {
  const known = typeof given.u === 'number' ? given.u : (given.knownU ?? 0);
  const { value, spread, lack } = Number.isFinite(given.x)
    ? printedNumber(printable(given), beside.map(printable))
    : { value: NO_NUMBER, spread: '', lack: lackWords(printable(given)) };
  return {
    x: given.x,
    u: given.u === 'unknown' ? 'incomplete' : given.u,
    knownU: known,
    kind: given.kind,
    unit: given.unit,
    value,
    spread,
    symbol: unitSymbol(given.unit),
    incomplete: lack,
    line: lineUnder(given.how),
    how: howWords(given.how),
  };
}

const printable = ({ x, u, knownU, kind, unit, missing }: NumberGiven): Printable => ({
  ...{ x, u, kind, unit },
  ...(knownU === undefined ? {} : { knownU }),
  lacks: missing?.length,
});

/** Numbers already in words, set side by side: all to one place. */
export const sideBySide = (numbers: readonly ShownNumber[]): ShownNumber[] =>
  numbers.map((n) => {
    if (!Number.isFinite(n.x)) return n;
    const { value, spread } = printedNumber(
      n,
      numbers.filter((other) => other !== n),
    );
    return { ...n, value, spread };
  });

/** "1 645.3 ± 0.2 kg"; one that is not whole says so, and what of its spread is known. */
export const numberText = (n: ShownNumber): string => printedLine({ ...n, lack: n.incomplete });

/** "1 645.3 kg": the number alone, to be put into a formula. */
export const nominalText = (n: ShownNumber): string => printedLine({ ...n, spread: '', lack: '' });

/** The same for a drawing, where there is no room for what of an incomplete spread is known. */
export const shortText = (n: ShownNumber): string =>
  n.incomplete === '' ? numberText(n) : numberText({ ...n, spread: '' });

/** "about 40 · kerb · rates R1": what an answer rests on. */
export function basisText(basis: Answer['basis']): string {
  return [
    basis.subject && `of ${subjectWords(basis.subject)}`,
    basis.conditions.length > 0 && `condition ${basis.conditions.join(', ')}`,
    basis.rates && `rates ${basis.rates}`,
    basis.currency && `currency ${basis.currency}`,
    basis.revision && `revision ${basis.revision}`,
    basis.invented && 'invented data',
  ]
    .filter((part) => part)
    .join(' · ');
}

export const percentText = (share: number): string =>
  share > 0 && share < 0.005 ? '<1 %' : `${Math.round(100 * share)} %`;

export const othersText = (count: number): string =>
  count === 1 ? '1 other' : `${count} others together`;
