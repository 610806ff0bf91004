import type { Influence, Sampled, SampledOut } from '../engine/index.ts';
import { printedInterval, printedSpread } from '../quantity/index.ts';
import type { ReportInfluence, ReportSampled, ReportSampledOut } from './model.ts';
import { percentText, shownNumber } from './wording.ts';

/** A Monte Carlo run in words (JCGM 101:2008). */
export function reportSampled(sampled: Sampled): ReportSampled {
  const { samples, seed, settled, digits, coverage } = sampled;
  const count = samples.toLocaleString('en').replaceAll(',', '\u202f');
  const state = settled
    ? `settled to ${digits === 1 ? 'one digit' : 'two digits'} of the spread`
    : 'ended before it had settled';
  return {
    about: `${count} samples, seed ${seed}, ${state}; intervals hold ${percentText(coverage)}`,
    outs: sampled.outs.map(outOf),
  };
}

function outOf(out: SampledOut): ReportSampledOut {
  const { mean, u, kind, unit, symmetric, shortest, validated, none, decision } = out;
  const size = (x: number) => printedSpread(x, kind, unit);
  const interval = (of: typeof symmetric) => printedInterval(of, u, { kind, unit });
  return {
    meaning: out.meaning,
    shown: shownNumber({ x: mean, u, kind, unit, how: 'calculated' }),
    symmetric: interval(symmetric),
    shortest: interval(shortest),
    linear: interval(validated.linear),
    holds: validated.holds,
    verdict: validated.holds ? 'linear result confirmed' : 'linear result not confirmed',
    apart: `ends up to ${size(Math.max(validated.atLow, validated.atHigh))} apart, ${size(validated.tolerance)} allowed`,
    ...(decision ? { word: decision.word } : {}),
    none: none > 0 ? `no number in ${percentText(none)} of the samples, which are left out` : '',
    influences: (out.influences ?? []).map(influenceOf),
  };
}

const influenceOf = ({ variable, first, total }: Influence): ReportInfluence => ({
  label: variable?.label ?? 'all others together',
  // Estimates of what is next to nothing scatter about zero.
  first: percentText(Math.max(first, 0)),
  total: percentText(Math.max(total, 0)),
});
