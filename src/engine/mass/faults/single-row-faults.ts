import type { Candidate, Clues, FaultKind, MakeCandidates } from './candidate.ts';
import { oddsOf } from './candidate.ts';
import { fastenerCounts, namesFastener } from './fasteners.ts';
import { COUNT_OFF, DIGITS_BY_CHANCE, RATES } from './fault-rates.ts';
import type { MassRow } from './mass-record.ts';

/** International pound, kg, exact (agreement of 1959; from memory, as in UCUM). */
const POUND_KG = 0.45359237;

/** Factors by which a sign in the wrong place makes a mass wrong, and how often each happens. */
const DECIMAL_SLIPS = [
  { recordedOverRight: 10, share: 0.4 },
  { recordedOverRight: 0.1, share: 0.4 },
  { recordedOverRight: 1000, share: 0.1 },
  { recordedOverRight: 0.001, share: 0.1 },
] as const;

interface Weighed {
  readonly row: number;
  readonly own: MassRow;
  readonly kg: number;
}

const weighed = ({ record }: Clues): Weighed[] =>
  record.rows.flatMap((own, row) =>
    own.mass && own.mass.x > 0 ? [{ row, own, kg: own.mass.x }] : [],
  );

/** A row that should read `right`: what the rows themselves say of it goes into the odds. */
function corrected(
  { evidence }: Clues,
  kind: FaultKind,
  { row, kg }: Weighed,
  right: number,
  rate: number,
  more: { readonly clue?: number; readonly other?: number; readonly by?: string } = {},
): Candidate {
  const { clue = 0, other, by } = more;
  const beside = evidence.likely(row, right) - evidence.likely(row, kg);
  return {
    kind,
    row,
    changes: [{ row, kg: kg - right }],
    odds: oddsOf(rate, beside, clue),
    right,
    ...(other === undefined ? {} : { other }),
    ...(by === undefined ? {} : { by }),
  };
}

/** The scale read `right`, and another number was typed: what the scale is used for tells. */
const typed = (
  clues: Clues,
  kind: FaultKind,
  of: Weighed,
  right: number,
  rate: number,
  clue = 0,
): Candidate => {
  const { scales } = clues.evidence;
  const scale = scales.reads(of.own, right) - scales.reads(of.own, of.kg);
  return corrected(clues, kind, of, right, rate, { clue: scale + clue });
};

export const poundsTyped: MakeCandidates = (clues) =>
  weighed(clues).map((of) =>
    typed(clues, 'pounds', of, of.kg * POUND_KG, RATES.pounds, otherDigits(clues, of)),
  );

/** A number that was not read off the scale in kilograms may have any digits. */
const otherDigits = ({ evidence }: Clues, { own }: Weighed): number =>
  Math.log(DIGITS_BY_CHANCE) - evidence.scales.digits(own);

export const decimalShifted: MakeCandidates = (clues) =>
  weighed(clues).flatMap((of) =>
    DECIMAL_SLIPS.map(({ recordedOverRight, share }) => {
      const moved = Math.round(Math.log10(recordedOverRight));
      const { scales } = clues.evidence;
      const digits = scales.digits(of.own, moved) - scales.digits(of.own);
      return typed(clues, 'decimal', of, of.kg / recordedOverRight, RATES.decimal * share, digits);
    }),
  );

export const weighedTwice: MakeCandidates = (clues) =>
  weighed(clues).map((of) => corrected(clues, 'doubled', of, of.kg / 2, RATES.doubled));

export const tareLeftOn: MakeCandidates = (clues) => {
  const { tares } = clues.record;
  return weighed(clues).flatMap((of) =>
    tares
      .filter((t) => t.kg > 0 && t.kg < of.kg)
      .map((t) =>
        corrected(clues, 'tare', of, of.kg - t.kg, RATES.tare / tares.length, { by: t.label }),
      ),
  );
};

/** At most this many pieces more or fewer are thought of. */
const MOST_PIECES_OFF = 120;

/** Mass by piece times count: another count, another mass. */
export const piecesMiscounted: MakeCandidates = (clues) =>
  weighed(clues)
    .filter(({ own }) => own.pieces >= 2)
    .flatMap((of) => {
      const digits = otherDigits(clues, of);
      const beside = besideJoints(clues, of.own);
      return countsFor(of.own.pieces).map(({ count, share }) =>
        corrected(clues, 'miscount', of, (of.kg * count) / of.own.pieces, RATES.miscount * share, {
          clue: digits + beside(count) - beside(of.own.pieces),
          by: String(count),
        }),
      );
    });

/** Counts that may be the right one; a slip by one piece is likelier than by many. */
function countsFor(pieces: number): { count: number; share: number }[] {
  const most = Math.min(pieces, MOST_PIECES_OFF);
  const counts: { count: number; share: number }[] = [];
  for (let off = 1; off <= most; off++)
    for (const count of [pieces - off, pieces + off])
      if (count >= 1) counts.push({ count, share: 1 / off });
  const total = counts.reduce((sum, c) => sum + c.share, 0);
  return counts.map(({ count, share }) => ({ count, share: share / total }));
}

/** Fasteners are counted twice, in their row and by the holes of their joints: ln of how alike. */
function besideJoints({ record }: Clues, own: MassRow): (count: number) => number {
  const counts = namesFastener(own.name) ? fastenerCounts(own.name, record.joints) : [];
  if (counts.length === 0) return () => 0;
  return (count) => Math.log(counts.includes(count) ? 1 - COUNT_OFF : COUNT_OFF);
}

/** The two sides differ, and this one is the wrong one. */
export const sidesDiffer: MakeCandidates = (clues) =>
  weighed(clues).flatMap((of) => {
    const other = clues.evidence.mirrors[of.row];
    const right = clues.record.rows[other ?? -1]?.mass?.x;
    if (other === undefined || right === undefined || !(right > 0)) return [];
    const rate = of.kg > right ? RATES.sides.tooHeavy : RATES.sides.tooLight;
    return [corrected(clues, 'sides', of, right, rate, { other })];
  });
