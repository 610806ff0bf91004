import { Command } from 'commander';
import { exportPhotographs, importPhotographs } from '../app/index.ts';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { studyNamed, whoIsHere, withLibrary } from './open-library.ts';

interface PhotoOptions {
  readonly study: string;
  readonly by?: string;
  readonly clockOffset?: string;
  readonly json?: boolean;
}

export const photos = (io: Io): Command =>
  new Command('photos')
    .description('keep all photographs of a folder, tied by their time to the part in hand')
    .argument('<folder>')
    .requiredOption('--study <name>', 'study')
    .option(
      '--clock-offset <seconds>',
      "to add to the camera's clock, from one event that both saw",
      '0',
    )
    .option('--by <name>', 'who does it')
    .option('--json', 'print one JSON object')
    .action(async (dir: string, options: PhotoOptions, command: Command) => {
      const clockOffsetS = secondsOf(options.clockOffset ?? '0');
      await withLibrary(command, async (library) => {
        const { study } = await studyNamed(library, options.study);
        const by = options.by ?? whoIsHere();
        const progress = (done: number, of: number) => io.progress(`${done} of ${of} photographs`);
        const kept = await importPhotographs(library, study, { dir, by, clockOffsetS, progress });
        if (options.json) io.out(`${JSON.stringify(kept)}\n`);
        else
          io.out(
            [
              `${kept.kept} photographs kept, ${kept.tied} tied to a part by their time`,
              ...kept.duplicates.map((file) => `  here already: ${file}`),
              ...kept.untimed.map((file) => `  without a time: ${file}`),
              '',
            ].join('\n'),
          );
      });
    });

function secondsOf(text: string): number {
  if (/^[+-]?\d+(\.\d+)?$/.test(text)) return Number(text);
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'clock-offset' },
    value: text,
    why: 'this is no number of seconds',
    next: 'Write e.g. -43 when the camera runs 43 seconds ahead.',
  });
}

export const photosOut = (io: Io): Command =>
  new Command('photos-out')
    .description('write copies of all photographs without place, camera or owner')
    .argument('<folder>')
    .requiredOption('--study <name>', 'study')
    .option('--json', 'print one JSON object')
    .action(async (dir: string, options: PhotoOptions, command: Command) => {
      await withLibrary(command, async (library) => {
        const { study } = await studyNamed(library, options.study);
        const written = await exportPhotographs(library, study, dir);
        io.out(
          options.json
            ? `${JSON.stringify({ written })}\n`
            : `${written} photographs written to ${dir}\n`,
        );
      });
    });
