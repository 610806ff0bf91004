/**
 * report: what a study's answers say, in words and on paper.
 *
 * A report model made from nothing but answers, the words and rounding shared by every form of
 * it, text for a terminal, a tagged PDF set by Typst with fonts of the repository (formulas in
 * the typesetter's own), and labels for bags of fasteners.
 * Depends on quantity, study and the engine's result types. Stays away from calculation,
 * storage and the question what to ask: it prints what it is handed.
 */
export { type BagLabel, bagCode, type LabelSheet } from './bag-labels.ts';
export * from './build-model.ts';
export { tieWords } from './claims.ts';
export { hoistText, reportHoist, standingOf } from './hoist.ts';
export { labelsSvg } from './labels-svg.ts';
export * from './map.ts';
export { measurementPlanText } from './measurement-plan.ts';
export * from './model.ts';
export { reportNext } from './next.ts';
export { renderLabels } from './pdf/render-labels.ts';
export { renderPdf } from './pdf/render-pdf.ts';
export * from './report-answer.ts';
export * from './terminal.ts';
export { plain, textTable, wrap } from './text-layout.ts';
export {
  howWords,
  type LineUnder,
  lineUnder,
  numberText,
  placeWords,
  shownNumber,
} from './wording.ts';
export { costWorkbook } from './xlsx/cost-workbook.ts';
