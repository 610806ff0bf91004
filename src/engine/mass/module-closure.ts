import { FormBuilder, formUncertainty, type LinearForm } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import { decideDifference } from '../decide.ts';
import type { Bars, FigureNumber } from '../figure.ts';
import type { BoundLook, DecisionWord, DetailTable, Found, FoundRow, Looked } from '../method.ts';

/** How far the parts of a module close against what it weighed in one piece. */
export interface ModuleClosure {
  readonly label: string;
  /** Rows of the parts in it; undefined entries are numbers that no part has. */
  readonly rows: readonly FoundRow[];
  readonly unknown: readonly string[];
  /** Parts in it without a mass. */
  readonly missing: readonly FoundRow[];
  readonly weighed: LinearForm;
  readonly parts: LinearForm;
  readonly gap: LinearForm;
  /** A spread that is not known is among them. */
  readonly unsure: boolean;
}

/** Modules that have a mass, with their parts looked up by number. */
export function moduleClosures({ tables }: BoundLook): ModuleClosure[] {
  const byNumber = new Map(tables.parts?.map((row) => [row.terms.number?.text ?? '', row]));
  return (tables.modules ?? []).flatMap((module) => {
    const mass = module.cells.moduleMass;
    return mass && !('missing' in mass) ? [closureOf(module, mass.form, byNumber)] : [];
  });
}

function closureOf(
  module: FoundRow,
  weighed: LinearForm,
  byNumber: ReadonlyMap<string, FoundRow>,
): ModuleClosure {
  const numbers = listIn(module.terms.holds?.text ?? '');
  const rows = numbers.flatMap((n) => byNumber.get(n) ?? []);
  const sum = new FormBuilder();
  for (const { cells } of rows) if (isThere(cells.mass)) sum.add(cells.mass.form);
  const parts = sum.done();
  return {
    label: module.label,
    rows,
    unknown: numbers.filter((n) => !byNumber.has(n)),
    missing: rows.filter((row) => !isThere(row.cells.mass)),
    weighed,
    parts,
    gap: new FormBuilder().add(parts).add(weighed, -1).done(),
    unsure: [module.cells.moduleMass, ...rows.map((r) => r.cells.mass)].some(
      (c) => isThere(c) && c.unknownSpread === true,
    ),
  };
}

const isThere = (cell: Found | undefined): cell is Exclude<Found, { missing: true }> =>
  cell !== undefined && !('missing' in cell);

export const listIn = (text: string): string[] =>
  text
    .split(';')
    .map((t) => t.trim())
    .filter((t) => t !== '');

/** Module by module: parts, scale, gap with its spread, and the word for it. */
export function moduleTable(bound: BoundLook): Looked {
  const closures = moduleClosures(bound);
  if (closures.length === 0) return {};
  return {
    detail: detailOf(closures),
    findings: closures.flatMap(findingsOf),
    figures: [gapsFigure(closures), ...balanceFigures(closures)],
  };
}

/** The gap of each module that has parts, the largest first. */
function gapsFigure(closures: readonly ModuleClosure[]): Bars {
  const drawn = closures
    .filter((c) => c.rows.length > 0)
    .sort((a, b) => Math.abs(b.gap.x) - Math.abs(a.gap.x));
  return {
    f: 'bars',
    title: 'Gap of each module, its parts less what it weighed',
    alt: 'A bar from zero for each module, the largest gap first.',
    kind: 'mass',
    unit: 'kg',
    from: 'zero',
    rows: drawn.map((closure) => ({
      label: closure.label,
      number: numberOf(closure.gap, closure),
      word: wordOf(closure),
    })),
  };
}

/** Beyond this many the gaps side by side are read better. */
const MOST_BALANCES = 8;

