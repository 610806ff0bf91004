/**
 * Speed as ratios measured in one run: machines differ, ratios hold to about a third.
 * Run with `npm run bench`.
 */
import { performance } from 'node:perf_hooks';
import { answerStudy, askStudy, loadAll } from '../src/engine/index.ts';
import { extend, fold, type StudyView } from '../src/study/index.ts';
import { monteCarloSection } from './monte-carlo.ts';
import { openingSection } from './opening.ts';
import { propagationSection } from './propagation.ts';
import { removalSection } from './removal.ts';
import { sealingSection } from './sealing.ts';
import { editOf, repeatable, syntheticChanges } from './synthetic-study.ts';

const PARTS = 5000;
const JOINTS = 8000;

/** Median time of `runs` calls, ms; each call gets what `before` makes, which is not timed. */
function median<T>(runs: number, before: (i: number) => T, timed: (made: T) => void): number {
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const made = before(i);
    const start = performance.now();
    timed(made);
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)] ?? Number.NaN;
}

const line = (what: string, ms: number, per: string): void =>
  console.log(`${what.padEnd(58)} ${ms.toFixed(1).padStart(9)} ms   ${per}`);

const questions = await loadAll();
const roll = questions.get('mass-roll-up');
if (!roll) throw new Error('the registry has no mass-roll-up');

const changes = syntheticChanges(PARTS, JOINTS);
const half = syntheticChanges(PARTS / 2, JOINTS / 2);
console.log(`${PARTS} parts, ${JOINTS} joints, made up; Node ${process.versions.node}\n`);

const foldWhole = median(
  5,
  () => changes,
  (c) => fold('bench', c),
);
const foldHalf = median(
  5,
  () => half,
  (c) => fold('bench', c),
);
line(
  'fold the whole study',
  foldWhole,
  `${(foldWhole / foldHalf).toFixed(2)} x half the study (2 is linear)`,
);

const fresh = (): StudyView => fold('bench', changes);
const nominal = median(5, fresh, (view) => nominalMass(view));
const first = median(5, fresh, (view) => askStudy(roll, questions, { view }));
line('sum of masses, nominal, first reading of every cell', nominal, '');
line(
  'mass and centre of gravity with spread, first time',
  first,
  `${(first / nominal).toFixed(1)} x nominal`,
);

const all = median(3, fresh, (view) => answerStudy(view, questions));
line(
  'every question of the registry',
  all,
  `${(all / first).toFixed(1)} x mass and centre of gravity`,
);

const random = repeatable(2);
let view = fresh();
let seq = changes.length + 1;
const target = view.nodes('part')[0]?.id ?? '';
const edit = median(
  9,
  () => editOf(seq++, target, 1 + random(), random),
  (change) => {
    view = extend(view, [change]);
    askStudy(roll, questions, { view });
  },
);
line(
  'one edit to mass and centre of gravity',
  edit,
  `${(edit / (foldWhole + first)).toFixed(2)} x opening the study anew`,
);

propagationSection(changes, questions, line);
monteCarloSection(changes, questions, line);
removalSection(PARTS, JOINTS, questions, median, line);
sealingSection(JOINTS, questions, median, line);
await openingSection(line);

function nominalMass(of: StudyView): number {
  let sum = 0;
  for (const { id } of of.nodes('part')) {
    const cell = of.cell(id, 'mass');
    if (!('missing' in cell) && cell.value.t === 'scalar') sum += cell.value.x;
  }
  return sum;
}
