import type { Candidate } from './candidate.ts';
import type { Residuals } from './residuals.ts';
import type { Scorer } from './scorer.ts';
import { type Explanation, FaultSearch } from './search.ts';
import type { SetUp } from './set-up.ts';
import { UnknownFault } from './unexplained.ts';

/** A slip that may have been made, and how likely it is among all explanations of the record. */
export interface Slip {
  readonly candidate: Candidate;
  readonly probability: number;
  /** Mass of a part that was still on another one, as the sums leave it, kg. */
  readonly absorbedKg?: { readonly kg: number; readonly u: number };
}

/** A row to look at, with the slips that may have been made in it, likeliest first. */
export interface Suspect {
  readonly row: number;
  readonly slips: readonly [Slip, ...Slip[]];
  readonly probability: number;
}

export interface FaultsFound {
  readonly residuals: Residuals;
  /** Probability that the record needs no fault at all. */
  readonly closes: number;
  /** Probability that a fault is in it which is of no known kind. */
  readonly unexplained: number;
  /** What the best explanation with such a fault leaves of each residual, in its own unit. */
  readonly left: readonly number[];
  /** Likeliest first. */
  readonly suspects: readonly Suspect[];
  /** Parts without a reading, and what the sums leave for each. */
  readonly missing: readonly { readonly row: number; readonly kg: number; readonly u: number }[];
  /** Faults of the best explanation within the catalogue. */
  readonly best: readonly Candidate[];
  /** False when the search met its limit. */
  readonly complete: boolean;
}

/** A record counts as closed where no fault is likelier than some fault. */
export const CLOSES_FROM = 0.5;
/** From this probability on a fault of no known kind is spoken of. */
export const UNEXPLAINED_FROM = 0.1;

/** Explanations this far (ln) below the best count for nothing. */
const NEGLIGIBLE = 14;

interface Weighed {
  readonly explanation: Explanation;
  readonly unknown: boolean;
  readonly log: number;
}

/**
 * Ranks the slips that would explain why a record does not close, from the sums of masses and
 * moments, mirrored sides, what the rows say of themselves, and how often each kind of slip is
 * made. Deterministic: the same record gives the same suspects.
 */
export function findFaults(
  { record, evidence, scorer, candidates }: SetUp,
  tick: (share: number) => void,
): FaultsFound {
  const { residuals } = scorer;
  const { found, complete } = new FaultSearch(scorer, candidates, evidence.mirrors).run(tick);
  const isAlone = (row: number) => evidence.mirrors[row] === undefined;
  const all = weighed(found, new UnknownFault(scorer, record.rows, isAlone));
  const share = sharesOf(all);
  const candidateOf = (i: number) => candidates[i] as Candidate;
  const probability = (of: (w: Weighed) => boolean) =>
    share.reduce((sum, [w, p]) => sum + (of(w) ? p : 0), 0);
  const best = all.find((w) => !w.unknown)?.explanation;
  const withUnknown = all.find((w) => w.unknown)?.explanation;
  return {
    residuals,
    closes: probability((w) => !w.unknown && isIdle(w.explanation, found, candidateOf)),
    unexplained: probability((w) => w.unknown),
    left: leftBy(residuals, scorer, withUnknown?.set.map(candidateOf) ?? []),
    suspects: suspectsOf(share, candidateOf, scorer),
    missing: scorer.missing.map(({ row }, j) => ({
      row,
      ...(best?.score.missing[j] ?? { kg: Number.NaN, u: Number.NaN }),
    })),
    best: best?.set.map(candidateOf) ?? [],
    complete,
  };
}

/** More (ln) than this an explanation must gain in fit to count as asked for by the sums. */
const ASKED_FOR = 2;

/**
 * Nothing that the sums ask for: no fault, or only that parts without a reading may still be on
 * others, which is likely enough by itself and says nothing of a row that was weighed.
 */
