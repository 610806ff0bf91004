import type { Spread, Value, Way } from '../../src/quantity/index.ts';
import {
  type Change,
  type Entry,
  extend,
  fold,
  type Id,
  makeChange,
  type NodeKind,
  type Random,
  type Reading,
  type StudyView,
} from '../../src/study/index.ts';

/** The same numbers on every run: a linear congruential generator (constants from memory). */
export function sameNumbers(seed: number): Random {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

export const START_MS = Date.UTC(2026, 0, 5, 8);

interface MoreOfAct {
  readonly device?: Id;
  readonly by?: string;
  readonly undoes?: Id;
  /** Of the changes before that this one goes on with. */
  readonly gesture?: Id;
}

/** A study made change by change, each device in sight of what it has been shown. */
export class MadeStudy {
  readonly study = 'study-1';
  readonly changes: Change[] = [];
  readonly #random: Random;
  readonly #seen = new Map<Id, Change[]>();
  nowMs = START_MS;

  constructor(seed = 1) {
    this.#random = sameNumbers(seed);
  }

  /** A study in which all of this has happened, seen by the desk. */
  static after(changes: readonly Change[]): MadeStudy {
    const made = new MadeStudy(changes.length + 1);
    made.changes.push(...changes);
    made.nowMs += changes.length;
    made.sync('desk');
    return made;
  }

  /** Records one gesture of a device, in sight of its own changes and those it was shown. */
  act(entries: readonly Entry[], more: MoreOfAct = {}): Change {
    const { device = 'desk', by = 'R. Example', undoes, gesture } = more;
    this.nowMs += 1;
    const seen = this.seenBy(device);
    const view = fold(this.study, seen);
    const author = { study: this.study, by, device, view, nowMs: this.nowMs, random: this.#random };
    const words = `${device} change ${seen.length + 1}`;
    const change = makeChange(author, {
      words,
      entries,
      ...(undoes === undefined ? {} : { undoes }),
      ...(gesture === undefined ? {} : { gesture: { id: gesture, before: 0 } }),
    });
    seen.push(change);
    this.changes.push(change);
    return change;
  }

  /** Shows a device everything that any device has made so far. */
  sync(device: Id): void {
    this.#seen.set(device, [...this.changes]);
  }

  /** What a device has been shown and has made itself. */
  seenBy(device: Id): Change[] {
    const seen = this.#seen.get(device) ?? [];
    this.#seen.set(device, seen);
    return seen;
  }

  get view(): StudyView {
    return fold(this.study, this.changes);
  }
}

export const studyPut = (condition = 'kerb'): Entry => ({
  v: 1,
  e: 'study.put',
  set: { title: 'A made-up study', vehicle: 'made-up van', condition, invented: true },
});

export const node = (
  id: Id,
  parent: Id | null,
  kind: NodeKind = 'part',
  label = id.toUpperCase(),
): Entry => ({ v: 1, e: 'node.add', node: { id, kind, parent, label, name: `name of ${id}` } });

const NORMAL = (u: number): Spread => ({ s: 'normal', u });

/** A scalar in SI; a number for the spread is its standard uncertainty, none means unknown. */
export const scalar = (
  kind: Extract<Value, { t: 'scalar' }>['kind'],
  x: number,
  spread?: Spread | number,
): Value => ({
  t: 'scalar',
  kind,
  x,
  spread: typeof spread === 'number' ? NORMAL(spread) : (spread ?? { s: 'unknown' }),
});
export const mass = (x: number, spread?: Spread | number): Value => scalar('mass', x, spread);
export const count = (n: number): Value => ({ t: 'count', n, spread: { s: 'exact' } });
export const text = (words: string): Value => ({ t: 'text', text: words });

/** A position in SI with one standard uncertainty for each of its three components. */
export const point = (x: readonly number[], u?: number, frame = 'vehicle'): Value => ({
  t: 'vector',
  kind: 'length',
  x,
  cov: u === undefined ? [] : x.flatMap((_, i) => x.map((__, j) => (i === j ? u * u : 0))),
  frame,
});

interface MoreOfReading {
  readonly id?: Id;
  readonly how?: Way;
  readonly condition?: Id;
  readonly causes?: Reading['causes'];
  readonly asWritten?: string;
}

let readings = 0;

/** A reading, measured on a named scale unless said otherwise. */
export function reading(
  subject: Id,
  property: string,
  value: Value,
  more: MoreOfReading = {},
): Reading {
  readings += 1;
  const { how = 'measured', condition = 'kerb', causes = [] } = more;
  return {
    id: more.id ?? `reading-${String(readings).padStart(6, '0')}`,
    of: { subject, property, condition },
    value,
    asWritten: more.asWritten ?? JSON.stringify(value),
    how,
    by: 'R. Example',
    takenAt: { local: '2026-01-05T08:00:00' },
    ...(how === 'measured' ? { instrument: 'scale A' } : {}),
    evidence: [],
    causes,
  };
}

export const read = (...from: Parameters<typeof reading>): Entry => ({
  v: 1,
  e: 'reading.add',
  reading: reading(...from),
});

/** A study with these entries made at one device, one gesture each. */
export function studyOf(...entries: readonly Entry[]): StudyView {
  const made = new MadeStudy();
  for (const entry of [studyPut(), node('van', null, 'vehicle'), ...entries]) made.act([entry]);
  return made.view;
}

/** The view with one more gesture of a further device that has seen everything. */
export function later(view: StudyView, ...entries: readonly Entry[]): StudyView {
  const author = { study: view.study, by: 'R. Example', device: 'later', view };
  const change = makeChange(
    { ...author, nowMs: START_MS + 86_400_000, random: sameNumbers(view.changes + 7) },
    { words: 'later', entries },
  );
  return extend(view, [change]);
}
