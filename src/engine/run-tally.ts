import type { Place } from '../study/index.ts';
import {
  type BodyOut,
  type BodyResult,
  formsOf,
  placesMissing,
  placesUnknown,
} from './body-out.ts';
import type { BoundInputs, LaidOut } from './bound-inputs.ts';
import type { BoundRow } from './bound-row.ts';
import { flatCells } from './flat-cells.ts';
import { Aligned } from './forms/aligned.ts';
import { type FlatRows, flatRows } from './forms/flat-rows.ts';
import type { IndexedForm } from './forms/indexed-form.ts';
import type { Variables } from './forms/variables.ts';
import type { Found, GroupRow, GroupSum, Run, TallyBody } from './method.ts';
import { throughFormula } from './propagate.ts';
import { type GapsByTerm, RowWorker } from './row-worker.ts';

/** A sum over rows: its value (NaN without any row), what is missing, how many rows are in it. */
export interface TermSum {
  readonly x: number;
  readonly u: number;
  readonly curvature: number;
  readonly rows: number;
  readonly missing: readonly Place[];
  readonly unknownSpread: readonly Place[];
}

type Rows = FlatRows<BoundRow, GapsByTerm>;

/** Sums over the rows of the table, then each output's formula over them and the scalars. */
export function runTally(
  body: TallyBody,
  bound: BoundInputs,
  scalars: readonly Found[],
  run: Run,
): BodyResult {
  const { variables, before } = bound;
  const table = bound.tables[body.table] ?? [];
  const cells = bound.cells ?? flatCells(table, variables);
  const rows = flatRows(table, new RowWorker(body, cells), before.rows);
  before.rows = rows;
  run.tick(0.5);
  const forms = formsOf(scalars, variables);
  const { sums, aligned } = sumsOf(body, rows, forms, variables, before);
  const outs = body.outputs.map((spec) => outOf(spec, sums, aligned, scalars));
  const groupsBy = (column: string) =>
    groupsOf(table, column).map(([group, own]) => groupRow(body, group, own, variables));
  const { groupBy } = body;
  return {
    outs,
    sums,
    findings: [],
    ...(groupBy === undefined ? {} : { groups: () => groupsBy(groupBy) }),
  };
}

interface Sums {
  readonly sums: readonly TermSum[];
  /** The sums, and the scalars after them. */
  readonly aligned: Aligned;
}

/**
 * Sums row by row in the order of the rows, each variable at the place where it is first met:
 * the same rows give the same digits whatever edits led to them.
 */
function sumsOf(
  body: TallyBody,
  rows: Rows,
  scalars: readonly IndexedForm[],
  variables: Variables,
  before: LaidOut = {},
): Sums {
  const numbering = variables.numbering();
  const places = numbering.placesOf(rows.vars);
  const scalarPlaces = scalars.map((form) => numbering.placesOf(form.vars));
  const vars = numbering.met();
  const spare = [...(before.columns ?? [])].filter((list) => list.length === vars.length);
  const column = (at: Int32Array, c: ArrayLike<number>) =>
    added(spare.pop()?.fill(0) ?? new Float64Array(vars.length), at, c);
  // Where no variable comes twice the rows one after the other are the sum.
  const isLaidOut = places.length === vars.length && inOrder(places);
  const columns = [
    ...(isLaidOut ? rows.columns : rows.columns.map((c) => column(places, c))),
    ...scalars.map((form, k) => column(scalarPlaces[k] ?? places, form.c)),
  ];
  before.columns = isLaidOut ? columns.slice(rows.columns.length) : columns;
  const totals = body.terms.map((_, t) => totalOf(body, rows, t));
  const xs = Float64Array.from([...totals.map((s) => s.x), ...scalars.map((s) => s.x)]);
  const aligned = new Aligned(variables, vars, xs, columns);
  return { sums: totals.map((s, t) => ({ ...s, u: aligned.us[t] ?? 0 })), aligned };
}

function inOrder(places: Int32Array): boolean {
  for (let i = 0; i < places.length; i++) if (places[i] !== i) return false;
  return true;
}

