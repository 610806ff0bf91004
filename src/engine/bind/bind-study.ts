import type { Finding, Id, StudyView } from '../../study/index.ts';
import type { BoundInputs } from '../bound-inputs.ts';
import { flatCells } from '../flat-cells.ts';
import type { Found, FoundTerm, Question, TableInput, WrittenInputs } from '../method.ts';
import { bindTable, findingsOf, type KeptTable, readOf } from './bind-table.ts';
import { withinBounds } from './bounds.ts';
import type { Kept } from './kept.ts';
import { type AskWithin, StudyFinder } from './study-finder.ts';
import { WatchedView } from './watched-view.ts';

/** Where a question's inputs are to be found. */
export interface Binding {
  readonly question: Question;
  readonly view: StudyView;
  readonly subject: Id;
  readonly rates: string | undefined;
  readonly kept: Kept;
  readonly askWithin: AskWithin;
  /** What is written over inputs takes no part, but may say which rows are wanted. */
  readonly over?: WrittenInputs;
}

/** Finds a question's inputs in a study, from one subject. */
export function bindStudy(binding: Binding): BoundInputs {
  const finder = finderFor(binding);
  const findings: Finding[] = [];
  const scalars: Record<string, Found> = {};
  const terms: Record<string, FoundTerm> = {};
  const tables: Record<string, KeptTable> = {};
  for (const input of binding.question.inputs) {
    if (input.in === 'scalar')
      scalars[input.name] = withinBounds(input, input.find(finder), findings);
    else if (input.in === 'term') terms[input.name] = input.find(finder);
    else tables[input.name] = tableOf(binding, input, finder);
  }
  const all = Object.values(tables);
  const found = (of: keyof KeptTable['findings']) => all.flatMap((table) => table.findings[of]);
  return {
    of: `${binding.view.study}/${binding.subject}`,
    scalars,
    terms,
    tables: Object.fromEntries(Object.entries(tables).map(([name, { rows }]) => [name, rows])),
    variables: binding.kept.variables,
    models: finder.models,
    ...laidOut(binding, tables),
    read: () => [...finder.read, ...all.flatMap(readOf)],
    findings: [
      ...findings,
      ...found('numbers'),
      ...findingsOf(finder.read),
      ...found('cells'),
      ...finder.found,
      ...found('noted'),
    ],
    basis: basisOf(binding.view, finder, all),
  };
}

const finderFor = ({ view, subject, rates, kept, askWithin, over = {} }: Binding): StudyFinder =>
  new StudyFinder({
    view: new WatchedView(view),
    subject,
    ratesVersion: rates,
    variables: kept.variables,
    askWithin,
    rates: kept.rates,
    over,
  });

/** The numbers that a tally sums over, laid out, and where they are kept. */
function laidOut(
  { question, subject, kept }: Binding,
  tables: Readonly<Record<string, KeptTable>>,
): Pick<BoundInputs, 'cells' | 'before'> {
  const before = kept.laidOut(question, subject);
  const { body } = question;
  const table = body.body === 'tally' ? tables[body.table] : undefined;
  if (!table) return { before };
  before.cells = flatCells(table.rows, kept.variables, before.cells);
  return { before, cells: before.cells };
}

function tableOf(
  { question, view, subject, kept }: Binding,
  input: TableInput,
  finder: StudyFinder,
): KeptTable {
  const ratesUsed = finder.ratesUsed;
  const held = kept.table(question, input, subject);
  const table = bindTable(input, finder, held, view.changes, (since) => view.touchedSince(since));
  finder.ratesUsed = ratesUsed;
  kept.keepTable(question, input, subject, table);
  return table;
}

function basisOf(
  view: StudyView,
  finder: StudyFinder,
  tables: readonly KeptTable[],
): BoundInputs['basis'] {
  const conditions = [
    ...finder.read.map((r) => r.of.condition),
    ...tables.flatMap((table) => table.conditions),
  ];
  const ratesUsed = finder.ratesUsed || tables.some((table) => table.ratesUsed);
  const book = ratesUsed ? finder.book : undefined;
  return {
    study: view.header.title,
    revision: view.revision,
    subject: finder.labelOf(finder.subject),
    conditions: [...new Set(conditions.map((id) => view.condition(id)))],
    invented: view.header.invented || book?.invented === true,
    ...(book ? { rates: book.version, currency: book.currency } : {}),
  };
}
