import { applyEntry } from './apply-entry.ts';
import { type Change, canonicalText } from './change.ts';
import { readClock } from './clock.ts';
import { ClockWatch } from './clock-watch.ts';
import { digest } from './digest.ts';
import type { Finding } from './finding.ts';
import { emptyState, type FoldState } from './fold-state.ts';
import { Line, Touching } from './line.ts';
import { StudyViewOf } from './study-view.ts';
import type { Gesture, StudyView } from './view.ts';

/** What the fold keeps of the changes themselves, to extend a view without folding all again. */
interface Folded {
  readonly state: FoldState;
  readonly line: Line;
  readonly clocks: ClockWatch;
  readonly ordered: readonly Change[];
  /** Changes without effect because another one carries their id. */
  readonly beside: readonly Change[];
}

const FOLDED = new WeakMap<StudyView, Folded>();

/**
 * The view that a study's changes leave, the same for any order of arrival and for changes that
 * arrive twice: they are put in the order of their clocks, gestures that a later gesture undoes
 * are left out, and the rest is applied one by one.
 */
export function fold(study: string, changes: readonly Change[]): StudyView {
  const { standing, beside } = distinct(changes);
  const ordered = inOrder(standing);
  const undone = undoneGestures(ordered);
  const state = emptyState(study);
  const clocks = watched(new ClockWatch(study), ordered);
  state.findings.push(...usedTwice(study, beside), ...gaps(study, ordered), ...clocks.findings);
  for (const change of ordered) if (!undone.has(change.gesture)) applyChange(state, change);
  return finish({ state, line: new Line(), clocks, ordered, beside }, undone);
}

/**
 * The view with more changes. Where they are later than all others and undo nothing they are
 * applied to the state at hand, and the earlier view must not be used any more.
 */
export function extend(view: StudyView, more: readonly Change[]): StudyView {
  const before = FOLDED.get(view);
  if (!before) throw new TypeError('this view was not made by fold()');
  const held = new Set(before.ordered.map((c) => c.id));
  const fresh = inOrder(more.filter((c) => !held.has(c.id)));
  const last = before.ordered.at(-1);
  const plain = fresh.every((c) => c.undoes === undefined && (!last || byClock(last, c) < 0));
  const repeated = new Set(fresh.map((c) => c.id)).size < fresh.length;
  const ordered = [...before.ordered, ...fresh];
  const undone = undoneGestures(ordered);
  const cut = fresh.some((c) => undone.has(c.gesture));
  const same = plain && !repeated && !cut && fresh.length === more.length;
  if (!same || skips(before.ordered, fresh) || jumps(before.clocks, fresh))
    return fold(view.study, [...before.ordered, ...before.beside, ...more]);
  const touching = new Touching();
  before.state.touching = touching;
  for (const change of fresh) applyChange(before.state, change);
  before.line.step(touching, ordered.length);
  return finish({ ...before, ordered }, undone);
}

/** True when a device's count goes on from elsewhere than where it was: a gap may open or close. */
function skips(held: readonly Change[], fresh: readonly Change[]): boolean {
  const last = new Map<string, number>();
  for (const c of held) last.set(c.device, Math.max(last.get(c.device) ?? 0, c.seq));
  return fresh.some((c) => {
    const next = (last.get(c.device) ?? 0) + 1;
    last.set(c.device, next);
    return c.seq !== next;
  });
}

function watched(clocks: ClockWatch, changes: readonly Change[]): ClockWatch {
  for (const change of changes) clocks.add(change);
  return clocks;
}

/** True when a clock is found to have jumped that was not before. */
function jumps(clocks: ClockWatch, fresh: readonly Change[]): boolean {
  const before = clocks.findings.length;
  return watched(clocks, fresh).findings.length > before;
}

/** The changes behind a view, in the order of their clocks. */
export const changesOf = (view: StudyView): readonly Change[] => FOLDED.get(view)?.ordered ?? [];

function applyChange(state: FoldState, change: Change): void {
  for (const entry of change.entries) applyEntry(state, entry, change);
}

function finish(folded: Folded, undone: ReadonlySet<string>): StudyView {
  const { state, line, ordered } = folded;
  const history = () => gesturesOf(ordered, undone);
  const view = new StudyViewOf(state, line, revisionOf(ordered), ordered.length, history);
  FOLDED.set(view, folded);
  return view;
}

/** Each change once. Of different ones under one id the one whose text sorts first stands. */
function distinct(changes: readonly Change[]): { standing: Change[]; beside: Change[] } {
  const byId = new Map<string, Change>();
  const beside: Change[] = [];
  for (const change of changes) {
    const held = byId.get(change.id) ?? change;
    byId.set(change.id, held);
    if (held === change) continue;
    const [a, b] = [canonicalText(held), canonicalText(change)];
    if (b < a) byId.set(change.id, change);
    if (a !== b) beside.push(b < a ? held : change);
  }
  return { standing: [...byId.values()], beside };
}

const usedTwice = (study: string, beside: readonly Change[]): Finding[] =>
  [...new Set(beside.map((c) => c.id))].sort().map((id) => ({
    code: 'change-id-used-twice',
    level: 'doubt',
    place: { study },
    value: id,
    what: 'two different changes carry one id; one of them has no effect',
    next: 'Find the device that was copied or restored and give it a name of its own.',
  }));

const byClock = (a: Change, b: Change): number => {
  if (a.clock !== b.clock) return a.clock < b.clock ? -1 : 1;
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
};

const inOrder = (changes: readonly Change[]): Change[] => [...changes].sort(byClock);

/** Walks from the latest back: a gesture is undone when an undo that itself stands names it. */
function undoneGestures(ordered: readonly Change[]): Set<string> {
  const undone = new Set<string>();
  for (let i = ordered.length - 1; i >= 0; i--) {
    const change = ordered[i];
    if (change?.undoes !== undefined && !undone.has(change.gesture)) undone.add(change.undoes);
  }
  return undone;
}

/** Devices count their changes: what is missing between shows. */
function gaps(study: string, ordered: readonly Change[]): Finding[] {
  const seqs = new Map<string, number[]>();
  for (const c of ordered) {
    const list = seqs.get(c.device);
    if (list) list.push(c.seq);
    else seqs.set(c.device, [c.seq]);
  }
  return [...seqs].flatMap(([device, list]) => {
    const missing = Math.max(...list) - new Set(list).size;
    return missing > 0 ? [gap(study, device, missing)] : [];
  });
}

const gap = (study: string, device: string, missing: number): Finding => ({
  code: 'changes-not-arrived',
  level: 'gap',
  place: { study },
  value: device,
  what: `${missing} change${missing === 1 ? '' : 's'} of this device ${missing === 1 ? 'has' : 'have'} not arrived`,
  next: 'Connect the device, or bring in its copy of the study.',
});

function gesturesOf(ordered: readonly Change[], undone: ReadonlySet<string>): Gesture[] {
  const seen = new Map<string, Gesture>();
  for (const c of ordered)
    if (!seen.has(c.gesture))
      seen.set(c.gesture, {
        gesture: c.gesture,
        words: c.words,
        by: c.by,
        device: c.device,
        clock: readClock(c.clock) ? c.clock : '',
        undone: undone.has(c.gesture),
      });
  return [...seen.values()];
}

/** "214 · 5f1c09aa": the count of changes and a digest of their ids. */
const revisionOf = (ordered: readonly Change[]): string =>
  `${ordered.length} · ${digest(ordered.map((c) => c.id).join()).slice(0, 8)}`;
