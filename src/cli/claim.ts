import { Command, Option } from 'commander';
import { answersOf, recordClaim } from '../app/index.ts';
import { isWay } from '../quantity/index.ts';
import type { Io } from './io.ts';
import { nodeNamed, studyNamed, whoIsHere, withLibrary } from './open-library.ts';
import { claimsText } from './texts.ts';

interface ClaimOptions {
  readonly study: string;
  readonly subject: string;
  readonly question: string;
  readonly output: string;
  readonly atLeast?: string;
  readonly atMost?: string;
  readonly how: string;
  readonly by?: string;
  readonly json?: boolean;
}

export const claimCommand = (io: Io): Command =>
  new Command('claim')
    .description('record a claim and tie it to the question that answers it')
    .argument('<words>', 'what was said')
    .requiredOption('--study <name>', 'study')
    .requiredOption('--subject <number>', 'part, assembly or vehicle it is about')
    .requiredOption('--question <id>', 'question that answers it')
    .requiredOption('--output <name>', 'output of that question')
    .addOption(
      new Option('--at-least <value>', 'true when the output is at least this').conflicts('atMost'),
    )
    .option('--at-most <value>', 'true when the output is at most this')
    .option('--how <way>', 'how it is known', 'guessed')
    .option('--by <name>', 'who says it')
    .option('--json', 'print one JSON object')
    .addHelpText(
      'after',
      '\n  hoistside claim "over 120 Wh a kilo" --study VAN-27 --subject 40 \\\n      --question pack-energy-density --output specific --at-least "120 Wh/kg"\n',
    )
    .action(async (words: string, options: ClaimOptions, command: Command) => {
      await withLibrary(command, async (library) => {
        const { study, view } = await studyNamed(library, options.study);
        const claim = await recordClaim(library, study, {
          words,
          subject: nodeNamed(view, options.subject),
          question: options.question,
          output: options.output,
          is: options.atMost === undefined ? 'at least' : 'at most',
          value: options.atLeast ?? options.atMost ?? '',
          how: isWay(options.how) ? options.how : 'guessed',
          by: options.by ?? whoIsHere(),
        });
        const { claims } = await answersOf(await library.view(study));
        const own = claims.filter((c) => c.claim.id === claim);
        io.out(options.json ? `${JSON.stringify({ claim: own[0] })}\n` : claimsText(own));
      });
    });
