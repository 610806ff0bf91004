import { stat } from 'node:fs/promises';
import { Command } from 'commander';
import { saveBundle } from '../app/index.ts';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { withLibrary } from './open-library.ts';

interface BundleOptions {
  readonly study: string;
  readonly output: string;
  readonly json?: boolean;
}

export const bundleCommand = (io: Io): Command =>
  new Command('bundle')
    .description('write a study into one file: its whole history, photographs and all')
    .requiredOption('--study <name>', 'study')
    .requiredOption('-o, --output <file>', 'file to write; its name ends in .hoist.zip')
    .option('--json', 'print one JSON object')
    .addHelpText(
      'after',
      '\n  hoistside bundle --study VAN-27 -o van-27.hoist.zip\n  hoistside import van-27.hoist.zip        on another machine, or to merge\n\nThe form of the file is published: docs/bundle.schema.json\n',
    )
    .action(async ({ study, output, json }: BundleOptions, command: Command) => {
      if (!output.endsWith('.zip')) throw badName(output);
      if (await exists(output)) throw isThere(output);
      await withLibrary(command, async (library) => {
        await saveBundle(library, study, output);
        const { size: bytes } = await stat(output);
        if (json) io.out(`${JSON.stringify({ file: output, bytes })}\n`);
        else io.out(`${output}: ${(bytes / 1e6).toFixed(1)} MB\n`);
      });
    });

const exists = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );

const badName = (file: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { file },
    value: file,
    why: 'a bundle is a zip, by its name too',
    next: 'Name it like van-27.hoist.zip, so that the import knows it.',
  });

const isThere = (file: string): RefusalError =>
  new RefusalError({
    code: 'conflict',
    place: { file },
    value: file,
    why: 'a file of this name is there already',
    next: 'Nothing was written. Name a new file.',
  });
