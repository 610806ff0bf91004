import type {
  Answer,
  Caution,
  Decision,
  HoistSheets,
  MeasureNext,
  Out,
  Question,
  Sampled,
} from '../engine/index.ts';
import { ROUNDING_RULE, unitSymbol } from '../quantity/index.ts';
import type { Claim, RateBook, StudyView, Tie } from '../study/index.ts';
import { reportClaim } from './claims.ts';
import { groupFindings } from './finding-groups.ts';
import { reportHoist } from './hoist.ts';
import type { MapDrawing } from './map.ts';
import { methodOf } from './methods.ts';
import type { ReportAnswer, ReportModel, ReportRates, ReportStudy } from './model.ts';
import { reportNext } from './next.ts';
import { reportAnswer } from './report-answer.ts';
import type { Voucher } from './said-by.ts';
import { sectionsOf } from './sections.ts';
import { summaryLine } from './summary.ts';
import { unknownOf } from './unknown.ts';

/** A question with its answer, and the label of the node it was asked of (empty for the study). */
export interface Answered {
  readonly question: Question;
  readonly subject: string;
  readonly answer: Answer;
  readonly sampled?: Sampled | undefined;
}

/** A question that could not be answered at all, and why. */
export interface NotAnswered {
  readonly question: Pick<Question, 'id' | 'title'>;
  readonly subject: string;
  readonly why: string;
}

/** A claim with the result that answers it, when one does. */
export interface AnsweredClaim {
  readonly claim: Claim;
  /** Labels of the nodes it is about. */
  readonly about: readonly string[];
  readonly tie?: Tie;
  /** The question it is tied to, for its words and units. */
  readonly question?: Question;
  readonly out?: Out;
  readonly decision?: Decision;
  /** Why it is open; needed when there is no decision. */
  readonly why?: string;
}

/** A photograph to print, as its file has it. */
export interface ReportPhoto {
  readonly caption: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

export interface ReportInput {
  readonly view: Pick<StudyView, 'header' | 'revision' | 'findings' | 'condition'> & Voucher;
  readonly rates?: RateBook | undefined;
  /** ISO 8601 date of issue. */
  readonly date: string;
  readonly answered: readonly Answered[];
  readonly notAnswered?: readonly NotAnswered[];
  readonly claims?: readonly AnsweredClaim[];
  readonly next?: MeasureNext;
  readonly hoist?: HoistSheets | undefined;
  readonly map?: MapDrawing | undefined;
  readonly photos?: readonly ReportPhoto[];
}

/** What a report says, from answers alone: a new question's answer shows up with nothing changed here. */
export function reportModel(input: ReportInput): ReportModel {
  const pairs = input.answered.map((a) => ({
    ...a,
    report: reportAnswer(a.answer, a.question, a.subject, { view: input.view, sampled: a.sampled }),
  }));
  const sections = sectionsOf(pairs);
  const claims = (input.claims ?? []).map(reportClaim);
  const findings = [...input.view.findings, ...input.answered.flatMap((a) => a.answer.findings)];
  const study = studyOf(input.view);
  return {
    title: `Teardown report: ${study.title}`,
    study,
    ...(input.rates ? { rates: ratesOf(input.rates) } : {}),
    date: input.date,
    units: unitsOf(pairs.map((p) => p.report)),
    roundingRule: ROUNDING_RULE,
    summary: sections.flatMap((s) => s.answers.map(summaryLine)),
    ...(input.map ? { map: input.map } : {}),
    sections,
    claims,
    ...(input.next ? { next: reportNext(input.next) } : {}),
    ...(input.hoist ? { hoist: reportHoist(input.hoist) } : {}),
    unknown: unknownOf(
      groupFindings(input.view.findings),
      pairs.map((p) => p.report),
      input.notAnswered ?? [],
      claims,
    ),
    findings: groupFindings(findings),
    cautions: cautionsOf(pairs.map((p) => p.report)),
    methods: distinct(pairs.map((p) => p.question)).map(methodOf),
    photos: (input.photos ?? []).map(({ caption, mediaType, bytes }) => ({
      caption,
      mediaType,
      base64: Buffer.from(bytes).toString('base64'),
    })),
  };
}

function studyOf(view: ReportInput['view']): ReportStudy {
  const { title, vehicle, condition, invented, note } = view.header;
  return {
    title,
    vehicle,
    condition: view.condition(condition) || condition,
    revision: view.revision,
    invented,
    note: note ?? '',
  };
}

const ratesOf = (book: RateBook): ReportRates => ({
  version: book.version,
  date: book.date,
  region: book.region,
  currency: book.currency,
  volume: `${book.volumePerYear} a year for ${book.years} years`,
  invented: book.invented,
});

/** "kg · mm · min": units of the results, as printed, in the order of their first use. */
function unitsOf(answers: readonly ReportAnswer[]): string {
  const units = answers.flatMap((a) => a.outs.map((o) => unitSymbol(o.shown.unit)));
  return [...new Set(units)].filter((u) => u !== '' && u !== '%').join(' · ');
}

function cautionsOf(answers: readonly ReportAnswer[]): Caution[] {
  const byId = new Map(answers.flatMap((a) => a.cautions).map((c) => [c.id, c]));
  return [...byId.values()];
}

const distinct = (questions: readonly Question[]): Question[] => [
  ...new Map(questions.map((q) => [q.id, q])).values(),
];
