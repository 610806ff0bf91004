import {
  type Answer,
  type CostSide,
  type DifferenceByCause,
  differenceByCause,
  loadQuestion,
  pricedParts,
} from '../engine/index.ts';
import { costWorkbook } from '../report/index.ts';
import { RefusalError, type StudyView } from '../study/index.ts';
import { askOfStudy } from './ask.ts';

/** What a study says of its costs with one version of the rates. */
export interface StudyCosts {
  readonly parts: Answer;
  /** One for each function that has alternative designs. */
  readonly alternatives: readonly Answer[];
}

/** Costs of the parts, and of the alternatives where there are any. */
export async function costsOf(view: StudyView, rates?: string): Promise<StudyCosts> {
  const asked = rates === undefined ? {} : { rates };
  const root = view.root()?.id;
  const of = root === undefined ? {} : { subject: root };
  const [parts] = await askOfStudy(view, { question: 'part-cost', ...of, ...asked });
  if (!parts) throw nothingPriced(view);
  return { parts, alternatives: await alternativesOf(view, asked) };
}

async function alternativesOf(
  view: StudyView,
  asked: { readonly rates?: string },
): Promise<readonly Answer[]> {
  if (view.nodes('alternative').length === 0) return [];
  try {
    return await askOfStudy(view, { question: 'alternative-costs', ...asked });
  } catch (error) {
    if (error instanceof RefusalError && error.refusals[0].code === 'no-answer') return [];
    throw error;
  }
}

const nothingPriced = (view: StudyView): RefusalError =>
  new RefusalError({
    ...{ code: 'no-answer', place: { study: view.header.title }, value: '' },
    why: 'the study has no parts to cost',
    next: 'Import parts and a rate book first.',
  });

/** What one side of a difference of costs is. */
export interface CostSideRequest {
  readonly view: StudyView;
  readonly rates?: string;
  readonly volume?: string;
  /** Tools counted apart from the conversion by mass. */
  readonly toolsApart?: boolean;
}

/** Difference of the cost of the parts between two results, by its causes. */
export async function costDifference(
  first: CostSideRequest,
  second: CostSideRequest,
): Promise<DifferenceByCause> {
  const { question, questions } = await loadQuestion('part-cost');
  for (const { view, rates } of [first, second])
    if (rates !== undefined && !view.rates(rates)) throw noSuchRates(view, rates);
  const facts = { view: first.view };
  const sideOf = (side: CostSideRequest, apart: CostSide['method']): CostSide => ({
    facts: side.view === first.view ? facts : { view: side.view },
    ...(side.rates === undefined ? {} : { rates: side.rates }),
    ...(side.volume === undefined ? {} : { volume: side.volume }),
    ...(apart === undefined ? {} : { method: apart }),
  });
  const counted = { apart: 'exactly 1' };
  const method = ({ toolsApart }: CostSideRequest) => (toolsApart ? counted : undefined);
  return differenceByCause(question, questions, 'cost', [
    sideOf(first, method(first)),
    sideOf(second, method(second)),
  ]);
}

const noSuchRates = (view: StudyView, version: string): RefusalError =>
  new RefusalError({
    ...{ code: 'not-found', place: { study: view.header.title, column: 'rates' }, value: version },
    why: 'there is no rate book of this version in the study',
    next: `Its versions are: ${view.rateVersions().join(', ') || 'none; import one'}.`,
  });

/** The cost of the parts as a workbook with live sums. */
export async function costSheets(view: StudyView, rates?: string): Promise<Uint8Array> {
  const { question } = await loadQuestion('part-cost');
  if (rates !== undefined && !view.rates(rates)) throw noSuchRates(view, rates);
  return costWorkbook(pricedParts(question, view, rates));
}
