/**
 * measure-next: which reading would settle or narrow most of what is open.
 *
 * Open claims and totals, the instruments at hand, and what a new reading would do to a spread.
 * Depends on the answers of the engine and the usual instruments of data. Stays away from
 * taking readings, wording of numbers and hosts.
 */
export { instrumentsAtHand } from './at-hand.ts';
export * from './measure-next.ts';
export * from './measure-next-types.ts';
