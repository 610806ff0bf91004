import { Command } from 'commander';
import { restoreBackup } from '../app/index.ts';
import { checkText } from './check-library.ts';
import type { Io } from './io.ts';
import { libraryDir, openStore } from './open-library.ts';

export const restoreCommand = (io: Io): Command =>
  new Command('restore')
    .description('make a library of a backup, and check all of it')
    .argument('<folder>', 'a backup, or the folder with several, of which the latest is taken')
    .option('--json', 'print one JSON object')
    .addHelpText('after', '\n  hoistside restore /media/backup/hoistside --library library-again\n')
    .action(async (from: string, { json }: { readonly json?: boolean }, command: Command) => {
      const to = libraryDir(command);
      const restored = await restoreBackup(from, to, (dir) => openStore(dir, true));
      const { folder, made, studies, check } = restored;
      if (json) io.out(`${JSON.stringify({ library: to, restored })}\n`);
      else
        io.out(
          `${to}: ${studies.length} studies from ${folder}, as of ${made}\n${checkText(check)}`,
        );
    });
