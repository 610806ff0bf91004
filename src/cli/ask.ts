import { Command } from 'commander';
import { askOfStudy, askValues, loadQuestion, QUESTION_INDEX } from '../app/index.ts';
import type { Answer } from '../engine/index.ts';
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
}

const EXAMPLES = `
Without a question: lists every question. With a question alone: what it needs.

  hoistside ask mass-closure --study VAN-27
  hoistside ask pack-energy-density --study VAN-27 --subject 40
  hoistside ask cg-from-corners --set fl="452 ± 0.5 kg" --set fr="438 ± 0.5 kg" --set rl="381 ± 0.5 kg" \\
      --set rr="369 ± 0.5 kg" --set wheelbase="2700 ± 2 mm" --set frontTrack=1560mm --set rearTrack=1540mm
  hoistside ask cg-height-axle-lift --values lift.json
  hoistside ask cg-from-corners --study VAN-27 --set wheelbase="2900 ± 2 mm"     what if it were
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
  const { answers, view } = await answersTo(id, options, values, command);
  if (options.json) io.out(`${JSON.stringify({ answers })}\n`);
  else io.out(answers.map((a) => answerText(a, question, a.basis.subject ?? '', view)).join('\n'));
}

async function answersTo(
  question: string,
  options: AskOptions,
  values: Awaited<ReturnType<typeof writtenInputs>>,
  command: Command,
): Promise<{ readonly answers: Answer[]; readonly view?: StudyView }> {
  const { study, subject, rates } = options;
  const asked = {
    question,
    ...(subject === undefined ? {} : { subject }),
    ...(rates === undefined ? {} : { rates }),
    ...(values === undefined ? {} : { values }),
  };
  if (study === undefined) return { answers: [await askValues(asked)] };
  return withLibrary(command, async (library) => {
    const { view } = await studyNamed(library, study);
    return { answers: await askOfStudy(view, asked), view };
  });
}

const noInputs = (id: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { column: 'question' },
    value: id,
    why: 'neither a study nor values were given',
    next: 'Name a study with --study, or give values with --set or --values, or try --example.',
  });
