/**
 * data: tables of published and common-practice values, each with its source beside it.
 *
 * Cautions for work that can hurt, in our own words. Depends on quantity. Stays away from
 * studies, calculation and hosts.
 */
export * from './asks.ts';
export * from './cautions.ts';
export * from './destroys.ts';
export * from './element-times.ts';
export * from './galvanic.ts';
export * from './gases.ts';
export * from './gates.ts';
export * from './hoist-limits.ts';
export * from './instruments.ts';
export * from './material.ts';
export * from './materials.ts';
export * from './media.ts';
export * from './property-classes.ts';
export * from './scatter.ts';
export * from './seals.ts';
export * from './thread-pitches.ts';
export * from './water-tests.ts';
