import {
  type Answer,
  loadQuestion,
  type Progress,
  type Question,
  type Questions,
  type Sampled,
  type SampleOptions,
  type SampleRun,
  sampleStudy,
  sampleWritten,
} from '../engine/index.ts';
import type { Id, StudyView } from '../study/index.ts';
import { type AskRequest, askOfStudy, askValues, subjectsAsked } from './ask.ts';

export interface SampleRequest extends AskRequest {
  /** Which answers are sampled: all, or those whose linear spread is in doubt. */
  readonly which: 'all' | 'in doubt';
  readonly options?: SampleOptions;
  /** A run that takes longer is given up. */
  readonly withinMs?: number;
  readonly told?: (progress: Progress) => void;
}

/** An answer, and what Monte Carlo says of it; late where the run was given up. */
export interface SampledAnswer {
  readonly answer: Answer;
  readonly sampled?: Sampled;
  readonly isLate: boolean;
}

/** Asks as askValues does, and samples the answer. */
export async function sampleValues(request: SampleRequest): Promise<SampledAnswer> {
  const { question } = await loadQuestion(request.question);
  const answer = await askValues(request);
  const run = () => sampleWritten(question, request.values ?? {}, request.options);
  return withSamples(answer, request, run);
}

/** Asks as askOfStudy does, and samples the answers. */
export async function sampleOfStudy(
  view: StudyView,
  request: SampleRequest,
): Promise<SampledAnswer[]> {
  const { question, questions } = await loadQuestion(request.question);
  const subjects = await subjectsAsked(view, request);
  const answers = await askOfStudy(view, request);
  const { rates, values, options } = request;
  const from = {
    view,
    ...(rates === undefined ? {} : { rates }),
    ...(values === undefined ? {} : { over: values }),
  };
  return answers.map((answer, i) => {
    const subject = subjects[i];
    const at = subject === undefined ? from : { ...from, subject };
    return withSamples(answer, request, () => sampleStudy(question, questions, at, options));
  });
}

/** Something of an answer is doubted by the linear propagation itself. */
export const isInDoubt = ({ outs }: Answer): boolean =>
  Object.values(outs).some((out) => out.doubts.length > 0);

/** Samples of an answer that is in doubt, where its body takes columns; others are left to be asked for. */
export function samplesInDoubt(
  answer: Answer,
  question: Question,
  questions: Questions,
  view: StudyView,
): Sampled | undefined {
  if (!isInDoubt(answer) || question.body.body === 'solve') return undefined;
  const subject = askedOf(answer, question, view);
  return subject === undefined
    ? undefined
    : finished(sampleStudy(question, questions, { view, subject }), {});
}

/** The node that an answer of a study is about, by the words of its basis. */
function askedOf({ basis }: Answer, { subject }: Question, view: StudyView): Id | undefined {
  if (subject === 'study') return view.root()?.id;
  return view.nodes(subject).find((n) => `${n.label} ${n.name}`.trim() === basis.subject)?.id;
}

function withSamples(
  answer: Answer,
  request: SampleRequest,
  start: () => SampleRun,
): SampledAnswer {
  if (request.which === 'in doubt' && !isInDoubt(answer)) return { answer, isLate: false };
  const sampled = finished(start(), request);
  return { answer, ...(sampled ? { sampled } : {}), isLate: sampled === undefined };
}

/** Drives a run to its end; undefined when it was given up. */
function finished(
  run: SampleRun,
  { withinMs = Number.POSITIVE_INFINITY, told }: Pick<SampleRequest, 'withinMs' | 'told'>,
): Sampled | undefined {
  const start = performance.now();
  for (let step = run.next(); ; step = run.next()) {
    if (step.done) return step.value;
    told?.(step.value);
    if (performance.now() - start > withinMs) return undefined;
  }
}
