import { exactForm, FormBuilder, formUncertainty, type LinearForm } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import { decideMargin } from '../decide.ts';
import type { BoundLook, DetailTable, Found, FoundRow, Looked } from '../method.ts';
import { type CentreAt, type PadFrame, padViews } from './hoist-figure.ts';
import { OrderJudge, type OrderProblem, type Sums } from './order-judge.ts';
import { closestOrder, type Order, widestOrder } from './order-search.ts';

const formOf = (found: Found | undefined): LinearForm =>
  found === undefined || 'missing' in found ? exactForm(Number.NaN) : found.form;
const xOf = (found: Found | undefined): number => formOf(found).x;

const sums = ({ cells }: FoundRow, mass: string, x: string, y: string): Sums => ({
  mass: formOf(cells[mass]),
  x: formOf(cells[x]),
  y: formOf(cells[y]),
});
const labelOf = (row: FoundRow): string => row.terms.step?.text ?? row.label;
const afterOf = (row: FoundRow): string[] =>
  (row.terms.after?.text ?? '').split('; ').filter(Boolean);

/** The plan as a search takes it. */
export function problemOf({ tables }: BoundLook): OrderProblem {
  const rows = tables.steps ?? [];
  const labels = rows.map(labelOf);
  const taken = rows.map((row) => sums(row, 'takenMass', 'takenX', 'takenY'));
  return {
    all: allBefore(rows, taken),
    steps: taken.map((sum, i) => ({ ...sum, label: labels[i] ?? '' })),
    before: rows.map((row) => afterOf(row).flatMap((label) => place(labels, label))),
    scalars: Object.fromEntries(
      Object.entries(tables.hoist?.[0]?.cells ?? {}).map(([name, found]) => [name, formOf(found)]),
    ),
  };
}

const place = (labels: readonly string[], label: string): number[] => {
  const at = labels.indexOf(label);
  return at < 0 ? [] : [at];
};

/** What the first step leaves, and what it takes. */
function allBefore([first]: readonly FoundRow[], [taken]: readonly Sums[]): Sums {
  if (!first || !taken) return { mass: exactForm(0), x: exactForm(0), y: exactForm(0) };
  const left = sums(first, 'mass', 'leftX', 'leftY');
  const both = (of: keyof Sums) => new FormBuilder().add(left[of]).add(taken[of]).done();
  return { mass: both('mass'), x: both('x'), y: both('y') };
}

/** The plan step by step, what is wrong with it, and orders that keep every precedence and margin. */
export function lookAtOrder(bound: BoundLook): Looked {
  const rows = bound.tables.steps ?? [];
  if (rows.length === 0) return {};
  const problem = problemOf(bound);
  const judge = new OrderJudge(problem);
  const closest = closestOrder(problem, judge);
  const widest = widestOrder(problem, judge);
  const findings = [...rows.flatMap((row, i) => stepFindings(row, rows.slice(0, i)))];
  const isPlanned = (order: Order | undefined) => order?.every((step, i) => step === i) === true;
  const orders = [
    ...(closest.order && !isPlanned(closest.order)
      ? [{ words: 'closest to the plan', order: closest.order }]
      : []),
    ...(widest.order && !isPlanned(widest.order) && String(widest.order) !== String(closest.order)
      ? [{ words: 'widest margin in X', order: widest.order }]
      : []),
  ];
  return {
    detail: planTable(rows),
    further: orders.map(({ words, order }) => orderTable(words, order, rows, judge)),
    findings: [...findings, ...searchFindings(findings, closest, orders, rows)],
    figures: viewsOf(bound, rows),
  };
}

const LIMITS = [
  ['spareX', 'in X', 'mm', 1000],
  ['spareY', 'in Y', 'mm', 1000],
  ['spareArm', 'on one arm', 'kg', 1],
  ['spareLift', 'on the lift', 'kg', 1],
] as const;

function stepFindings(row: FoundRow, earlier: readonly FoundRow[]): Finding[] {
  const done = new Set(earlier.map(labelOf));
  const waits = afterOf(row).filter((label) => !done.has(label));
  return [
    ...(waits.length === 0 ? [] : [tooEarly(row, waits)]),
    ...LIMITS.flatMap(([name, words, unit, per]) => {
      const form = formOf(row.cells[name]);
      const { word } = decideMargin(form.x, formUncertainty(form), null);
      return Number.isNaN(form.x) || word === 'holds'
        ? []
        : [
            belowLimit(
              row,
              words,
              `${signed(form.x * per)} ± ${signed(formUncertainty(form) * per)} ${unit}`,
              word,
            ),
          ];
    }),
  ];
}

const signed = (x: number): string => `${x < 0 ? '−' : ''}${Math.abs(Number(x.toPrecision(3)))}`;

const tooEarly = (row: FoundRow, waits: readonly string[]): Finding => ({
  code: 'removal-too-early',
  level: 'gap',
  place: { subject: labelOf(row) },
  value: waits.join('; '),
  what: `the step is planned before what must come first: ${row.terms.why?.text ?? ''}`,
  next: 'Put it later, or correct the joints and blockers.',
});

