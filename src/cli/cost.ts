import { access, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { Command } from 'commander';
import { type CostSideRequest, costDifference, costSheets, costsOf } from '../app/index.ts';
import { answerText } from '../report/index.ts';
import type { StudyView } from '../study/index.ts';
import { differenceByCauseText } from './cost-text.ts';
import type { Io } from './io.ts';
import { studyNamed, withLibrary } from './open-library.ts';

interface Options {
  readonly study: string;
  readonly rates?: string;
  readonly from?: string;
  readonly volume?: string;
  readonly fromVolume?: string;
  readonly fromStudy?: string;
  readonly toolsApart?: boolean;
  readonly fromToolsApart?: boolean;
  readonly sheets?: string;
  readonly json?: boolean;
}

const EXAMPLES = `
Costs by part, assembly and function, and the designs for each function with their words. With
--from, --from-study, --from-volume or --from-tools-apart it says instead by what the cost differs
from that one: facts, rates, volume and method, summing to the difference.

  hoistside cost --study VAN-27
  hoistside cost --study VAN-27 --rates R2 --from R1
  hoistside cost --study VAN-27 --from R1 --rates R2 --volume 15000 --tools-apart
  hoistside cost --study VAN-27 --rates R1 --sheets van-27-cost.xlsx
`;

export const costCommand = (io: Io): Command =>
  new Command('cost')
    .description('what the parts and the alternative designs should cost, and why it differs')
    .requiredOption('--study <name>', 'study')
    .option('--rates <version>', 'rate book version; the latest when not named')
    .option('--volume <pieces>', 'pieces a year; those of the rate book when not named')
    .option('--tools-apart', 'count tools apart from the conversion by mass')
    .option('--from <version>', 'rate book version of the result to compare with')
    .option('--from-study <name>', 'study of the result to compare with')
    .option('--from-volume <pieces>', 'pieces a year of the result to compare with')
    .option('--from-tools-apart', 'the result to compare with counts tools apart')
    .option('--sheets <file>', 'workbook to write, with live sums')
    .option('--json', 'print one JSON object')
    .addHelpText('after', EXAMPLES)
    .action(async (options: Options, command: Command) => {
      if (options.sheets !== undefined) await access(dirname(options.sheets));
      await withLibrary(command, async (library) => {
        const { view } = await studyNamed(library, options.study);
        const other =
          options.fromStudy === undefined
            ? view
            : (await studyNamed(library, options.fromStudy)).view;
        await answered(io, options, view, other);
      });
    });

async function answered(
  io: Io,
  options: Options,
  view: StudyView,
  other: StudyView,
): Promise<void> {
  if (options.sheets !== undefined) {
    await writeFile(options.sheets, await costSheets(view, options.rates));
    io.progress(`${options.sheets} written\n`);
  } else if (compares(options)) {
    const d = await costDifference(firstOf(options, other), secondOf(options, view));
    io.out(options.json ? `${JSON.stringify(d)}\n` : differenceByCauseText(d));
  } else {
    const costs = await costsOf(view, options.rates);
    const all = [costs.parts, ...costs.alternatives];
    if (options.json) io.out(`${JSON.stringify(costs)}\n`);
    else io.out(all.map((a) => answerText(a, undefined, a.basis.subject ?? '')).join('\n'));
  }
}

const compares = (o: Options): boolean =>
  [o.from, o.fromStudy, o.fromVolume, o.fromToolsApart, o.volume, o.toolsApart].some(
    (given) => given !== undefined,
  );

/** What is not said of the first result is as in the second. */
function firstOf(o: Options, view: StudyView): CostSideRequest {
  const rates = o.from ?? o.rates;
  return {
    view,
    ...(rates === undefined ? {} : { rates }),
    ...(o.fromVolume === undefined ? {} : { volume: o.fromVolume }),
    ...(o.fromToolsApart ? { toolsApart: true } : {}),
  };
}

const secondOf = (o: Options, view: StudyView): CostSideRequest => ({
  view,
  ...(o.rates === undefined ? {} : { rates: o.rates }),
  ...(o.volume === undefined ? {} : { volume: o.volume }),
  ...(o.toolsApart ? { toolsApart: true } : {}),
});
