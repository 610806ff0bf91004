/**
 * quantity: numbers with kind, unit and spread.
 *
 * Kinds and UCUM units, values and their spreads, parsing what people write, rounding and
 * printing (JCGM 100:2008, 7.2.6), linear forms that keep shared causes, derivatives, and the
 * quantiles behind coverage factors.
 * Depends on nothing. Stays away from studies, files, hosts (no Node, no DOM).
 */
export * from './consistency.ts';
export * from './derivative.ts';
export * from './format.ts';
export * from './kinds.ts';
export * from './linear-form.ts';
export * from './parse-quantity.ts';
export * from './parse-unit.ts';
export * from './printed-number.ts';
export * from './proportion.ts';
export type { DecimalSign } from './read-number.ts';
export * from './round-steps.ts';
export * from './spread.ts';
export * from './statistics.ts';
export * from './unit-symbol.ts';
export * from './unit-words.ts';
export * from './units.ts';
export * from './value.ts';
