import { studentT } from '../quantity/index.ts';
import type { Decision, DecisionWord } from './method.ts';

/** Two-sided probability that 2 u covers for unlimited degrees of freedom. */
const COVERAGE_OF_TWO_U = 0.9545;

/** Factor in place of 2 for few degrees of freedom (Student's t at 95.45 %). */
const twoFor = (dof: number | null): number =>
  dof === null ? 2 : studentT(COVERAGE_OF_TWO_U, dof);
const oneFor = (dof: number | null): number => (dof === null ? 1 : studentT(0.6827, dof));

/**
 * Word for a difference `d` with standard uncertainty `u`: |d| > 2u different, u to 2u
 * indicated, below u not distinguishable; Student's t in place of 1 and 2 for few degrees of
 * freedom. After the decision-rule idea of ISO 14253-1 and JCGM 106.
 */
export function decideDifference(d: number, u: number, dof: number | null): Decision {
  const size = Math.abs(d);
  const word: DecisionWord =
    size > twoFor(dof) * u
      ? 'different'
      : size >= oneFor(dof) * u && size > 0
        ? 'indicated'
        : 'not distinguishable';
  const rule = `different beyond ${factor(twoFor(dof))} u, indicated from ${factor(oneFor(dof))} u, else not distinguishable`;
  return { word, d, u, dof, rule };
}

/**
 * Word for a margin `d` (positive is good): above 2u holds, within ±2u not proven, below −2u
 * fails. Between exact numbers, counts for example, a margin of zero is enough.
 */
export function decideMargin(d: number, u: number, dof: number | null): Decision {
  const limit = twoFor(dof) * u;
  const holds = d > limit || (u === 0 && d === 0);
  const word: DecisionWord = holds ? 'holds' : d < -limit ? 'fails' : 'not proven';
  return {
    word,
    d,
    u,
    dof,
    rule: `holds above ${factor(twoFor(dof))} u, fails below −${factor(twoFor(dof))} u, else not proven`,
  };
}

const factor = (k: number): string =>
  Math.abs(k - Math.round(k)) < 0.005 ? String(Math.round(k)) : k.toFixed(2);
