import { Command, Option } from 'commander';
import { answersOf, type NewClaim, recordClaim } from '../app/index.ts';
import type { Io } from './io.ts';
import { nodeNamed, studyNamed, whoIsHere, withLibrary } from './open-library.ts';
import { wayNamed } from './options.ts';
import { claimsText } from './texts.ts';

interface ClaimOptions {
  readonly study: string;
  readonly subject?: string;
  readonly question?: string;
  readonly output?: string;
  readonly atLeast?: string;
  readonly atMost?: string;
  readonly how: string;
  readonly by?: string;
  readonly json?: boolean;
}

export const claimCommand = (io: Io): Command =>
  new Command('claim')
    .description('record a claim, and tie it to the question that answers it where one is known')
    .argument('<words>', 'what was said')
    .requiredOption('--study <name>', 'study')
    .option('--subject <number>', 'part, assembly or joint it is about; the vehicle when not named')
    .option('--question <id>', 'question that answers it; it can be tied later, in the browser')
    .option('--output <name>', 'output of that question')
    .addOption(
      new Option('--at-least <value>', 'true when the output is at least this').conflicts('atMost'),
    )
    .option('--at-most <value>', 'true when the output is at most this')
    .option('--how <way>', 'how it is known', 'guessed')
    .option('--by <name>', 'who says it')
    .option('--json', 'print one JSON object')
    .addHelpText(
      'after',
      '\n  hoistside claim "the lid is heavy" --study VAN-27 --subject 40-010\n  hoistside claim "over 120 Wh a kilo" --study VAN-27 --subject 40 \\\n      --question pack-energy-density --output specific --at-least "120 Wh/kg"\n',
    )
    .action(async (words: string, options: ClaimOptions, command: Command) => {
      await withLibrary(command, async (library) => {
        const { study, view } = await studyNamed(library, options.study);
        const claim = await recordClaim(library, study, {
          words,
          subject: nodeNamed(view, options.subject ?? view.root()?.id ?? ''),
          ...tieOf(options),
          how: wayNamed(options.how),
          by: options.by ?? whoIsHere(),
        });
        const { claims } = await answersOf(await library.view(study));
        const own = claims.filter((c) => c.claim.id === claim);
        io.out(options.json ? `${JSON.stringify({ claim: own[0] })}\n` : claimsText(own));
      });
    });

/** What ties the claim to its answer; nothing when no question is named. */
function tieOf({ question, output, atLeast, atMost }: ClaimOptions): Pick<NewClaim, 'tie'> {
  if (question === undefined) return {};
  const is = atMost === undefined ? 'at least' : 'at most';
  return { tie: { question, output: output ?? '', is, value: atLeast ?? atMost ?? '' } };
}
