import { Command } from 'commander';
import {
  type AtHoist,
  hoistOf,
  type Library,
  lapseGates,
  markStep,
  overrideGate,
  recordGate,
} from '../app/index.ts';
import { hoistText, reportHoist } from '../report/index.ts';
import { type GateId, type Id, LAPSES, type Lapse, RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { nodeNamed, studyNamed, whoIsHere, withLibrary } from './open-library.ts';
import { pair } from './options.ts';

interface Options {
  readonly study: string;
  readonly step?: string;
  readonly gate?: string;
  readonly set: Readonly<Record<string, string>>;
  readonly override?: string;
  readonly lapse?: string;
  readonly done?: boolean;
  readonly notDone?: boolean;
  readonly by?: string;
  readonly json?: boolean;
}

const EXAMPLES = `
The removal plan with what is left on the hoist after each step, its gates, and what to measure
first. A record is complete or not complete; a step is shown as done only with its records. The
instructions of the vehicle's and the lift's makers, local rules and licensed practice come first.

  hoistside hoist --study VAN-27
  hoistside hoist --study VAN-27 --step R06 --gate pyrotechnics --set batteryOff=yes --set "makersWait=10 min"
  hoistside hoist --study VAN-27 --step R04 --gate lowering --override "stands are at the other bay" --by "A. Lead"
  hoistside hoist --study VAN-27 --lapse "shift change"
  hoistside hoist --study VAN-27 --step R01 --done
`;

export const hoistCommand = (io: Io): Command =>
  new Command('hoist')
    .description('the removal plan on the hoist: balance, gates, holds; record a gate, mark a step')
    .requiredOption('--study <name>', 'study')
    .option('--step <number>', 'step of the plan')
    .option('--gate <id>', 'gate of the step to record')
    .option('--set <line=value>', 'one line of the record; may be repeated', pair, {})
    .option('--override <reason>', 'take the gate on without its record, by the name of --by')
    .option('--lapse <why>', `records taken before are not good any more: ${LAPSES.join(', ')}`)
    .option('--done', 'mark the step as done')
    .option('--not-done', 'take the mark back')
    .option('--by <name>', 'who')
    .option('--json', 'print one JSON object')
    .addHelpText('after', EXAMPLES)
    .action(async (options: Options, command: Command) => {
      await withLibrary(command, async (library) => {
        const { study, view } = await studyNamed(library, options.study);
        const at = { study, by: options.by ?? whoIsHere() };
        if (options.lapse !== undefined) await lapseGates(library, at, lapseNamed(options.lapse));
        if (options.step !== undefined)
          await atStep(library, at, nodeNamed(view, options.step), options);
        const sheets = await hoistOf(await library.view(study));
        if (!sheets) throw new RefusalError(noPlan(options.study));
        const report = reportHoist(sheets);
        io.out(options.json ? `${JSON.stringify({ hoist: report })}\n` : hoistText(report));
      });
    });

async function atStep(library: Library, at: AtHoist, step: Id, options: Options): Promise<void> {
  const { gate, set, override, done, notDone } = options;
  if (gate !== undefined && override !== undefined)
    await overrideGate(library, at, { step, gate: gate as GateId, who: at.by, why: override });
  else if (gate !== undefined) await recordGate(library, at, step, gate, set);
  if (done || notDone) await markStep(library, at, step, done === true);
}

function lapseNamed(word: string): Lapse {
  const found = LAPSES.find((l) => l === word);
  if (found) return found;
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'lapse' },
    value: word,
    why: 'records do not lapse by this',
    next: `Say one of: ${LAPSES.join(', ')}.`,
  });
}

const noPlan = (study: string) =>
  ({
    code: 'no-answer',
    place: { study },
    value: study,
    why: 'the study has no removal plan',
    next: 'Import its steps: removals.csv.',
  }) as const;
