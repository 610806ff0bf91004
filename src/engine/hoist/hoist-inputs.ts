import { ARM_SHARE, HOIST_DEFAULTS, STANDARD_GRAVITY } from '../../data/index.ts';
import type { Finder, Found, ScalarInput, TableInput } from '../method.ts';

const vehicle = (at: Finder): string => at.view.root()?.id ?? '';
const has = (at: Finder, property: string): boolean =>
  at.view.properties(vehicle(at)).includes(property);

const ofVehicle = (at: Finder, property: string): Found => at.number(vehicle(at), property);

const pad = (name: string, symbol: string, words: string): ScalarInput => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'length',
  unit: 'mm',
  meaning: `hoist pads, ${words}`,
  range: [-3000, 6000],
  where: `pads of the hoist, ${words}, of the vehicle`,
  find: (at) => ofVehicle(at, `pad.${name}`),
});

/** What is recorded of the margin asked for, else our default. */
const asked = (
  name: string,
  symbol: string,
  property: keyof typeof HOIST_DEFAULTS,
  unit: string,
  range: readonly [number, number],
): ScalarInput => ({
  in: 'scalar',
  name,
  symbol,
  kind: HOIST_DEFAULTS[property].kind,
  unit,
  meaning: `margin asked for: ${HOIST_DEFAULTS[property].words}`,
  range,
  bounds: { atLeast: 0 },
  where: 'margin asked for, of the vehicle; else the default of this project',
  find: (at) => (has(at, property) ? ofVehicle(at, property) : at.tabled(HOIST_DEFAULTS[property])),
});

/** The extra pull as the mass that weighs as much; none is reckoned with where none is recorded. */
const PULL: ScalarInput = {
  in: 'scalar',
  name: 'pull',
  symbol: 'm_F',
  kind: 'mass',
  unit: 'kg',
  meaning: 'extra pull downward, as the mass that weighs as much',
  range: [-500, 500],
  where: 'extra pull, of the vehicle, over standard gravity; none where none is recorded',
  find: (at) => {
    if (!has(at, 'pull.force')) return at.exact(0, 'no extra pull is recorded');
    const force = ofVehicle(at, 'pull.force');
    return 'missing' in force ? force : scaled(at, force, 1 / STANDARD_GRAVITY);
  },
};

const pullAt = (name: string, symbol: string, axis: 'x' | 'y'): ScalarInput => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'length',
  unit: 'mm',
  meaning: `place of the extra pull, ${axis.toUpperCase()}`,
  range: [-3000, 8000],
  where: 'extra pull, of the vehicle',
  find: (at) =>
    has(at, 'pull.force')
      ? ofVehicle(at, `pull.${axis}`)
      : at.exact(0, 'no extra pull is recorded'),
});

/** A multiple of a cell; what is exact stays so. */
function scaled(at: Finder, cell: Exclude<Found, { missing: true }>, by: number): Found {
  const { form, label } = cell;
  if (form.by.size === 0) return at.exact(by * form.x, label);
  const parts = new Map([...form.by].map(([id, c]) => [id, by * c]));
  return { ...cell, form: { x: by * form.x, by: parts } };
}

const rating = (name: string, symbol: string, meaning: string, find: ScalarInput['find']) =>
  ({
    in: 'scalar',
    ...{ name, symbol, kind: 'mass', unit: 'kg', meaning, range: [500, 10000], find },
    bounds: { above: 0 },
    where: `${meaning}, of the vehicle`,
  }) satisfies ScalarInput;

function armRating(at: Finder): Found {
  if (has(at, 'lift.armRating')) return ofVehicle(at, 'lift.armRating');
  const whole = ofVehicle(at, 'lift.rating');
  if ('missing' in whole) return whole;
  at.note({
    code: 'arm-rating-assumed',
    level: 'note',
    place: { property: 'lift.armRating' },
    what: 'no rating of one arm is recorded: an arm is taken to carry a quarter of the rating of the lift',
    next: 'Read the rating of an arm from the plate or the manual of the lift.',
  });
  return scaled(at, whole, ARM_SHARE);
}

/** Pads, margin asked for, extra pull and ratings, in the order in which the formulas take them. */
export const HOIST_SCALARS: readonly ScalarInput[] = [
  pad('front', 'X₁', 'front, X'),
  pad('rear', 'X₂', 'rear, X'),
  pad('left', 'Y₁', 'left, Y'),
  pad('right', 'Y₂', 'right, Y'),
  asked('shareX', 'pₓ', 'margin.shareX', '%', [0, 50]),
  asked('leastX', 'aₓ', 'margin.leastX', 'mm', [0, 2000]),
  asked('shareY', 'p_y', 'margin.shareY', '%', [0, 50]),
  PULL,
  pullAt('pullX', 'x_F', 'x'),
  pullAt('pullY', 'y_F', 'y'),
  rating('rating', 'R', 'rating of the lift', (at) => ofVehicle(at, 'lift.rating')),
  rating('armRating', 'Rₐ', 'rating of one arm of the lift', armRating),
];

/** The names of the inputs above. */
export const HOIST_NAMES = HOIST_SCALARS.map((s) => s.name);

/** The same as one row of a table, for what only looks at them. */
export const HOIST_ROW: TableInput = {
  in: 'table',
  name: 'hoist',
  meaning: 'the hoist: pads, margin asked for, extra pull, ratings',
  where: 'readings of the vehicle',
  rows: (at) => [vehicle(at)],
  columns: HOIST_SCALARS.map(({ assumed: _assumed, find, ...rest }) => ({
    ...rest,
    optional: true,
    find: (at: Finder) => find(at),
  })),
};
