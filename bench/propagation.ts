import { answer } from '../src/engine/answer.ts';
import { indexedFormOf } from '../src/engine/answer-forms.ts';
import { bindStudy } from '../src/engine/bind/bind-study.ts';
import { keptFor } from '../src/engine/bind/kept.ts';
import { largestOf } from '../src/engine/forms/largest.ts';
import {
  type Answer,
  askStudy,
  measureNext,
  type Question,
  type Questions,
} from '../src/engine/index.ts';
import { type Change, extend, fold, type StudyView } from '../src/study/index.ts';
import { editOf, repeatable } from './synthetic-study.ts';

/** What is wanted, ms: linear propagation once inputs are bound, and one edit to everything. */
const WANTED = { propagation: 20, edit: 16 };
/** Contributions ranked of every total. */
const RANKED = 20;
/** Calls that warm the code up, and calls that are timed. */
const [WARM, RUNS] = [15, 31];

const TOTALS = ['mass-roll-up', 'mass-closure', 'install-time', 'part-cost'];
/** Widths so narrow that every total is open: measure next has all of its work to do. */
const ASKS = [
  { question: 'mass-closure', output: 'gap', width: { u: 0.1 } },
  { question: 'mass-roll-up', output: 'mass', width: { u: 0.1 } },
  { question: 'mass-roll-up', output: 'x', width: { u: 1e-5 } },
  { question: 'install-time', output: 'time', width: { relative: 1e-4 } },
  { question: 'part-cost', output: 'cost', width: { relative: 0.01 } },
];

type Line = (what: string, ms: number, per: string) => void;

/**
 * Linear propagation of the whole study and one edit to all that hangs on it: mass, centre of
 * gravity, closure, install time and cost, by the code that a browser's worker runs.
 */
export function propagationSection(
  changes: readonly Change[],
  questions: Questions,
  line: Line,
): void {
  const totals = TOTALS.flatMap((id) => questions.get(id) ?? []);
  if (totals.length < TOTALS.length) throw new Error('the registry lacks a total');
  const view = fold('bench', changes);
  const first = timeOf(() => allTotals(totals, questions, view));
  line('all totals with spread, first time: bound and propagated', first, '');
  const bound = boundTotals(totals, questions, view);
  const propagated = repeated(() => {
    for (const { question, inputs } of bound) answer(question, { ...inputs, before: {} });
  });
  told('linear propagation of all totals, once bound', propagated, WANTED.propagation, line);
  const edited = repeated(editing(totals, questions, view, changes.length));
  told('one edit to all totals, contributions, measure next', edited, WANTED.edit, line);
}

interface Times {
  readonly median: number;
  readonly least: number;
}

function timeOf(call: () => unknown): number {
  const start = performance.now();
  call();
  return performance.now() - start;
}

function repeated(call: () => unknown): Times {
  for (let i = 0; i < WARM; i++) call();
  const times = Array.from({ length: RUNS }, () => timeOf(call)).sort((a, b) => a - b);
  return { median: times[(RUNS - 1) / 2] ?? Number.NaN, least: times[0] ?? Number.NaN };
}

const told = (what: string, { median, least }: Times, wanted: number, line: Line): void =>
  line(
    what,
    median,
    `least ${least.toFixed(1)} ms; median ${median < wanted ? 'under' : 'over'} the ${wanted} ms wanted`,
  );

const allTotals = (
  totals: readonly Question[],
  questions: Questions,
  view: StudyView,
): readonly Answer[] => totals.map((question) => askStudy(question, questions, { view }));

/** The totals' inputs, bound and laid out, with none of their rows worked out. */
function boundTotals(totals: readonly Question[], questions: Questions, view: StudyView) {
  const kept = keptFor(view, questions, undefined);
  const subject = view.root()?.id ?? '';
  const askWithin = (id: string, at: string): Answer | string => {
    const used = questions.get(id);
    return used ? askStudy(used, questions, { view, subject: at }) : id;
  };
  return totals.map((question) => {
    const inputs = bindStudy({ question, view, subject, rates: undefined, kept, askWithin });
    return { question, inputs };
  });
}

/** Each call measures the mass of another part again, and asks everything anew. */
function editing(
  totals: readonly Question[],
  questions: Questions,
  start: StudyView,
  changes: number,
): () => void {
  const random = repeatable(2);
  const parts = start.nodes('part').map((n) => n.id);
  let view = start;
  let edits = 0;
  return () => {
    const part = parts[(edits++ * 97) % parts.length] ?? '';
    view = extend(view, [editOf(changes + edits, part, 1 + random(), random)]);
    for (const { outs } of allTotals(totals, questions, view))
      for (const out of Object.values(outs)) {
        const form = indexedFormOf(out);
        if (form) largestOf(form, RANKED);
      }
    measureNext(view, questions, { asks: ASKS });
  };
}
