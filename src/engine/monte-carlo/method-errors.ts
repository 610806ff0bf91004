import { indexedFormOf } from '../answer-forms.ts';
import type { Answer, Question } from '../method.ts';
import type { Sampler } from './evaluate.ts';

/** Adds the errors of the question's own method, as the linear answer has them, to its samples. */
export function withMethod(sampler: Sampler, question: Question, linear: Answer): Sampler {
  const errors = question.body.outputs.map(({ name }) => errorsOf(question, name, linear));
  return function* (drawn) {
    const columns = yield* sampler(drawn);
    for (const [k, own] of errors.entries())
      for (const [number, c] of own) {
        const column = columns[k];
        if (column) drawn.addTo(column, number, c);
      }
    return columns;
  };
}

function errorsOf(
  { id, modelError }: Question,
  name: string,
  { outs }: Answer,
): readonly (readonly [variable: number, c: number])[] {
  const out = outs[name];
  const form = out && indexedFormOf(out);
  if (!form || !modelError[name]) return [];
  const start = `model:${id}/${name}`;
  return Array.from(form.vars, (number, i) => [number, form.c[i] ?? 0] as const).filter(
    ([number]) => {
      const own = form.variables.at(number).id;
      return own === start || own.startsWith(`${start}/`);
    },
  );
}
