import { Command } from 'commander';
import { purgeStudy } from '../app/index.ts';
import type { Io } from './io.ts';
import { withLibrary } from './open-library.ts';

interface PurgeOptions {
  readonly study: string;
  readonly yes: string;
  readonly json?: boolean;
}

const WHAT_STAYS = `
The study's changes, rows, photographs and other files are deleted and written over, for good, and
no device can bring it back into this library. What this program does not reach: backups and
bundles made before, devices that have a copy, snapshots of the disk, and cells that a flash disk
has put aside. Make a bundle first if there is any doubt.

  hoistside bundle --study VAN-27 -o van-27.hoist.zip
  hoistside purge --study VAN-27 --yes "VAN-27"
`;

export const purgeCommand = (io: Io): Command =>
  new Command('purge')
    .description('delete a study at the end of a contract, for good')
    .requiredOption('--study <name>', 'study')
    .requiredOption('--yes <title>', 'its title, letter for letter')
    .option('--json', 'print one JSON object')
    .addHelpText('after', WHAT_STAYS)
    .action(async ({ study, yes, json }: PurgeOptions, command: Command) => {
      await withLibrary(command, async (library) => {
        const purged = await purgeStudy(library, study, yes);
        const text = `${yes} is deleted from ${library.dir}. Backups and bundles of it are not: look for them.\n`;
        io.out(json ? `${JSON.stringify({ purged })}\n` : text);
      });
    });