function isIdle(
  { set, score }: Explanation,
  found: readonly Explanation[],
  candidateOf: (i: number) => Candidate,
): boolean {
  if (set.length === 0) return true;
  const own = set.map(candidateOf);
  if (own.some((c) => c.kind !== 'absorbed')) return false;
  const none = found.find((e) => e.set.length === 0)?.score.log ?? score.log;
  return score.log - own.reduce((sum, c) => sum + c.odds, 0) < none + ASKED_FOR;
}

/** Explanations within the catalogue, and the same with a fault of no known kind beside. */
function weighed(found: readonly Explanation[], unknown: UnknownFault): Weighed[] {
  const plain = found.map((e): Weighed => ({ explanation: e, unknown: false, log: e.score.log }));
  const top = Math.max(...plain.map((w) => w.log));
  const more = found.flatMap((explanation): Weighed[] => {
    const { log, rest } = explanation.score;
    // At most all that is left could be explained, at the price of an unknown fault.
    if (log + unknown.most(rest) < top - NEGLIGIBLE || isExplained(rest)) return [];
    return [{ explanation, unknown: true, log: log + unknown.gain(rest) }];
  });
  return [...plain, ...more].sort((a, b) => b.log - a.log);
}

/** Nothing is left that a further fault would have to explain. */
const isExplained = (rest: readonly number[]): boolean =>
  rest.reduce((sum, x) => sum + x * x, 0) < rest.length;

/** Shares of probability of the explanations near the best. */
function sharesOf(all: readonly Weighed[]): (readonly [Weighed, number])[] {
  const top = all[0]?.log ?? 0;
  const near = all.filter((w) => w.log > top - NEGLIGIBLE);
  const total = near.reduce((sum, w) => sum + Math.exp(w.log - top), 0);
  return near.map((w) => [w, Math.exp(w.log - top) / total] as const);
}

/** Slips gathered by the row to look at. */
function suspectsOf(
  shares: readonly (readonly [Weighed, number])[],
  candidateOf: (i: number) => Candidate,
  scorer: Scorer,
): Suspect[] {
  const slips = new Map<number, Slip>();
  for (const [{ explanation }, p] of shares)
    for (const i of explanation.set) {
      const candidate = candidateOf(i);
      const held = slips.get(i) ?? {
        candidate,
        probability: 0,
        ...absorbed(candidate, explanation, scorer),
      };
      slips.set(i, { ...held, probability: held.probability + p });
    }
  const byRow = new Map<number, Slip[]>();
  for (const slip of slips.values()) {
    const list = byRow.get(slip.candidate.row);
    if (list) list.push(slip);
    else byRow.set(slip.candidate.row, [slip]);
  }
  return [...byRow].map(([row, own]) => suspectOf(row, own)).sort(byProbability);
}

/** Mass of an absorbed part in the first, likeliest explanation that has it. */
function absorbed(
  candidate: Candidate,
  { score }: Explanation,
  scorer: Scorer,
): Pick<Slip, 'absorbedKg'> {
  if (candidate.kind !== 'absorbed') return {};
  const kg = score.missing[scorer.missing.findIndex((m) => m.row === candidate.other)];
  return kg ? { absorbedKg: kg } : {};
}

function suspectOf(row: number, slips: readonly Slip[]): Suspect {
  const [first, ...more] = [...slips].sort(byProbability);
  return {
    row,
    slips: [first as Slip, ...more],
    probability: slips.reduce((sum, s) => sum + s.probability, 0),
  };
}

const byProbability = (a: { probability: number }, b: { probability: number }): number =>
  b.probability - a.probability;

/** Residuals less what a set of faults explains. */
const leftBy = ({ x }: Residuals, scorer: Scorer, set: readonly Candidate[]): number[] => {
  const effects = set.map((c) => scorer.effectOf(c));
  return x.map((r, d) => r - effects.reduce((sum, e) => sum + (e[d] ?? 0), 0));
};
