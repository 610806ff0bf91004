import type { Place } from '../study/index.ts';
import {
  type BodyOut,
  type BodyResult,
  formsOf,
  placesMissing,
  placesUnknown,
} from './body-out.ts';
import type { BoundInputs } from './bound-inputs.ts';
import type { BoundRow } from './bound-row.ts';
import { Aligned } from './forms/aligned.ts';
import { FlatRows } from './forms/flat-rows.ts';
import type { IndexedForm } from './forms/indexed-form.ts';
import type { Variables } from './forms/variables.ts';
import type { Found, GroupRow, GroupSum, Run, TallyBody } from './method.ts';
import { throughFormula } from './propagate.ts';
import { type RowGaps, RowWorker } from './row-forms.ts';

/** A sum over rows: its value (NaN without any row), what is missing, how many rows are in it. */
export interface TermSum {
  readonly x: number;
  readonly u: number;
  readonly curvature: number;
  readonly rows: number;
  readonly missing: readonly Place[];
  readonly unknownSpread: readonly Place[];
}

type Rows = FlatRows<BoundRow>;

/** Sums over the rows of the table, then each output's formula over them and the scalars. */
export function runTally(
  body: TallyBody,
  bound: BoundInputs,
  scalars: readonly Found[],
  run: Run,
): BodyResult {
  const { variables, before } = bound;
  const worker = new RowWorker(body, variables);
  const layOut = (rows: readonly BoundRow[], held?: Rows) =>
    FlatRows.of(rows, body.terms.length, (row) => worker.work(row), held);
  const rows = layOut(bound.tables[body.table] ?? [], before.rows);
  before.rows = rows;
  run.tick(0.5);
  const { sums, aligned } = sumsOf(body, rows, formsOf(scalars, variables), variables);
  const outs = body.outputs.map((spec) => outOf(spec, sums, aligned, scalars));
  const groupsBy = (column: string) =>
    groupsOf(rows.rows, column).map(([group, own]) =>
      groupRow(body, group, layOut(own), variables),
    );
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
): Sums {
  const numbering = variables.numbering();
  const places = rows.vars.map((variable) => numbering.placeOf(variable));
  const scalarPlaces = scalars.map((form) =>
    Int32Array.from(form.vars, (variable) => numbering.placeOf(variable)),
  );
  const vars = numbering.met();
  const columns = [
    ...rows.cs.map((c) => added(new Float64Array(vars.length), places, c)),
    ...scalars.map((form, k) =>
      added(new Float64Array(vars.length), scalarPlaces[k] ?? places, form.c),
    ),
  ];
  const totals = body.terms.map((_, t) => totalOf(body, rows, t));
  const xs = Float64Array.from([...totals.map((s) => s.x), ...scalars.map((s) => s.x)]);
  const aligned = new Aligned(variables, vars, xs, columns);
  return { sums: totals.map((s, t) => ({ ...s, u: aligned.us[t] ?? 0 })), aligned };
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
    x: counted === 0 ? Number.NaN : sumOf(rows.xs[t]),
    curvature: sumOf(rows.curvatures[t]),
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
    const key = row.terms[column]?.text ?? '';
    const list = byGroup.get(key);
    if (list) list.push(row);
    else byGroup.set(key, [row]);
  }
  return [...byGroup].sort(([a], [b]) => (a < b ? -1 : 1));
}

/** The sums over one group. */
function groupRow(body: TallyBody, group: string, rows: Rows, variables: Variables): GroupRow {
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

const lacksNumber = (gaps: ReadonlyMap<number, RowGaps>): boolean =>
  [...gaps.values()].some((g) => g.missing.length > 0);
