import type { Finder, ScalarInput } from '../method.ts';
import {
  byMaterial,
  type From,
  fromBook,
  given,
  reading,
  type Spec,
  usual,
} from './usual-inputs.ts';

/** Net mass as weighed, all pieces of the row together. */
export const MASS: ScalarInput = given(
  {
    ...{ name: 'mass', symbol: 'm', kind: 'mass', unit: 'kg' },
    ...{ meaning: 'mass of the part, all pieces', range: [0.001, 400], moves: 'up' },
  },
  reading('mass', 'mass, all pieces,'),
);

export const PIECES: ScalarInput = usual(
  {
    ...{ name: 'count', symbol: 'n', kind: 'count', unit: '1' },
    ...{ meaning: 'pieces that were weighed together', range: [1, 1000] },
    bounds: { atLeast: 1 },
  },
  'exactly 1',
  reading('count', 'pieces'),
);

/** Length of the part as it stands in the record: thickness, or a side of its envelope. */
export const partLength = (
  name: string,
  symbol: string,
  meaning: string,
  range: Spec['range'],
  property?: string,
): ScalarInput =>
  given(
    { name, symbol, kind: 'length', unit: 'mm', meaning, range, moves: 'up' },
    property === undefined ? undefined : reading(property, meaning),
  );

/** Years and pieces a year for which the rates of the book hold. */
const basis = (of: 'volumePerYear' | 'years'): From => ({
  where: 'what the rate book holds for',
  find: (at: Finder) => {
    const book = at.view.rates(at.ratesVersion);
    return book
      ? at.exact(book[of], `${of} of rate book ${book.version}`)
      : at.missing(of, 'no rate book in the study');
  },
});

const SHARE = { kind: 'ratio', unit: '%' } as const;
const RATE = { kind: 'moneyPerTime', unit: '{u}/h' } as const;
const PER_KG = { kind: 'moneyPerMass', unit: '{u}/kg' } as const;
const COUNT = { kind: 'count', unit: '1' } as const;

/** What a process may ask for beside its own inputs, each with what makes it up. */
const TEMPLATES = {
  price: [
    { ...PER_KG, symbol: 'p', meaning: 'price of the material', range: [0.1, 200], moves: 'up' },
    byMaterial('material'),
  ],
  scrapPrice: [
    { ...PER_KG, symbol: 'q', meaning: 'price that scrap is sold for', range: [0, 50] },
    byMaterial('scrap'),
  ],
  labour: [
    { ...RATE, symbol: 'w', meaning: 'rate of labour', range: [1, 500], moves: 'up' },
    fromBook('rate', 'labour'),
  ],
  crew: [
    {
      kind: 'ratio',
      unit: '1',
      symbol: 'c',
      meaning: 'people at the machine',
      range: [0, 20],
      moves: 'up',
    },
  ],
  availability: [
    {
      ...{ ...SHARE, symbol: 'A', meaning: 'availability of the machine', range: [20, 100] },
      ...{ bounds: { above: 0 }, moves: 'down' },
    },
  ],
  rejects: [
    {
      ...{ ...SHARE, symbol: 'f', meaning: 'share of rejects', range: [0, 50] },
      ...{ bounds: { atLeast: 0, below: 100 }, moves: 'up' },
    },
  ],
  setUp: [
    {
      kind: 'time',
      unit: 'min',
      symbol: 'tₛ',
      meaning: 'time to set up',
      range: [0, 2000],
      moves: 'up',
    },
  ],
  batch: [
    {
      ...{ ...COUNT, symbol: 'B', meaning: 'pieces in a batch', range: [1, 1e6] },
      ...{ bounds: { above: 0 }, moves: 'down' },
    },
  ],
  tool: [
    {
      kind: 'money',
      unit: '{u}',
      symbol: 'T',
      meaning: 'price of a set of tools',
      range: [0, 2e7],
      moves: 'up',
    },
  ],
  toolLife: [
    {
      ...{ ...COUNT, symbol: 'L', meaning: 'pieces that a set of tools lasts', range: [1, 1e8] },
      ...{ bounds: { above: 0 }, moves: 'down' },
    },
  ],
  volume: [
    {
      ...{ ...COUNT, symbol: 'N', meaning: 'pieces a year', range: [1, 5e6] },
      ...{ bounds: { above: 0 }, moves: 'down' },
    },
    basis('volumePerYear'),
  ],
  years: [
    {
      ...{ kind: 'ratio', unit: '1', symbol: 'Y', meaning: 'years of making', range: [0.1, 30] },
      ...{ bounds: { above: 0 }, moves: 'down' },
    },
    basis('years'),
  ],
  overhead: [
    {
      ...{ kind: 'ratio', unit: '1', symbol: 'k', meaning: 'factor for overhead and profit' },
      ...{ range: [1, 3], bounds: { atLeast: 1 }, moves: 'up' },
    },
    fromBook('factor/overhead', 'overhead'),
  ],
  packaging: [
    {
      kind: 'money',
      unit: '{u}',
      symbol: 'C_p',
      meaning: 'packaging, a piece',
      range: [0, 500],
      moves: 'up',
    },
  ],
  freight: [
    {
      kind: 'money',
      unit: '{u}',
      symbol: 'C_f',
      meaning: 'freight, a piece',
      range: [0, 500],
      moves: 'up',
    },
  ],
} as const satisfies Record<string, readonly [Omit<Spec, 'name'>, From?]>;

export type SharedName = keyof typeof TEMPLATES;

/** One of the inputs that processes share, with its usual value in this one. */
export function shared(name: SharedName, written: string): ScalarInput {
  const [spec, from]: readonly [Omit<Spec, 'name'>, From?] = TEMPLATES[name];
  return usual({ name, ...spec }, written, from);
}

/** The same input where the answer is a difference: which way that goes hangs on the designs. */
export const undirected = ({ moves: _moves, ...input }: ScalarInput): ScalarInput => input;

/** Rate of a machine, by the words it goes by in the rate book. */
export const machineRate = (words: string, written: string, machine: string): ScalarInput =>
  usual(
    {
      name: 'machine',
      ...RATE,
      symbol: 'R',
      meaning: `rate of the ${machine}`,
      range: [1, 2000],
      moves: 'up',
    },
    written,
    fromBook('rate', words),
  );

/** How a usual plant runs: what nearly all processes ask for. */
export const RUNNING: readonly ScalarInput[] = [
  shared('labour', '30 / 36 / 44 {u}/h'),
  shared('availability', '75 / 85 / 92 %'),
  shared('overhead', '1.14 / 1.18 / 1.24'),
  shared('packaging', '0.02 / 0.05 / 0.12 {u}'),
  shared('freight', '0.02 / 0.05 / 0.12 {u}'),
];

/** Tools paid over the life of the product. */
export const tooling = (tool: string, toolLife: string): readonly ScalarInput[] => [
  shared('tool', tool),
  shared('toolLife', toolLife),
  shared('volume', 'exactly 60000'),
  shared('years', 'exactly 5'),
];
