/**
 * engine: pure calculations, a folder a subject, one file a question.
 *
 * What a question is (method.ts), finding its inputs in a study or in plain values (bind/),
 * linear propagation of spread, decision words, and the generated registry of all questions.
 * Depends on quantity, data and study. Stays away from storage, files, wording of reports and
 * hosts: the same code runs in a browser worker, on the server and on the command line.
 */
export * from './ask.ts';
export { CLAIM_QUESTIONS, type ClaimQuestion } from './claim-questions.ts';
export * from './compare/index.ts';
export * from './compare-answers.ts';
export * from './cost/cause-bars.ts';
export * from './cost/difference-by-cause.ts';
export * from './cost/priced-parts.ts';
export * from './decide.ts';
export * from './describe.ts';
export * from './direction.ts';
export * from './figure.ts';
export * from './hoist/holds.ts';
export * from './hoist/mark-entries.ts';
export * from './hoist/measurement-plan.ts';
export * from './hoist/step-sheets.ts';
export { bagsOf } from './joining/bags.ts';
export { type FastenerSpec, parseFastenerSpec } from './joining/fastener-spec.ts';
export { FASTENING_FIGURES } from './joining/fastening-columns.ts';
export { jointEnd } from './joining/joint-ends.ts';
export { hasLooseFasteners, jointKind } from './joining/joint-kinds.ts';
export * from './joining/removal/from-study.ts';
export * from './joining/removal/plan.ts';
export { type GraphInput, RemovalGraph } from './joining/removal/removal-graph.ts';
export * from './measure-next/index.ts';
export * from './method.ts';
export * from './monte-carlo/index.ts';
export * from './registry.ts';
export { buildSealing, sealingOf } from './sealing/graph/from-study.ts';
export * from './sealing/graph/place-fastener.ts';
export * from './sealing/graph/sealing-graph.ts';
export * from './sealing/graph/wet-to-dry.ts';
export * from './whole-study.ts';
