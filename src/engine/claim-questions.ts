/** A question that may answer a kind of claim, and what of it decides. */
export interface ClaimQuestion {
  readonly question: string;
  readonly output: string;
  /** Usual sense of the test; people may turn it. */
  readonly is: 'at least' | 'at most';
}

const ask = (
  question: string,
  output: string,
  is: ClaimQuestion['is'] = 'at least',
): ClaimQuestion => ({
  question,
  output,
  is,
});

/**
 * Kinds of claims heard at the vehicle, and the questions of the registry that answer them; the
 * first is the usual one. A kind that is not here is answered by readings (a thickness), by
 * counting in the library (how common something is), or not yet.
 */
export const CLAIM_QUESTIONS: Readonly<Record<string, readonly ClaimQuestion[]>> = {
  mass: [ask('mass-roll-up', 'mass')],
  cost: [ask('part-cost', 'cost')],
  service: [ask('removal-path', 'time', 'at most')],
  time: [ask('removal-path', 'time', 'at most')],
  count: [ask('joint-census', 'elements')],
  joint: [ask('joint-census', 'elements')],
  direction: [ask('removal-path', 'time', 'at most')],
  specificEnergy: [ask('pack-energy-density', 'specific')],
  energyDensity: [ask('pack-energy-density', 'volumetric')],
};
