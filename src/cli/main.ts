import { Command, CommanderError } from 'commander';
import { VERSION } from '../app/index.ts';
import { askCommand } from './ask.ts';
import { backupCommand } from './backup.ts';
import { bundleCommand } from './bundle.ts';
import { checkLibraryCommand } from './check-library.ts';
import { claimCommand } from './claim.ts';
import { compareCommand } from './compare.ts';
import { costCommand } from './cost.ts';
import { demoCommand } from './demo.ts';
import { devicesCommand } from './devices.ts';
import { historyCommand } from './history.ts';
import { hoistCommand } from './hoist.ts';
import { importCommand } from './import.ts';
import { type Io, PROCESS_IO, printError } from './io.ts';
import { labelsCommand } from './labels.ts';
import { listCommand } from './list.ts';
import { nextCommand } from './next.ts';
import { planCommand } from './plan.ts';
import { purgeCommand } from './purge.ts';
import { reportCommand } from './report.ts';
import { restoreCommand } from './restore.ts';
import { serveCommand } from './serve.ts';
import { walkaroundCommand } from './walkaround.ts';

const EXAMPLES = `
Start with:
  hoistside import ./record --study "My van" --new     bring in a folder of tables
  hoistside list studies                               see what there is
  hoistside ask mass-closure --study "My van"          do the parts add up?
  hoistside ask                                        every question there is
  hoistside report --study "My van" -o my-van.pdf      write it down
  hoistside serve                                      the same in a browser
  hoistside bundle --study "My van" -o my-van.hoist.zip   the whole study in one file

Exit codes: 0 done; 2 bad input; 3 not found; 4 conflict; 5 no answer; 6 not allowed;
7 busy, read-only or disk full; 70 a defect of the program.
`;

/** Runs one command line and returns its exit code. */
export async function main(args: readonly string[], io: Io = PROCESS_IO): Promise<number> {
  const json = args.includes('--json');
  try {
    await program(io).parseAsync([...args], { from: 'user' });
    return 0;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    return printError(error, io, json);
  }
}

function program(io: Io): Command {
  const root = new Command('hoistside')
    .description('Record, calculation and report for vehicle teardowns on the hoist.')
    .version(VERSION)
    .option(
      '--library <folder>',
      'folder of the library',
      process.env.HOISTSIDE_LIBRARY ?? 'library',
    )
    .addHelpText('after', EXAMPLES)
    .showSuggestionAfterError()
    .exitOverride()
    .configureOutput({ writeOut: io.out, writeErr: io.err });
  for (const make of [
    importCommand,
    listCommand,
    askCommand,
    compareCommand,
    costCommand,
    claimCommand,
    walkaroundCommand,
    nextCommand,
    hoistCommand,
    historyCommand,
    bundleCommand,
    planCommand,
    purgeCommand,
    backupCommand,
    restoreCommand,
    checkLibraryCommand,
    devicesCommand,
    labelsCommand,
    reportCommand,
    serveCommand,
    demoCommand,
  ])
    root.addCommand(make(io).copyInheritedSettings(root));
  return root;
}
