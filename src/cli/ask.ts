import { Command, InvalidArgumentError } from 'commander';
import {
  loadQuestion,
  QUESTION_INDEX,
  type SampledAnswer,
  type SampleRequest,
  sampleOfStudy,
  sampleValues,
} from '../app/index.ts';
import type { Question } from '../engine/index.ts';
import { answerText } from '../report/index.ts';
import { RefusalError, type StudyView } from '../study/index.ts';
import type { Io } from './io.ts';
import { studyNamed, withLibrary } from './open-library.ts';
import { pair, writtenInputs } from './options.ts';
import { questionText } from './texts.ts';

interface AskOptions {
  readonly study?: string;
  readonly subject?: string;
  readonly rates?: string;
  readonly set: Readonly<Record<string, string>>;
  readonly values?: string;
  readonly example?: boolean;
  readonly json?: boolean;
  readonly monteCarlo?: boolean;
  readonly samples?: number;
  readonly seed: number;
  readonly indices?: boolean;
}

/** A run that nobody asked for is given up after so long. */
const DOUBT_MS = 5000;
const TOO_LATE =
  'The linear spread is in doubt, and sampling it takes longer than 5 s: ask again with --monte-carlo.';
/** Progress is told no more often. */
const TOLD_MS = 500;

const EXAMPLES = `
Without a question: lists every question. With a question alone: what it needs.

  hoistside ask mass-closure --study VAN-27
  hoistside ask pack-energy-density --study VAN-27 --subject 40
  hoistside ask cg-from-corners --set fl="452 ± 0.5 kg" --set fr="438 ± 0.5 kg" --set rl="381 ± 0.5 kg" \\
      --set rr="369 ± 0.5 kg" --set wheelbase="2700 ± 2 mm" --set frontTrack=1560mm --set rearTrack=1540mm
  hoistside ask cg-height-axle-lift --values lift.json
  hoistside ask cg-from-corners --study VAN-27 --set wheelbase="2900 ± 2 mm"     what if it were
  hoistside ask part-cost --study VAN-27 --monte-carlo --indices
`;

export const askCommand = (io: Io): Command =>
  new Command('ask')
    .description('ask a question: of a study, of values on the line, or of a JSON file')
    .argument('[question]', 'id of the question')
    .option('--study <name>', 'study to ask')
    .option('--subject <number>', 'part, assembly or joint to ask about')
    .option('--rates <version>', 'rate book version; the latest when not named')
    .option(
      '--set <name=value>',
      'an input as written, e.g. mass="12.5 ± 0.2 kg"; may be repeated',
      pair,
      {},
    )
    .option('--values <file>', 'JSON file with inputs; tables are lists of rows')
    .option('--monte-carlo', 'sample every answer; what is in doubt is sampled anyway')
    .option('--samples <n>', 'so many samples in place of as many as it takes', wholeNumber)
    .option('--seed <n>', 'the same seed gives the same samples', wholeNumber, 1)
    .option('--indices', 'sensitivity indices too: what causes do by themselves and together')
    .option('--example', 'answer the question’s own example')
    .option('--json', 'print one JSON object')
    .addHelpText('after', EXAMPLES)
    .action(async (id: string | undefined, options: AskOptions, command: Command) => {
      if (id === undefined) listQuestions(io, options);
      else await ask(io, id, options, command);
    });

function listQuestions(io: Io, options: AskOptions): void {
  const rows = QUESTION_INDEX.map(({ id, title, wording, subject, section }) => ({
    id,
    title,
    wording,
    subject,
    section: section.title,
  }));
  if (options.json) io.out(`${JSON.stringify({ questions: rows })}\n`);
  else io.out(rows.map((q) => `${q.id.padEnd(26)} ${q.wording}\n`).join(''));
}

async function ask(io: Io, id: string, options: AskOptions, command: Command): Promise<void> {
  const { question } = await loadQuestion(id);
  const values = options.example
    ? question.example
    : await writtenInputs(options.values, options.set);
  if (options.study === undefined && values === undefined) {
    if (options.json) throw noInputs(id);
    io.out(questionText(question));
    return;
  }
  const { answers, view } = await answersTo(id, options, values, command, io);
  if (options.json) io.out(`${JSON.stringify(jsonOf(answers))}\n`);
  else io.out(answers.map((a) => textOf(a, question, view)).join('\n'));
}

/** Answers in the order asked; where any was sampled, what the samples say in the same order. */
function jsonOf(all: readonly SampledAnswer[]) {
  const answers = all.map((a) => a.answer);
  const isSampled = all.some((a) => a.sampled);
  return isSampled ? { answers, sampled: all.map((a) => a.sampled ?? null) } : { answers };
}

function textOf(asked: SampledAnswer, question: Question, view: StudyView | undefined): string {
  const { answer, sampled, isLate } = asked;
  const text = answerText(answer, question, answer.basis.subject ?? '', { view, sampled });
  return isLate ? `${text}\n${TOO_LATE}\n` : text;
}

async function answersTo(
  question: string,
  options: AskOptions,
  values: Awaited<ReturnType<typeof writtenInputs>>,
  command: Command,
  io: Io,
): Promise<{ readonly answers: SampledAnswer[]; readonly view?: StudyView }> {
  const { study, subject, rates } = options;
  const asked = {
    question,
    ...sampling(options, io),
    ...(subject === undefined ? {} : { subject }),
    ...(rates === undefined ? {} : { rates }),
    ...(values === undefined ? {} : { values }),
  };
  if (study === undefined) return { answers: [await sampleValues(asked)] };
  return withLibrary(command, async (library) => {
    const { view } = await studyNamed(library, study);
    return { answers: await sampleOfStudy(view, asked), view };
  });
}

/** What is to be sampled, and how: what is in doubt by itself, for a while, or all that was asked. */
function sampling(
  options: AskOptions,
  io: Io,
): Pick<SampleRequest, 'which' | 'options' | 'withinMs' | 'told'> {
  const isAsked = options.monteCarlo === true || options.indices === true;
  let told = 0;
  return {
    which: isAsked ? 'all' : 'in doubt',
    options: {
      seed: options.seed,
      ...(options.samples === undefined ? {} : { samples: options.samples }),
      ...(options.indices ? { indices: true } : {}),
    },
    ...(isAsked ? {} : { withinMs: DOUBT_MS }),
    told: ({ samples, most }) => {
      if (!isAsked || Date.now() - told < TOLD_MS) return;
      told = Date.now();
      io.progress(`${samples} of at most ${most} samples`);
    },
  };
}

/** A whole number from 1. @throws InvalidArgumentError for anything else. */
function wholeNumber(text: string): number {
  if (/^[1-9]\d{0,8}$/.test(text)) return Number(text);
  throw new InvalidArgumentError(`"${text}" is no whole number from 1.`);
}

const noInputs = (id: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { column: 'question' },
    value: id,
    why: 'neither a study nor values were given',
    next: 'Name a study with --study, or give values with --set or --values, or try --example.',
  });