function added(column: Float64Array, places: Int32Array, c: ArrayLike<number>): Float64Array {
  for (let i = 0; i < places.length; i++) {
    const place = places[i] ?? 0;
    column[place] = (column[place] ?? 0) + (c[i] ?? 0);
  }
  return column;
}

/** A row without one of its numbers adds nothing, and is named. */
function totalOf(body: TallyBody, rows: Rows, t: number): Omit<TermSum, 'u'> {
  const gaps = [...rows.gaps.values()].flatMap((own) => own.get(t) ?? []);
  const left = gaps.filter((g) => g.missing.length > 0).length;
  const counted = rows.rows.length - left;
  return {
    // A sum of nothing is not known to be zero.
    x: counted === 0 ? Number.NaN : sumOf(rows.fields[t]),
    curvature: sumOf(rows.fields[body.terms.length + t]),
    rows: counted,
    missing: [
      ...(rows.rows.length === 0 ? [{ column: body.table }] : []),
      ...gaps.flatMap((g) => g.missing),
    ],
    unknownSpread: gaps.flatMap((g) => g.unknownSpread),
  };
}

function sumOf(list: Float64Array = new Float64Array(0)): number {
  let sum = 0;
  for (let i = 0; i < list.length; i++) sum += list[i] ?? 0;
  return sum;
}

function outOf(
  spec: TallyBody['outputs'][number],
  sums: readonly TermSum[],
  args: Aligned,
  scalars: readonly Found[],
): BodyOut {
  const result = throughFormula(spec.of, args, spec.derivatives);
  const usedSums = sums.filter((_, i) => result.depends[i]);
  const usedScalars = scalars.filter((_, i) => result.depends[sums.length + i]);
  return {
    spec,
    result: { ...result, curvature: result.curvature + carried(spec, args, sums) },
    missing: [...usedSums.flatMap((s) => s.missing), ...placesMissing(usedScalars)],
    unknownSpread: [...usedSums.flatMap((s) => s.unknownSpread), ...placesUnknown(usedScalars)],
  };
}

/** Curvature within the rows, carried through the formula over the sums to first order. */
function carried(
  spec: TallyBody['outputs'][number],
  args: Aligned,
  sums: readonly TermSum[],
): number {
  if (sums.every((s) => s.curvature === 0)) return 0;
  const xs = Array.from(args.xs);
  return spec.of(...xs.map((x, i) => x + (sums[i]?.curvature ?? 0))) - spec.of(...xs);
}

/** Rows by the word in a column, in the order of the words. */
function groupsOf(
  rows: readonly BoundRow[],
  column: string,
): (readonly [string, readonly BoundRow[]])[] {
  const byGroup = new Map<string, BoundRow[]>();
  for (const row of rows) {
    const key = row.word(column);
    const list = byGroup.get(key);
    if (list) list.push(row);
    else byGroup.set(key, [row]);
  }
  return [...byGroup].sort(([a], [b]) => (a < b ? -1 : 1));
}

/** The sums over one group. */
function groupRow(
  body: TallyBody,
  group: string,
  own: readonly BoundRow[],
  variables: Variables,
): GroupRow {
  const worker = new RowWorker(body, flatCells(own, variables));
  const rows = flatRows(own, worker);
  const { sums } = sumsOf(body, rows, [], variables);
  return {
    group,
    rows: rows.rows.length,
    missing: [...rows.gaps.values()].filter(lacksNumber).length,
    terms: Object.fromEntries(
      body.terms.flatMap(({ name }, t) => {
        const sum = sums[t];
        return sum && sum.rows > 0 ? [[name, groupSum(sum)]] : [];
      }),
    ),
  };
}

const groupSum = ({ x, u, missing, unknownSpread }: TermSum): GroupSum => ({
  ...{ x, u, missing: missing.length, unknownSpread: unknownSpread.length },
});

const lacksNumber = (gaps: GapsByTerm): boolean =>
  [...gaps.values()].some((g) => g.missing.length > 0);
