import type { Formula, TallyBody } from '../method.ts';
import { rearward, toTheRight } from './corner-loads.ts';

const PLACED = ['mass', 'x', 'y', 'z'] as const;
type Moment = TallyBody['terms'][number];

const moment = (axis: 'x' | 'y' | 'z', each: Moment['each']): Moment => ({
  name: `moment${axis.toUpperCase()}`,
  symbol: `S${axis}`,
  kind: 'massMoment',
  shown: `Σ m ${axis}`,
  needs: [...PLACED],
  each,
});

/** Sums over the parts that a balance in force and in moments needs. */
export const BALANCE_TERMS: TallyBody['terms'] = [
  { name: 'mass', symbol: 'M', kind: 'mass', shown: 'Σ m', needs: ['mass'], each: (m) => m },
  {
    name: 'placed',
    symbol: 'M′',
    kind: 'mass',
    shown: 'Σ m, parts with a position',
    needs: [...PLACED],
    each: (m, _x, _y, _z) => m,
  },
  moment('x', (m, x, _y, _z) => m * x),
  moment('y', (m, _x, y, _z) => m * y),
  moment('z', (m, _x, _y, z) => m * z),
];

/**
 * Gaps of a balance from the sums, then the scalars fl, fr, rl, rr, wheelbase, front and rear
 * track, height. Moments are about the centre of gravity that the scales give: so a gap in force
 * there makes none in moments. SI.
 */
export const gapInForce: Formula = (mass, _placed, _sx, _sy, _sz, fl, fr, rl, rr) =>
  mass - (fl + fr + rl + rr);

export const gapInX: Formula = (_mass, placed, sx, _sy, _sz, fl, fr, rl, rr, wheelbase) =>
  sx - placed * rearward(fl, fr, rl, rr, wheelbase);

export const gapInY: Formula = (
  _mass,
  placed,
  _sx,
  sy,
  _sz,
  fl,
  fr,
  rl,
  rr,
  _wheelbase,
  front,
  rear,
) => sy - placed * toTheRight(fl, fr, rl, rr, front, rear);

export const gapInZ: Formula = (
  _mass,
  placed,
  _sx,
  _sy,
  sz,
  _fl,
  _fr,
  _rl,
  _rr,
  _wheelbase,
  _front,
  _rear,
  height,
) => sz - placed * height;

/** A gap in moments as a distance: over the mass of the parts with a position. */
export const asDistance =
  (gap: Formula): Formula =>
  (...x) =>
    gap(...x) / (x[1] ?? Number.NaN);
