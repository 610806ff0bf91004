import {
  type Figure,
  type Hold,
  hoistSheets,
  markEntries,
  needsBalance,
  type Out,
  type Questions,
  type StepSheet,
  stopsOf,
} from '../../../src/engine/index.ts';
import {
  type Entry,
  type Finding,
  type GateState,
  type Id,
  type Lapse,
  type Refusal,
  readGateAnswers,
  type StudyView,
} from '../../../src/study/index.ts';
import { waitingForMass } from './weighing.ts';

/** One step of the removal plan as the hoist shows it. */
export interface HoistStep {
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  readonly standing: 'done' | 'stopped' | 'to be done' | 'marked, not shown as done';
  readonly stops: readonly Refusal[];
  readonly gates: readonly GateState[];
  readonly holds: readonly Hold[];
  /** Why a mark is not shown as done. */
  readonly notShown: readonly string[];
  /** Results of the balance after the step, by name. */
  readonly outs: Readonly<Record<string, Out>>;
  readonly parts: readonly { readonly id: Id; readonly label: string; readonly name: string }[];
}

/** What the day leaves open: each with the first of them by label. */
export interface DayEnd {
  readonly words: string;
  readonly labels: readonly string[];
}

export interface HoistModel {
  readonly steps: readonly HoistStep[];
  readonly next: Id | undefined;
  readonly figures: readonly Figure[];
  /** What is wrong with the order, and the orders proposed. */
  readonly findings: readonly Finding[];
  readonly proposals: readonly { readonly title: string; readonly steps: readonly string[] }[];
  /** People named in the record so far. */
  readonly names: readonly string[];
  readonly dayEnd: readonly DayEnd[];
}

/** The hoist as it stands; undefined where the study has no removal plan. */
export function hoistModel(view: StudyView, questions: Questions): HoistModel | undefined {
  const sheets = hoistSheets(view, questions);
  if (!sheets) return undefined;
  const { steps, order, next } = sheets;
  return {
    steps: steps.map((sheet) => stepOf(view, sheet)),
    next,
    figures: (order.figures ?? []).filter((f) => f.f === 'drawing'),
    findings: order.findings.filter((f) => f.level === 'gap'),
    proposals: (order.further ?? []).map(({ title, rows }) => ({
      title,
      steps: rows.map((row) => `${row[1]} ${row[2]}`),
    })),
    names: namesIn(steps),
    dayEnd: dayEndOf(view),
  };
}

function stepOf(view: StudyView, sheet: StepSheet): HoistStep {
  const { id, label, name, state, holds, balance, parts } = sheet;
  return {
    ...{ id, label, name, holds, gates: state.gates, notShown: state.notShown },
    standing: standingOf(sheet),
    stops: state.done ? [] : stopsOf(sheet),
    outs: balance.outs,
    parts: parts.flatMap((part) => {
      const node = view.node(part);
      return node ? [{ id: node.id, label: node.label, name: node.name }] : [];
    }),
  };
}

function standingOf(sheet: StepSheet): HoistStep['standing'] {
  if (sheet.state.done) return 'done';
  if (sheet.state.mark?.mark.done) return 'marked, not shown as done';
  return needsBalance(sheet) && sheet.against.length > 0 ? 'stopped' : 'to be done';
}

function namesIn(steps: readonly StepSheet[]): readonly string[] {
  const people = steps.flatMap(({ state }) =>
    state.gates.flatMap(({ gate, held }) =>
      (held?.record?.answers ?? [])
        .filter((a) => gate.items.some((i) => i.id === a.item && i.takes === 'person'))
        .map((a) => a.asWritten),
    ),
  );
  return [...new Set(people)].sort();
}

function dayEndOf(view: StudyView): readonly DayEnd[] {
  const joined = (bag: Id) => view.links('keeps', bag).some((l) => l.from === bag && l.to !== null);
  const bags = view.nodes('bag').filter((bag) => !joined(bag.id));
  const open = view.claims().filter((c) => view.ties(c.id).length === 0);
  return [
    { words: 'parts without a mass', labels: waitingForMass(view).map((w) => w.label) },
    { words: 'bags without a joint', labels: bags.map((b) => b.label) },
    { words: 'claims not tied to a question', labels: open.map((c) => c.words) },
    {
      words: 'photographs without a part',
      labels: view
        .photos()
        .filter((p) => p.subject === null)
        .map((p) => p.caption),
    },
  ];
}

/** What a person does at the hoist. */
export type HoistAct =
  | {
      readonly do: 'record';
      readonly step: Id;
      readonly gate: string;
      readonly written: Readonly<Record<string, string>>;
    }
  | {
      readonly do: 'override';
      readonly step: Id;
      readonly gate: string;
      readonly who: string;
      readonly why: string;
    }
  | { readonly do: 'lapse'; readonly why: Lapse }
  | { readonly do: 'mark'; readonly step: Id; readonly done: boolean };

/**
 * The entries of what is done at the hoist, with its words for the history.
 * @throws RefusalError for what can not be read, and for a step that may not be marked as done.
 */
export function hoistEntries(
  view: StudyView,
  questions: Questions,
  act: HoistAct,
  { at, id }: { readonly at: string; readonly id: () => Id },
): { words: string; entries: Entry[] } {
  const label = 'step' in act ? (view.node(act.step)?.label ?? '') : '';
  if (act.do === 'lapse')
    return {
      words: `records lapse: ${act.why}`,
      entries: [{ v: 1, e: 'gate.lapse', lapse: { id: id(), at, why: act.why } }],
    };
  if (act.do === 'mark')
    return {
      words: `${label} ${act.done ? 'done' : 'not done'}`,
      entries: act.done
        ? [...markEntries(view, questions, { step: act.step, at, ids: id })]
        : [{ v: 1, e: 'step.mark', mark: { id: id(), step: act.step, at, done: false } }],
    };
  const { gate, answers } = readGateAnswers(act.gate, act.do === 'record' ? act.written : {});
  if (act.do === 'record') {
    const record = { id: id(), step: act.step, gate: gate.id, at, answers };
    return {
      words: `${label}: record of ${gate.title}`,
      entries: [{ v: 1, e: 'gate.record', record }],
    };
  }
  const { step, who, why } = act;
  const override = { id: id(), step, gate: gate.id, at, who, why };
  return {
    words: `${label}: override of ${gate.title} by ${who}`,
    entries: [{ v: 1, e: 'gate.override', override }],
  };
}
