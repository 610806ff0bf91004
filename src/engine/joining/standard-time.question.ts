import type { DetailTable, InputSpec, PlainInputs, Solved } from '../method.ts';
import { question } from '../method.ts';
import { CENSUS } from '../sections.ts';
import { ALLOWANCE_BASES, type AllowanceBase, allowanceBase } from './allowance-base.ts';

const percent = (
  name: string,
  symbol: string,
  meaning: string,
  property: string,
  range: readonly [number, number],
): InputSpec => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'ratio',
  unit: '%',
  meaning,
  range,
  bounds: { atLeast: 0, below: 1000 },
  where: `${property}, of the vehicle`,
  find: (at) => at.number(at.subject, property),
});

export default question({
  id: 'standard-time',
  version: 1,
  title: 'Standard time',
  wording: 'What is the standard time, with rating and allowance?',
  subject: 'vehicle',
  section: CENSUS,
  uses: ['work-content'],
  inputs: [
    {
      in: 'scalar',
      name: 'observed',
      symbol: 't',
      kind: 'time',
      unit: 'min',
      meaning: 'time observed or estimated, without allowance',
      range: [0.01, 10_000],
      bounds: { above: 0 },
      where: 'work of putting the joints in',
      find: (at) => at.ask('work-content', at.subject, 'content'),
    },
    percent('rating', 'r', 'rating of the pace, 100 % being normal', 'work.rating', [60, 140]),
    percent('allowance', 'a', 'allowance', 'work.allowance', [0, 40]),
    allowanceBase,
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        name: 'normal',
        symbol: 't₀',
        kind: 'time',
        unit: 'min',
        meaning: 'normal time',
        shown: 't₀ = t r',
      },
      {
        name: 'standard',
        symbol: 'T',
        kind: 'time',
        unit: 'min',
        meaning: 'standard time, by the base named',
        shown: 'T = t₀ (1 + a) of normal time; T = t₀ / (1 − a) of shift time',
      },
    ],
    solve: standardTime,
  },
  modelError: {},
  sources: [
    {
      title: 'Normal time is observed time times rating',
      status: 'published',
    },
    {
      title: 'Allowance as a share of normal time, or of the shift: two conventions of work study',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'The two bases give different times from one percentage; which one is meant is part of the allowance.',
  ],
  cautions: [],
  checks: [
    {
      what: '0.75 min at 110 % with 12 % of normal time 0.9240, of the shift 0.9375; with 11 % 0.91575',
      source: 'normal time as observed time times rating; own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/allowances.test.ts',
    },
  ],
  example: {
    observed: '0.75 ± 0.02 min',
    rating: '110 ± 3 %',
    allowance: '12 ± 1 %',
    base: 'normal time',
  },
});

function standardTime({ scalars, terms }: PlainInputs): Solved {
  const { observed = Number.NaN, rating = Number.NaN, allowance = Number.NaN } = scalars;
  const base = ALLOWANCE_BASES.find((b) => b === terms.base);
  const normal = observed * rating;
  const factor = base === 'normal time' ? 1 + allowance : 1 / (1 - allowance);
  const possible = base !== undefined && (base === 'normal time' || allowance < 1);
  return {
    outputs: { normal, standard: possible ? normal * factor : Number.NaN },
    detail: allowanceTable(base, allowance, factor),
    findings: [base === undefined ? baseOpen(terms.base ?? '') : baseNamed(base)],
  };
}

const allowanceTable = (
  base: string | undefined,
  allowance: number,
  factor: number,
): DetailTable => ({
  title: 'Allowance',
  columns: [
    { name: 'allowance', kind: 'ratio', unit: '%' },
    { name: 'share of' },
    { name: 'factor on normal time', kind: 'ratio' },
  ],
  rows: [[allowance, base ?? 'not said', base === undefined ? 'none' : factor]],
});

/** Printed wherever the time is: the same percentage of the other base is another time. */
const baseNamed = (base: AllowanceBase) =>
  ({
    code: 'allowance-base',
    level: 'note',
    place: { property: 'work.allowanceBase', column: 'base' },
    value: base,
    what: `the allowance is a share of ${base}`,
    next: 'Nothing to do.',
  }) as const;

const baseOpen = (value: string) =>
  ({
    code: 'allowance-base-open',
    level: 'gap',
    place: { property: 'work.allowanceBase', column: 'base' },
    value,
    what: 'what the allowance is a share of is not said, and no choice is made for you',
    next: `Say one of: ${ALLOWANCE_BASES.join(', ')}.`,
  }) as const;
