import { Command } from 'commander';
import { measureNextOf, readAsk } from '../app/index.ts';
import { nextText, reportNext } from '../report/index.ts';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { studyNamed, withLibrary } from './open-library.ts';
import { pair } from './options.ts';

interface Options {
  readonly study: string;
  readonly ask: Readonly<Record<string, string>>;
  readonly rates?: string;
  readonly limit: string;
  readonly json?: boolean;
}

const EXAMPLES = `
Open are claims without a settled word, and totals that are wider than asked. Readings that are
missing come first, then those that take most off the spread for a minute of work with the
instruments of the study and the usual ones of a workshop.

  hoistside next --study VAN-27
  hoistside next --study VAN-27 --ask mass-closure.gap="0.3 kg" --ask part-cost.cost="8 %"
  hoistside next --study VAN-27 --ask mass-roll-up.mass@40="0.2 kg" --json
`;

export const nextCommand = (io: Io): Command =>
  new Command('next')
    .description('what to measure next: readings that would settle or narrow what is open')
    .requiredOption('--study <name>', 'study')
    .option(
      '--ask <question.output=width>',
      'a total and the standard uncertainty wanted of it, in place of the usual ones; may be repeated',
      pair,
      {},
    )
    .option('--rates <version>', 'rate book version; the latest when not named')
    .option('--limit <n>', 'readings told of each sort', '10')
    .option('--json', 'print one JSON object')
    .addHelpText('after', EXAMPLES)
    .action(async (options: Options, command: Command) => {
      const { rates } = options;
      const asks = await Promise.all(Object.entries(options.ask).map((ask) => readAsk(...ask)));
      await withLibrary(command, async (library) => {
        const { view } = await studyNamed(library, options.study);
        const next = await measureNextOf(view, {
          limit: limitOf(options.limit),
          ...(asks.length > 0 ? { asks } : {}),
          ...(rates === undefined ? {} : { rates }),
        });
        io.out(options.json ? `${JSON.stringify(next)}\n` : nextText(reportNext(next)));
      });
    });

function limitOf(text: string): number {
  if (/^[1-9]\d*$/.test(text)) return Number(text);
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'limit' },
    value: text,
    why: 'this is no count',
    next: 'Write a whole number from 1.',
  });
}
