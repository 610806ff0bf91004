import { type Refusal, RefusalError } from '../../study/index.ts';
import type { Finder, Found, ScalarInput } from '../method.ts';

const CORNERS = [
  ['FL', 'front left'],
  ['FR', 'front right'],
  ['RL', 'rear left'],
  ['RR', 'rear right'],
] as const;

/** The four corner loads of a vehicle as inputs fl, fr, rl, rr. */
export const CORNER_LOADS: readonly ScalarInput[] = CORNERS.map(([corner, words]) => ({
  in: 'scalar',
  name: corner.toLowerCase(),
  symbol: `m${corner}`,
  kind: 'mass',
  unit: 'kg',
  meaning: `corner load, ${words}`,
  range: [50, 2500],
  bounds: { atLeast: 0 },
  where: 'corner loads of the vehicle as received',
  find: (at) => at.number(at.subject, `cornerLoad.${corner}`),
}));

/**
 * The same, for a balance against the parts: loads that were read in another condition only are
 * refused, since the parts would not add up to them.
 */
export const CORNER_LOADS_ALIKE: readonly ScalarInput[] = CORNER_LOADS.map((input, i) => ({
  ...input,
  find: (at) => readAlike(at, `cornerLoad.${CORNERS[i]?.[0] ?? ''}`),
}));

function readAlike(at: Finder, property: string): Found {
  const found = at.number(at.subject, property);
  const { condition } = at.view.header;
  const live = at.view.readings(at.subject, property).filter((s) => !s.withdrawn);
  const elsewhere = live.find((s) => s.reading.of.condition !== condition);
  if (!('missing' in found) || !elsewhere) return found;
  const [here, there] = [condition, elsewhere.reading.of.condition].map((c) =>
    at.view.condition(c),
  );
  throw new RefusalError(unlike(at, property, `${here}`, `${there}`));
}

const unlike = (at: Finder, property: string, here: string, there: string): Refusal => ({
  code: 'unlike-conditions',
  place: { study: at.view.header.title, subject: at.view.node(at.subject)?.label ?? '', property },
  value: there,
  why: `the parts stand in the condition "${here}", this load was read in "${there}": fluids, people and payload on board are in one of the two only`,
  next: `Read the corner loads in "${here}", or state in the study that its parts are those of "${there}".`,
});

/** Wheelbase of the vehicle. */
export const WHEELBASE: ScalarInput = {
  in: 'scalar',
  name: 'wheelbase',
  symbol: 'L',
  kind: 'length',
  unit: 'mm',
  meaning: 'wheelbase',
  range: [1500, 6000],
  bounds: { above: 0 },
  where: 'wheelbase of the vehicle',
  find: (at) => at.number(at.subject, 'wheelbase'),
};

const track = (name: 'front' | 'rear', symbol: string): ScalarInput => ({
  in: 'scalar',
  name: `${name}Track`,
  symbol,
  kind: 'length',
  unit: 'mm',
  meaning: `track, ${name}`,
  range: [900, 2500],
  bounds: { above: 0 },
  where: 'track of the vehicle',
  find: (at) => at.number(at.subject, `track.${name}`),
});

/** Front and rear track of the vehicle. */
export const TRACKS: readonly ScalarInput[] = [track('front', 'bF'), track('rear', 'bR')];

/** Height of the centre of gravity by axle lift: asked of its own question. */
export const HEIGHT: ScalarInput = {
  in: 'scalar',
  name: 'height',
  symbol: 'h',
  kind: 'length',
  unit: 'mm',
  meaning: 'height of the centre of gravity by axle lift',
  range: [200, 1500],
  bounds: { above: 0 },
  where: 'the question of the axle lift',
  find: (at) => at.ask('cg-height-axle-lift', at.subject, 'height'),
};

/** Centre of gravity in plan by moments of the wheel loads (ISO 10392, horizontal position), m. */
export const rearward = (
  fl: number,
  fr: number,
  rl: number,
  rr: number,
  wheelbase: number,
): number => (wheelbase * (rl + rr)) / (fl + fr + rl + rr);
export const toTheRight = (
  fl: number,
  fr: number,
  rl: number,
  rr: number,
  front: number,
  rear: number,
): number => (front * (fr - fl) + rear * (rr - rl)) / (2 * (fl + fr + rl + rr));
