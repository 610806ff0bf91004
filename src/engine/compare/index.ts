/**
 * compare: what differs between two answers to one question, and whether it is proven.
 *
 * Differences by shared causes, unit-to-unit scatter of designs, refusal of unlike conditions,
 * and what chance alone would make of many comparisons.
 * Depends on the answers of the engine. Stays away from asking, wording of numbers and hosts.
 */
export * from './compare-many.ts';
export * from './compare-outputs.ts';
export * from './comparison.ts';
export * from './unit-scatter.ts';
