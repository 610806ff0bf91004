import { Command } from 'commander';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { studyNamed, whoIsHere, withLibrary } from './open-library.ts';
import { historyText } from './texts.ts';

interface HistoryOptions {
  readonly study: string;
  readonly undo?: string;
  readonly by?: string;
  readonly json?: boolean;
}

export const historyCommand = (io: Io): Command =>
  new Command('history')
    .description('what was done to a study, by whom and when; undo a gesture by its id')
    .requiredOption('--study <name>', 'study')
    .option('--undo <gesture>', 'undo this gesture; undoing an undo brings it back')
    .option('--by <name>', 'who undoes')
    .option('--json', 'print one JSON object')
    .action(async (options: HistoryOptions, command: Command) => {
      await withLibrary(command, async (library) => {
        const { study, view } = await studyNamed(library, options.study);
        if (options.undo !== undefined) {
          const gesture = view.gestures().find((g) => g.gesture === options.undo);
          if (!gesture) throw unknownGesture(options.undo);
          await library.record(
            study,
            options.by ?? whoIsHere(),
            `undo: ${gesture.words}`,
            [],
            gesture.gesture,
          );
        }
        const gestures = (await library.view(study)).gestures();
        io.out(options.json ? `${JSON.stringify({ gestures })}\n` : historyText(gestures));
      });
    });

const unknownGesture = (wanted: string): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { column: 'undo' },
    value: wanted,
    why: 'there is no gesture of this id in the study',
    next: 'See: hoistside history --study <name>.',
  });
