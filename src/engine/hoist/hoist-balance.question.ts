import { balanceColumns } from '../mass/balance-parts.ts';
import { type Formula, question, type ScalarColumn, type TallyBody } from '../method.ts';
import { HOIST } from '../sections.ts';
import { hoistFigures } from './hoist-figure.ts';
import { HOIST_SCALARS } from './hoist-inputs.ts';
import { HOIST_OUTPUTS } from './hoist-outputs.ts';
import { padsTable } from './pads-table.ts';
import { standingAt } from './standing.ts';

const stays: ScalarColumn = {
  in: 'scalar',
  name: 'stays',
  symbol: 's',
  kind: 'ratio',
  unit: '1',
  meaning: '1 for what stays on the hoist after the step, 0 for what comes off with it',
  range: [0, 1],
  bounds: { atLeast: 0 },
  where: 'removal plan: what the step takes',
  find: (at, row) => at.exact(standingAt(at).taken.has(row) ? 0 : 1, 'stays on the hoist'),
};

type Term = TallyBody['terms'][number];
const term = (
  name: string,
  symbol: string,
  kind: Term['kind'],
  shown: string,
  needs: readonly string[],
  each: Formula,
): Term => ({ name, symbol, kind, shown, needs, each });

const PLACED = ['mass', 'x', 'y', 'z', 'stays'];

const part = (number: string, mass: string, x: number, y: number, z: number, s = '1') => ({
  ...{ number, mass, x: `${x} ± 5 mm`, y: `${y} ± 5 mm`, z: `${z} ± 5 mm` },
  stays: `exactly ${s}`,
});

export default question({
  id: 'hoist-balance',
  version: 1,
  title: 'Balance on the hoist after a step',
  wording: 'What is left on the hoist after this step, and how far is it from its limits?',
  subject: 'removal',
  section: HOIST,
  inputs: [
    {
      in: 'table',
      name: 'parts',
      meaning: 'every part on the hoist when the step begins',
      where: 'parts of the vehicle, less those that earlier steps of the plan take',
      rows: (at) => standingAt(at).parts,
      columns: [...balanceColumns, stays],
    },
    ...HOIST_SCALARS,
  ],
  body: {
    body: 'tally',
    table: 'parts',
    terms: [
      term('mass', 'm', 'mass', 'Σ m s', ['mass', 'stays'], (m, s) => m * s),
      term(
        'placed',
        'm′',
        'mass',
        'Σ m s, parts with a position',
        PLACED,
        (m, _x, _y, _z, s) => m * s,
      ),
      term('momentX', 'Sₓ', 'massMoment', 'Σ m s x', PLACED, (m, x, _y, _z, s) => m * s * x),
      term('momentY', 'S_y', 'massMoment', 'Σ m s y', PLACED, (m, _x, y, _z, s) => m * s * y),
      term('momentZ', 'S_z', 'massMoment', 'Σ m s z', PLACED, (m, _x, _y, z, s) => m * s * z),
      term('takenMass', 'mₜ', 'mass', 'Σ m (1 − s)', ['mass', 'stays'], (m, s) => m * (1 - s)),
      term(
        'takenX',
        'Sₜₓ',
        'massMoment',
        'Σ m (1 − s) x',
        PLACED,
        (m, x, _y, _z, s) => m * (1 - s) * x,
      ),
      term(
        'takenY',
        'Sₜ_y',
        'massMoment',
        'Σ m (1 − s) y',
        PLACED,
        (m, _x, y, _z, s) => m * (1 - s) * y,
      ),
    ],
    outputs: HOIST_OUTPUTS,
  },
  look: padsTable,
  figures: hoistFigures,
  modelError: {},
  sources: [
    { title: 'Equilibrium of forces and moments (elementary statics)', status: 'from memory' },
    {
      title: 'Margin asked for: the larger of 15 % of the pad span and 250 mm in X, 15 % in Y',
      at: 'default of this project, editable, no standard',
      status: 'common practice, no source',
    },
    {
      title:
        'ANSI/ALI ALIS:2022, Safety requirements for installation and service of vehicle lifts',
      at: 'the rating of one arm holds beside that of the lift',
      status: 'published',
    },
  ],
  assumptions: [
    'The vehicle stands level on four pads at the corners of a rectangle; slopes, arms that give way and swinging loads are not in it.',
    'Four pads are statically indeterminate: by the split assumed each carries its line’s share times its side’s share. The range shows what else would be in equilibrium.',
    'The extra pull acts straight down at its place; the worse of with and without it counts.',
    'Parts that the record does not have, and fluids that run from one place to another, are not in it.',
  ],
  cautions: ['hoist-balance'],
  checks: [
    {
      what: 'a lift rated 10 000 lb in all and 2 500 lb an arm under 9 000 lb with 3 000 lb front and 6 000 lb rear: 1 500 and 3 000 lb an arm, over the rating of an arm though not of the lift',
      source:
        'ANSI/ALI ALIS:2022 (installation and service of vehicle lifts), example of the load on one arm',
      status: 'own inputs, published formula',
      test: 'test/published/ali-arm-rating.test.ts',
    },
    {
      what: 'loads that may lie on four pads against every solution of the three equations of equilibrium',
      source: 'equilibrium of forces and moments, solved by a search over the free load',
      status: 'own inputs, published formula',
      test: 'test/engine/hoist/on-pads.test.ts',
    },
  ],
  example: {
    parts: [
      part('10', '640 ± 0.5 kg', 1300, 5, 700),
      { ...part('40', '464 ± 0.3 kg', 1420, 0, 270, '0'), z: 'exactly 270 mm' },
      part('60', '220 ± 0.3 kg', 30, 0, 330),
      part('61', '110 ± 0.3 kg', 2900, 0, 300),
    ],
    front: '560 ± 5 mm',
    rear: '2380 ± 5 mm',
    left: '-560 ± 5 mm',
    right: '560 ± 5 mm',
    shareX: 'exactly 15 %',
    leastX: 'exactly 250 mm',
    shareY: 'exactly 15 %',
    pull: 'exactly 80 kg',
    pullX: 'exactly -820 mm',
    pullY: 'exactly 0 mm',
    rating: 'exactly 3500 kg',
    armRating: 'exactly 1000 kg',
  },
});
