import {
  checkSpread,
  degreesOfFreedom,
  FormBuilder,
  meanShift,
  type Spread,
  standardUncertainty,
} from '../../quantity/index.ts';
import type { Cause, InForce, Place, RateCell, Reading, StudyView } from '../../study/index.ts';
import type { Cell, TabledValue, Variable } from '../method.ts';

/** The independent variables met while inputs are bound, each once. */
export class Variables {
  readonly all = new Map<string, Variable>();

  /** Registers a variable; nothing when its spread is exact, undefined when unknown or impossible. */
  put(v: Omit<Variable, 'u' | 'dof' | 'shift'>, x: number): number | undefined {
    if (checkSpread(v.spread, x) !== undefined) return undefined;
    const u = standardUncertainty(v.spread, x);
    if (u === undefined || u === 0) return u;
    if (!this.all.has(v.id)) this.all.set(v.id, { ...v, u, ...shape(v.spread, x, u) });
    return u;
  }
}

function shape(spread: Spread, x: number, u: number): Pick<Variable, 'dof' | 'shift'> {
  const dof = degreesOfFreedom(spread);
  return { dof: Number.isFinite(dof) ? dof : null, shift: meanShift(spread, x) / u };
}

/** A value in force as a cell: own spreads by weight, and its shares of common causes. */
export function cellOf(
  got: InForce,
  component: number,
  view: StudyView,
  label: string,
  variables: Variables,
): Cell {
  const form = new FormBuilder();
  form.x = nominal(got, component);
  let unknown = false;
  for (const { reading, weight } of got.from) {
    const ownKnown = addOwn(form, reading, weight, component, label, variables);
    const causesKnown = addCauses(form, reading, weight, view, variables);
    unknown ||= !ownKnown || !causesKnown;
  }
  const place = { subject: label, property: got.of.property };
  return {
    form: form.done(),
    how: got.how,
    place,
    label,
    from: got,
    ...(unknown ? { unknownSpread: true } : {}),
  };
}

function nominal(got: InForce, component: number): number {
  const v = got.value;
  if (v.t === 'scalar') return v.x;
  if (v.t === 'count') return v.n;
  if (v.t === 'vector') return v.x[component] ?? Number.NaN;
  if (v.t === 'flag') return v.on ? 1 : 0;
  return Number.NaN;
}

/** False when the reading's own spread is not known. */
function addOwn(
  form: FormBuilder,
  reading: Reading,
  weight: number,
  component: number,
  label: string,
  variables: Variables,
): boolean {
  const v = reading.value;
  if (v.t === 'vector')
    return addComponent(form, reading, v.cov, v.x.length, component, label, variables);
  if (v.t !== 'scalar' && v.t !== 'count') return true;
  const x = v.t === 'scalar' ? v.x : v.n;
  const u = variables.put(
    {
      id: reading.id,
      label: `${label}, ${reading.of.property}`,
      what: 'reading',
      of: reading.of,
      spread: v.spread,
      place: readingPlace(reading, label),
    },
    x,
  );
  if (u) form.contribute(reading.id, weight * u);
  return u !== undefined;
}

/** Correlated components share standard variables, by the Cholesky factor of their covariance. */
function addComponent(
  form: FormBuilder,
  reading: Reading,
  cov: readonly number[],
  n: number,
  component: number,
  label: string,
  variables: Variables,
): boolean {
  const variance = cov[component * n + component] ?? Number.NaN;
  if (cov.length !== n * n || !(variance >= 0)) return false;
  const row = choleskyRow(cov, n, component);
  for (const [j, c] of row.entries()) {
    if (c === 0) continue;
    const id = `${reading.id}~${'xyz'[j] ?? j}`;
    variables.put(
      {
        id,
        label: `${label}, ${reading.of.property} ${'XYZ'[j] ?? j}`,
        what: 'reading',
        of: reading.of,
        spread: { s: 'normal', u: Math.abs(c) },
        place: readingPlace(reading, label),
      },
      0,
    );
    form.contribute(id, c);
  }
  return true;
}

/** Row `i` of the lower Cholesky factor of an n × n covariance given by rows. */
export function choleskyRow(cov: readonly number[], n: number, i: number): number[] {
  const l: number[][] = [];
  for (let r = 0; r <= i; r++) {
    const row: number[] = [];
    for (let c = 0; c <= r; c++) {
      let sum = cov[r * n + c] ?? 0;
      for (let k = 0; k < c; k++) sum -= (row[k] ?? 0) * (l[c]?.[k] ?? row[k] ?? 0);
      const pivot = l[c]?.[c] ?? 0;
      row.push(r === c ? Math.sqrt(Math.max(0, sum)) : pivot === 0 ? 0 : sum / pivot);
    }
    l.push(row);
  }
  return l[i] ?? [];
}

/** False when a cause is not in the study or its spread is not known. */
function addCauses(
  form: FormBuilder,
  reading: Reading,
  weight: number,
  view: StudyView,
  variables: Variables,
): boolean {
  let known = true;
  for (const share of reading.causes) {
    const cause = view.cause(share.cause);
    const u = cause && variables.put(causeVariable(cause), 0);
    if (u) form.contribute(share.cause, weight * share.effect * u);
    known &&= u !== undefined || share.effect === 0;
  }
  return known;
}

const causeVariable = (cause: Cause): Omit<Variable, 'u' | 'dof' | 'shift'> => ({
  id: cause.id,
  label: cause.label,
  what: cause.what,
  spread: cause.spread,
  place: { subject: cause.label },
});

/** A cell of a rate book: its variable is the rate, shared by whatever it prices. */
export function rateCell(
  cell: RateCell,
  version: string,
  variables: Variables,
): Cell & { rate: RateCell } {
  const form = new FormBuilder();
  form.x = cell.x;
  const place: Place = { subject: `rate book ${version}`, property: cell.id };
  const id = `rate:${cell.cause}`;
  const u = variables.put(
    { id, label: cell.words, what: 'rate', spread: cell.spread, place },
    cell.x,
  );
  if (u) form.contribute(id, u);
  return {
    form: form.done(),
    how: cell.how,
    place,
    label: cell.words,
    rate: cell,
    ...(u === undefined ? { unknownSpread: true as const } : {}),
  };
}

/** A value of a table of data/ as a cell: its variable is shared by whatever reads it. */
export function tabledCell(value: TabledValue, variables: Variables): Cell {
  const { x, spread, how, words, source } = value;
  const place: Place = { subject: words, property: source };
  const id = `table:${value.id}`;
  const form = new FormBuilder();
  form.x = x;
  const u = variables.put({ id, label: words, what: 'given', spread, place }, x);
  if (u) form.contribute(id, u);
  const unknown = u === undefined ? { unknownSpread: true as const } : {};
  return { form: form.done(), how, place, label: words, ...unknown };
}

function readingPlace(reading: Reading, label: string): Place {
  const { source } = reading;
  return {
    subject: label,
    property: reading.of.property,
    reading: reading.id,
    ...(source ? { file: source.file, row: source.row, column: source.column } : {}),
  };
}
