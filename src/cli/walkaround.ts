import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { Command } from 'commander';
import {
  acceptNumbered,
  countInLibrary,
  importWalkaround,
  keepWord,
  numberedDrafts,
  previewWalkaround,
  rejectNumbered,
  splitNumbered,
} from '../app/index.ts';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { nodeNamed, studyNamed, whoIsHere, withLibrary } from './open-library.ts';
import { wayNamed } from './options.ts';
import { photos, photosOut } from './walkaround-photos.ts';
import { clockText, commonText, draftsText, findingLines } from './walkaround-text.ts';

interface Common {
  readonly study: string;
  readonly by?: string;
  readonly json?: boolean;
}
interface AcceptOptions extends Common {
  readonly part?: string;
  readonly value?: string;
  readonly property?: string;
  readonly how?: string;
  readonly instrument?: string;
  readonly as?: string;
}

const EXAMPLES = `
  hoistside walkaround read talk.vtt --study VAN-27                what would be drafted; nothing is written
  hoistside walkaround import talk.vtt --study VAN-27 --started 2026-10-05T09:30
  hoistside walkaround drafts --study VAN-27                       what waits to be settled
  hoistside walkaround accept 12 --study VAN-27 --instrument "gauge 3"
  hoistside walkaround accept 14 --study VAN-27 --part 61-003 --value "2.5 mm" --how seen
  hoistside walkaround split 15 --study VAN-27                     left and right, one draft each
  hoistside walkaround reject 13 --study VAN-27
  hoistside walkaround word "tow link" 61-011 --study VAN-27       what is said here, and its part
  hoistside walkaround photos ./card --study VAN-27 --clock-offset -43    tied by time to words and parts
  hoistside walkaround photos-out ./for-client --study VAN-27        copies without place or camera
  hoistside walkaround count "friction stir"                       how common that is in the library
`;

/** Speech of a walkaround: read, kept as drafts, settled one by one. */
export const walkaroundCommand = (io: Io): Command => {
  const root = new Command('walkaround')
    .description('speech at the vehicle: drafts from its words, settled into readings and claims')
    .addHelpText('after', EXAMPLES);
  for (const make of [read, bring, drafts, accept, split, reject, word, count, photos, photosOut])
    root.addCommand(make(io));
  return root;
};

const sub = (name: string, description: string): Command =>
  new Command(name)
    .description(description)
    .requiredOption('--study <name>', 'study')
    .option('--by <name>', 'who does it')
    .option('--json', 'print one JSON object');

const read = (io: Io): Command =>
  sub('read', 'show what would be drafted from WebVTT, SubRip or text with times; write nothing')
    .argument('<file>')
    .action(async (file: string, options: Common, command: Command) => {
      const bytes = await readFile(file);
      await withLibrary(command, async (library) => {
        const { view } = await studyNamed(library, options.study);
        const { speech, reading } = previewWalkaround(view, bytes, basename(file));
        if (options.json) {
          io.out(
            `${JSON.stringify({ format: speech.format, findings: speech.findings, drafts: reading.drafts, leftOut: reading.leftOut })}\n`,
          );
          return;
        }
        io.out(
          `${basename(file)}: ${speech.format}, ${speech.cues.length} cues, ${reading.drafts.length} drafts\n`,
        );
        for (const line of findingLines(speech.findings)) io.out(`${line}\n`);
        for (const d of reading.drafts)
          io.out(
            `${clockText(d.fromS).padStart(6)}  ${d.parts.map((p) => p.label).join(' or ') || '?'}  ${d.kind}: ${d.words} (${d.how})\n`,
          );
        for (const left of reading.leftOut)
          io.out(`${clockText(left.atS).padStart(6)}  ${left.why}: ${left.words}\n`);
      });
    });

const bring = (io: Io): Command =>
  sub('import', 'keep timed speech and its drafts')
    .argument('<file>')
    .requiredOption('--started <time>', 'local time of second zero: 2026-10-05T09:30')
    .option('--film <name>', 'name of the film or sound that belongs to it')
    .action(
      async (
        file: string,
        options: Common & { started: string; film?: string },
        command: Command,
      ) => {
        const bytes = await readFile(file);
        await withLibrary(command, async (library) => {
          const { study } = await studyNamed(library, options.study);
          const { film } = options;
          const kept = await importWalkaround(library, study, {
            file: basename(file),
            bytes,
            startedAt: timeOf(options.started),
            by: options.by ?? whoIsHere(),
            ...(film === undefined ? {} : { film }),
          });
          const { speech, drafts: made, read: talk } = kept;
          if (options.json)
            io.out(`${JSON.stringify({ speech, drafts: made, findings: talk.findings })}\n`);
          else
            io.out(
              [
                `${talk.cues.length} cues kept, ${made} drafts to be settled`,
                ...findingLines(talk.findings),
                '',
              ].join('\n'),
            );
        });
      },
    );

