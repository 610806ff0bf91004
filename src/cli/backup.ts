import { Command } from 'commander';
import { backupLibrary } from '../app/index.ts';
import type { Refusal, Sha256 } from '../study/index.ts';
import type { Io } from './io.ts';
import { withLibrary } from './open-library.ts';
import { refuseAfter } from './refuse-after.ts';

export const backupCommand = (io: Io): Command =>
  new Command('backup')
    .description('copy the library, with its photographs, into a folder; also while it is in use')
    .argument('<folder>', 'where backups are kept, best on another disk; each gets a folder below')
    .option('--json', 'print one JSON object')
    .addHelpText(
      'after',
      '\n  hoistside backup /media/backup/hoistside\n  hoistside serve --backup-to /media/backup/hoistside --backup-every 24h\n  hoistside restore /media/backup/hoistside --library library-again    try it, before it is needed\n',
    )
    .action(async (to: string, { json }: { readonly json?: boolean }, command: Command) => {
      await withLibrary(command, async (library) => {
        const backup = await backupLibrary(library, to);
        const { folder, studies, blobs, damaged } = backup;
        if (json) io.out(`${JSON.stringify({ backup })}\n`);
        else io.out(`${folder}: ${studies.length} studies, ${blobs.length} blobs\n`);
        refuseAfter(
          damaged.map((hash) => damagedBlob(library.dir, hash)),
          json,
        );
      });
    });

const damagedBlob = (file: string, hash: Sha256): Refusal => ({
  code: 'bad-value',
  place: { file },
  value: hash,
  why: 'a blob of the library is damaged; the backup was made without it',
  next: 'Take it from an older backup, or from the device that made it.',
});
