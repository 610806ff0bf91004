import { ARM_SHARE, HOIST_DEFAULTS } from '../../data/index.ts';
import type { Kind } from '../../quantity/index.ts';
import type { Finder, Found, ScalarInput } from '../method.ts';

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

/** One named extra pull; none is reckoned with where none is recorded. */
const pull = (
  name: string,
  symbol: string,
  property: string,
  kind: Kind,
  unit: string,
  meaning: string,
  range: readonly [number, number],
): ScalarInput => ({
  in: 'scalar',
  ...{ name, symbol, kind, unit, meaning, range },
  where: 'extra pull, of the vehicle; none where none is recorded',
  find: (at) =>
    has(at, 'pull.force') ? ofVehicle(at, property) : at.exact(0, 'no extra pull is recorded'),
});

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
  return at.sum('rating of one arm, a quarter of the lift', [quarter(at, whole)]);
}

/** Exact ratings stay exact; a spread goes along with its quarter. */
const quarter = (at: Finder, whole: Exclude<Found, { missing: true }>): Found => {
  const by = new Map([...whole.form.by].map(([id, c]) => [id, ARM_SHARE * c]));
  return by.size === 0
    ? at.exact(ARM_SHARE * whole.form.x, 'a quarter of the rating')
    : { ...whole, form: { x: ARM_SHARE * whole.form.x, by } };
};

/** Pads, margin asked for, extra pull and ratings, in the order in which the formulas take them. */
export const HOIST_SCALARS: readonly ScalarInput[] = [
  pad('front', 'X₁', 'front, X'),
  pad('rear', 'X₂', 'rear, X'),
  pad('left', 'Y₁', 'left, Y'),
  pad('right', 'Y₂', 'right, Y'),
  asked('shareX', 'pₓ', 'margin.shareX', '%', [0, 50]),
  asked('leastX', 'aₓ', 'margin.leastX', 'mm', [0, 2000]),
  asked('shareY', 'p_y', 'margin.shareY', '%', [0, 50]),
  pull('pull', 'F', 'pull.force', 'force', 'N', 'extra pull, downward', [-5000, 5000]),
  pull('pullX', 'x_F', 'pull.x', 'length', 'mm', 'place of the extra pull, X', [-3000, 8000]),
  pull('pullY', 'y_F', 'pull.y', 'length', 'mm', 'place of the extra pull, Y', [-2000, 2000]),
  rating('rating', 'R', 'rating of the lift', (at) => ofVehicle(at, 'lift.rating')),
  rating('armRating', 'Rₐ', 'rating of one arm of the lift', armRating),
];

/** The names of the inputs above. */
export const HOIST_NAMES = HOIST_SCALARS.map((s) => s.name);
