import { changesOf, type Gesture, type Id, type StudyView } from '../../../src/study/index.ts';
import { timeOf } from './clock-time.ts';

/** A gesture with the time of its clock, for the history page. */
export interface HistoryRow extends Gesture {
  /** ISO 8601, UTC. */
  readonly at: string;
  /** Gesture that this one reverses. */
  readonly undoes?: Id;
  /** Standing gesture that reverses this one: to be undone to do it again. */
  readonly undoneBy?: Id;
  /** Made in this browser. */
  readonly own: boolean;
}

/** What was done to a study, newest first; `device` is this browser's own name. */
export function historyRows(view: StudyView, device: Id): HistoryRow[] {
  const undoes = new Map(changesOf(view).map((c) => [c.gesture, c.undoes]));
  const rows = view.gestures().map((g): HistoryRow => {
    const reversed = undoes.get(g.gesture);
    return {
      ...g,
      at: timeOf(g.clock),
      own: g.device === device,
      ...(reversed === undefined ? {} : { undoes: reversed }),
    };
  });
  const by = new Map(rows.filter((r) => !r.undone).map((r) => [r.undoes, r.gesture]));
  return rows
    .map((r) => {
      const undoneBy = r.undone ? by.get(r.gesture) : undefined;
      return undoneBy === undefined ? r : { ...r, undoneBy };
    })
    .reverse();
}
