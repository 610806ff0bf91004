import type { Question } from '../../src/engine/index.ts';

/** Every formula and symbol that questions print, each once. */
export function printedFormulas(questions: Iterable<Question>): string[] {
  const texts = [...questions].flatMap(({ inputs, body }) => [
    ...inputs.flatMap((input) =>
      input.in === 'table'
        ? input.columns.flatMap((c) => (c.in === 'scalar' ? [c.symbol] : []))
        : input.in === 'scalar'
          ? [input.symbol]
          : [],
    ),
    ...(body.body === 'tally' ? body.terms.flatMap((t) => [t.symbol, t.shown]) : []),
    ...body.outputs.flatMap((o) => [o.symbol, o.shown]),
  ]);
  return [...new Set(texts)].filter((text) => text !== '');
}
