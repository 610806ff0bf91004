import type { LinearForm } from '../quantity/index.ts';
import type { IndexedForm } from './forms/indexed-form.ts';
import type { Answer, Out, Variable } from './method.ts';

/** What is at hand of an answer beside its plain fields, while it has not left the program. */
const FORMS = new WeakMap<Out, IndexedForm>();
const MODELS = new WeakMap<Answer, ReadonlyMap<number, Variable>>();

export const keepForm = (out: Out, form: IndexedForm): void => void FORMS.set(out, form);
export const keepModels = (answer: Answer, models: ReadonlyMap<number, Variable>): void =>
  void MODELS.set(answer, models);

/** The form of an output by the numbers of its variables, when it is at hand. */
export const indexedFormOf = (out: Out): IndexedForm | undefined => FORMS.get(out);

/** The linear form of an output. */
export const formOfOut = (out: Out): LinearForm =>
  FORMS.get(out) ?? { x: out.x, by: new Map(out.linear) };

/** Errors of methods among an answer's variables, which are its own and not the study's. */
export const modelsOf = (answer: Answer): readonly Variable[] => {
  const kept = MODELS.get(answer)?.values();
  return kept ? [...kept] : Object.values(answer.variables).filter((v) => v.what === 'model');
};
