import { GATES, type Gate, type GateId, gateOf, type Lapse } from '../data/index.ts';
import type { Change } from './change.ts';
import { doubt, type FoldState } from './fold-state.ts';
import {
  type GateLapse,
  type GateOverride,
  type GateRecord,
  gatesNamed,
  lackingOf,
  type StepMark,
} from './gate.ts';
import type { Id } from './ids.ts';
import { removalSequence } from './removal-sequence.ts';
import type { StudyView } from './view.ts';

/** A record as it stands, or what stands in for it. */
export interface StandingGate {
  readonly record?: GateRecord;
  readonly override?: GateOverride;
  /** Who put it down. */
  readonly by: string;
  readonly lapsed?: Lapse;
}

/** A mark as it was made, and how each gate stood just then. */
export interface StandingMark {
  readonly mark: StepMark;
  readonly by: string;
  readonly gates: ReadonlyMap<GateId, GateState['state']>;
}

/** How one gate of a step stands. */
export interface GateState {
  readonly gate: Gate;
  readonly state: 'complete' | 'override' | 'not complete';
  /** What keeps it from being complete, a line each. */
  readonly lacking: readonly string[];
  readonly held?: StandingGate;
}

/** How a step stands: the same for every door, for it comes from the fold. */
export interface StepState {
  readonly step: Id;
  readonly gates: readonly GateState[];
  readonly mark?: StandingMark;
  /** Marked as done, with every gate complete, or overridden where that is allowed, when it was marked. */
  readonly done: boolean;
  /** A mark that is kept and not shown as done, and why. */
  readonly notShown: readonly string[];
}

const stepKey = (step: Id, gate: GateId): string => `${step} ${gate}`;

export function putGate(s: FoldState, record: GateRecord, change: Change): void {
  s.gates.set(stepKey(record.step, record.gate), { record, by: change.by });
}

export function putOverride(s: FoldState, override: GateOverride, change: Change): void {
  const key = stepKey(override.step, override.gate);
  s.gates.set(key, { ...s.gates.get(key), override, by: change.by });
}

export function lapseGates(s: FoldState, { why }: Pick<GateLapse, 'why'>): void {
  for (const [key, held] of s.gates) {
    const gate = gateOf(held.record?.gate ?? held.override?.gate ?? '');
    if (gate?.lapses.includes(why) && !held.lapsed) s.gates.set(key, { ...held, lapsed: why });
  }
}

/** Keeps a mark with how every gate stands just now: what is put down later does not reach back. */
export function markStep(s: FoldState, mark: StepMark, change: Change, view: StudyView): void {
  const gates = new Map(
    GATES.map((gate) => [gate.id, stateOf(gate, s.gates.get(stepKey(mark.step, gate.id))).state]),
  );
  s.stepMarks.set(mark.step, { mark, by: change.by, gates });
  if (!mark.done) return;
  const { done, notShown } = stepState(s, view, mark.step);
  if (!done) notShownAsDone(s, view, mark.step, notShown);
  else if (takesPack(view, mark.step)) lapseGates(s, { why: 'pack moved' });
}

const notShownAsDone = (s: FoldState, view: StudyView, step: Id, why: readonly string[]): void =>
  doubt(
    s,
    'step-without-record',
    { subject: view.node(step)?.label ?? step },
    `marked as done and not shown as done: ${why.join('; ')}`,
    'Complete the record, then mark the step again.',
  );

function stateOf(gate: Gate, held: StandingGate | undefined): GateState {
  const lacking = lackingOf(gate, held?.record);
  const kept = held ? { held } : {};
  if (held?.lapsed)
    return { gate, state: 'not complete', lacking: [`lapsed: ${held.lapsed}`], ...kept };
  if (lacking.length === 0) return { gate, state: 'complete', lacking, ...kept };
  const taken = held?.override !== undefined && gate.override;
  return { gate, state: taken ? 'override' : 'not complete', lacking, ...kept };
}

export function stepState(s: FoldState, view: StudyView, step: Id): StepState {
  const gates = gatesAt(view, step).flatMap((id) => {
    const gate = gateOf(id);
    return gate ? [stateOf(gate, s.gates.get(stepKey(step, id)))] : [];
  });
  const mark = s.stepMarks.get(step);
  if (!mark?.mark.done)
    return { step, gates, done: false, notShown: [], ...(mark ? { mark } : {}) };
  const notShown = gates
    .filter(({ gate }) => (mark.gates.get(gate.id) ?? 'not complete') === 'not complete')
    .map(({ gate }) => `${gate.title}: the record was not complete when the step was marked`);
  return { step, gates, mark, done: notShown.length === 0, notShown };
}

const isPack = (view: StudyView, id: Id): boolean => view.properties(id).includes('packEnergy');

const takesPack = (view: StudyView, step: Id): boolean =>
  (removalSequence(view).find((r) => r.id === step)?.nodes ?? []).some((id) => isPack(view, id));

/**
 * Gates of a step: those written on it, none of which another reading takes away, and those that
 * follow from what it takes: a pack, something out of a pack, or anything that stands on the hoist.
 */
export function gatesAt(view: StudyView, step: Id): readonly GateId[] {
  const written = view
    .readings(step, 'gates')
    .filter((r) => !r.withdrawn)
    .flatMap(({ reading: { value } }) => (value.t === 'text' ? gatesNamed(value.text) : []));
  const wanted = new Set<GateId>([...written, ...byWhatItTakes(view, step)]);
  return GATES.map((g) => g.id).filter((id) => wanted.has(id));
}

function byWhatItTakes(view: StudyView, step: Id): GateId[] {
  const removal = removalSequence(view).find((r) => r.id === step);
  if (!removal) return [];
  const { nodes, parts } = removal;
  const whole = nodes.some((id) => isPack(view, id));
  const inside = !whole && nodes.some((id) => isInPack(view, id));
  return [
    ...(whole ? (['high-voltage', 'absence-of-voltage', 'lowering'] as const) : []),
    ...(inside ? (['pack-lid', 'warm-cells'] as const) : []),
    ...(parts.length > 0 ? (['hoist-limit'] as const) : []),
  ];
}

function isInPack(view: StudyView, id: Id): boolean {
  for (let at = view.node(id)?.parent ?? null; at !== null; at = view.node(at)?.parent ?? null)
    if (isPack(view, at)) return true;
  return false;
}
