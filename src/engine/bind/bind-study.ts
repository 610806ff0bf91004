import type { Finding, Id, StudyView } from '../../study/index.ts';
import type { BoundInputs } from '../bound-inputs.ts';
import type { BoundRow } from '../bound-row.ts';
import type { Found, FoundTerm, Question, WrittenInputs } from '../method.ts';
import { bindTable, findingsOf } from './bind-table.ts';
import { withinBounds } from './bounds.ts';
import type { Kept, KeptRow } from './kept.ts';
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
  const rows: Record<string, readonly KeptRow[]> = {};
  for (const input of binding.question.inputs) {
    if (input.in === 'scalar')
      scalars[input.name] = withinBounds(input, input.find(finder), findings);
    else if (input.in === 'term') terms[input.name] = input.find(finder);
    else rows[input.name] = keptRows(binding, input, finder);
  }
  const all = Object.values(rows);
  return {
    scalars,
    terms,
    tables: Object.fromEntries(Object.entries(rows).map(([name, own]) => [name, boundRows(own)])),
    variables: binding.kept.variables,
    models: finder.models,
    before: binding.kept.laidOut(binding.question, binding.subject),
    read: () => [...finder.read, ...gathered(all, (row) => row.read)],
    findings: [
      ...findings,
      ...gathered(all, (row) => row.findings.numbers),
      ...findingsOf(finder.read),
      ...gathered(all, (row) => row.findings.cells),
      ...finder.found,
      ...gathered(all, (row) => row.findings.noted),
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

function keptRows(
  { question, view, subject, kept }: Binding,
  input: Extract<Question['inputs'][number], { in: 'table' }>,
  finder: StudyFinder,
): readonly KeptRow[] {
  const ratesUsed = finder.ratesUsed;
  const held = kept.table(question, input, subject);
  const table = bindTable(input, finder, held, view.changes, (since) => view.touchedSince(since));
  finder.ratesUsed = ratesUsed;
  kept.keepTable(question, input, subject, table);
  return table.rows;
}

function boundRows(rows: readonly KeptRow[]): BoundRow[] {
  const bound: BoundRow[] = [];
  for (const { row } of rows) if (row) bound.push(row);
  return bound;
}

/** What all rows have of something that most have nothing of. */
function gathered<T>(
  tables: readonly (readonly KeptRow[])[],
  of: (row: KeptRow) => readonly T[],
): T[] {
  const all: T[] = [];
  for (const rows of tables)
    for (const row of rows) {
      const own = of(row);
      if (own.length > 0) all.push(...own);
    }
  return all;
}

function basisOf(
  view: StudyView,
  finder: StudyFinder,
  tables: readonly (readonly KeptRow[])[],
): BoundInputs['basis'] {
  const conditions = new Set(finder.read.map((r) => r.of.condition));
  for (const rows of tables)
    for (const row of rows) for (const id of row.conditions) conditions.add(id);
  const ratesUsed = finder.ratesUsed || tables.some((rows) => rows.some((row) => row.ratesUsed));
  const book = ratesUsed ? finder.book : undefined;
  return {
    study: view.header.title,
    revision: view.revision,
    subject: finder.labelOf(finder.subject),
    conditions: [...new Set([...conditions].map((id) => view.condition(id)))],
    invented: view.header.invented,
    ...(book ? { rates: book.version, currency: book.currency } : {}),
  };
}
