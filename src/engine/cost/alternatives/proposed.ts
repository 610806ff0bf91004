import { differenceOf, formUncertainty, type LinearForm } from '../../../quantity/index.ts';
import { decideDifference } from '../../decide.ts';
import type { Bars } from '../../figure.ts';
import type {
  BoundLook,
  DetailTable,
  Finder,
  FoundRow,
  Looked,
  PlainInputs,
  PlainRow,
  TableInput,
  TermColumn,
} from '../../method.ts';
import { LINES } from './alternative-columns.ts';
import { type DesignFigures, figuresOf } from './design-lines.ts';
import { LookForms } from './look-forms.ts';

/** The nearest node above a line that is so many steps up. */
const above = (at: Finder, row: string, steps: number): string => {
  let id = row;
  for (let i = 0; i < steps; i++) id = at.view.node(id)?.parent ?? '';
  return id;
};

const designText = (name: string, meaning: string): TermColumn => ({
  ...{ in: 'term', name, meaning, where: `${meaning}, of the design` },
  find: (at, row) => at.text(above(at, row, 1), `cost.${name}`),
});

/** Lines of all designs of all functions of the study. */
export const CHANGE_LINES: TableInput = {
  ...LINES,
  where: 'lines of alternatives anywhere in the study',
  rows: (at) =>
    at.view
      .nodes('alternative')
      .map((n) => n.id)
      .filter((id) => isAlternative(at, above(at, id, 1)) && isAlternative(at, above(at, id, 2))),
  columns: [
    {
      ...{ in: 'term', name: 'function', meaning: 'function that the designs serve' },
      where: 'name of the alternative two above',
      find: (at, row) => at.word(at.view.node(above(at, row, 2))?.name ?? ''),
    },
    designText('risk', 'what may go wrong with it'),
    designText('timing', 'when it could come'),
    ...LINES.columns,
  ],
};

const isAlternative = (at: Finder, id: string): boolean => at.view.node(id)?.kind === 'alternative';

/** Functions in the order of their first lines. */
export const functionsIn = (rows: readonly PlainRow[]): string[] => [
  ...new Set(rows.map((row) => String(row.function))),
];

/** The inputs with the lines of one function alone. */
export const ofFunction = (x: PlainInputs, name: string): PlainInputs => ({
  ...x,
  tables: { lines: (x.tables.lines ?? []).filter((row) => String(row.function) === name) },
});

/** One change against what is built, with the difference of their costs. */
interface Change {
  readonly serves: string;
  readonly built: DesignFigures;
  readonly other: DesignFigures;
  readonly saved: LinearForm;
  readonly rows: readonly FoundRow[];
}

/** Changes ranked by what they save, each with the word for it. */
export function lookAtChanges(bound: BoundLook): Looked {
  const lines = bound.tables.lines ?? [];
  const names = [...new Set(lines.map((row) => row.terms.function?.text ?? ''))];
  const changes = names.flatMap((name) => changesOf(bound, name));
  if (changes.length === 0) return {};
  const ranked = changes.sort((a, b) => b.saved.x - a.saved.x);
  return { detail: changesTable(ranked), figures: [savings(ranked)] };
}

function changesOf(bound: BoundLook, serves: string): Change[] {
  const rows = (bound.tables.lines ?? []).filter((row) => row.terms.function?.text === serves);
  const forms = new LookForms({ ...bound, tables: { lines: rows } }, 'lines');
  const [built, ...others] = figuresOf(forms.plain);
  const [cost, ...costs] = forms.of((x) => figuresOf(x).map((d) => d.cost));
  return others.flatMap((other, i) => {
    const own = costs[i];
    if (!built || !cost || !own || !Number.isFinite(own.x)) return [];
    const lines = rows.filter((row) => row.terms.design?.text === other.name);
    return [{ serves, built, other, saved: differenceOf(cost, own), rows: lines }];
  });
}

const MONEY = { kind: 'money', unit: '{u}' } as const;

const changesTable = (changes: readonly Change[]): DetailTable => ({
  title: 'Proposed changes, by the cost they save',
  columns: [
    ...[{ name: 'function' }, { name: 'change' }],
    ...[{ name: 'cost saved', ...MONEY }, { name: 'u', ...MONEY }, { name: 'word' }],
    { name: 'mass saved', kind: 'mass', unit: 'kg' },
    { name: 'time saved', kind: 'time', unit: 's' },
    ...[{ name: 'more tools', ...MONEY }, { name: 'leak crossings saved' }],
    ...[{ name: 'least known' }, { name: 'risk' }, { name: 'timing' }],
  ],
  rows: changes.map(({ serves, built, other, saved, rows }) => [
    ...[serves, other.name, saved.x, formUncertainty(saved), wordOf(saved)],
    ...[built.mass - other.mass, built.time - other.time, other.tool - built.tool],
    ...[built.crossings - other.crossings, leastKnown(rows)],
    ...[textOf(rows, 'risk'), textOf(rows, 'timing')],
  ]),
});

const wordOf = (d: LinearForm): string => decideDifference(d.x, formUncertainty(d), null).word;

const textOf = (rows: readonly FoundRow[], name: string): string =>
  rows.map((row) => row.terms[name]?.text ?? '').find((text) => text !== '') ?? 'not said';

/** Ways of knowing, the weakest first. */
const WEAKEST = ['guessed', 'assumed', 'inferred', 'seen', 'supplied', 'calculated', 'measured'];

/** The weakest way in which a number of the change is known. */
function leastKnown(rows: readonly FoundRow[]): string {
  const ways = rows.flatMap((row) =>
    Object.values(row.cells).flatMap((cell) => ('missing' in cell ? [] : [cell.how])),
  );
  return WEAKEST.find((way) => ways.some((how) => how === way)) ?? 'exact';
}

const savings = (changes: readonly Change[]): Bars => ({
  ...{ f: 'bars', title: 'Cost saved by each change', ...MONEY, from: 'zero' },
  alt: 'A bar for each proposed change, the largest saving first; below zero it is dearer.',
  rows: changes.map(({ other, saved }) => ({
    ...{
      label: other.name,
      number: { x: saved.x, u: formUncertainty(saved) },
      word: wordOf(saved),
    },
  })),
});
