import type { Finding } from '../../study/index.ts';
import type { BoundLook, Cell, DetailTable, Looked, ScalarInput } from '../method.ts';
import type { CostLines } from './cost-lines.ts';

type Numbers = Readonly<Record<string, number>>;

type LinesOf = (x: Numbers, words: Readonly<Record<string, string>>) => CostLines;

const LINES = ['material', 'bought', 'machine', 'labour', 'tooling', 'delivery'] as const;

/** Ways of knowing that are assumptions. */
const ASSUMED: readonly string[] = ['assumed', 'guessed', 'inferred'];
export const isAssumed = (how: string): boolean => ASSUMED.includes(how);

/** Relative step by which each input is moved. */
const STEP = 1e-4;

/** An input with what of the cost rests on it. */
interface Rest {
  readonly input: ScalarInput;
  readonly cell: Cell;
  /** Share of the cost that it carries, and by how much one percent of it moves the cost. */
  readonly share: number;
  readonly elasticity: number;
}

/**
 * What a cost rests on: each line is divided among the inputs that move it, by how strongly they
 * do; with it goes where each comes from, a cell of the rate book, a reading or an assumption.
 */
export const restsOn =
  (linesOf: LinesOf, inputs: readonly ScalarInput[]) =>
  ({ scalars, terms }: BoundLook): Looked => {
    const words = Object.fromEntries(Object.entries(terms).map(([name, t]) => [name, t.text]));
    const cells = inputs.flatMap((input) => {
      const cell = scalars[input.name];
      return cell && !('missing' in cell) ? [{ input, cell }] : [];
    });
    if (cells.length < inputs.length) return {};
    const at = Object.fromEntries(cells.map(({ input, cell }) => [input.name, cell.form.x]));
    const rests = sharesOf((x) => linesOf(x, words), at, cells);
    const assumed = rests.reduce((sum, r) => sum + (isAssumed(r.cell.how) ? r.share : 0), 0);
    return { detail: tableOf(rests), findings: [assumedShare(assumed), ...inventedRates(rests)] };
  };

function sharesOf(
  linesOf: (x: Numbers) => CostLines,
  at: Numbers,
  cells: readonly { readonly input: ScalarInput; readonly cell: Cell }[],
): Rest[] {
  const nominal = linesOf(at);
  const total = LINES.reduce((sum, name) => sum + Math.abs(nominal[name]), 0);
  const moved = cells.map(({ input }) =>
    linesOf({ ...at, [input.name]: (at[input.name] ?? 0) * (1 + STEP) }),
  );
  const slope = (name: keyof CostLines, i: number): number =>
    ((moved[i]?.[name] ?? Number.NaN) - nominal[name]) / STEP;
  const weights = LINES.map((name) => {
    const each = cells.map((_, i) => Math.abs(slope(name, i)));
    const sum = each.reduce((a, b) => a + b, 0);
    return each.map((e) => (sum > 0 ? (Math.abs(nominal[name]) * e) / sum : 0));
  });
  return cells.map(({ input, cell }, i) => ({
    ...{ input, cell },
    share: weights.reduce((sum, w) => sum + (w[i] ?? 0), 0) / total,
    elasticity: slope('cost', i) / nominal.cost,
  }));
}

const tableOf = (rests: readonly Rest[]): DetailTable => ({
  title: 'What the cost rests on, the largest first',
  columns: [
    { name: 'input' },
    { name: 'how known' },
    { name: 'from' },
    { name: 'carries', kind: 'ratio', unit: '%' },
    { name: '1 % of it moves the cost by, %' },
  ],
  rows: [...rests]
    .sort((a, b) => b.share - a.share)
    .map(({ input, cell, share, elasticity }) => [
      input.meaning,
      cell.how,
      [cell.place.subject, cell.place.property, cell.place.column].filter(Boolean).join(', '),
      share,
      Number(elasticity.toFixed(3)),
    ]),
});

const assumedShare = (share: number): Finding => ({
  ...{ code: 'assumed-share', level: 'note', place: {} },
  value: `${(100 * share).toFixed(0)} %`,
  what: `${(100 * share).toFixed(0)} % of the cost rests on assumptions, each line being divided among the inputs that move it by how strongly they do`,
  next: 'Measure or quote what carries most of it.',
});

/** Rates that were shipped with the tool were made up, and say so. */
function inventedRates(rests: readonly Rest[]): Finding[] {
  const rates = rests.filter(
    ({ input, cell }) => input.kind.startsWith('money') && cell.how === 'assumed',
  );
  if (rates.length === 0) return [];
  return [
    {
      ...{ code: 'invented-rates', level: 'doubt', place: { column: 'rates' } },
      value: rates.map(({ input }) => input.name).join(', '),
      what: 'rates shipped with this tool are invented: they stand in until a rate book is imported',
      next: 'Import a rate book with quoted rates, or give these inputs.',
    },
  ];
}
