import type { ScalarInput } from '../method.ts';

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
