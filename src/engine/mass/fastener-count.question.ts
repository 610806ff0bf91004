import type { LinearForm } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import {
  type BoundLook,
  type DetailTable,
  type Looked,
  question,
  type ScalarInput,
} from '../method.ts';
import { BALANCE } from '../sections.ts';

const kg = (
  name: string,
  symbol: string,
  meaning: string,
  where: string,
  more: Pick<ScalarInput, 'find' | 'bounds'> & Partial<ScalarInput>,
): ScalarInput => ({
  ...{ in: 'scalar', name, symbol, kind: 'mass', unit: 'g', meaning, where },
  range: [0, 200_000],
  ...more,
});

/** Pieces that so much is, by a sample of n₀ pieces of mass m₀, single pieces scattering by e. */
const countOf = (total = 0, tare = 0, pieces = 0, sample = 0, scatter = 0): number => {
  const count = ((total - tare) * pieces) / sample;
  return count * (1 + scatter * Math.sqrt(1 / pieces + 1 / count));
};

export default question({
  id: 'fastener-count',
  version: 1,
  title: 'Fasteners counted by weight',
  wording: 'How many pieces are in the bag, by what it weighs?',
  subject: 'part',
  section: BALANCE,
  onRequest: true,
  inputs: [
    kg('total', 'M', 'mass of all, with bag or tote', 'mass of the part', {
      bounds: { above: 0 },
      find: (at) => at.number(at.subject, 'mass'),
    }),
    kg('tare', 't', 'bag or tote in it', 'none: the mass of a part is without its tote', {
      bounds: { atLeast: 0 },
      find: (at) => at.exact(0, 'tare'),
      assumed: 'exactly 0 g',
    }),
    {
      in: 'scalar',
      name: 'pieces',
      symbol: 'n₀',
      kind: 'count',
      unit: '1',
      meaning: 'pieces of the sample, counted by hand',
      range: [1, 1000],
      bounds: { above: 0 },
      where: 'pieces of the part’s sample',
      find: (at) => at.number(at.subject, 'sampleCount'),
    },
    kg('sample', 'm₀', 'mass of the sample', 'mass of the part’s sample', {
      bounds: { above: 0 },
      find: (at) => at.number(at.subject, 'sampleMass'),
    }),
    {
      in: 'scalar',
      name: 'scatter',
      symbol: 'e',
      kind: 'ratio',
      unit: '1',
      meaning: 'relative scatter of single pieces',
      range: [-0.2, 0.2],
      where: 'common practice for fasteners of one lot',
      find: (at) => at.tabled(PIECE_SCATTER),
      assumed: '0 ± 0.01',
    },
  ],
  body: {
    body: 'row',
    outputs: [
      {
        name: 'count',
        symbol: 'N',
        kind: 'count',
        unit: '1',
        meaning: 'pieces by weight, not rounded',
        shown: 'N = (M − t) n₀ / m₀ · (1 + e √(1/n₀ + 1/N))',
        of: countOf,
      },
      {
        name: 'piece',
        symbol: 'm₁',
        kind: 'mass',
        unit: 'g',
        meaning: 'mass of one piece, by the sample',
        shown: 'm₁ = m₀ / n₀',
        step: true,
        of: (_total, _tare, pieces, sample) => (sample ?? Number.NaN) / (pieces ?? Number.NaN),
      },
    ],
  },
  look: wholeNumbers,
  modelError: {},
  sources: [
    {
      title: 'Counting by weight: mass over the mass of one piece',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'All pieces are of one kind and lot: a washer too many or a nut among the bolts is not told.',
    'Scales keep one error through sample and total only if the record names it as a shared cause.',
  ],
  cautions: [],
  checks: [
    {
      what: 'a bag with a known number, and when two numbers can not be told apart',
      source: 'proportion of masses; own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/masses-at-the-scale.test.ts',
    },
  ],
  example: {
    total: '640 ± 2 g',
    tare: '5 ± 0.5 g',
    pieces: '20',
    sample: '206 ± 1 g',
    scatter: '0 ± 0.01',
  },
});

const PIECE_SCATTER = {
  id: 'mass/piece-scatter',
  words: 'relative scatter of single fasteners of one lot',
  x: 0,
  spread: { s: 'normal', u: 0.01 },
  how: 'guessed',
  source: 'common practice, no source',
} as const;

/** Whole numbers less likely than this are not listed. */
const LEAST = 0.01;

/** The whole numbers that the bag may hold, each with its share; ambiguous where two may be. */
function wholeNumbers(bound: BoundLook): Looked {
  const args = ['total', 'tare', 'pieces', 'sample', 'scatter'].map((n) => bound.scalars[n]);
  if (!args.every((c) => c && !('missing' in c) && !c.unknownSpread)) return {};
  const forms = args.flatMap((c) => (c && !('missing' in c) ? [c.form] : []));
  const count = countOf(...forms.map((f) => f.x));
  const u = spreadOf(forms, count);
  if (!Number.isFinite(count) || !(count > 0)) return {};
  const shares = sharesOf(count, u);
  const findings = shares.length > 1 ? [ambiguous(shares, u)] : [];
  return { detail: tableOf(shares), findings };
}

/** Standard uncertainty of the count by central differences along each variable. */
function spreadOf(forms: readonly LinearForm[], count: number): number {
  const ids = new Set(forms.flatMap((f) => [...f.by.keys()]));
  let sum = 0;
  for (const id of ids) {
    const moved = (t: number) => countOf(...forms.map((f) => f.x + t * (f.by.get(id) ?? 0)));
    sum += (moved(0.5) - moved(-0.5)) ** 2;
  }
  return Math.sqrt(sum) || Number.EPSILON * count;
}

type Share = readonly [count: number, probability: number];

function sharesOf(count: number, u: number): Share[] {
  const reach = Math.ceil(4 * u) + 1;
  const near = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.round(count) - reach + i);
  const weights = near
    .filter((n) => n >= 0)
    .map((n) => [n, Math.exp(-0.5 * ((n - count) / u) ** 2)] as const);
  const total = weights.reduce((s, [, w]) => s + w, 0);
  if (total === 0) return [[Math.round(count), 1]];
  return weights
    .map(([n, w]): Share => [n, w / total])
    .filter(([, p]) => p > LEAST)
    .sort((a, b) => b[1] - a[1]);
}

const tableOf = (shares: readonly Share[]): DetailTable => ({
  title: 'Whole numbers that it may be',
  columns: [
    { name: 'pieces', kind: 'count' },
    { name: 'share', unit: '%' },
  ],
  rows: shares,
});

const ambiguous = (shares: readonly Share[], u: number): Finding => ({
  code: 'count-ambiguous',
  level: 'doubt',
  place: { column: 'total' },
  value: shares.map(([n, p]) => `${n} (${(100 * p).toPrecision(2)} %)`).join(', '),
  what: `the weight does not tell one number from the next: one standard uncertainty is ${Number(u.toPrecision(2))} pieces`,
  next: 'Weigh a larger sample on a finer scale, or count by hand.',
});
