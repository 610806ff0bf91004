import { FormBuilder, formUncertainty, type LinearForm } from '../../quantity/index.ts';
import type { Bars } from '../figure.ts';
import type { BoundLook, Cell, DetailTable, FoundRow, Looked } from '../method.ts';
import { linearised } from '../propagate.ts';
import { NEEDED, partCostOf } from './part-formula.ts';
import { sharesOf } from './part-functions.ts';
import { isAssumed } from './rests-on.ts';

/** Rows of a table of parts at most: the dearest. */
const TOLD = 60;

/** What each part costs with overhead, and whether a judgement is behind it. */
interface Priced {
  readonly row: FoundRow;
  readonly cost: LinearForm;
  readonly rests: string;
}

/** Costs by part and by function, each with its spread. */
export function lookAtParts({ tables, scalars }: BoundLook): Looked {
  const { overhead, apart } = scalars;
  if (!overhead || !apart || 'missing' in overhead || 'missing' in apart) return {};
  const priced = (tables.parts ?? []).flatMap((row) => pricedOf(row, overhead, apart));
  if (priced.length === 0) return {};
  const byFunction = functionsOf(priced);
  return {
    detail: partsTable(priced),
    further: [functionsTable(byFunction)],
    figures: [functionBars(byFunction)],
  };
}

function pricedOf(row: FoundRow, overhead: Cell, apart: Cell): Priced[] {
  const cells = NEEDED.flatMap((name) => {
    const cell = row.cells[name];
    return cell && !('missing' in cell) ? [cell] : [];
  });
  if (cells.length < NEEDED.length) return [];
  const { form } = linearised(
    partCostOf,
    [...cells, overhead, apart].map((c) => c.form),
  );
  const isCounted = (name: string) => apart.form.x !== 0 || !['tool', 'life'].includes(name);
  const names = NEEDED.filter((name, i) => isAssumed(cells[i]?.how ?? '') && isCounted(name));
  return [{ row, cost: form, rests: names.join(', ') || 'nothing assumed' }];
}

const MONEY = { kind: 'money', unit: '{u}' } as const;

const partsTable = (priced: readonly Priced[]): DetailTable => ({
  title: `Cost by part, with overhead, the dearest first, spread without that of the method${priced.length > TOLD ? `: ${TOLD} of ${priced.length}` : ''}`,
  columns: [
    ...[
      { name: 'part' },
      { name: 'assembly' },
      { name: 'cost', ...MONEY },
      { name: 'u', ...MONEY },
    ],
    { name: 'rests on a judgement of' },
  ],
  rows: [...priced]
    .sort((a, b) => b.cost.x - a.cost.x)
    .slice(0, TOLD)
    .map(({ row, cost, rests }) => [
      ...[row.label, row.terms.assembly?.text ?? '', cost.x, formUncertainty(cost), rests],
    ]),
});

function functionsOf(priced: readonly Priced[]): ReadonlyMap<string, LinearForm> {
  const sums = new Map<string, FormBuilder>();
  for (const { row, cost } of priced)
    for (const [name, share] of sharesOf(row.terms.functions?.text ?? '')) {
      const sum = sums.get(name) ?? new FormBuilder();
      sums.set(name, sum.add(cost, share));
    }
  const done = [...sums].map(([name, sum]) => [name, sum.done()] as const);
  return new Map(done.sort(([, a], [, b]) => b.x - a.x));
}

function functionsTable(byFunction: ReadonlyMap<string, LinearForm>): DetailTable {
  const total = [...byFunction.values()].reduce((sum, { x }) => sum + x, 0);
  return {
    title:
      'Cost by function: parts shared out, summing to the whole; spread without that of the method',
    columns: [
      ...[{ name: 'function' }, { name: 'cost', ...MONEY }, { name: 'u', ...MONEY }],
      { name: 'share', kind: 'ratio', unit: '%' },
    ],
    rows: [...byFunction].map(([name, form]) => [
      name,
      form.x,
      formUncertainty(form),
      form.x / total,
    ]),
  };
}

const functionBars = (byFunction: ReadonlyMap<string, LinearForm>): Bars => ({
  ...{ f: 'bars', title: 'Cost by function', ...MONEY, from: 'zero' },
  alt: 'A bar for each function, the dearest first, with whiskers of two standard uncertainties.',
  rows: [...byFunction].map(([label, form]) => ({
    ...{ label, number: { x: form.x, u: formUncertainty(form) } },
  })),
});
