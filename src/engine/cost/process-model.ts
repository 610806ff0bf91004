import type { Kind } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import {
  type OutputSpec,
  type PlainInputs,
  type Question,
  question,
  type ScalarInput,
  type TermInput,
} from '../method.ts';
import { PROCESSES } from '../sections.ts';
import { type CostLines, costLines, NEUTRAL, type Running, type Work } from './cost-lines.ts';
import { restsOn } from './rests-on.ts';
import { RUNNING } from './shared-inputs.ts';

/** Numbers of the inputs by name, SI. */
export type Numbers = Readonly<Record<string, number>>;

/** Words of the inputs by name. */
export type Words = Readonly<Record<string, string>>;

/** What a process is planned to take: the work itself, and steps worth showing. */
export interface Plan {
  readonly work: Work;
  readonly steps?: Numbers;
  readonly findings?: readonly Finding[];
}

/** A process model: one file defines one; the build-up of the cost is common to all. */
export interface ProcessSpec
  extends Pick<
    Question,
    'id' | 'title' | 'wording' | 'sources' | 'assumptions' | 'example' | 'checks'
  > {
  readonly subject?: Question['subject'];
  /** Its own inputs: what can be measured on the part, and the constants of the process. */
  readonly inputs: readonly (ScalarInput | TermInput)[];
  /** From its inputs to the work of a piece: pure, on SI numbers. */
  readonly plan: (x: Numbers, terms: Words) => Plan;
  /** Steps that the plan gives, with their formulas. */
  readonly steps?: readonly OutputSpec[];
  /** Method error of the cost, relative; half of its variance is common to all parts. */
  readonly error?: number;
}

const line = (
  name: keyof CostLines,
  symbol: string,
  meaning: string,
  shown: string,
): OutputSpec => ({
  ...{ name, symbol, kind: 'money' as Kind, unit: '{u}', meaning, shown },
});

const COST: OutputSpec = line(
  'cost',
  'C',
  'cost of a good piece, delivered',
  'C = k (C_m + C_b + C_a + C_w + C_t) + C_p + C_f',
);

/** A line of the build-up, and the input without which a process has none. */
const LINES: readonly (readonly [OutputSpec, needs: string])[] = [
  [
    line(
      'material',
      'C_m',
      'material, less scrap sold',
      'C_m = (G p − (G − m (1 − f)) q) / (1 − f)',
    ),
    'price',
  ],
  [line('machine', 'C_a', 'machine', 'C_a = R s t'), 'machine'],
  [line('labour', 'C_w', 'labour', 'C_w = c w t'), 'crew'],
  [line('tooling', 'C_t', 'tools, in whole sets', 'C_t = T S / (N Y)'), 'toolLife'],
];

const BOUGHT = line('bought', 'C_b', 'bought in', 'as the steps say, over 1 − f');

const TIME: OutputSpec = {
  ...{ name: 'time', symbol: 't', kind: 'time', unit: 's', step: true },
  meaning: 'time for a good piece, with its share of setting up',
  shown: 't = z / (n_z A (1 − f)) + tₛ / B',
};

const LIVES: OutputSpec = {
  ...{ name: 'lives', symbol: 'Z', kind: 'ratio', unit: '1', step: true },
  meaning: 'lives of a set of tools that all pieces take; sets S are these rounded up',
  shown: 'Z = N Y / L',
};

/** A question that asks what a part or joint costs by one process. */
export function processModel(spec: ProcessSpec): Question {
  const { plan, steps = [], error = 0.1, inputs, ...rest } = spec;
  const all = [...inputs, ...runningOf(inputs)];
  const outputs = [...outputsOf(all, plan), ...steps];
  const linesOf = (x: Numbers, terms: Words): CostLines =>
    costLines(plan(x, terms).work, running(x));
  return question({
    version: 1,
    subject: 'part',
    section: PROCESSES,
    onRequest: true,
    ...rest,
    inputs: all,
    body: {
      body: 'solve',
      outputs,
      solve: ({ scalars, terms }: PlainInputs) => {
        const { steps: found = {}, findings = [] } = plan(scalars, terms);
        const made: Numbers = { ...found, ...linesOf(scalars, terms) };
        const entries = outputs.map(({ name }) => [name, made[name] ?? Number.NaN] as const);
        return { outputs: Object.fromEntries(entries), findings };
      },
    },
    look: restsOn(linesOf, all.filter(isScalar)),
    modelError: { cost: { relative: error, sharedFraction: 0.5 } },
    cautions: [],
  });
}

const isScalar = (i: ScalarInput | TermInput): i is ScalarInput => i.in === 'scalar';

/** How a usual plant runs, as far as the process has people or a machine and does not say itself. */
function runningOf(inputs: ProcessSpec['inputs']): readonly ScalarInput[] {
  const names = new Set(inputs.map((i) => i.name));
  const idle = (name: string): boolean =>
    (name === 'labour' && !names.has('crew')) ||
    (name === 'availability' && !names.has('crew') && !names.has('machine'));
  return RUNNING.filter(({ name }) => !names.has(name) && !idle(name));
}

/** The lines that the process has, of those common to all. */
function outputsOf(
  inputs: ProcessSpec['inputs'],
  plan: ProcessSpec['plan'],
): readonly OutputSpec[] {
  const names = new Set(inputs.map((i) => i.name));
  const anything = Object.fromEntries(inputs.map(({ name }) => [name, 1]));
  const { work } = plan(anything, {});
  return [
    COST,
    ...LINES.filter(([, needs]) => names.has(needs)).map(([output]) => output),
    ...('bought' in work ? [BOUGHT] : []),
    ...('cycle' in work ? [TIME] : []),
    ...(names.has('toolLife') ? [LIVES] : []),
  ];
}

const running = (x: Numbers): Running =>
  Object.fromEntries(
    Object.entries(NEUTRAL).map(([name, neutral]) => [name, x[name] ?? neutral]),
  ) as unknown as Running;

/** A step of a process. */
export const step = (
  name: string,
  symbol: string,
  kind: Kind,
  unit: string,
  meaning: string,
  shown: string,
): OutputSpec => ({ name, symbol, kind, unit, meaning, shown, step: true });

/** Something about an input that the plan can't do. */
export const beyond = (column: string, what: string, next: string): Finding => ({
  ...{ code: 'process-limit', level: 'doubt', place: { column }, what, next },
});
