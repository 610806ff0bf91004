import { Command } from 'commander';
import { checkLibrary, type LibraryCheck } from '../app/index.ts';
import type { Refusal } from '../study/index.ts';
import type { Io } from './io.ts';
import { withLibrary } from './open-library.ts';
import { refuseAfter } from './refuse-after.ts';

export const checkLibraryCommand = (io: Io): Command =>
  new Command('check-library')
    .description('read the whole library: database, rows against changes, each blob by its hash')
    .option('--json', 'print one JSON object')
    .addHelpText(
      'after',
      '\nNothing is changed. Exit code 2 when something is damaged; a blob that a study names and\nthat is not here may still be on a device, and is only told.\n',
    )
    .action(async ({ json }: { readonly json?: boolean }, command: Command) => {
      await withLibrary(command, async (library) => {
        const check = await checkLibrary(library, (n) => io.progress(`blob ${n}`));
        io.out(json ? `${JSON.stringify({ check })}\n` : checkText(check));
        refuseAfter(damages(check, library.dir), json);
      });
    });

/** What a check found, a line each. */
export function checkText({ database, blobs, damaged, missing, unused }: LibraryCheck): string {
  const lines = [
    `database: ${database.faults.join('; ') || 'whole'}; rows: ${database.rows}`,
    `blobs: ${blobs}, ${damaged.length} damaged`,
    ...missing.map(({ study, hash }) => `named by ${study} and not here (as yet?): blob ${hash}`),
    ...(unused.length > 0 ? [`blobs that no study names (as yet?): ${unused.length}`] : []),
  ];
  return `${lines.join('\n')}\n`;
}

function damages({ database, damaged }: LibraryCheck, file: string): Refusal[] {
  const place = { file };
  const bad = (why: string, next: string, value: string): Refusal => ({
    ...{ code: 'bad-value', place, value, why, next },
  });
  const older = 'Keep the folder as it is, and restore the latest backup into a new one.';
  return [
    ...database.faults.map((fault) => bad('the database is damaged', older, fault)),
    ...(database.rows === 'other'
      ? [bad('the rows are not those of the changes', 'Report this as a defect.', 'rows')]
      : []),
    ...damaged.map((hash) =>
      bad('a blob is damaged', 'Take it from a backup, or from the device that made it.', hash),
    ),
  ];
}
