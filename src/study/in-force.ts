import {
  type ScalarValue,
  type Spread,
  standardUncertainty,
  type Value,
  type VectorValue,
  wayRank,
} from '../quantity/index.ts';
import {
  combinedFindings,
  enWords,
  type KnownReading,
  knownReadings,
  precisionFindings,
} from './consistency.ts';
import type { Finding } from './finding.ts';
import type { CellRef, Reading } from './reading.ts';
import type { InForce, Missing, StandingReading } from './view.ts';

/** Readings further apart than this many standard uncertainties of their difference disagree. */
const AGREE_WITHIN_U = 2;

/**
 * The value in force of one cell, from its readings oldest first: what was chosen; else the
 * readings of the best way of knowing, combined by inverse variance where they agree; else the
 * latest of them, with a finding.
 */
export function inForce(
  of: CellRef,
  standing: readonly StandingReading[],
  chosen: string | undefined,
): InForce | Missing {
  const live = standing.filter((s) => s.withdrawn === undefined).map((s) => s.reading);
  const picked = live.find((r) => r.id === chosen);
  if (picked && picked.value.t !== 'absent') return single(of, picked, 'chosen', []);
  const usable = picked ? [] : live.filter((r) => r.value.t !== 'absent');
  if (usable.length === 0) return { missing: true, of, why: whyMissing(picked ?? live.at(-1)) };
  return combined(of, usable);
}

function whyMissing(last: Reading | undefined): string {
  return last?.value.t === 'absent' ? last.value.why : 'no reading';
}

function combined(of: CellRef, usable: readonly Reading[]): InForce {
  const bestRank = Math.min(...usable.map((r) => wayRank(r.how)));
  const best = usable.filter((r) => wayRank(r.how) === bestRank);
  const latest = best.at(-1) as Reading;
  const others = usable.filter((r) => r !== latest && best.some((b) => disagree(r.value, b.value)));
  const findings = [
    ...(others.length > 0 ? [disagreement(of, latest, others)] : []),
    ...precisionFindings(of, best),
  ];
  if (best.length === 1)
    return single(
      of,
      latest,
      usable.length === 1 ? 'only reading' : 'best way of knowing',
      findings,
    );
  const known = others.some((r) => best.includes(r)) ? undefined : knownReadings(best);
  if (!known) return single(of, latest, 'best way of knowing', findings);
  return { ...weightedMean(of, known), findings: [...findings, ...combinedFindings(of, known)] };
}

function single(
  of: CellRef,
  reading: Reading,
  rule: InForce['rule'],
  findings: readonly Finding[],
): InForce {
  return {
    of,
    value: reading.value,
    how: reading.how,
    from: [{ reading, weight: 1 }],
    rule,
    findings,
  };
}

/** Inverse-variance mean. */
function weightedMean(of: CellRef, known: readonly KnownReading[]): InForce {
  const ws = known.map(({ u }) => 1 / (u * u));
  const total = ws.reduce((a, b) => a + b, 0);
  const x = known.reduce((sum, { value }, i) => sum + ((ws[i] ?? 0) / total) * value.x, 0);
  const first = known[0] as KnownReading;
  const spread: Spread = { s: 'normal', u: Math.sqrt(1 / total) };
  return {
    of,
    value: { t: 'scalar', kind: first.value.kind, x, spread },
    how: first.reading.how,
    from: known.map(({ reading }, i) => ({ reading, weight: (ws[i] ?? 0) / total })),
    rule: 'weighted mean',
    findings: [],
  };
}

function disagree(a: Value, b: Value): boolean {
  if (a.t === 'scalar' && b.t === 'scalar') return scalarsDisagree(a, b);
  if (a.t === 'count' && b.t === 'count') return a.n !== b.n;
  if (a.t === 'text' && b.t === 'text') return a.text !== b.text;
  if (a.t === 'term' && b.t === 'term') return a.code !== b.code;
  if (a.t === 'vector' && b.t === 'vector')
    return a.frame !== b.frame || a.x.some((_, i) => scalarsDisagree(along(a, i), along(b, i)));
  return false;
}

/** One component of a vector. */
function along(v: VectorValue, i: number): ScalarValue {
  const variance = v.cov[i * v.x.length + i];
  const spread: Spread =
    variance === undefined ? { s: 'unknown' } : { s: 'normal', u: Math.sqrt(variance) };
  return { t: 'scalar', kind: v.kind, x: v.x[i] ?? Number.NaN, spread };
}

function scalarsDisagree(a: ScalarValue, b: ScalarValue): boolean {
  const ua = standardUncertainty(a.spread, a.x);
  const ub = standardUncertainty(b.spread, b.x);
  if (ua === undefined || ub === undefined) return false;
  return Math.abs(a.x - b.x) > AGREE_WITHIN_U * Math.hypot(ua, ub);
}

function disagreement(of: CellRef, latest: Reading, others: readonly Reading[]): Finding {
  return {
    code: 'readings-disagree',
    level: 'doubt',
    place: { subject: of.subject, property: of.property },
    value: `${[latest, ...others].map((r) => r.asWritten).join(' against ')}${enWords(latest, others)}`,
    what: 'readings of one thing disagree by more than twice the spread of their difference, or are in different frames',
    next: 'Look at both, then choose one, withdraw the wrong one or measure again.',
  };
}
