import type { Change } from './change.ts';
import { readClock } from './clock.ts';
import { RefusalError } from './finding.ts';
import { changesOf, fold } from './fold.ts';
import type { Id } from './ids.ts';
import type { StudyView } from './view.ts';

/**
 * A moment of a study: right after a gesture, at a time by the devices' clocks (Unix time in
 * milliseconds), before anything was recorded, or as it stands.
 */
export type Moment =
  | { readonly after: Id }
  | { readonly atMs: number }
  | { readonly at: 'start' | 'now' };

/**
 * The study as its devices had it at a moment: what was recorded later is not there, nor is what
 * was undone later undone. Goes by the clocks, whenever the changes arrived.
 * @throws RefusalError `not-found` for a gesture that the study does not have.
 */
export function viewAt(view: StudyView, moment: Moment): StudyView {
  if ('at' in moment && moment.at === 'now') return view;
  return fold(view.study, changesUntil(view, moment));
}

function changesUntil(view: StudyView, moment: Moment): readonly Change[] {
  const all = changesOf(view);
  if ('at' in moment) return [];
  if ('atMs' in moment) return all.filter((c) => (readClock(c.clock)?.ms ?? 0) <= moment.atMs);
  const last = all.map((c) => c.gesture).lastIndexOf(moment.after);
  if (last < 0) throw noSuchGesture(view, moment.after);
  return all.slice(0, last + 1);
}

const noSuchGesture = (view: StudyView, wanted: Id): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { study: view.header.title },
    value: wanted,
    why: 'there is no gesture of this id in the study',
    next: 'Take the id from the history of the study.',
  });
