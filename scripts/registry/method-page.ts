import { cautionsOf } from '../../src/engine/cautions-of.ts';
import type {
  Body,
  Caution,
  CheckRef,
  InputSpec,
  ModelError,
  OutputSpec,
  Question,
  ScalarColumn,
  ScalarInput,
  Source,
  TableInput,
  TermColumn,
  TermInput,
} from '../../src/engine/method.ts';
import { unitSymbol } from '../../src/quantity/index.ts';
import { code, list, MADE_MARK, page, section, table } from './markdown.ts';

/** The page of one question: docs/methods/<id>.md. */
export function methodPage(q: Question): string {
  return page(
    MADE_MARK,
    `# ${q.title}`,
    `> ${q.wording}`,
    `Asked of: ${q.subject}. Section: ${q.section.title}. Question ${code(q.id)}, version ${q.version}.`,
    section('## What it needs', inputs(q.inputs)),
    section('## What it gives', outputs(q)),
    section('## Error of the method itself', list(modelErrors(q))),
    section('## Holds when', list(q.assumptions)),
    section('## Sources', list(q.sources.map(sourceLine))),
    section('## Cautions', list(cautionsOf(q).map(cautionLine))),
    section('## Checks', checks(q.checks)),
    section('## Example', example(q)),
  );
}

/** A unit as it is printed; a bar for the number one. */
const unit = (code: string): string => unitSymbol(code) || '–';

const range = (of: { readonly range: readonly [number, number] }): string =>
  `${of.range[0]} to ${of.range[1]}`;

function bounds(of: Pick<ScalarInput, 'bounds'>): string {
  const { above, below, atLeast } = of.bounds ?? {};
  const limits = [
    above === undefined ? '' : `above ${above}`,
    atLeast === undefined ? '' : `at least ${atLeast}`,
    below === undefined ? '' : `below ${below}`,
  ];
  return limits.filter((limit) => limit !== '').join(', ');
}

function inputs(specs: readonly InputSpec[]): string {
  const scalars = specs.filter((s): s is ScalarInput => s.in === 'scalar');
  const terms = specs.filter((s): s is TermInput => s.in === 'term');
  const tables = specs.filter((s): s is TableInput => s.in === 'table');
  return [scalarTable(scalars), termTable(terms), ...tables.map(tableInput)]
    .filter((block) => block !== '')
    .join('\n\n');
}

function scalarTable(scalars: readonly (ScalarInput | ScalarColumn)[]): string {
  return table(
    ['Symbol', 'Name', 'Unit', 'Meaning', 'Usual range', 'Refused unless', 'Where it is found'],
    scalars.map((s) => [
      s.symbol,
      code(s.name),
      unit(s.unit),
      s.meaning,
      range(s),
      bounds(s),
      `${s.where}${withoutIt(s)}`,
    ]),
  );
}

/** What happens when a number is not there, where that is not simply a gap. */
function withoutIt(s: ScalarInput | ScalarColumn): string {
  if ('assumed' in s && s.assumed !== undefined) return `; outside a study ${s.assumed} is assumed`;
  return 'optional' in s && s.optional ? '; a row may lack it' : '';
}

function termTable(terms: readonly (TermInput | TermColumn)[]): string {
  return table(
    ['Name', 'Meaning', 'Words', 'Where it is found'],
    terms.map((t) => [code(t.name), t.meaning, t.options?.join(', ') ?? 'any text', t.where]),
  );
}

function tableInput(t: TableInput): string {
  const scalars = t.columns.filter((c): c is ScalarColumn => c.in === 'scalar');
  const terms = t.columns.filter((c): c is TermColumn => c.in === 'term');
  const heading = `Table ${code(t.name)}: ${t.meaning}. Rows: ${t.where}.`;
  return [heading, scalarTable(scalars), termTable(terms)]
    .filter((block) => block !== '')
    .join('\n\n');
}

function outputs(q: Question): string {
  const results = q.body.outputs;
  return [sums(q.body), outputTable(results)].filter((block) => block !== '').join('\n\n');
}

function outputTable(results: readonly OutputSpec[]): string {
  return table(
    ['Symbol', 'Name', 'Unit', 'Meaning', 'Formula', 'Decided'],
    results.map((o) => [
      o.symbol,
      code(o.name),
      unit(o.unit),
      o.step ? `${o.meaning} (a step of the working)` : o.meaning,
      o.shown,
      o.decides === undefined ? '' : `as a ${o.decides}`,
    ]),
  );
}

function sums(body: Body): string {
  if (body.body !== 'tally') return '';
  const heads = ['Symbol', 'Sum', 'Over the rows', 'Columns needed'];
  const rows = body.terms.map((t) => [
    t.symbol,
    code(t.name),
    t.shown,
    t.needs.map(code).join(', '),
  ]);
  const grouped =
    body.groupBy === undefined ? '' : `\n\nThe sums are also given for each ${code(body.groupBy)}.`;
  return `${table(heads, rows)}${grouped}`;
}

function modelErrors(q: Question): readonly string[] {
  return q.body.outputs.flatMap((o) => {
    const error = q.modelError[o.name];
    return error === undefined ? [] : [modelErrorLine(o, error)];
  });
}

function modelErrorLine(o: OutputSpec, error: ModelError): string {
  const size =
    'relative' in error
      ? `${percent(error.relative)} of the value`
      : `${error.absolute} ${unitSymbol(o.unit)}`.trimEnd();
  return `${code(o.name)}: standard uncertainty ${size}; ${percent(error.sharedFraction)} of its variance is common to all designs it is used on.`;
}

const percent = (fraction: number): string => `${Number((fraction * 100).toPrecision(3))} %`;

function sourceLine(s: Source): string {
  const at = s.at === undefined ? '' : `, ${s.at}`;
  return `${s.title}${at} (${s.status})`;
}

const cautionLine = ({ words, source }: Caution): string => `${words} (${source})`;

function checks(refs: readonly CheckRef[]): string {
  return table(
    ['What', 'Against', 'Status', 'Test'],
    refs.map((c) => [c.what, c.source, c.status, code(c.test)]),
  );
}

/** The example as the JSON file that the command line takes. */
function example(q: Question): string {
  const json = JSON.stringify(q.example, null, 2);
  return `Bare values, as a JSON file to ask with:\n\n\`\`\`json\n${json}\n\`\`\``;
}