const belowLimit = (row: FoundRow, words: string, value: string, word: string): Finding => ({
  code: 'hoist-limit',
  level: 'gap',
  place: { subject: labelOf(row) },
  value,
  what:
    word === 'fails'
      ? `the step is not planned: it goes below the limit ${words} by this much`
      : `the step is not planned: with the spread of the record the margin ${words} is not proven`,
  next: 'Take one of the orders below, move the pads, or measure what the spread comes from.',
});

function searchFindings(
  wrong: readonly Finding[],
  { order, cutOff }: ReturnType<typeof closestOrder>,
  orders: readonly { readonly order: Order }[],
  rows: readonly FoundRow[],
): Finding[] {
  if (order && (wrong.length === 0 || orders.length > 0)) return [];
  if (wrong.length === 0) return [];
  return [
    {
      code: 'no-order-found',
      level: 'gap',
      place: { subject: rows.map(labelOf).join(', ') },
      what: cutOff
        ? 'no order that keeps every precedence and margin was found before the search was cut off'
        : 'no order of these steps keeps every precedence and margin',
      next: 'Move the pads, part a step in two, or add a stand under what hangs over.',
    },
  ];
}

const mm = { kind: 'length', unit: 'mm' } as const;
const kg = { kind: 'mass', unit: 'kg' } as const;

const planTable = (rows: readonly FoundRow[]): DetailTable => ({
  title: 'The plan, step by step',
  columns: [
    { name: 'step' },
    { name: 'what is done' },
    { name: 'after' },
    { name: 'left', ...kg },
    { name: 'X', ...mm },
    { name: 'u of X', ...mm },
    { name: 'Y', ...mm },
    { name: 'Z', ...mm },
    { name: 'margin in X', ...mm },
    { name: 'with the pull', ...mm },
    { name: 'asked for', ...mm },
    { name: 'beyond it', ...mm },
    { name: 'u', ...mm },
    { name: 'one arm to spare', ...kg },
    { name: 'word' },
  ],
  rows: rows.map((row) => {
    const { cells } = row;
    const spare = formOf(cells.spareX);
    const numbers = [
      xOf(cells.mass),
      xOf(cells.x),
      formUncertainty(formOf(cells.x)),
      xOf(cells.y),
      xOf(cells.z),
    ];
    const margins = [
      xOf(cells.marginX),
      xOf(cells.pulledX),
      xOf(cells.limitX),
      spare.x,
      formUncertainty(spare),
    ];
    const known = (x: number) => (Number.isFinite(x) ? x : 'not known');
    return [
      labelOf(row),
      row.terms.doing?.text ?? '',
      row.terms.after?.text ?? '',
      ...[...numbers, ...margins, xOf(cells.spareArm)].map(known),
      wordOf(row),
    ];
  }),
});

/** The worst word of what a step is judged by. */
function wordOf(row: FoundRow): string {
  const cells = LIMITS.map(([name]) => row.cells[name]);
  const isWhole = cells.every((c) => c !== undefined && !('missing' in c) && !c.unknownSpread);
  const words = cells.map((c) => decideMargin(xOf(c), formUncertainty(formOf(c)), null).word);
  if (words.includes('fails')) return 'fails';
  if (!isWhole) return 'not complete';
  return words.every((w) => w === 'holds') ? 'holds' : 'not proven';
}

function orderTable(
  words: string,
  order: Order,
  rows: readonly FoundRow[],
  judge: OrderJudge,
): DetailTable {
  let set = 0;
  return {
    title: `An order that keeps every precedence and margin: ${words}`,
    columns: [
      { name: 'place', kind: 'count' },
      { name: 'step' },
      { name: 'what is done' },
      { name: 'after' },
      { name: 'margin in X beyond what is asked for', ...mm },
      { name: 'word' },
    ],
    rows: order.map((step, i) => {
      set |= 1 << step;
      const row = rows[step];
      const { spareX, holds } = judge.judge(set);
      const texts = row
        ? [labelOf(row), row.terms.doing?.text ?? '', row.terms.after?.text ?? '']
        : [];
      return [i + 1, ...texts, spareX, holds ? 'holds' : 'not proven'];
    }),
  };
}

function viewsOf({ tables }: BoundLook, rows: readonly FoundRow[]) {
  const hoist = tables.hoist?.[0]?.cells ?? {};
  const [front, rear, left, right] = ['front', 'rear', 'left', 'right'].map((n) => xOf(hoist[n]));
  const first = rows[0]?.cells ?? {};
  const frame = {
    ...{ front, rear, left, right },
    ...{ limitX: xOf(first.limitX), limitY: xOf(first.limitY) },
  } as PadFrame;
  const centres = rows.map(
    (row): CentreAt => ({
      label: labelOf(row),
      x: xOf(row.cells.x),
      y: xOf(row.cells.y),
      z: xOf(row.cells.z),
    }),
  );
  return padViews(frame, centres);
}
