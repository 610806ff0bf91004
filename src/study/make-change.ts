import type { Change } from './change.ts';
import { type Clock, clockText, readClock, tick } from './clock.ts';
import type { Entry } from './entries.ts';
import { changesOf } from './fold.ts';
import { type Id, type Random, ulid } from './ids.ts';
import type { StudyView } from './view.ts';

/** Who makes a change, on which device, in sight of which view. */
export interface Author {
  readonly study: Id;
  readonly by: string;
  readonly device: Id;
  readonly view: StudyView;
  readonly nowMs: number;
  readonly random: Random;
}

/** What a change is to do. */
export interface Act {
  readonly words: string;
  readonly entries: readonly Entry[];
  readonly undoes?: Id;
  /** Gesture it belongs to, with how many changes of it came before; its own when absent. */
  readonly gesture?: { readonly id: Id; readonly before: number };
}

/** The next change of a device, later than everything its author has seen. */
export function makeChange(author: Author, act: Act): Change {
  const { study, by, device, view, nowMs, random } = author;
  const before = act.gesture?.before ?? 0;
  const seen = seenBy(view);
  const own = (seen[device] ?? 0) + 1 + before;
  const id = ulid(nowMs, random);
  const { [device]: _own, ...saw } = seen;
  let clock: Clock = tick(lastClock(view), nowMs, device);
  for (let i = 0; i < before; i++) clock = tick(clock, nowMs, device);
  return {
    id,
    study,
    device,
    seq: own,
    clock: clockText(clock),
    by,
    gesture: act.gesture?.id ?? id,
    words: act.words,
    saw,
    ...(act.undoes === undefined ? {} : { undoes: act.undoes }),
    entries: act.entries,
  };
}

/** Highest seq of each device in a view. */
function seenBy(view: StudyView): Record<Id, number> {
  const seen: Record<Id, number> = {};
  for (const c of changesOf(view)) seen[c.device] = Math.max(seen[c.device] ?? 0, c.seq);
  return seen;
}

const lastClock = (view: StudyView): Clock | undefined => {
  const last = changesOf(view).at(-1);
  return last && readClock(last.clock);
};
