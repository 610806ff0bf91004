import type {
  Answer,
  Decision,
  Out,
  OutputSpec,
  Question,
  Sampled,
  StepRow,
} from '../engine/index.ts';
import { workedLines } from '../formula/index.ts';
import { addingUp } from '../quantity/index.ts';
import type { Place } from '../study/index.ts';
import { contributionsOf } from './contributions.ts';
import { reportFigure } from './figures.ts';
import { groupFindings } from './finding-groups.ts';
import type { ReportAnswer, ReportDecision, ReportOut, ReportStep } from './model.ts';
import { saidBy, type Voucher } from './said-by.ts';
import { reportSampled } from './sampled.ts';
import { answerTables } from './tables.ts';
import {
  basisText,
  type NumberGiven,
  nominalText,
  placeWords,
  shownNumber,
  subjectWords,
} from './wording.ts';

/** Lines of a working beyond these say little on paper; the record has them all. */
const STEPS_PRINTED = 60;
/** Below this many degrees of freedom a spread is worth a remark. */
const FEW_DOF = 30;
/** A mean shifted by more than this share of its spread is worth a remark. */
const SHIFT_SHARE = 0.1;

/** What an answer is told with: the study that vouches for it, and a Monte Carlo run. */
export interface Beside {
  readonly view?: Voucher | undefined;
  readonly sampled?: Sampled | undefined;
}

/**
 * Any question's answer in words, from nothing but the answer; with the question at hand the
 * sums of its tally have their units, with the study at hand it says who says so.
 */
export function reportAnswer(
  answer: Answer,
  question?: Question,
  subject = '',
  { view, sampled }: Beside = {},
): ReportAnswer {
  const specOf = (out: Out) => question?.body.outputs.find((o) => o.name === out.name);
  // Intermediate results stand in the working only.
  const outs = Object.values(answer.outs).filter((out) => !specOf(out)?.step);
  const numbers = outs.map(outNumber);
  const reportOuts = outs.map((out, i) =>
    reportOut(out, addingUp(numbers[i] ?? outNumber(out), numbers), answer, specOf(out), i === 0),
  );
  return {
    question: answer.question,
    version: answer.version,
    key: answer.key,
    title: answer.title,
    wording: answer.wording,
    subject: subjectWords(subject),
    outs: reportOuts,
    figures: (answer.figures ?? []).map(reportFigure),
    tables: answerTables(answer, question),
    steps: reportSteps(answer.steps, outs, numbers).slice(0, STEPS_PRINTED),
    stepsLeftOut: Math.max(answer.steps.length - STEPS_PRINTED, 0),
    ...(sampled ? { sampled: reportSampled(sampled) } : {}),
    ...saidBy(answer, view),
    assumed: answer.steps.filter((s) => s.how === 'assumed').map((s) => s.meaning),
    findings: groupFindings(answer.findings),
    sources: answer.sources,
    assumptions: answer.assumptions,
    cautions: answer.cautions,
    basis: basisText(answer.basis),
  };
}

const outNumber = (out: Out): NumberGiven => ({ ...out, how: 'calculated' });

function reportOut(
  out: Out,
  beside: readonly NumberGiven[],
  answer: Answer,
  spec: OutputSpec | undefined,
  isFirst: boolean,
): ReportOut {
  const decides = spec?.decides !== undefined || out.decision !== undefined;
  return {
    name: out.name,
    alike: spec?.alike ?? out.name,
    decides,
    leads: decides || isFirst,
    symbol: out.symbol,
    meaning: out.meaning,
    shown: shownNumber(outNumber(out), beside),
    ...(out.decision ? { decision: reportDecision(out.decision) } : {}),
    ...contributionsOf(out, answer.variables),
    doubts: out.doubts,
    missing: placeTexts(out.missing),
    unknownSpread: placeTexts(out.unknownSpread),
    notes: notesOf(out),
  };
}

/** A decision in words, with its direction where one is proven. */
const reportDecision = ({ word, rule, direction }: Decision): ReportDecision => ({
  ...{ word, rule },
  says: direction === undefined ? word : `${word}, ${direction}`,
});

const placeTexts = (places: readonly Place[]): string[] => [...new Set(places.map(placeWords))];

function notesOf(out: Out): string[] {
  const notes: string[] = [];
  if (out.dof !== null && out.dof < FEW_DOF)
    notes.push(`spread with ${Math.floor(out.dof)} effective degrees of freedom`);
  if (out.knownU > 0 && Math.abs(out.meanShift) > SHIFT_SHARE * out.knownU) {
    const mean = shownNumber({ ...outNumber(out), x: out.x + out.meanShift });
    notes.push(`skewed: the mean lies at ${mean.value} ${mean.symbol}`.trim());
  }
  if (out.secondOrderU !== undefined) {
    const wider = shownNumber({ ...outNumber(out), u: out.secondOrderU });
    notes.push(`with second-order terms the spread is ± ${wider.spread} ${wider.symbol}`.trim());
  }
  return notes;
}

/** The steps in words, and in mathematics with each other's numbers put in. */
function reportSteps(
  steps: readonly StepRow[],
  outs: readonly Out[],
  numbers: readonly NumberGiven[],
): ReportStep[] {
  const plain = steps.map((step) => reportStep(step, outs, numbers));
  const worked = workedLines(
    plain.map(({ symbol, shown, number }, i) => ({
      ...{ symbol, shown, number: nominalText(number) },
      isFormula: steps[i]?.place === undefined,
    })),
  );
  return plain.flatMap((step, i) => {
    const own = worked[i];
    return own ? [{ ...step, worked: own }] : [];
  });
}

/**
 * A step that is a result has the same digits as the result, also when it is not complete; one
 * that was given or read without a spread says that.
 */
function reportStep(
  step: StepRow,
  outs: readonly Out[],
  numbers: readonly NumberGiven[],
): Omit<ReportStep, 'worked'> {
  const at = outs.findIndex((o) => o.symbol === step.symbol && o.x === step.x);
  const result = numbers[at];
  const u = step.u === 'incomplete' && step.place ? ('unknown' as const) : step.u;
  return {
    symbol: step.symbol,
    meaning: step.meaning,
    shown: step.shown,
    number: result
      ? shownNumber({ ...result, how: step.how ?? 'calculated' }, addingUp(result, numbers))
      : shownNumber({ ...step, u, how: step.how ?? 'calculated' }),
    place: step.place ? placeWords(step.place) : '',
  };
}
