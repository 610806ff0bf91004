import {
  type GateAnswer,
  type Id,
  type PlannedRemoval,
  removalSequence,
  type StepState,
  type StudyView,
} from '../../study/index.ts';
import { askStudy } from '../ask.ts';
import { measureNext } from '../measure-next/index.ts';
import type { Answer, DecisionWord, Out } from '../method.ts';
import type { Questions } from '../registry.ts';
import { type Hold, holdsOf } from './holds.ts';

/** Everything about one step of the removal plan that the hoist, the line and the report show. */
export interface StepSheet extends PlannedRemoval {
  readonly state: StepState;
  /** Numbers of steps that must be done before and are not. */
  readonly waitsFor: readonly string[];
  readonly balance: Answer;
  /** What the balance says against its limits, worst first; empty where all holds. */
  readonly against: readonly Against[];
  readonly holds: readonly Hold[];
}
export interface Against {
  readonly out: Out;
  readonly word: DecisionWord | 'not complete';
}

export interface HoistSheets {
  readonly steps: readonly StepSheet[];
  /** The order of the plan with what is wrong with it and the orders proposed. */
  readonly order: Answer;
  /** The step to do next: the first that is not done. */
  readonly next?: Id;
}

const LIMITS = ['spareX', 'spareY', 'spareArm', 'spareLift'] as const;

/** The removal plan with how every step stands; undefined where the study has none. */
export function hoistSheets(view: StudyView, questions: Questions): HoistSheets | undefined {
  const plan = removalSequence(view);
  const [balance, order] = [questions.get('hoist-balance'), questions.get('removal-order')];
  if (plan.length === 0 || !balance || !order) return undefined;
  const whole = askStudy(order, questions, { view });
  const holds = holdsOf(view, measureNext(view, questions, { limit: MANY }));
  const states = new Map(plan.map((step) => [step.label, view.step(step.id)]));
  const steps = plan.map((step): StepSheet => {
    const answer = askStudy(balance, questions, { view, subject: step.id });
    return {
      ...step,
      state: view.step(step.id),
      waitsFor: firstOf(whole, step.label).filter((label) => !states.get(label)?.done),
      balance: answer,
      against: againstOf(answer),
      holds: holds.filter((h) => h.step === step.id),
    };
  });
  const next = steps.find((s) => !s.state.done)?.id;
  return { steps, order: whole, ...(next === undefined ? {} : { next }) };
}

/** Every reading that an open question needs may be one to hold a step for. */
const MANY = 500;

/** What must come first, by the table of the whole plan. */
const firstOf = ({ detail }: Answer, label: string): string[] =>
  String(detail?.rows.find((row) => row[0] === label)?.[2] ?? '')
    .split('; ')
    .filter(Boolean);

const againstOf = ({ outs }: Answer): Against[] =>
  LIMITS.flatMap((name): Against[] => {
    const out = outs[name];
    if (!out || out.decision?.word === 'holds') return [];
    return [{ out, word: out.decision?.word ?? 'not complete' }];
  });

/**
 * The record of the gate "balance on the hoist" from the predicted balance: margins less, and
 * loads plus, two standard uncertainties. What could not be worked out is left out, so that the
 * record is not complete.
 */
export function balanceRecord({ outs, steps }: Answer): readonly GateAnswer[] {
  const x = (name: string): number | undefined => outs[name]?.x;
  const surely = (name: string): number | undefined => {
    const out = outs[name];
    return out && out.u !== 'incomplete' ? out.x - 2 * out.u : undefined;
  };
  const rating = (symbol: string) => steps.find((s) => s.symbol === symbol)?.x;
  const added = (a: number | undefined, b: number | undefined, sign = 1) =>
    a === undefined || b === undefined ? undefined : a + sign * b;
  const [arm, lift] = [rating('Rₐ'), rating('R')];
  const lines: readonly (readonly [string, number | undefined, 'm' | 'kg'])[] = [
    ['limitX', x('limitX'), 'm'],
    ['marginX', added(x('limitX'), surely('spareX')), 'm'],
    ['limitY', x('limitY'), 'm'],
    ['marginY', added(x('limitY'), surely('spareY')), 'm'],
    ['armRating', arm, 'kg'],
    ['armLoad', added(arm, surely('spareArm'), -1), 'kg'],
    ['liftRating', lift, 'kg'],
    ['liftLoad', added(lift, surely('spareLift'), -1), 'kg'],
  ];
  return lines.flatMap(([item, value, unit]) =>
    value === undefined
      ? []
      : [
          {
            item,
            x: value,
            asWritten: unit === 'm' ? `${mm(value)} mm` : `${value.toFixed(1)} kg`,
          },
        ],
  );
}

const mm = (x: number): string => (1000 * x).toFixed(0);
