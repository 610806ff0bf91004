import type { Cause, InForce, Place, RateCell, Reading, StudyView } from '../../study/index.ts';
import { FormMaker } from '../forms/form-maker.ts';
import type { Draft, Variables } from '../forms/variables.ts';
import type { Cell, TabledValue, Variable } from '../method.ts';

/** A value in force as a cell: own spreads by weight, and its shares of common causes. */
export function cellOf(
  got: InForce,
  component: number,
  view: StudyView,
  label: string,
  variables: Variables,
): Cell {
  const form = new FormMaker(variables);
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
  form: FormMaker,
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
  const own: Draft = {
    id: reading.id,
    label: `${label}, ${reading.of.property}`,
    what: 'reading',
    of: reading.of,
    spread: v.spread,
    place: readingPlace(reading, label),
  };
  return variables.contribute(form, own, v.t === 'scalar' ? v.x : v.n, weight);
}

/** Correlated components share standard variables, by the Cholesky factor of their covariance. */
function addComponent(
  form: FormMaker,
  reading: Reading,
  cov: readonly number[],
  n: number,
  component: number,
  label: string,
  variables: Variables,
): boolean {
  const variance = cov[component * n + component] ?? Number.NaN;
  if (cov.length !== n * n || !(variance >= 0)) return false;
  for (let j = 0; j <= component; j++) {
    const c = choleskyRow(cov, n, component)[j] ?? 0;
    if (c === 0) continue;
    const id = `${reading.id}~${'xyz'[j] ?? j}`;
    form.contribute(
      variables.numberFor(id, () => standardVariable(id, reading, cov, n, j, label)),
      c,
    );
  }
  return true;
}

/** Variable `j` of a vector's reading: what component j has of its own beside those before it. */
function standardVariable(
  id: string,
  reading: Reading,
  cov: readonly number[],
  n: number,
  j: number,
  label: string,
): Variable {
  const u = choleskyRow(cov, n, j)[j] ?? 0;
  return {
    id,
    label: `${label}, ${reading.of.property} ${'XYZ'[j] ?? j}`,
    what: 'reading',
    of: reading.of,
    spread: { s: 'normal', u },
    u,
    shift: 0,
    dof: null,
    place: readingPlace(reading, label),
  };
}

/** Row `i` of the lower Cholesky factor of an n × n covariance given by rows. */
export function choleskyRow(cov: readonly number[], n: number, i: number): number[] {
  if (isAlone(cov, n, i)) return [...new Array<number>(i).fill(0), Math.sqrt(cov[i * n + i] ?? 0)];
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

/** True where a component is not correlated with those before it. */
function isAlone(cov: readonly number[], n: number, i: number): boolean {
  for (let k = 0; k < i; k++) if (cov[i * n + k] !== 0) return false;
  return (cov[i * n + i] ?? 0) >= 0;
}

/** False when a cause is not in the study or its spread is not known. */
function addCauses(
  form: FormMaker,
  reading: Reading,
  weight: number,
  view: StudyView,
  variables: Variables,
): boolean {
  let known = true;
  for (const share of reading.causes) {
    const cause = view.cause(share.cause);
    const isKnown =
      cause !== undefined &&
      variables.contribute(form, causeVariable(cause), 0, weight * share.effect);
    known &&= isKnown || share.effect === 0;
  }
  return known;
}

const causeVariable = (cause: Cause): Draft => ({
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
  const form = new FormMaker(variables);
  form.x = cell.x;
  const place: Place = { subject: `rate book ${version}`, property: cell.id };
  const id = `rate:${cell.cause}`;
  const own: Draft = { id, label: cell.words, what: 'rate', spread: cell.spread, place };
  const known = variables.contribute(form, own, cell.x, 1);
  return {
    form: form.done(),
    how: cell.how,
    place,
    label: cell.words,
    rate: cell,
    ...(known ? {} : { unknownSpread: true as const }),
  };
}

/** A value of a table of data/ as a cell: its variable is shared by whatever reads it. */
export function tabledCell(value: TabledValue, variables: Variables): Cell {
  const { x, spread, how, words, source } = value;
  const place: Place = { subject: words, property: source };
  const id = `table:${value.id}`;
  const form = new FormMaker(variables);
  form.x = x;
  const known = variables.contribute(
    form,
    { id, label: words, what: 'given', spread, place },
    x,
    1,
  );
  const unknown = known ? {} : { unknownSpread: true as const };
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
