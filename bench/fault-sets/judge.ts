import { unitScatter } from '../../src/data/index.ts';
import type { Answer } from '../../src/engine/index.ts';
import { type MadeRecord, type MadeRow, written } from './made-record.ts';
import type { Planted } from './plant.ts';

/** From this many standard uncertainties of a residual on a fault must be found. */
export const ABOVE_U = 3;
/** Suspects looked at. */
export const FIRST = 10;
/** Relative standard difference of two sides, each scattering as single units do. */
const SIDES_ALIKE = Math.SQRT2 * (unitScatter('mass')?.relative ?? 0);

/** What became of one planted fault. */
export interface Judged {
  readonly planted: Planted;
  /** Largest effect on a sum it touches, whole or module, in its standard uncertainties. */
  readonly inSums: number;
  /** The same with the difference to its other side. */
  readonly inAny: number;
  /** Rank of its row, ties at the worst; infinite where it is no suspect. */
  readonly rank: number;
  /** Whether the first suspect's kind on its row is that of the fault can be read in the table. */
  readonly found: boolean;
}

/** Judges each planted fault against the answer: `before` is the record without them. */
export function judge(
  planted: readonly Planted[],
  before: MadeRecord,
  record: MadeRecord,
  clean: Answer,
  answer: Answer,
): Judged[] {
  const rows = (answer.detail?.rows ?? []).filter((row) => typeof row[0] === 'number');
  return planted.map((p) => {
    // A part that is still on another is known to lack its reading: the rest is known as before.
    const limits = limitsOf(p.moves === undefined ? answer : clean);
    const effects = effectsOf(p, before, record);
    const inSums = Math.max(
      0,
      ...effects.map((e, d) => (ABOVE_U * Math.abs(e)) / (limits[d] ?? 1)),
    );
    const inAny = Math.max(inSums, ...p.rows.map((n) => besideOtherSide(n, before, record)));
    const ranks = rows
      .filter((row) => p.rows.includes(record.rows[indexOf(row[1])]?.number ?? ''))
      .map((row) => Number(row[0]));
    const rank = Math.min(Number.POSITIVE_INFINITY, ...ranks);
    return { planted: p, inSums, inAny, rank, found: rank <= FIRST };
  });
}

/** Rows of a table given in writing are labelled `parts 1`, `parts 2`, … */
const indexOf = (label: string | number | undefined): number =>
  Number(/\d+$/.exec(String(label))?.[0] ?? 0) - 1;

/** Limits of detection of each sum as the answer tells them, 3 u, in the order of its table. */
const limitsOf = (answer: Answer): number[] =>
  (answer.further?.[0]?.rows ?? []).map((row) => Number(row[1] === '' ? row[2] : row[1]));

type Sums = readonly number[];

/** Sums of a record in the order of the table of limits: mass, X, Y, Z, then modules. */
function sumsOf(record: MadeRecord, only: (row: MadeRow) => boolean): Sums {
  const rows = record.rows.filter((r) => r.mass !== '' && only(r));
  const total = (arm: (r: MadeRow) => number) => rows.reduce((s, r) => s + written(r) * arm(r), 0);
  return [
    total(() => 1),
    ...([0, 1, 2] as const).map((axis) => total((r) => r.at[axis])),
    ...record.modules.map((m) => total((r) => (m.holds.includes(r.number) ? 1 : 0))),
  ];
}

/** What a fault does to each sum of parts less scales. */
function effectsOf(p: Planted, before: MadeRecord, record: MadeRecord): number[] {
  const touched = [...p.rows, ...(p.moves === undefined ? [] : [p.moves])];
  const only = (row: MadeRow) => touched.includes(row.number);
  const [was, is] = [sumsOf(before, only), sumsOf(record, only)];
  const ofScales = p.scale?.(record) ?? was.map(() => 0);
  return is.map((x, d) => x - (was[d] ?? 0) - (ofScales[d] ?? 0));
}

const otherSide = (row: MadeRow, { rows }: MadeRecord): MadeRow | undefined => {
  const name = row.name.replace(/\b[LR]H\b/, (s) => (s === 'LH' ? 'RH' : 'LH'));
  return name === row.name
    ? undefined
    : rows.find((r) => r.name === name && r.assembly === row.assembly);
};

function besideOtherSide(number: string, before: MadeRecord, record: MadeRecord): number {
  const [was, is] = [before, record].map((r) => r.rows.find((row) => row.number === number));
  const other = is && otherSide(is, record);
  if (!was || !is || !other || is.mass === '' || other.mass === '') return 0;
  const u = Math.hypot(SIDES_ALIKE, is.massU / written(is), other.massU / written(other));
  return Math.abs(Math.log(written(is) / written(was))) / u;
}
