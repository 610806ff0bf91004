import { Command } from 'commander';
import { compareStudy, type Library } from '../app/index.ts';
import {
  type Id,
  isUlid,
  type Moment,
  RefusalError,
  type StudyDifference,
  type StudyView,
} from '../study/index.ts';
import { differenceText } from './difference-text.ts';
import type { Io } from './io.ts';
import { studyNamed, whoIsHere, withLibrary } from './open-library.ts';
import { historyText } from './texts.ts';

interface HistoryOptions {
  readonly study: string;
  readonly undo?: string;
  readonly by?: string;
  readonly from?: string;
  readonly to?: string;
  readonly answers?: boolean;
  readonly json?: boolean;
}

const EXAMPLES = `
A moment is the id of a gesture (right after it), a time (ISO 8601, of the devices' clocks), "start" or "now".

  hoistside history --study VAN-27
  hoistside history --study VAN-27 --from 2026-11-24T18:00 --to now
  hoistside history --study VAN-27 --from start --to 01KB0Z7Q9V4J3X2M8T6R5P1C0D --answers
`;

export const historyCommand = (io: Io): Command =>
  new Command('history')
    .description(
      'what was done to a study, by whom and when; undo a gesture, or compare two moments',
    )
    .requiredOption('--study <name>', 'study')
    .option('--undo <gesture>', 'undo this gesture; undoing an undo brings it back')
    .option('--by <name>', 'who undoes')
    .option('--from <moment>', 'compare from this moment')
    .option('--to <moment>', 'to this one; now when not given')
    .option('--answers', 'compare the answers of all questions too')
    .option('--json', 'print one JSON object')
    .addHelpText('after', EXAMPLES)
    .action(async (options: HistoryOptions, command: Command) => {
      await withLibrary(command, async (library) => {
        const { study, view } = await studyNamed(library, options.study);
        if (options.undo !== undefined) await undo(library, study, view, options);
        if (options.from !== undefined) return compare(io, view, options);
        const gestures = (await library.view(study)).gestures();
        io.out(options.json ? `${JSON.stringify({ gestures })}\n` : historyText(gestures));
      });
    });

async function undo(
  library: Library,
  study: Id,
  view: StudyView,
  { undo: wanted = '', by }: HistoryOptions,
): Promise<void> {
  const gesture = view.gestures().find((g) => g.gesture === wanted);
  if (!gesture) throw unknownGesture(wanted);
  await library.record(study, by ?? whoIsHere(), `undo: ${gesture.words}`, [], gesture.gesture);
}

async function compare(io: Io, view: StudyView, options: HistoryOptions): Promise<void> {
  const [from, to] = [momentOf(options.from ?? '', 'from'), momentOf(options.to ?? 'now', 'to')];
  const difference = await compareStudy(view, from, to, options.answers === true);
  if (options.json) io.out(`${JSON.stringify({ difference })}\n`);
  else io.out(differenceText(difference, difference.answers, namesFor(view, difference)));
}

/** A node by its last name, one whose adding is undone by the name it had. */
const namesFor = (view: StudyView, { nodes }: StudyDifference) => {
  const gone = new Map(nodes.gone.map(({ node }) => [node.id, node]));
  return (id: Id): string => {
    const node = view.node(id) ?? gone.get(id);
    return node ? `${node.label} ${node.name}` : id;
  };
};

function momentOf(text: string, option: string): Moment {
  if (text === 'start' || text === 'now') return { at: text };
  if (isUlid(text)) return { after: text };
  const ms = Date.parse(text);
  if (!Number.isNaN(ms)) return { atMs: ms };
  throw new RefusalError({
    code: 'bad-call',
    place: { column: option },
    value: text,
    why: 'this is no moment of a study',
    next: 'Give the id of a gesture, a time such as 2026-11-24T18:00, "start" or "now".',
  });
}

const unknownGesture = (wanted: string): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { column: 'undo' },
    value: wanted,
    why: 'there is no gesture of this id in the study',
    next: 'See: hoistside history --study <name>.',
  });