/** Each module as a balance: its parts against what it weighed in one piece, and the gap between. */
const balanceFigures = (closures: readonly ModuleClosure[]): Bars[] =>
  closures
    .filter((c) => c.rows.length > 0)
    .slice(0, MOST_BALANCES)
    .map((closure): Bars => {
      const { label, parts, weighed, gap } = closure;
      return {
        f: 'bars',
        title: `Balance of ${label}`,
        alt: 'The sum of its parts and what it weighed on one scale, and the gap between them.',
        kind: 'mass',
        unit: 'kg',
        from: 'nearest',
        rows: [
          { label: 'sum of its parts', number: numberOf(parts, closure) },
          { label: 'weighed in one piece', number: { x: weighed.x, u: formUncertainty(weighed) } },
        ],
        gap: { of: 0, less: 1, number: numberOf(gap, closure), word: wordOf(closure) },
      };
    });

/** A sum of a module; incomplete where one of its parts is. */
function numberOf(form: LinearForm, closure: ModuleClosure): FigureNumber {
  const u = formUncertainty(form);
  const { x } = form;
  return wordOf(closure) === 'incomplete' ? { x, u: 'incomplete', knownU: u } : { x, u };
}

const detailOf = (closures: readonly ModuleClosure[]): DetailTable => ({
  title: 'Modules against their parts',
  columns: [
    { name: 'module' },
    { name: 'parts', kind: 'count' },
    { name: 'without a mass', kind: 'count' },
    { name: 'sum of parts', kind: 'mass', unit: 'kg' },
    { name: 'weighed', kind: 'mass', unit: 'kg' },
    { name: 'gap', kind: 'mass', unit: 'kg' },
    { name: 'u of the gap', kind: 'mass', unit: 'kg' },
    { name: 'word' },
    ...CENTRE_COLUMNS.map((name) => ({ name, kind: 'length' as const, unit: 'mm' })),
  ],
  rows: closures.map((c) => [
    c.label,
    c.rows.length,
    c.missing.length,
    c.parts.x,
    c.weighed.x,
    c.gap.x,
    formUncertainty(c.gap),
    wordOf(c),
    ...centreOf(c),
  ]),
});

/** Columns with the mass centre of a module's parts; empty words where none has a place. */
export const CENTRE_COLUMNS = ['centre X', 'centre Y', 'centre Z'] as const;

function centreOf({ rows }: ModuleClosure): (number | string)[] {
  const placed = rows.filter(({ cells: { mass, x, y, z } }) => [mass, x, y, z].every(isThere));
  const at = (row: FoundRow, name: string): number => {
    const cell = row.cells[name];
    return isThere(cell) ? cell.form.x : Number.NaN;
  };
  const mass = placed.reduce((sum, row) => sum + at(row, 'mass'), 0);
  return ['x', 'y', 'z'].map((axis) =>
    mass > 0 ? placed.reduce((sum, row) => sum + at(row, 'mass') * at(row, axis), 0) / mass : '',
  );
}

function wordOf({
  gap,
  missing,
  rows,
  unknown,
  unsure,
}: ModuleClosure): DecisionWord | 'incomplete' | 'no list of parts' {
  if (rows.length === 0) return 'no list of parts';
  if (missing.length > 0 || unknown.length > 0 || unsure) return 'incomplete';
  return decideDifference(gap.x, formUncertainty(gap), null).word;
}

function findingsOf({ label, rows, unknown, missing }: ModuleClosure): Finding[] {
  const finding = (code: string, value: string, what: string, next: string): Finding => ({
    ...{ code, level: 'gap', place: { subject: label }, value, what, next },
  });
  return [
    ...(rows.length === 0
      ? [
          finding(
            'module-without-parts',
            label,
            'the module was weighed, and nothing says which parts were in it: it can not be balanced',
            'List them: a row of modules.csv with the module and its parts, parted by semicolons.',
          ),
        ]
      : []),
    ...(unknown.length > 0
      ? [
          finding(
            'module-part-unknown',
            unknown.join('; '),
            'numbers in the list of the module that no part has',
            'Correct the list, or add the parts.',
          ),
        ]
      : []),
    ...(missing.length > 0
      ? [
          finding(
            'module-part-missing',
            missing.map((r) => r.label).join('; '),
            'parts of the module without a mass: its gap is net of them',
            'Weigh them, then look at the gap again.',
          ),
        ]
      : []),
  ];
}
