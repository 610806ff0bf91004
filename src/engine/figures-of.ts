import { unitSymbol } from '../quantity/index.ts';
import type { Finding } from '../study/index.ts';
import type { BarRow, Bars, Figure } from './figure.ts';
import type { GroupRow, Out, OutputSpec, Question, TallyBody } from './method.ts';

type Outs = Readonly<Record<string, Out>>;

/** A question's own figures without those that hold a number that is none, which are found. */
export function soundFigures(own: readonly Figure[]): {
  readonly figures: readonly Figure[];
  readonly findings: readonly Finding[];
} {
  const broken = own.filter((f) => !allFinite(f));
  return { figures: own.filter((f) => !broken.includes(f)), findings: broken.map(leftOut) };
}

/** Figures that any question's results allow: what decides, and the sums of groups. */
export const usualFigures = (
  { body }: Question,
  outs: Outs,
  groups: readonly GroupRow[] | undefined,
): readonly Figure[] => [
  ...decidedFigures(body.outputs, outs),
  ...(body.body === 'tally' && groups ? groupFigures(body, groups) : []),
];

/** Whether every number anywhere in a figure is one. */
function allFinite(data: unknown): boolean {
  if (typeof data === 'number') return Number.isFinite(data);
  return typeof data !== 'object' || data === null || Object.values(data).every(allFinite);
}

const leftOut = ({ title }: Figure): Finding => ({
  code: 'figure-left-out',
  level: 'note',
  place: { property: title },
  what: 'the figure is not drawn: not all of its numbers could be worked out',
  next: 'See what is missing from the answer.',
});

/** Whiskers reach this many standard uncertainties to each side. */
const WHISKER_U = 2;
/** On a scale longer than this many whiskers no spread can be seen. */
const WIDEST = 200;

/**
 * A balance for each result that decides and is the difference of two others; the rest against
 * zero, those of one unit together.
 */
function decidedFigures(specs: readonly OutputSpec[], outs: Outs): Figure[] {
  const drawable = specs.flatMap((spec) => {
    const out = outs[spec.name];
    return out && out.knownU > 0 && !spec.step ? [{ out, decides: spec.decides }] : [];
  });
  const all = drawable.map((d) => d.out);
  const decided = drawable.flatMap(({ out, decides }) => (decides === undefined ? [] : [out]));
  const balances = decided.map((gap) => ({ gap, sides: balanceSides(gap, all) }));
  const alone = balances.flatMap(({ gap, sides }) => (sides ? [] : [gap]));
  return [
    ...balances.flatMap(({ gap, sides }) =>
      sides && showsSpread(sides, []) ? [balance(gap, sides)] : [],
    ),
    ...inUnits(alone.filter((out) => showsSpread([out], [0]))).map(againstZero),
  ];
}

/** Results of one kind and unit together, in the order of the first of each. */
function inUnits(outs: readonly Out[]): [Out, ...Out[]][] {
  const groups = new Map<string, [Out, ...Out[]]>();
  for (const out of outs) {
    const key = `${out.kind} ${out.unit}`;
    const group = groups.get(key);
    if (group) group.push(out);
    else groups.set(key, [out]);
  }
  return [...groups.values()];
}

/** Whether whiskers are more than a stroke on a scale with all of these. */
function showsSpread(outs: readonly Out[], also: readonly number[]): boolean {
  const reach = Math.max(...outs.map((o) => 2 * WHISKER_U * o.knownU));
  const ends = [
    ...outs.flatMap((o) => [o.x - WHISKER_U * o.knownU, o.x + WHISKER_U * o.knownU]),
    ...also,
  ];
  return Math.max(...ends) - Math.min(...ends) <= WIDEST * reach;
}

/** The two results of which `gap` is the difference, larger role first; undefined when there are none. */
function balanceSides(gap: Out, outs: readonly Out[]): [Out, Out] | undefined {
  const others = outs.filter((o) => o !== gap && o.kind === gap.kind && o.unit === gap.unit);
  const near = 1e-6 * Math.max(...others.map((o) => Math.abs(o.x)), Number.MIN_VALUE);
  for (const a of others)
    for (const b of others) if (a !== b && Math.abs(a.x - b.x - gap.x) <= near) return [a, b];
  return undefined;
}

