import { exactForm, FormBuilder, formUncertainty, type LinearForm } from '../quantity/index.ts';
import type { Place } from '../study/index.ts';
import type {
  BoundInputs,
  Cell,
  DetailTable,
  Found,
  FoundRow,
  GroupRow,
  OutputSpec,
  PlainInputs,
  PlainRow,
  Question,
  RowBody,
  Run,
  SolveBody,
  Solved,
  TallyBody,
} from './method.ts';
import { linearised, type Propagated, throughFormula, throughSolve } from './propagate.ts';

/** What a body gives for one output, before model error and decision. */
export interface BodyOut {
  readonly spec: OutputSpec;
  readonly result: Propagated;
  readonly missing: readonly Place[];
  readonly unknownSpread: readonly Place[];
}

/** What a body gives beside its outputs. */
export interface BodyResult {
  readonly outs: readonly BodyOut[];
  /** Sums of a tally, for the working. */
  readonly sums?: readonly { readonly name: string; readonly result: TermSum }[];
  readonly groups?: readonly GroupRow[];
  readonly detail?: DetailTable;
  readonly findings: Solved['findings'];
}

const isMissing = (found: Found): found is Extract<Found, { missing: true }> => 'missing' in found;
const NOT_THERE: LinearForm = exactForm(Number.NaN);
const formOf = (found: Found | undefined): LinearForm =>
  found === undefined || isMissing(found) ? NOT_THERE : found.form;

/** Runs a question's body over bound inputs. */
export function runBody(question: Question, bound: BoundInputs, run: Run): BodyResult {
  const { body } = question;
  if (body.body === 'row') return runRow(question, body, bound);
  if (body.body === 'tally') return runTally(question, body, bound, run);
  return runSolve(question, body, bound, run);
}

/** The scalar inputs in the order declared. */
function scalarsOf(question: Question, bound: BoundInputs): Found[] {
  const names = question.inputs.filter((i) => i.in === 'scalar').map((i) => i.name);
  return names.flatMap((name) => bound.scalars[name] ?? []);
}

function runRow(question: Question, body: RowBody, bound: BoundInputs): BodyResult {
  const args = scalarsOf(question, bound);
  return { outs: body.outputs.map((spec) => formulaOut(spec, spec.of, args)), findings: [] };
}

/** One output of a formula; a missing argument matters only where the formula depends on it. */
function formulaOut(
  spec: OutputSpec,
  f: (...x: number[]) => number,
  args: readonly Found[],
): BodyOut {
  const result = throughFormula(f, args.map(formOf));
  const used = args.filter((_, i) => result.depends[i]);
  return { spec, result, missing: placesMissing(used), unknownSpread: placesUnknown(used) };
}

const placesMissing = (cells: readonly Found[]): Place[] =>
  cells.filter(isMissing).map((c) => c.place);
const placesUnknown = (cells: readonly Found[]): Place[] =>
  cells.filter((c): c is Cell => !isMissing(c) && c.unknownSpread === true).map((c) => c.place);

/** A sum over rows: its form (NaN without any row), what is missing, and how many rows are in it. */
export interface TermSum {
  readonly form: LinearForm;
  readonly curvature: number;
  readonly rows: number;
  readonly missing: readonly Place[];
  readonly unknownSpread: readonly Place[];
}

type Term = TallyBody['terms'][number];

function runTally(question: Question, body: TallyBody, bound: BoundInputs, run: Run): BodyResult {
  const rows = bound.tables[body.table] ?? [];
  const sums = body.terms.map((term, i) => {
    run.tick(i / body.terms.length);
    return sumTerm(term, rows, body.table);
  });
  const args = [...sums.map((s) => s.form), ...scalarsOf(question, bound).map(formOf)];
  const scalars = scalarsOf(question, bound);
  const outs = body.outputs.map((spec): BodyOut => {
    const result = throughFormula(spec.of, args);
    const usedSums = sums.filter((_, i) => result.depends[i]);
    const usedScalars = scalars.filter((_, i) => result.depends[sums.length + i]);
    return {
      spec,
      result: { ...result, curvature: result.curvature + curvatureOf(spec, args, sums) },
      missing: [...usedSums.flatMap((s) => s.missing), ...placesMissing(usedScalars)],
      unknownSpread: [...usedSums.flatMap((s) => s.unknownSpread), ...placesUnknown(usedScalars)],
    };
  });
  const named = body.terms.map((t, i) => ({ name: t.name, result: sums[i] as TermSum }));
  const groups = body.groupBy === undefined ? undefined : groupRows(body, rows, body.groupBy);
  return { outs, sums: named, findings: [], ...(groups ? { groups } : {}) };
}

/** Curvature within the rows, carried through the formula over the sums to first order. */
function curvatureOf(
  spec: TallyBody['outputs'][number],
  args: readonly LinearForm[],
  sums: readonly TermSum[],
): number {
  if (sums.every((s) => s.curvature === 0)) return 0;
  const shifted = args.map((a, i) => a.x + (sums[i]?.curvature ?? 0));
  return spec.of(...shifted) - spec.of(...args.map((a) => a.x));
}

