import { Command } from 'commander';
import { measurementPlanOf } from '../app/index.ts';
import { measurementPlanText } from '../report/index.ts';
import type { Io } from './io.ts';
import { studyNamed, withLibrary } from './open-library.ts';
import { dateOf } from './options.ts';

interface Options {
  readonly study: string;
  readonly date?: string;
  readonly json?: boolean;
}

export const planCommand = (io: Io): Command =>
  new Command('plan')
    .description('readings to take, with what and before which step; how far the study is')
    .requiredOption('--study <name>', 'study')
    .option('--date <day>', 'the day it is asked of, e.g. 2026-11-25; today when not given')
    .option('--json', 'print one JSON object')
    .action(async (options: Options, command: Command) => {
      await withLibrary(command, async (library) => {
        const { view } = await studyNamed(library, options.study);
        const plan = await measurementPlanOf(view, dateOf(options.date));
        io.out(options.json ? `${JSON.stringify({ plan })}\n` : measurementPlanText(plan));
      });
    });