const balance = (gap: Out, sides: [Out, Out]): Bars => ({
  ...barsOf(gap, `Balance: ${gap.meaning}`, sides),
  alt: `${sides[0].meaning} and ${sides[1].meaning} on one scale, and the difference between them.`,
  from: 'nearest',
  gap: { of: 0, less: 1, number: numberOf(gap), ...wordOf(gap) },
});

function againstZero(outs: [Out, ...Out[]]): Bars {
  const [first] = outs;
  const symbol = unitSymbol(first.unit);
  const title =
    outs.length === 1
      ? titled(`${first.meaning}, against zero`)
      : `Results that decide, against zero${symbol === '' ? '' : `, in ${symbol}`}`;
  return { ...barsOf(first, title, outs), alt: 'On a scale with zero.', from: 'zero' };
}

const barsOf = ({ kind, unit }: Out, title: string, outs: readonly Out[]) => ({
  f: 'bars' as const,
  ...{ title, kind, unit },
  rows: outs.map((o) => ({ label: o.meaning, number: numberOf(o), ...wordOf(o) })),
});

const numberOf = ({ x, u, knownU }: Out) => ({ x, u, ...(u === 'incomplete' ? { knownU } : {}) });

/** The decision word, or what the result lacks. */
function wordOf({ decision, missing, unknownSpread }: Out): { readonly word?: string } {
  if (decision) return { word: decision.word };
  const word = lackOf(missing.length, unknownSpread.length);
  return word === '' ? {} : { word };
}

const lackOf = (missing: number, unknownSpread: number): string =>
  missing > 0
    ? `${missing} missing`
    : unknownSpread > 0
      ? `spread of ${unknownSpread} not known`
      : '';

/** With a capital, unless it begins with a symbol. */
const titled = (words: string): string =>
  words.replace(/^[a-z](?=[a-z])/, (letter) => letter.toUpperCase());

/** Rows beyond these are in the table of the groups. */
const LARGEST = 30;

/** Each sum that is a result as it stands, group by group, the largest first; groups without any of it are left out. */
function groupFigures(body: TallyBody, groups: readonly GroupRow[]): Figure[] {
  if (groups.length < 2) return [];
  return body.terms.flatMap(({ name, kind }) => {
    const out = body.outputs.find((o) => o.name === name && !o.step);
    const drawn = groups.filter((g) => !hasNone(g, name));
    return out && drawn.length > 0 ? [groupBars(out, kind, body.groupBy ?? 'group', drawn)] : [];
  });
}

/** Whether a group's sum is zero for certain: nothing of the kind is there. */
function hasNone({ terms }: GroupRow, name: string): boolean {
  const sum = terms[name];
  return sum?.x === 0 && sum.u === 0 && sum.missing === 0 && sum.unknownSpread === 0;
}

function groupBars(
  { name, meaning, unit }: OutputSpec,
  kind: Bars['kind'],
  by: string,
  groups: readonly GroupRow[],
): Bars {
  const size = (g: GroupRow) => Math.abs(g.terms[name]?.x ?? 0);
  const ranked = [...groups].sort((a, b) => size(b) - size(a));
  const rest = groups.length - LARGEST;
  return {
    f: 'bars',
    title: titled(`${meaning}, by ${by}`),
    alt: `A bar for each ${by}, the largest first.${rest > 0 ? ` ${rest} smaller ones are left out.` : ''}`,
    kind,
    unit,
    from: 'zero',
    rows: ranked.slice(0, LARGEST).map((g) => groupRow(g, name)),
  };
}

function groupRow({ group, terms }: GroupRow, name: string): BarRow {
  const label = group === '' ? 'none' : group;
  const sum = terms[name];
  if (!sum) return { label, word: 'no value' };
  const { x, u, missing, unknownSpread } = sum;
  const word = lackOf(missing, unknownSpread);
  if (word === '') return { label, number: { x, u } };
  return { label, number: { x, u: 'incomplete', knownU: u }, word };
}
