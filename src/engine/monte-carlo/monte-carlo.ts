import { studentT } from '../../quantity/index.ts';
import { answer } from '../answer.ts';
import { indexedFormOf } from '../answer-forms.ts';
import type { BoundInputs } from '../bound-inputs.ts';
import { decideDifference, decideMargin } from '../decide.ts';
import { directionOf } from '../direction.ts';
import type { Answer, Out, OutputSpec, Question } from '../method.ts';
import { Blocks } from './blocks.ts';
import { Draws } from './draws.ts';
import { type Sampler, samplerOf } from './evaluate.ts';
import { histogramOf } from './histogram.ts';
import { LEADING, rankedVariables } from './leading.ts';
import { withMethod } from './method-errors.ts';
import type { Progress, Sampled, SampledOut, SampleOptions, Validated } from './sampled.ts';
import { sensitivityOf } from './sensitivity.ts';
import { summaryOf } from './summary.ts';
import { toleranceOf } from './tolerance.ts';

/** Samples of one block: no fewer than JCGM 101:2008, 7.9.4 b) asks for at 95 %. */
const BLOCK = 10_000;
const MOST = 200_000;

/** A run under way: steps small enough that whoever drives it may tell how far it is, or stop. */
export type SampleRun = Generator<Progress, Sampled, undefined>;

/**
 * Propagates distributions through a question by Monte Carlo (JCGM 101:2008): blocks of samples
 * until mean, spread and interval have settled (7.9), then the linear result held against them
 * (clause 8). Results that are not complete are sampled with what is known of them.
 */
export function* sampleBound(
  question: Question,
  bound: BoundInputs,
  options: SampleOptions = {},
): SampleRun {
  const { seed = 1, coverage = 0.95, digits = 2 } = options;
  const linear = answer(question, bound);
  const outs = sampledOuts(question, linear);
  const sampler = chosen(withMethod(samplerOf(question, bound), question, linear), outs);
  const ranked = rankedVariables(bound, formsOf(linear));
  const blocks = yield* sampledBlocks(sampler, drawsOf(bound, ranked, seed), options, outs.length);
  const influences = options.indices
    ? yield* told(sensitivityOf(bound, sampler, ranked, seed), blocks.count)
    : [];
  return {
    ...{ question: question.id, seed, coverage, digits },
    samples: blocks.count * BLOCK,
    settled: blocks.haveSettled(digits),
    outs: outs.map((out, i) => {
      const own = influences[i];
      return { ...sampledOut(out, blocks, i, digits), ...(own ? { influences: own } : {}) };
    }),
  };
}

/** Blocks until they have settled, or as many as were asked for. */
function* sampledBlocks(
  sampler: Sampler,
  draws: Draws,
  { samples, most = MOST, digits = 2, coverage = 0.95 }: SampleOptions,
  results: number,
): Generator<Progress, Blocks, undefined> {
  const blocks = new Blocks(results, coverage);
  const wanted = Math.ceil((samples ?? most) / BLOCK);
  while (blocks.count < wanted) {
    draws.begin(blocks.count);
    const sampling = sampler(draws);
    let step = sampling.next();
    for (; !step.done; step = sampling.next())
      yield { samples: Math.round((blocks.count + step.value) * BLOCK), most: wanted * BLOCK };
    blocks.add(step.value);
    yield { samples: blocks.count * BLOCK, most: wanted * BLOCK };
    if (samples === undefined && blocks.haveSettled(digits)) break;
  }
  return blocks;
}

/** Progress of the indices: as if as many samples again. */
function* told<T>(steps: Generator<number, T, undefined>, blocks: number) {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield { samples: Math.round((1 + step.value) * blocks * BLOCK), most: 2 * blocks * BLOCK };
  }
}

/** Of all outputs only these. */
const chosen = (sampler: Sampler, outs: readonly Wanted[]): Sampler =>
  function* (drawn) {
    const columns = yield* sampler(drawn);
    return outs.map(({ at }) => columns[at] ?? new Float64Array(drawn.size));
  };

const formsOf = ({ outs }: Answer) => Object.values(outs).flatMap((o) => indexedFormOf(o) ?? []);

const drawsOf = ({ variables }: BoundInputs, ranked: readonly number[], seed: number): Draws =>
  new Draws({
    ...{ variables, seed, size: BLOCK },
    ...{ leading: ranked.slice(0, LEADING), count: ranked.length },
  });

interface Wanted {
  readonly out: Out;
  readonly spec: OutputSpec;
  /** Place among the outputs of the body. */
  readonly at: number;
}

/** Results that move with their inputs, intermediate ones left out. */
const sampledOuts = ({ body }: Question, { outs }: Answer): Wanted[] =>
  body.outputs.flatMap((spec, at) => {
    const out = outs[spec.name];
    const moves = out && (out.knownU > 0 || out.doubts.length > 0);
    return moves && !spec.step ? [{ out, spec, at }] : [];
  });

function sampledOut({ out, spec }: Wanted, blocks: Blocks, i: number, digits: 1 | 2): SampledOut {
  const { sorted, none } = blocks.all(i);
  const summary = summaryOf(sorted, blocks.coverage);
  const { name, symbol, meaning, kind, unit } = out;
  return {
    ...{ name, symbol, meaning, kind, unit, none },
    ...summary,
    validated: validatedBy(out, summary, blocks, digits),
    histogram: histogramOf(sorted),
    ...(out.decision ? { decision: decided(spec, summary.mean, summary.u, out.dof) } : {}),
  };
}

function decided(spec: OutputSpec, d: number, u: number, dof: number | null) {
  if (spec.decides === 'margin') return decideMargin(d, u, dof);
  const decision = decideDifference(d, u, dof);
  const direction = directionOf(decision.word, d, spec);
  return direction === undefined ? decision : { ...decision, direction };
}

/** The ends of the linear interval against those of the samples (clause 8). */
function validatedBy(
  { x, knownU, dof }: Out,
  { u, symmetric }: ReturnType<typeof summaryOf>,
  { coverage }: Blocks,
  digits: 1 | 2,
): Validated {
  const half = studentT(coverage, dof ?? Number.POSITIVE_INFINITY) * knownU;
  const linear = { low: x - half, high: x + half };
  const atLow = Math.abs(linear.low - symmetric.low);
  const atHigh = Math.abs(linear.high - symmetric.high);
  // The smaller of both spreads: far samples can make their own as large as one likes.
  const tolerance = toleranceOf(knownU > 0 ? Math.min(u, knownU) : u, digits);
  return { linear, atLow, atHigh, tolerance, holds: Math.max(atLow, atHigh) <= tolerance };
}