function timeOf(text: string): string {
  if (/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?$/.test(text) && !Number.isNaN(Date.parse(text)))
    return text;
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'started' },
    value: text,
    why: 'this is no local time',
    next: 'Write it as 2026-10-05T09:30 or 2026-10-05T09:30:00.',
  });
}

const drafts = (io: Io): Command =>
  sub('drafts', 'drafts that wait to be settled, with their numbers')
    .option('--all', 'settled ones too')
    .action(async (options: Common & { all?: boolean }, command: Command) => {
      await withLibrary(command, async (library) => {
        const { view } = await studyNamed(library, options.study);
        const numbered = numberedDrafts(view);
        const listed = numbered
          .map((d, i) => ({ number: i + 1, ...d }))
          .filter((d) => options.all || !d.settled);
        io.out(
          options.json
            ? `${JSON.stringify({ drafts: listed })}\n`
            : draftsText(numbered, view, options.all ?? false),
        );
      });
    });

const accept = (io: Io): Command =>
  sub('accept', 'make a draft a reading or a claim, with what was misheard put right')
    .argument('<number>')
    .option('--part <number>', 'part it is of')
    .option('--value <text>', 'value with its unit')
    .option('--property <id>', 'property it is of: thickness, mass, …')
    .option('--how <way>', 'how it is known')
    .option('--instrument <name>', 'gauge or scale; needed for what was measured')
    .option('--as <form>', 'reading or claim')
    .action(async (number: string, options: AcceptOptions, command: Command) => {
      await withLibrary(command, async (library) => {
        const { study, view } = await studyNamed(library, options.study);
        const { part, value, property, how, instrument } = options;
        const id = await acceptNumbered(
          library,
          study,
          number,
          {
            ...(part === undefined ? {} : { subject: nodeNamed(view, part) }),
            ...(value === undefined ? {} : { value }),
            ...(property === undefined ? {} : { property }),
            ...(how === undefined ? {} : { how: wayNamed(how) }),
            ...(instrument === undefined ? {} : { instrument }),
            ...formOf(options.as),
          },
          options.by ?? whoIsHere(),
        );
        io.out(options.json ? `${JSON.stringify({ made: id })}\n` : `accepted: ${id}\n`);
      });
    });

function formOf(as: string | undefined): { as?: 'reading' | 'claim' } {
  if (as === undefined) return {};
  if (as === 'reading' || as === 'claim') return { as };
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'as' },
    value: as,
    why: 'a draft becomes a reading or a claim',
    next: 'Say --as reading or --as claim.',
  });
}

const split = (io: Io): Command =>
  sub('split', 'one draft for each of the parts it may be of')
    .argument('<number>')
    .action(settleBy(io, splitNumbered, 'split'));

const reject = (io: Io): Command =>
  sub('reject', 'settle a draft as nothing for the record')
    .argument('<number>')
    .action(settleBy(io, rejectNumbered, 'rejected'));

const settleBy =
  (io: Io, settle: typeof rejectNumbered, done: string) =>
  async (number: string, options: Common, command: Command): Promise<void> => {
    await withLibrary(command, async (library) => {
      const { study } = await studyNamed(library, options.study);
      await settle(library, study, number, options.by ?? whoIsHere());
      io.out(options.json ? `${JSON.stringify({ done })}\n` : `${done}\n`);
    });
  };

const word = (io: Io): Command =>
  sub('word', "the study's own word list: what is said here, and the part it means")
    .argument('<said>')
    .argument('<part>')
    .action(async (said: string, part: string, options: Common, command: Command) => {
      await withLibrary(command, async (library) => {
        const { study, view } = await studyNamed(library, options.study);
        const label = view.node(nodeNamed(view, part))?.label ?? part;
        await keepWord(library, study, said, label, options.by ?? whoIsHere());
        io.out(
          options.json
            ? `${JSON.stringify({ said, means: label })}\n`
            : `"${said}" is read as ${label} from now on\n`,
        );
      });
    });

const count = (io: Io): Command =>
  new Command('count')
    .description('in how many studies of the library something is: n of N with its interval')
    .argument('<words>', 'words that stand in a name, material, process or kind of joint')
    .option('--json', 'print one JSON object')
    .action(async (words: string, options: { json?: boolean }, command: Command) => {
      await withLibrary(command, async (library) => {
        const common = await countInLibrary(library, words);
        io.out(options.json ? `${JSON.stringify(common)}\n` : commonText(common));
      });
    });
