import type { Answer, DetailTable, GroupRow, Question } from '../engine/index.ts';
import { type Kind, kindDef, unitSymbol } from '../quantity/index.ts';
import type { ReportTable, ShownNumber } from './model.ts';
import { NO_NUMBER, shownNumber } from './wording.ts';

/** Tables beside an answer's numbers: sums by group, and the rows a question hands out itself. */
export function answerTables(answer: Answer, question?: Question): ReportTable[] {
  const tables: ReportTable[] = [];
  if (answer.groups && answer.groups.length > 0) tables.push(groupTable(answer.groups, question));
  for (const detail of [answer.detail, ...(answer.further ?? [])])
    if (detail && detail.rows.length > 0) tables.push(detailTable(detail));
  return tables;
}

/** A sum of a tally: how it is called, and its kind where the question is at hand. */
interface Term {
  readonly name: string;
  readonly kind: Kind;
  readonly unit: string;
}

function groupTable(groups: readonly GroupRow[], question?: Question): ReportTable {
  const all = Object.keys(groups[0]?.terms ?? {}).map((name) => termOf(name, question));
  const columns = all
    .filter((t) => inResults(t, question))
    .map((term) => ({ term, cells: groups.map((g) => termNumber(g, term)) }))
    .filter(({ cells }, i, list) => list.findIndex((c) => sameCells(c.cells, cells)) === i);
  const missing = groups.some((g) => g.missing > 0);
  return {
    title: 'By group',
    columns: [
      { head: groupHead(question), numbers: false },
      { head: 'rows', numbers: true },
      ...columns.map(({ term }) => ({ head: headWithUnit(term.name, term.unit), numbers: true })),
      ...(missing ? [{ head: 'rows without a value', numbers: true }] : []),
    ],
    rows: groups.map((g, i) => [
      g.group === '' ? 'no group' : g.group,
      String(g.rows),
      ...columns.map(({ cells }) => cells[i] ?? NO_NUMBER),
      ...(missing ? [String(g.missing)] : []),
    ]),
  };
}

/** Sums of a kind that no result has, moments for example, stand in the working only. */
const inResults = (term: Term, question?: Question): boolean =>
  question === undefined || question.body.outputs.some((o) => o.kind === term.kind);

const sameCells = (a: readonly string[], b: readonly string[]): boolean =>
  a.join('\n') === b.join('\n');

function groupHead(question?: Question): string {
  const by = question?.body.body === 'tally' ? question.body.groupBy : undefined;
  return by ?? 'group';
}

/** A term is shown in the unit of an output of its kind, else in the usual unit of the kind. */
function termOf(name: string, question?: Question): Term {
  const body = question?.body;
  const term = body?.body === 'tally' ? body.terms.find((t) => t.name === name) : undefined;
  const kind = term?.kind ?? 'ratio';
  const unit = body?.outputs.find((o) => o.kind === kind)?.unit ?? kindDef(kind).show[0];
  return { name, kind, unit };
}

function termNumber(group: GroupRow, term: Term): string {
  const sum = group.terms[term.name];
  if (!sum) return NO_NUMBER;
  return bare(
    shownNumber({ x: sum.x, u: sum.u, kind: term.kind, unit: term.unit, how: 'calculated' }),
  );
}

const bare = (n: ShownNumber): string => (n.spread === '' ? n.value : `${n.value} ± ${n.spread}`);

const headWithUnit = (head: string, unit: string): string =>
  unitSymbol(unit) === '' ? head : `${head}, ${unitSymbol(unit)}`;

function detailTable(detail: DetailTable): ReportTable {
  return {
    title: detail.title,
    columns: detail.columns.map((c, i) => ({
      head: headWithUnit(c.name, c.unit ?? '1'),
      numbers: detail.rows.some((row) => typeof row[i] === 'number'),
    })),
    rows: detail.rows.map((row) =>
      row.map((cell, i) =>
        typeof cell === 'number' ? detailNumber(cell, detail.columns[i]) : cell,
      ),
    ),
  };
}

/** Numbers of a detail table carry no spread: whole as counts, else four significant digits. */
function detailNumber(x: number, column: DetailTable['columns'][number] | undefined): string {
  const kind = column?.kind ?? 'ratio';
  const unit = column?.unit ?? kindDef(kind).si;
  const given = { x, kind, unit, how: 'calculated' } as const;
  const whole = kind === 'ratio' && Number.isInteger(x);
  return shownNumber(whole ? { ...given, u: 0 } : { ...given, u: 'incomplete' }).value;
}
