import type { Candidate, FaultKind } from './candidate.ts';
import { massOf } from './mass-record.ts';
import type { Scorer } from './scorer.ts';
import type { SetUp } from './set-up.ts';
import { dot, whitened } from './small-matrix.ts';

/** A slip shows from this many standard uncertainties of a sum or of the sides' difference on. */
export const SHOWS_FROM_U = 3;
/** Two slips hide each other where no sum is left with more than this. */
const HIDES_WITHIN_U = 2;
/** Slips looked at for pairs that hide each other, the heaviest ones. */
const MOST_FOR_PAIRS = 600;

/** How large a slip of one kind must be to show on these scales and positions. */
export interface KindLimit {
  readonly kind: FaultKind;
  /** Rows in which it may be made, and in which it would show. */
  readonly rows: number;
  readonly shows: number;
  /** Smallest mass that shows, largest that does not, kg; and the row of that one. */
  readonly least: number;
  readonly hidden: number;
  readonly hiddenRow: number | undefined;
}

export interface Detection {
  readonly kinds: readonly KindLimit[];
  /** Two slips that no sum tells: their masses cancel, and so do their moments. */
  readonly hiddenPair: readonly [Candidate, Candidate] | undefined;
}

/** Standard uncertainty of each sum, parts without a reading included in what is not known. */
export function spreads(scorer: Scorer): number[] {
  const { cov } = scorer.residuals;
  return cov.map((row, d) => {
    const free = scorer.missing.reduce((s, m) => s + ((scorer.perKg(m.row)[d] ?? 0) * m.u) ** 2, 0);
    return Math.sqrt((row[d] ?? 0) + free);
  });
}

/** Which slips of the catalogue are too small to show, and what may hide behind another. */
export function detectionOf(set: SetUp): Detection {
  const { candidates, scorer } = set;
  const u = spreads(scorer);
  const byKind = new Map<FaultKind, Candidate[]>();
  for (const c of candidates) {
    if (c.kind === 'absorbed' || c.kind === 'sides') continue;
    const own = byKind.get(c.kind);
    if (own) own.push(c);
    else byKind.set(c.kind, [c]);
  }
  const strong = (c: Candidate) => strengthOf(c, set, u) >= SHOWS_FROM_U;
  return {
    kinds: [...byKind].map(([kind, own]) => limitOf(kind, own, strong)),
    hiddenPair: hiddenPair(set),
  };
}

/** Largest effect of a slip in standard uncertainties of what it touches. */
function strengthOf(
  c: Candidate,
  { record, scorer, evidence }: SetUp,
  u: readonly number[],
): number {
  const sums = scorer.effectOf(c).map((e, d) => Math.abs(e) / (u[d] ?? 1));
  const sides = c.changes.map(({ row, kg }) => {
    const spread = evidence.mirrorSpread(row);
    const recorded = massOf(record.rows[row]);
    return spread === undefined ? 0 : Math.abs(Math.log((recorded - kg) / recorded)) / spread;
  });
  return Math.max(0, ...sums, ...sides.filter(Number.isFinite));
}

function limitOf(
  kind: FaultKind,
  own: readonly Candidate[],
  shows: (c: Candidate) => boolean,
): KindLimit {
  const shown = own.map(shows);
  const seen = own.filter((_, i) => shown[i]);
  const hidden = own.filter((_, i) => !shown[i]);
  const worst = hidden.reduce<Candidate | undefined>(
    (a, c) => (a === undefined || sizeOf(c) > sizeOf(a) ? c : a),
    undefined,
  );
  return {
    kind,
    rows: new Set(own.map((c) => c.row)).size,
    shows: new Set(seen.map((c) => c.row)).size,
    least: seen.reduce((least, c) => Math.min(least, sizeOf(c)), Number.POSITIVE_INFINITY),
    hidden: worst ? sizeOf(worst) : 0,
    hiddenRow: worst?.row,
  };
}

/** Heaviest single mass that a slip moves, kg. */
export const sizeOf = (c: Candidate): number =>
  Math.max(0, ...c.changes.map(({ kg }) => Math.abs(kg)));

/** The two heaviest slips in rows without a mirror image that leave every sum as it is. */
function hiddenPair({ candidates, scorer, evidence }: SetUp): Detection['hiddenPair'] {
  const plain = candidates
    .filter((c) => c.changes.length === 1 && evidence.mirrors[c.row] === undefined)
    .sort((a, b) => sizeOf(b) - sizeOf(a))
    .slice(0, MOST_FOR_PAIRS);
  const effects = plain.map((c) => whitened(scorer.factor, scorer.effectOf(c)));
  let best: readonly [Candidate, Candidate] | undefined;
  let most = 0;
  for (const [i, a] of plain.entries())
    for (let j = i + 1; j < plain.length; j++) {
      const b = plain[j] as Candidate;
      if (sizeOf(a) + sizeOf(b) <= most) break;
      if (a.row === b.row || !cancel(effects[i] ?? [], effects[j] ?? [])) continue;
      [best, most] = [[a, b], sizeOf(a) + sizeOf(b)];
    }
  return best;
}

function cancel(a: readonly number[], b: readonly number[]): boolean {
  if (Math.abs((a[0] ?? 0) + (b[0] ?? 0)) > HIDES_WITHIN_U) return false;
  const left = a.map((x, d) => x + (b[d] ?? 0));
  return dot(left, left) <= HIDES_WITHIN_U ** 2;
}
