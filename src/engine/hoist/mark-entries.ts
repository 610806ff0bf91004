import {
  type Entry,
  type Id,
  type Refusal,
  RefusalError,
  type StudyView,
} from '../../study/index.ts';
import type { Questions } from '../registry.ts';
import { balanceRecord, hoistSheets, type StepSheet } from './step-sheets.ts';

/** When and under which ids a mark is made: neither is known in here. */
export interface Marking {
  readonly step: Id;
  /** Local time, ISO 8601. */
  readonly at: string;
  readonly ids: () => Id;
}

/**
 * Entries that mark a step as done, with the predicted balance as the record of its gate.
 * @throws RefusalError with all that keeps it from being done: what must come first, limits of the
 * hoist, records that are not complete.
 */
export function markEntries(
  view: StudyView,
  questions: Questions,
  { step, at, ids }: Marking,
): readonly Entry[] {
  const sheet = hoistSheets(view, questions)?.steps.find((s) => s.id === step);
  const [first, ...more] = sheet ? stopsOf(sheet) : otherStops(view, step);
  if (first) throw new RefusalError(first, ...more);
  const mark: Entry = { v: 1, e: 'step.mark', mark: { id: ids(), step, at, done: true } };
  if (!sheet?.state.gates.some((g) => g.gate.id === 'hoist-limit')) return [mark];
  const answers = balanceRecord(sheet.balance);
  const record = { id: ids(), step, gate: 'hoist-limit', at, answers } as const;
  return [{ v: 1, e: 'gate.record', record }, mark];
}

/** What keeps a step of the plan from being done. The balance is recorded with the mark. */
export function stopsOf(sheet: StepSheet): readonly Refusal[] {
  const { label, waitsFor, against, state } = sheet;
  const stop = (column: string, value: string, why: string, next: string): Refusal => ({
    ...{ code: 'not-allowed', place: { subject: label, column }, value, why, next },
  });
  return [
    ...waitsFor.map((first) =>
      stop('after', first, 'must be done first', 'Do it first, or correct joints and blockers.'),
    ),
    ...(needsBalance(sheet) ? against : []).map(({ out, word }) =>
      stop('balance', word, `${out.meaning}: ${word}`, nextFor(word)),
    ),
    ...state.gates
      .filter((g) => g.state === 'not complete' && g.gate.id !== 'hoist-limit')
      .map(({ gate, lacking }) =>
        stop(
          gate.id,
          'not complete',
          `${gate.title}: ${lacking.join('; ')}`,
          'Complete the record.',
        ),
      ),
  ];
}

const nextFor = (word: string): string =>
  word === 'not complete'
    ? 'Measure what the balance lacks: masses, places, pads, ratings.'
    : 'Stop. Take an order that the tool proposes.';

export const needsBalance = ({ state }: StepSheet): boolean =>
  state.gates.some((g) => g.gate.id === 'hoist-limit');

/** A step that is no removal has gates alone. */
function otherStops(view: StudyView, step: Id): readonly Refusal[] {
  const node = view.node(step);
  const label = node?.label ?? step;
  if (node?.kind !== 'step')
    return [
      {
        ...{ code: 'bad-value', place: { subject: label }, value: node?.kind ?? step },
        why: 'only steps are marked as done',
        next: 'Name a step of the removal plan.',
      },
    ];
  return view
    .step(step)
    .gates.filter((g) => g.state === 'not complete')
    .map(({ gate, lacking }) => ({
      ...{ code: 'not-allowed', place: { subject: label, column: gate.id }, value: 'not complete' },
      why: `${gate.title}: ${lacking.join('; ')}`,
      next: 'Complete the record.',
    }));
}
