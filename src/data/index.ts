/**
 * data: tables of published and common-practice values, each with its source beside it.
 *
 * Depends on quantity. Stays away from studies, calculation and hosts.
 */
export * from './cautions.ts';
