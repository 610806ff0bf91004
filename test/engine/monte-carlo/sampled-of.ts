import {
  type Body,
  type InputSpec,
  type Sampled,
  type SampleOptions,
  type SampleRun,
  sampleStudy,
  type Variable,
} from '../../../src/engine/index.ts';
import { meanShift, type Spread, standardUncertainty } from '../../../src/quantity/index.ts';
import { read, studyOf } from '../../study/made-study.ts';
import { madeQuestion } from '../made-question.ts';

export const normal = (u: number): Spread => ({ s: 'normal', u });
export const rectangular = (half: number): Spread => ({ s: 'rectangular', half });

/** Drives a run to its end. */
export function finished(run: SampleRun): Sampled {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}

/** Samples a made-up question of numbers given with their spreads, in the order of its inputs. */
export function sampledOf(
  inputs: readonly (InputSpec & { readonly in: 'scalar' })[],
  body: Body,
  values: readonly (readonly [x: number, spread: Spread])[],
  options: SampleOptions = {},
): Sampled {
  const question = madeQuestion(inputs, body);
  const view = studyOf(
    ...values.map(([x, spread], i) => {
      const { name, kind } = inputs[i] ?? { name: '', kind: 'ratio' as const };
      return read('van', name, { t: 'scalar', kind, x, spread }, { id: name });
    }),
  );
  return finished(sampleStudy(question, new Map([[question.id, question]]), { view }, options));
}

/** A variable by its spread alone, of nominal value 0 and standard uncertainty as it says. */
export const variable = (spread: Spread, shift = 0, dof: number | null = null): Variable => ({
  ...{ id: 'x', label: 'x', what: 'reading', spread, dof, place: {} },
  u: spread.s === 'repeats' ? 1 : (standardUncertainty(spread, 0) ?? 0),
  shift: shift || meanShift(spread, 0),
});
