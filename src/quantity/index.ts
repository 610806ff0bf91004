/**
 * quantity: numbers with kind, unit and spread.
 *
 * Kinds and UCUM units, values and their spreads, parsing what people write, rounding and
 * printing (GUM 7.2.6), and linear forms that keep shared causes.
 * Depends on nothing. Stays away from studies, files, hosts (no Node, no DOM).
 */
export * from './kinds.ts';
export * from './linear-form.ts';
export * from './value.ts';
