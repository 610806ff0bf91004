import type { Finding, Id, StudyView } from '../../study/index.ts';
import type {
  BoundInputs,
  Found,
  FoundRow,
  FoundTerm,
  Question,
  TableInput,
  WrittenInputs,
} from '../method.ts';
import { withinBounds } from './bounds.ts';
import { type AskWithin, StudyFinder } from './study-finder.ts';
import { Variables } from './variables.ts';

/**
 * Finds a question's inputs in a study, from one subject. What is written over inputs takes no
 * part, but may say which rows are wanted.
 */
export function bindStudy(
  question: Question,
  view: StudyView,
  subject: Id,
  ratesVersion: string | undefined,
  askWithin: AskWithin,
  over: WrittenInputs = {},
): BoundInputs {
  const variables = new Variables();
  const finder = new StudyFinder(view, subject, ratesVersion, variables, askWithin, over);
  const findings: Finding[] = [];
  const scalars: Record<string, Found> = {};
  const terms: Record<string, FoundTerm> = {};
  const tables: Record<string, readonly FoundRow[]> = {};
  for (const input of question.inputs) {
    if (input.in === 'scalar')
      scalars[input.name] = withinBounds(input, input.find(finder), findings);
    else if (input.in === 'term') terms[input.name] = input.find(finder);
    else tables[input.name] = bindRows(input, finder, findings);
  }
  return {
    scalars,
    terms,
    tables,
    variables: variables.all,
    read: finder.read,
    findings: [
      ...findings,
      ...finder.read.flatMap((r) => ('findings' in r ? r.findings : [])),
      ...finder.found,
    ],
    basis: basisOf(view, finder),
  };
}

function bindRows(input: TableInput, finder: StudyFinder, findings: Finding[]): FoundRow[] {
  return input.rows(finder).map((row) => {
    const cells: Record<string, Found> = {};
    const terms: Record<string, FoundTerm> = {};
    for (const column of input.columns) {
      if (column.in === 'term') terms[column.name] = column.find(finder, row);
      else cells[column.name] = withinBounds(column, column.find(finder, row), findings);
    }
    return { subject: row, label: finder.labelOf(row), cells, terms };
  });
}

function basisOf(view: StudyView, finder: StudyFinder): BoundInputs['basis'] {
  const conditions = new Set(finder.read.map((r) => view.condition(r.of.condition)));
  const book = finder.ratesUsed ? finder.book : undefined;
  return {
    study: view.header.title,
    revision: view.revision,
    subject: finder.labelOf(finder.subject),
    conditions: [...conditions],
    invented: view.header.invented,
    ...(book ? { rates: book.version, currency: book.currency } : {}),
  };
}
