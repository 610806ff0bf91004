import { access, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { Command } from 'commander';
import { studyReport } from '../app/index.ts';
import { renderPdf, summaryText } from '../report/index.ts';
import type { Io } from './io.ts';
import { studyNamed, withLibrary } from './open-library.ts';
import { dateOf } from './options.ts';

interface ReportOptions {
  readonly study: string;
  readonly output?: string;
  readonly date?: string;
  readonly json?: boolean;
}

export const reportCommand = (io: Io): Command =>
  new Command('report')
    .description('write a study’s report: a tagged PDF, or its summary on the terminal')
    .requiredOption('--study <name>', 'study to report on')
    .option('-o, --output <file>', 'PDF to write; the summary is printed when not given')
    .option('--date <date>', 'date of issue, ISO 8601; today when not given')
    .option('--json', 'print the report’s contents as one JSON object')
    .addHelpText(
      'after',
      '\n  hoistside report --study VAN-27\n  hoistside report --study VAN-27 -o van-27.pdf\n',
    )
    .action(async (options: ReportOptions, command: Command) => {
      // Before any work: a folder that is not there would be found only at the end of it.
      if (options.output !== undefined) await access(dirname(options.output));
      await withLibrary(command, async (library) => {
        const { view } = await studyNamed(library, options.study);
        const date = dateOf(options.date);
        const run = {
          tick: (share: number) => io.progress(`calculating ${Math.round(100 * share)} %`),
        };
        const model = await studyReport(library, view, date, run);
        if (options.output !== undefined) {
          io.progress('setting the pages');
          await writeFile(options.output, await renderPdf(model));
          io.progress(`${options.output} written\n`);
        }
        if (options.json) io.out(`${JSON.stringify(model)}\n`);
        else if (options.output === undefined) io.out(summaryText(model));
      });
    });
