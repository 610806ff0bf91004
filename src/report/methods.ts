import type { ModelError, OutputSpec, Question } from '../engine/index.ts';
import { unitSymbol } from '../quantity/index.ts';
import type { ReportMethod } from './model.ts';
import { percentText } from './wording.ts';

/** How a question is answered: formulas, inputs, sources, assumptions and checks. */
export function methodOf(question: Question): ReportMethod {
  return {
    id: question.id,
    version: question.version,
    title: question.title,
    wording: question.wording,
    formulas: formulasOf(question),
    inputs: question.inputs.flatMap(inputRows),
    modelError: Object.entries(question.modelError).map(([name, e]) =>
      modelErrorText(
        question.body.outputs.find((o) => o.name === name),
        name,
        e,
      ),
    ),
    sources: question.sources,
    assumptions: question.assumptions,
    checks: question.checks,
  };
}

function formulasOf({ body }: Question): ReportMethod['formulas'] {
  const terms =
    body.body === 'tally'
      ? body.terms.map((t) => ({ symbol: t.symbol, meaning: t.name, shown: t.shown }))
      : [];
  return [
    ...terms,
    ...body.outputs.map(({ symbol, meaning, shown }) => ({ symbol, meaning, shown })),
  ];
}

function inputRows(input: Question['inputs'][number]): ReportMethod['inputs'] {
  if (input.in === 'table')
    return [
      { symbol: '', meaning: `each row: ${input.meaning}`, where: input.where },
      ...input.columns.flatMap((c) => columnRow(c)),
    ];
  return columnRow(input);
}

type Column = { readonly meaning: string; readonly where: string } & (
  | { readonly in: 'scalar'; readonly symbol: string; readonly unit: string }
  | { readonly in: 'term' }
);

const columnRow = (c: Column): ReportMethod['inputs'] =>
  c.in === 'term'
    ? [{ symbol: '', meaning: c.meaning, where: c.where }]
    : [{ symbol: c.symbol, meaning: withUnit(c.meaning, c.unit), where: c.where }];

const withUnit = (meaning: string, unit: string): string =>
  unitSymbol(unit) === '' ? meaning : `${meaning}, ${unitSymbol(unit)}`;

function modelErrorText(out: OutputSpec | undefined, name: string, e: ModelError): string {
  const size =
    'relative' in e
      ? percentText(e.relative)
      : `${e.absolute} ${unitSymbol(out?.unit ?? '1')}`.trim();
  return `${out?.meaning ?? name}: standard error of the method ${size}, ${percentText(e.sharedFraction)} of its variance common to all designs`;
}
