/**
 * study: the record of one teardown.
 *
 * Changes and their entries, the fold that turns them into a view in any order of arrival, the
 * value in force of each cell, claims, rate books, findings and refusals.
 * Depends on quantity and data. Stays away from calculation, storage, files and hosts.
 */
export * from './blobs-of.ts';
export * from './change.ts';
export * from './check-change.ts';
export * from './claim.ts';
export * from './clock.ts';
export * from './compare-moments.ts';
export * from './digest.ts';
export * from './entries.ts';
export * from './finding.ts';
export * from './fold.ts';
export * from './gate.ts';
export * from './gate-answers.ts';
export type { GateState, StandingGate, StandingMark, StepState } from './gate-state.ts';
export { gatesAt } from './gate-state.ts';
export * from './ids.ts';
export * from './in-force.ts';
export * from './instrument.ts';
export * from './line.ts';
export * from './make-change.ts';
export * from './moment.ts';
export * from './nearest.ts';
export * from './parts-listed.ts';
export * from './parts-listed.ts';
export * from './properties.ts';
export * from './rate-book.ts';
export * from './reading.ts';
export * from './removal-sequence.ts';
export * from './spoken.ts';
export * from './table-chunk.ts';
export * from './view.ts';
