import { type Candidate, type Clues, type MakeCandidates, oddsOf } from './candidate.ts';
import { RATES } from './fault-rates.ts';
import { NEAR_M } from './guests.ts';
import { distanceOf, type MassRow, massOf } from './mass-record.ts';

/** Two rows that follow each other, each with the other's mass: nothing in force, only in moments. */
export const neighboursSwapped: MakeCandidates = (clues) =>
  clues.record.rows.slice(1).flatMap((own, i): Candidate[] => {
    const [a, b] = [massOf(clues.record.rows[i]), massOf(own)];
    const isPair = clues.evidence.mirrors[i] === i + 1;
    if (!(a > 0 && b > 0) || a === b || isPair) return [];
    const clue = clueFor(clues, i, b) + clueFor(clues, i + 1, a);
    return [
      {
        kind: 'swapped',
        row: i,
        other: i + 1,
        changes: [
          { row: i, kg: a - b },
          { row: i + 1, kg: b - a },
        ],
        odds: oddsOf(RATES.swapped, clue),
        right: b,
      },
    ];
  });

/** What a row and its scale say for another mass against the recorded one. */
function clueFor({ record, evidence }: Clues, row: number, kg: number): number {
  const own = record.rows[row] as MassRow;
  const { scales } = evidence;
  const recorded = massOf(own);
  return (
    evidence.likely(row, kg) -
    evidence.likely(row, recorded) +
    scales.reads(own, kg) -
    scales.reads(own, recorded)
  );
}

/** Parts that a part without a reading may still be on, the likeliest ones. */
const MOST_HOSTS = 200;
/** Hosts too far off for this are not thought of: e^(−d / 2 NEAR_M). */
const LEAST_HOST = 0.1;

/** A part without a reading that was still on another when that was weighed. */
export const stillOnAnother: MakeCandidates = (clues) =>
  clues.record.rows.flatMap((guest, other) => (guest.mass ? [] : hostsOf(clues, guest, other)));

function hostsOf({ record }: Clues, guest: MassRow, other: number): Candidate[] {
  const hosts = record.rows.flatMap((host, row) => {
    const weight = massOf(host) > 0 ? Math.exp(-(distanceOf(host, guest) ?? 1) / (2 * NEAR_M)) : 0;
    return weight > LEAST_HOST ? [{ row, weight }] : [];
  });
  hosts.sort((a, b) => b.weight - a.weight || a.row - b.row).splice(MOST_HOSTS);
  const total = hosts.reduce((sum, h) => sum + h.weight, 0);
  return hosts.map(({ row, weight }) => ({
    kind: 'absorbed',
    row,
    other,
    changes: [],
    odds: oddsOf((RATES.absorbed * weight) / total),
  }));
}
