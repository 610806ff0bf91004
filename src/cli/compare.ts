import { Command } from 'commander';
import { compareDesigns, type SideRequest } from '../app/index.ts';
import type { CompareOptions, Scatter } from '../engine/index.ts';
import { isKind, kindDef, parseQuantity } from '../quantity/index.ts';
import { RefusalError } from '../study/index.ts';
import { comparisonText } from './compare-text.ts';
import type { Io } from './io.ts';
import { studyNamed, withLibrary } from './open-library.ts';
import { pair } from './options.ts';

interface Options {
  readonly study: string;
  readonly subject?: string;
  readonly with: readonly string[];
  readonly output?: string;
  readonly rates?: string;
  readonly designs?: boolean;
  readonly scatter: Readonly<Record<string, string>>;
  readonly json?: boolean;
}

const EXAMPLES = `
Differences carry the correlation by what both sides share: rates, a scale's gain, a method's
common error. Without --designs the word is about the units that were measured; with it, unit-to-
unit scatter is added for each side. Unlike conditions are refused.

  hoistside compare pack-energy-density --study VAN-27 --subject 40 --with VAN-14:40
  hoistside compare mass-roll-up --study VAN-27 --subject 61 --with 60 --output mass --designs
  hoistside compare mass-roll-up --study VAN-27 --with VAN-14 --designs --scatter "mass=2 %"
`;

export const compareCommand = (io: Io): Command =>
  new Command('compare')
    .description('compare what a question says of two things: difference, spread and word')
    .argument('<question>', 'id of the question')
    .requiredOption('--study <name>', 'study of the first side')
    .option('--subject <number>', 'node of the first side; the whole study when not named')
    .requiredOption(
      '--with <study:number>',
      'the other side: a study, a node of the same study, or study:number; may be repeated',
      (text: string, before: readonly string[] = []) => [...before, text],
    )
    .option('--output <name>', 'one output; all of them when not named')
    .option('--rates <version>', 'rate book version for both; the latest when not named')
    .option('--designs', 'about the designs, not only these specimens')
    .option('--scatter <kind=size>', 'unit-to-unit scatter, e.g. mass="1 %"', pair, {})
    .option('--json', 'print one JSON object')
    .addHelpText('after', EXAMPLES)
    .action(async (question: string, options: Options, command: Command) => {
      await withLibrary(command, async (library) => {
        const first = await studyNamed(library, options.study);
        const sideOf = async (text: string): Promise<SideRequest> => {
          const { study, subject } = namedSide(text, first.view.find(text) !== undefined);
          const view = study === '' ? first.view : (await studyNamed(library, study)).view;
          return { view, ...(subject === '' ? {} : { subject }) };
        };
        const { output, rates } = options;
        const table = await compareDesigns({
          question,
          first: { view: first.view, ...(options.subject ? { subject: options.subject } : {}) },
          with: await Promise.all(options.with.map(sideOf)),
          ...(output === undefined ? {} : { output }),
          ...(rates === undefined ? {} : { rates }),
          options: compareOptions(options),
        });
        io.out(options.json ? `${JSON.stringify(table)}\n` : comparisonText(table));
      });
    });

/** "VAN-14:40", "VAN-14", or a node of the same study. */
function namedSide(text: string, isNode: boolean): { study: string; subject: string } {
  if (isNode) return { study: '', subject: text };
  const at = text.lastIndexOf(':');
  if (at < 0) return { study: text, subject: '' };
  return { study: text.slice(0, at), subject: text.slice(at + 1) };
}

function compareOptions({ designs, scatter }: Options): CompareOptions {
  const stated = Object.entries(scatter).map(([kind, text]) => [kind, scatterOf(kind, text)]);
  return {
    about: designs ? 'the designs' : 'these specimens',
    scatter: Object.fromEntries(stated),
  };
}

/** "1 %" of the value, or a number of the kind itself. */
function scatterOf(kind: string, text: string): Scatter {
  const stated = { how: 'supplied', source: 'stated on the command line' } as const;
  if (!isKind(kind)) throw bad(kind, `there is no kind of quantity "${kind}"`);
  const relative = parseQuantity(text, 'ratio', { unit: '1' });
  if (text.includes('%') && relative.ok) return { ...stated, relative: relative.value.x };
  const absolute = parseQuantity(text, kind, { unit: kindDef(kind).show[0] });
  if (!absolute.ok) throw bad(text, absolute.why);
  return { ...stated, absolute: absolute.value.x };
}

const bad = (value: string, why: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { column: 'scatter' },
    value,
    why,
    next: 'Say e.g. --scatter "mass=1 %" or --scatter "length=2 mm".',
  });
