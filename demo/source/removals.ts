/**
 * The removal plan of VAN-27 (invented), and one in a bad order. `behind`: parts of an assembly
 * that lie rearward of a plane; `ahead`: those before it.
 */
export interface Removal {
  readonly number: string;
  readonly name: string;
  readonly takes: readonly string[];
  readonly gates?: readonly string[];
  readonly destroys?: readonly string[];
  readonly without?: readonly string[];
  readonly behind?: readonly { readonly assembly: string; readonly xMm: number }[];
  readonly ahead?: readonly { readonly assembly: string; readonly xMm: number }[];
  /** Steps that come first, whatever holds what. */
  readonly after?: readonly string[];
  /** Parts of an assembly whose name begins with a word. */
  readonly named?: readonly { readonly assembly: string; readonly begins: string }[];
}

const RAISE: Removal = {
  number: 'R00',
  name: 'Raise the vehicle',
  takes: [],
  destroys: ['kerb posture'],
};
const WHEELS: Removal = { number: 'R01', name: 'Wheels off', takes: ['62'], after: ['R00'] };
const PACK: Removal = {
  number: 'R02',
  name: 'Lower the pack',
  takes: ['40'],
  after: ['R00'],
  gates: ['fluids'],
};
const FRONT: Removal = {
  number: 'R03',
  name: 'Lower the front module',
  takes: ['60', '64', '90-002'],
  gates: ['lowering', 'refrigerant', 'fluids'],
  destroys: ['drained'],
  after: ['R00'],
  ahead: [
    { assembly: '50', xMm: 200 },
    { assembly: '63', xMm: 200 },
  ],
};
const REAR: Removal = {
  number: 'R04',
  name: 'Lower the rear module',
  takes: ['61'],
  gates: ['lowering', 'stored-energy'],
  after: ['R00'],
  behind: [{ assembly: '63', xMm: 2000 }],
};

export const REMOVALS: readonly Removal[] = [
  RAISE,
  WHEELS,
  PACK,
  FRONT,
  REAR,
  { number: 'R05', name: 'Closures and glazing off', takes: ['11', '12'], after: ['R00'] },
  { number: 'R06', name: 'Interior out', takes: ['30'], after: ['R00'], gates: ['pyrotechnics'] },
  {
    number: 'R07',
    name: 'Open the pack lid, on the bench',
    takes: ['40-010'],
    after: ['R02'],
    destroys: ['unsealed'],
  },
];

/** Rear doors and cargo floor off with the front module still in: the centre goes to the front pads. */
export const BAD_REMOVALS: readonly Removal[] = [
  RAISE,
  WHEELS,
  PACK,
  REAR,
  {
    number: 'R05',
    name: 'Rear doors with hinges off',
    takes: ['11-009', '11-010', '11-011'],
    after: ['R00'],
  },
  {
    number: 'R06',
    name: 'Cargo floor and linings out',
    takes: [],
    after: ['R00'],
    named: [{ assembly: '30', begins: 'Cargo' }],
  },
  FRONT,
];

/** The lift and what is asked of it; the ratings are invented. */
export const HOIST = {
  ratingKg: 3500,
  /** An arm may carry more than a quarter of the rating. */
  armRatingKg: 1000,
  padUMm: 5,
  pull: { words: 'pull at the front, two people on a bar', newton: 784.5, xMm: -820, yMm: 0 },
} as const;
