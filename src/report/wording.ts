import type { Answer, Variable } from '../engine/index.ts';
import {
  formatTogether,
  fromSi,
  type Kind,
  spreadToSi,
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
const NOT_COMPLETE = 'not complete';
const SPREAD_INCOMPLETE = 'spread incomplete';
/** Where a number should be and none could be worked out. */
export const NO_NUMBER = '–';

/** What a number to be printed has: SI, as engine results carry it. */
export interface NumberGiven {
  readonly x: number;
  readonly u: number | 'incomplete';
  readonly knownU?: number;
  readonly kind: Kind;
  readonly unit: string;
  readonly how: How;
  /** What it lacks, where that is known: with nothing missing only its spread is incomplete. */
  readonly missing?: readonly unknown[];
}

/**
 * A number in words: rounded by its spread, or by what of its spread is known. Together with
 * `beside`, the other numbers of its kind and unit, all to one place.
 */
export function shownNumber(given: NumberGiven, beside: readonly NumberGiven[] = []): ShownNumber {
  const known = given.u === 'incomplete' ? (given.knownU ?? 0) : given.u;
  const [text = NO_NUMBER] = Number.isFinite(given.x)
    ? formatTogether([
        ...[given, ...beside.filter((n) => standTogether(n, given))].map(rounded),
        ...coarsest(given),
      ])
    : [];
  const [value = NO_NUMBER, spread = ''] = (text.split(',')[0] ?? text).split(' ± ');
  return {
    x: given.x,
    u: given.u,
    knownU: known,
    kind: given.kind,
    unit: given.unit,
    value,
    spread,
    symbol: unitSymbol(given.unit),
    incomplete: incompleteWord(given),
    line: lineUnder(given.how),
    how: howWords(given.how),
  };
}

/** Significant digits of a number that is not complete, whatever is known of its spread. */
const INCOMPLETE_DIGITS = 5;

/** A spread that rounds a number which is not complete to few digits; nothing for a complete one. */
function coarsest(n: NumberGiven): ReturnType<typeof rounded>[] {
  if (n.u !== 'incomplete' || !n.knownU || n.x === 0) return [];
  const shown = Math.abs(fromSi(n.x, n.unit, n.kind));
  const u = 10 ** (Math.floor(Math.log10(shown)) - INCOMPLETE_DIGITS + 2);
  return [{ ...rounded(n), u: spreadToSi(u, n.unit, n.kind) }];
}

const incompleteWord = ({ u, missing }: NumberGiven): string =>
  u !== 'incomplete' ? '' : missing?.length === 0 ? SPREAD_INCOMPLETE : NOT_COMPLETE;

/** For rounding: what of the spread is known, or nothing at all. */
const rounded = (n: NumberGiven) => {
  const known = n.u === 'incomplete' ? n.knownU || undefined : n.u;
  return { x: n.x, u: known, kind: n.kind, unit: n.unit };
};

/** Numbers are set to one place only while none loses more than one of its own two digits. */
function standTogether(a: NumberGiven, b: NumberGiven): boolean {
  if (a.kind !== b.kind || a.unit !== b.unit || !Number.isFinite(a.x)) return false;
  const ua = rounded(a).u ?? 0;
  const ub = rounded(b).u ?? 0;
  return ua > 0 && ub > 0 && ua < 10 * ub && ub < 10 * ua;
}

/** Degree, minute and second stand close to their number. */
const closeUp = (symbol: string): boolean => /^[°′″]$/.test(symbol);

/** "1 645.3 ± 0.2 kg"; an incomplete one says so, and what of its spread is known. */
export function numberText(n: ShownNumber): string {
  if (n.incomplete !== '') {
    const known = n.spread === '' ? '' : `, known part of its spread ± ${n.spread}`;
    return `${withUnit(n.value, n.symbol)}, ${n.incomplete}${known}`;
  }
  if (n.spread === '') return withUnit(n.value, n.symbol);
  const both = `${n.value} ± ${n.spread}`;
  return withUnit(closeUp(n.symbol) ? `(${both})` : both, n.symbol);
}

/** The same for a drawing, where there is no room for what of an incomplete spread is known. */
export const shortText = (n: ShownNumber): string =>
  n.incomplete === '' ? numberText(n) : `${withUnit(n.value, n.symbol)}, ${n.incomplete}`;

const withUnit = (text: string, symbol: string): string =>
  symbol === '' ? text : `${text}${closeUp(symbol) ? '' : ' '}${symbol}`;

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
