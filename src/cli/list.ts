import { Argument, Command } from 'commander';
import { answersOf, type Library } from '../app/index.ts';

import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { studyNamed, withLibrary } from './open-library.ts';
import { claimsText, partsText, studiesText } from './texts.ts';

interface ListOptions {
  readonly study?: string;
  readonly material?: string;
  readonly text?: string;
  readonly limit: string;
  readonly json?: boolean;
}

const WHAT = ['studies', 'parts', 'claims'] as const;

export const listCommand = (io: Io): Command =>
  new Command('list')
    .description('list studies, the parts of a study or of all, or the claims of a study')
    .addArgument(new Argument('[what]', 'what to list').choices(WHAT).default('studies'))
    .option('--study <name>', 'study to look in')
    .option('--material <words>', 'parts of this material')
    .option('--text <words>', 'parts whose number, name, material or process has these words')
    .option('--limit <n>', 'parts at most', '1000')
    .option('--json', 'print one JSON object')
    .addHelpText(
      'after',
      '\n  hoistside list parts --study VAN-27 --material "dual-phase steel"\n  hoistside list claims --study VAN-27\n',
    )
    .action(async (what: (typeof WHAT)[number], options: ListOptions, command: Command) => {
      const { data, text } = await withLibrary(command, (library) =>
        listed(library, what, options),
      );
      io.out(options.json ? `${JSON.stringify(data)}\n` : text);
    });

async function listed(
  library: Library,
  what: (typeof WHAT)[number],
  options: ListOptions,
): Promise<{ data: object; text: string }> {
  if (what === 'studies') {
    const studies = await library.studies();
    return { data: { studies }, text: studiesText(studies) };
  }
  if (what === 'claims') {
    const { view } = await studyNamed(library, options.study ?? missing('study'));
    const { claims } = await answersOf(view);
    return {
      data: {
        claims: claims.map(({ claim, state, decision, lacks }) => ({
          claim,
          state,
          decision,
          lacks,
        })),
      },
      text: claimsText(claims),
    };
  }
  const parts = await library.store.find({
    ...(await query(library, options)),
    limit: Number(options.limit),
  });
  return { data: { parts }, text: partsText(parts) };
}

async function query(
  library: Library,
  options: ListOptions,
): Promise<{ study?: string; material?: string; text?: string }> {
  const { material, text } = options;
  return {
    ...(options.study === undefined
      ? {}
      : { study: (await library.findStudy(options.study)).study }),
    ...(material === undefined ? {} : { material }),
    ...(text === undefined ? {} : { text }),
  };
}

function missing(option: string): never {
  throw new RefusalError({
    code: 'bad-call',
    place: { column: option },
    why: `--${option} is missing`,
    next: 'Name a study; see: hoistside list studies.',
  });
}
