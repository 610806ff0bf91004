import {
  type HoistSheets,
  hoistSheets,
  loadAll,
  type MeasurementPlan,
  markEntries,
  measurementPlan,
} from '../engine/index.ts';
import {
  type Entry,
  type GateOverride,
  type Id,
  type Lapse,
  type Refusal,
  RefusalError,
  readGateAnswers,
  type StudyView,
} from '../study/index.ts';
import type { Library } from './library.ts';

/** The removal plan with how every step stands; undefined where the study has none. */
export const hoistOf = async (view: StudyView): Promise<HoistSheets | undefined> =>
  hoistSheets(view, await loadAll());

/** Readings to take and how far the study is, on a day as 2026-11-25. */
export const measurementPlanOf = async (view: StudyView, day: string): Promise<MeasurementPlan> =>
  measurementPlan(view, await loadAll(), day);

/** What is put down at the hoist, by whom. */
export interface AtHoist {
  readonly study: Id;
  readonly by: string;
}

const now = (): string => new Date().toISOString().slice(0, 19);

/** Records a gate of a step: what was recorded of it before and is not written anew stays. */
export async function recordGate(
  library: Library,
  { study, by }: AtHoist,
  step: Id,
  gate: string,
  written: Readonly<Record<string, string>>,
): Promise<void> {
  const { answers, gate: found } = readGateAnswers(gate, written);
  const held = (await library.view(study)).step(step).gates.find((g) => g.gate.id === found.id);
  const kept = held?.held?.lapsed ? [] : (held?.held?.record?.answers ?? []);
  const fresh = new Set(answers.map((a) => a.item));
  const record = {
    ...{ id: library.newStudy(), step, gate: found.id, at: now() },
    answers: [...kept.filter((a) => !fresh.has(a.item)), ...answers],
  };
  await library.record(study, by, `record of ${found.title}`, [{ v: 1, e: 'gate.record', record }]);
}

/** @throws RefusalError for a gate that allows none, and without name or reason. */
export async function overrideGate(
  library: Library,
  { study, by }: AtHoist,
  override: Omit<GateOverride, 'id' | 'at'>,
): Promise<void> {
  const entry: Entry = {
    v: 1,
    e: 'gate.override',
    override: { ...override, id: library.newStudy(), at: now() },
  };
  await library.record(study, by, `override of ${override.gate} by ${override.who}`, [entry]);
}

/** Records taken before are not good any more: after a break, at a change of shift, when the pack moved. */
export async function lapseGates(
  library: Library,
  { study, by }: AtHoist,
  why: Lapse,
): Promise<void> {
  const lapse = { id: library.newStudy(), at: now(), why };
  await library.record(study, by, `records lapse: ${why}`, [{ v: 1, e: 'gate.lapse', lapse }]);
}

/**
 * Marks a step as done, or takes that back.
 * @throws RefusalError with all that keeps it from being done.
 */
export async function markStep(
  library: Library,
  { study, by }: AtHoist,
  step: Id,
  done: boolean,
): Promise<void> {
  const view = await library.view(study);
  const ids = () => library.newStudy();
  const node = view.node(step);
  if (!node) throw new RefusalError(noStep(step));
  const entries = done
    ? markEntries(view, await loadAll(), { step, at: now(), ids })
    : [{ v: 1, e: 'step.mark', mark: { id: ids(), step, at: now(), done } } as const];
  await library.record(study, by, `${node.label} ${done ? 'done' : 'not done'}`, entries);
}

const noStep = (step: Id): Refusal => ({
  code: 'not-found',
  place: { subject: step },
  value: step,
  why: 'there is no such step in the study',
  next: 'See the steps: hoistside hoist --study <name>.',
});
