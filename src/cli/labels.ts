import { writeFile } from 'node:fs/promises';
import { Command } from 'commander';
import { labelSheet } from '../app/index.ts';
import { labelsSvg, renderLabels } from '../report/index.ts';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { studyNamed, withLibrary } from './open-library.ts';
import { dateOf } from './options.ts';

interface LabelOptions {
  readonly study: string;
  readonly output: string;
  readonly date?: string;
  readonly json?: boolean;
}

export const labelsCommand = (io: Io): Command =>
  new Command('labels')
    .description('print labels with square codes for the bags of fasteners of a study')
    .requiredOption('--study <name>', 'study whose bags to label')
    .option('-o, --output <file>', 'PDF or SVG to write', 'labels.pdf')
    .option('--date <date>', 'date of print, ISO 8601; today when not given')
    .option('--json', 'print the labels as one JSON object and write nothing')
    .addHelpText(
      'after',
      '\nBags that are there, and one to come for each joint with loose fasteners that has none.\n\n  hoistside labels --study VAN-27 -o labels.pdf\n  hoistside labels --study VAN-27 -o labels.svg\n',
    )
    .action(async (options: LabelOptions, command: Command) => {
      await withLibrary(command, async (library) => {
        const { view } = await studyNamed(library, options.study);
        const sheet = labelSheet(view, dateOf(options.date));
        if (options.json) {
          io.out(`${JSON.stringify(sheet)}\n`);
          return;
        }
        const { output } = options;
        if (output.endsWith('.svg')) await writeFile(output, labelsSvg(sheet));
        else if (output.endsWith('.pdf')) await writeFile(output, await renderLabels(sheet));
        else throw badEnding(output);
        io.out(`${output}: ${sheet.labels.length} labels\n`);
      });
    });

const badEnding = (output: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { column: 'output' },
    value: output,
    why: 'labels are written as PDF or SVG',
    next: 'Name a file that ends in .pdf or .svg.',
  });
