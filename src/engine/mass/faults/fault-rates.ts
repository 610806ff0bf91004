import { unitScatter } from '../../../data/index.ts';

/**
 * How often each kind of slip happens, and how alike things are that should be. These are
 * judgements (common practice, no source): they set the price of one more fault in an
 * explanation and so the order of suspects that fit equally well, never what a fault amounts to.
 */
export const RATES = {
  /** Of each weighed row. */
  pounds: 4e-4,
  /** Of each weighed row, over all places that the sign may have moved. */
  decimal: 4e-4,
  /** Of each weighed row. */
  doubled: 3e-4,
  /** Of each row with more than one piece. */
  miscount: 5e-3,
  /** Of each weighed row, over all tares of the list. */
  tare: 4e-4,
  /** Of each host with a guest that has a row of its own; all but fasteners fall off with distance. */
  weighedWith: { ownFastener: 1.5e-3, anyFastener: 2e-4, insert: 5e-4, joined: 2e-4, near: 5e-5 },
  /** Of each row with a mirror image: things left on are commoner than things left off. */
  sides: { tooHeavy: 7e-4, tooLight: 3e-4 },
  /** Of each pair of neighbouring rows. */
  swapped: 2e-4,
  /** Of each part without a reading, over all parts that it may still be on. */
  absorbed: 0.2,
  /** Of a whole record: something that is none of these. */
  unexplained: 0.1,
} as const;

/** Standard relative difference of the two sides of one design: each scatters as single units do. */
export const SIDES_ALIKE = Math.SQRT2 * (unitScatter('mass')?.relative ?? 0.01);
/** Share of pairs that differ for a reason of their own, and by how much (natural logarithm). */
export const SIDES_DIFFER = { share: 1e-3, spread: 1 } as const;
/** The same for a mass against what it was expected to be. */
export const EXPECTED_OFF = { share: 1e-2, spread: 1.5 } as const;
/** Share of fastener rows whose count is that of no joint with their size. */
export const COUNT_OFF = 0.05;
/** Share of numbers that were reckoned, or read in another unit, whose digits are as those of the scale. */
export const DIGITS_BY_CHANCE = 0.5;
