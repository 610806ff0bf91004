import { type Finding, type RateCell, readClock, type StudyView } from '../../study/index.ts';

/**
 * A rate that was out of date when the study was last changed, with its place in the rate book.
 * The day is the study's own, since an answer must not hang on when it is asked for.
 */
export function expiredRate(
  cell: RateCell,
  version: string,
  view: Pick<StudyView, 'gestures'>,
): Finding | undefined {
  const { expires } = cell;
  if (expires === undefined) return undefined;
  const times = view.gestures().map(({ clock }) => readClock(clock)?.ms ?? 0);
  const day = new Date(Math.max(0, ...times)).toISOString().slice(0, 10);
  if (day <= expires) return undefined;
  return {
    ...{ code: 'expired-rate', level: 'doubt', value: expires },
    place: { subject: `rate book ${version}`, property: cell.id },
    what: `${cell.words}: the rate was good until ${expires}, the study was last changed on ${day}`,
    next: 'Import a later version of the rate book with this rate looked at again.',
  };
}
