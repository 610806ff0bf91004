import { answer } from '../src/engine/answer.ts';
import { indexedFormOf } from '../src/engine/answer-forms.ts';
import { boundInStudy } from '../src/engine/ask.ts';
import type { BoundInputs } from '../src/engine/bound-inputs.ts';
import { flatCells } from '../src/engine/flat-cells.ts';
import type { Question, Questions } from '../src/engine/index.ts';
import { Draws } from '../src/engine/monte-carlo/draws.ts';
import { type Sampler, samplerOf } from '../src/engine/monte-carlo/evaluate.ts';
import { LEADING, rankedVariables } from '../src/engine/monte-carlo/leading.ts';
import { type Change, fold, type StudyView } from '../src/study/index.ts';
import { sampleBySample } from './sample-by-sample.ts';
import { FLAGS, runStrict } from './strict-c.ts';

/** Samples of a whole study, and of how many one at a time is timed: it is too slow for more. */
const [SAMPLES, ONE_BY_ONE] = [10_000, 20];
/** Questions over all parts and over all joints, with the columns that their terms take. */
const ASKED = [
  ['mass-roll-up', ['mass', 'x', 'y', 'z']],
  ['install-time', ['count', 'access', 'drive']],
] as const;
/** What is wanted over strict C on one thread. */
const WANTED = 3;

type Line = (what: string, ms: number, per: string) => void;

interface Asked {
  readonly question: Question;
  readonly bound: BoundInputs;
  readonly columns: readonly string[];
  readonly sampler: Sampler;
}

/**
 * Monte Carlo of a whole study by the product's own engine: mass and centre of gravity over its
 * parts, install time over its joints, in columns; against strict C on the same draws, and against
 * the questions' own formulas one sample at a time.
 */
export function monteCarloSection(
  changes: readonly Change[],
  questions: Questions,
  line: Line,
): void {
  const view = fold('bench', changes);
  const asked = ASKED.flatMap(([id, columns]) => askedOf(id, columns, questions, view));
  const ranked = rankedOf(asked);
  const drawn = (size: number) => drawsOf(asked, ranked, size);
  const draws = drawn(SAMPLES);
  const first = cpuOf(() => all(asked, draws));
  const again = Math.min(...[0, 1, 2].map(() => cpuOf(() => all(asked, draws)).ms));
  line(
    `Monte Carlo, ${SAMPLES} samples, ${ranked.length} causes: draws made, once through`,
    first.ms,
    `${Math.round(process.resourceUsage().maxRSS / 1024)} MB at most so far (CPU time)`,
  );
  line('the same in columns, draws at hand', again, 'CPU time, one thread');
  againstC(asked, draws, first.made, again, line);
  oneByOne(asked, drawn(ONE_BY_ONE), again, line);
  growth(asked, drawn(SAMPLES / 2), again, line);
}

function againstC(
  asked: readonly Asked[],
  draws: Draws,
  made: readonly Float64Array[],
  ms: number,
  line: Line,
): void {
  const tables = asked.map(({ bound, columns }) => ({ cells: cellsOf(bound), columns }));
  const strict = runStrict(tables, draws);
  if (!strict) {
    console.log('strict C: skipped, there is no gcc on this machine');
    return;
  }
  const ratio = ms / (1000 * strict.seconds);
  const apart = mostApart(made, strict.results);
  line(`strict C (gcc ${FLAGS.join(' ')}), same draws`, 1000 * strict.seconds, 'CPU time');
  console.log(
    `strict C: ${ratio.toFixed(1)} x (${ratio < WANTED ? 'within' : 'over'} ${WANTED} x); results apart by ${apart.toExponential(1)} at most`,
  );
  if (!(apart < 1e-9)) throw new Error('columns and strict C do not agree to 1e-9');
}

function oneByOne(asked: readonly Asked[], draws: Draws, ms: number, line: Line): void {
  const columns = all(asked, draws);
  const single = cpuOf(() =>
    asked.flatMap(({ question, bound }) => sampleBySample(question, cellsOf(bound), draws)),
  );
  const apart = mostApart(columns, joined(single.made));
  const scaled = (single.ms * SAMPLES) / draws.size;
  line(
    `a sample at a time in TypeScript, from ${draws.size} samples`,
    scaled,
    `${(scaled / ms).toFixed(0)} x columns; results apart by ${apart.toExponential(1)} at most`,
  );
  if (!(apart < 1e-9)) throw new Error('columns and single samples do not agree to 1e-9');
}

function growth(asked: readonly Asked[], half: Draws, ms: number, line: Line): void {
  all(asked, half);
  const own = Math.min(...[0, 1, 2].map(() => cpuOf(() => all(asked, half)).ms));
  line('half the samples', own, `${(ms / own).toFixed(2)} x for twice as many (2 is linear)`);
}

function askedOf(
  id: string,
  columns: readonly string[],
  questions: Questions,
  view: StudyView,
): Asked[] {
  const question = questions.get(id);
  if (!question) throw new Error(`the registry has no ${id}`);
  const bound = boundInStudy(question, questions, { view });
  return [{ question, bound, columns, sampler: samplerOf(question, bound) }];
}

function rankedOf(asked: readonly Asked[]): number[] {
  const forms = asked.flatMap(({ question, bound }) =>
    Object.values(answer(question, bound).outs).flatMap((out) => indexedFormOf(out) ?? []),
  );
  return [...new Set(asked.flatMap(({ bound }) => rankedVariables(bound, forms)))];
}

function drawsOf([first]: readonly Asked[], ranked: readonly number[], size: number): Draws {
  if (!first) throw new Error('nothing is asked');
  const { variables } = first.bound;
  return new Draws({
    ...{ variables, size, seed: 1 },
    ...{ leading: ranked.slice(0, LEADING), count: ranked.length },
  });
}

const cellsOf = ({ cells, tables, variables }: BoundInputs) =>
  cells ?? flatCells(Object.values(tables)[0] ?? [], variables);

/** Columns of all results, question after question. */
const all = (asked: readonly Asked[], draws: Draws): Float64Array[] =>
  asked.flatMap(({ sampler }) => {
    const sampling = sampler(draws);
    for (;;) {
      const step = sampling.next();
      if (step.done) return [...step.value];
    }
  });

/** CPU time of a call, ms: on a shared machine waiting says nothing. */
function cpuOf<T>(call: () => T): { readonly ms: number; readonly made: T } {
  const before = process.cpuUsage();
  const made = call();
  const { user, system } = process.cpuUsage(before);
  return { made, ms: (user + system) / 1000 };
}

function joined(columns: readonly Float64Array[]): Float64Array {
  return Float64Array.from(columns.flatMap((column) => [...column]));
}

/** Largest difference of two lists of results, over the largest size in each column. */
function mostApart(columns: readonly Float64Array[], flat: Float64Array): number {
  let [most, at] = [0, 0];
  for (const column of columns) {
    const scale = column.reduce((m, x) => Math.max(m, Math.abs(x)), 0);
    for (const x of column) most = Math.max(most, Math.abs(x - (flat[at++] ?? Number.NaN)) / scale);
  }
  return at === flat.length ? most : Number.NaN;
}
