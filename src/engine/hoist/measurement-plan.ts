import { type Id, propertyWords, removalSequence, type StudyView } from '../../study/index.ts';
import { askStudy } from '../ask.ts';
import { measureNext } from '../measure-next/index.ts';
import type { Out } from '../method.ts';
import type { Questions } from '../registry.ts';
import { holdsOf } from './holds.ts';

/** One reading of the plan: what for, with what, how long, and by when. */
export interface PlannedReading {
  readonly label: string;
  /** The open questions and claims that need it. */
  readonly needs: readonly string[];
  readonly instrument: string | undefined;
  readonly minutes: number | undefined;
  /** Step of the removal plan that would destroy it. */
  readonly before: string | undefined;
}

/** What has to be measured, and how far the study is. */
export interface MeasurementPlan {
  readonly readings: readonly PlannedReading[];
  /** Work of the readings whose instrument is known, minutes. */
  readonly minutes: number;
  readonly weighed: { readonly parts: number; readonly of: number };
  /** Gap of the parts against the scales, where it can be worked out. */
  readonly gap: Out | undefined;
  readonly open: number;
  /** Days from the day given to the day due; undefined where none is recorded. */
  readonly daysLeft: number | undefined;
  /** What of the vehicle as received is not recorded. */
  readonly notReceived: readonly string[];
}

const RECEIVED = [
  ...['options', 'fluids', 'damage', 'alignment', 'gaps', 'odometer'].map((p) => `received.${p}`),
  ...['received.tyrePressure.front', 'received.tyrePressure.rear'],
  ...['received.rideHeight.front', 'received.rideHeight.rear'],
  ...['FL', 'FR', 'RL', 'RR'].map((c) => `cornerLoad.${c}`),
  ...['wheelbase', 'track.front', 'track.rear'],
];

/** Readings that open questions need, those first that a step would destroy; `day` is today as 2026-11-25. */
export function measurementPlan(
  view: StudyView,
  questions: Questions,
  day: string,
): MeasurementPlan {
  const next = measureNext(view, questions, { limit: 500 });
  const holds = holdsOf(view, next);
  const order = removalSequence(view).map((step) => step.id);
  const firstHold = (subject: Id, property: string) =>
    holds.find((h) => h.of.subject === subject && h.of.property === property)?.step;
  const readings = next.readings.map(({ label, of, instrument, effects }) => {
    const step = of && firstHold(of.subject, of.property);
    const planned: PlannedReading = {
      label,
      needs: effects.flatMap((e) => next.open[e.open]?.words ?? []),
      instrument: instrument?.label,
      minutes: instrument?.minutes,
      before: step === undefined ? undefined : view.node(step)?.label,
    };
    return { planned, place: step === undefined ? order.length : order.indexOf(step) };
  });
  const parts = view.nodes('part');
  const root = view.root()?.id ?? '';
  return {
    readings: readings.sort((a, b) => a.place - b.place).map((r) => r.planned),
    minutes: readings.reduce((sum, r) => sum + (r.planned.minutes ?? 0), 0),
    weighed: {
      parts: parts.filter((p) => !('missing' in view.cell(p.id, 'mass'))).length,
      of: parts.length,
    },
    gap: gapOf(view, questions),
    open: next.open.length,
    daysLeft: daysTo(view, root, day),
    notReceived: RECEIVED.filter((p) => 'missing' in view.cell(root, p)).map(propertyWords),
  };
}

function gapOf(view: StudyView, questions: Questions): Out | undefined {
  const closure = questions.get('mass-closure');
  return closure && view.root() ? askStudy(closure, questions, { view }).outs.gap : undefined;
}

const DAY_MS = 86_400_000;

function daysTo(view: StudyView, root: Id, day: string): number | undefined {
  const cell = view.cell(root, 'plan.due');
  const due = !('missing' in cell) && cell.value.t === 'text' ? cell.value.text : '';
  const days = (Date.parse(due) - Date.parse(day)) / DAY_MS;
  return Number.isNaN(days) ? undefined : Math.round(days);
}