function sumTerm(term: Term, rows: readonly FoundRow[], table: string): TermSum {
  const sum = new FormBuilder();
  const missing: Place[] = rows.length === 0 ? [{ column: table }] : [];
  const unknownSpread: Place[] = [];
  let curvature = 0;
  let counted = 0;
  for (const row of rows) {
    const cells = term.needs.map((name) => row.cells[name]).filter((c) => c !== undefined);
    const gone = cells.filter(isMissing);
    if (gone.length > 0) {
      missing.push(...gone.map((c) => c.place));
      continue;
    }
    unknownSpread.push(...placesUnknown(cells));
    const value = linearised(term.each, cells.map(formOf));
    sum.add(value.form);
    curvature += value.curvature;
    counted++;
  }
  // A sum of nothing is not known to be zero.
  const form = counted === 0 ? NOT_THERE : sum.done();
  return { form, curvature, rows: counted, missing, unknownSpread };
}

function groupRows(body: TallyBody, rows: readonly FoundRow[], column: string): GroupRow[] {
  const byGroup = new Map<string, FoundRow[]>();
  for (const row of rows) {
    const key = row.terms[column]?.text ?? '';
    const list = byGroup.get(key);
    if (list) list.push(row);
    else byGroup.set(key, [row]);
  }
  return [...byGroup]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([group, own]) => groupRow(body, group, own));
}

function groupRow(body: TallyBody, group: string, rows: readonly FoundRow[]): GroupRow {
  const sums = body.terms.map((term) => [term.name, sumTerm(term, rows, body.table)] as const);
  const needed = new Set(body.terms.flatMap((t) => t.needs));
  const lacks = (row: FoundRow) =>
    Object.entries(row.cells).some(([name, cell]) => needed.has(name) && isMissing(cell));
  return {
    group,
    rows: rows.length,
    missing: rows.filter(lacks).length,
    terms: Object.fromEntries(
      sums
        .filter(([, s]) => s.rows > 0)
        .map(([name, { form, missing, unknownSpread }]) => [
          name,
          {
            x: form.x,
            u: formUncertainty(form),
            missing: missing.length,
            unknownSpread: unknownSpread.length,
          },
        ]),
    ),
  };
}

/** Numbers of a structured body, each with its cell, laid out for shifting. */
function runSolve(question: Question, body: SolveBody, bound: BoundInputs, run: Run): BodyResult {
  const cells: Cell[] = [];
  const plain = layOut(bound, cells);
  const names = body.outputs.map((o) => o.name);
  const evaluate = (shift: Float64Array) => {
    const solved = body.solve(plain(shift), run);
    return names.map((name) => solved.outputs[name] ?? Number.NaN);
  };
  const nominal = body.solve(plain(new Float64Array(cells.length)), run);
  const results = throughSolve(evaluate, cells);
  const missing = missingInputs(question, bound);
  const unknownSpread = placesUnknown(cells);
  const outs = body.outputs.map((spec, i) => ({
    spec,
    result: results[i] as Propagated,
    missing,
    unknownSpread,
  }));
  return {
    outs,
    findings: nominal.findings ?? [],
    ...(nominal.detail ? { detail: nominal.detail } : {}),
  };
}

function missingInputs(question: Question, bound: BoundInputs): Place[] {
  const cells = question.inputs.flatMap((input) => {
    if (input.in !== 'table') return [];
    const wanted = input.columns.filter((c) => c.in === 'scalar' && !c.optional);
    return (bound.tables[input.name] ?? []).flatMap((row) =>
      wanted.flatMap((c) => row.cells[c.name] ?? []),
    );
  });
  return placesMissing([...scalarsOf(question, bound), ...cells]);
}

/** Plain inputs as a function of the shifts; fills `cells` in the order of the shifts. Missing numbers are NaN. */
function layOut(bound: BoundInputs, cells: Cell[]): (shift: Float64Array) => PlainInputs {
  const place = (found: Found): ((shift: Float64Array) => number) => {
    if (isMissing(found)) return () => Number.NaN;
    const at = cells.push(found) - 1;
    return (shift) => found.form.x + (shift[at] ?? 0);
  };
  const scalars = Object.entries(bound.scalars).map(
    ([name, found]) => [name, place(found)] as const,
  );
  const tables = Object.entries(bound.tables).map(
    ([name, rows]) =>
      [
        name,
        rows.map((row) => ({
          words: wordsOf(row),
          numbers: Object.entries(row.cells).map(
            ([column, found]) => [column, place(found)] as const,
          ),
        })),
      ] as const,
  );
  const terms = Object.fromEntries(Object.entries(bound.terms).map(([name, t]) => [name, t.text]));
  return (shift) => ({
    terms,
    scalars: Object.fromEntries(scalars.map(([name, at]) => [name, at(shift)])),
    tables: Object.fromEntries(
      tables.map(([name, rows]) => [
        name,
        rows.map(
          (r): PlainRow => ({
            ...r.words,
            ...Object.fromEntries(r.numbers.map(([c, at]) => [c, at(shift)])),
          }),
        ),
      ]),
    ),
  });
}

const wordsOf = (row: FoundRow): Record<string, string> => ({
  subject: row.label,
  ...Object.fromEntries(Object.entries(row.terms).map(([column, t]) => [column, t.text])),
});
