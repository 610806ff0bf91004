import { type Candidate, type Clues, type MakeCandidates, oddsOf } from './candidate.ts';
import { type Guest, GuestFinder } from './guests.ts';
import { massOf } from './mass-record.ts';

/** A part weighed with another on it that has a row of its own: its bolts, its bush, a bracket. */
export const weighedWithAnother: MakeCandidates = (clues) => {
  const { rows, joints } = clues.record;
  const guests = new GuestFinder(rows, joints);
  return rows.flatMap((_, row) =>
    guests.of(row).flatMap((guest) => weighedWith(clues, row, guest)),
  );
};

function weighedWith({ record, evidence }: Clues, row: number, guest: Guest): Candidate[] {
  const [kg, on] = [massOf(record.rows[row]), massOf(record.rows[guest.row])];
  if (!(on > 0 && kg > on)) return [];
  const right = kg - on;
  const beside = evidence.likely(row, right) - evidence.likely(row, kg);
  return [
    {
      kind: 'weighed-with',
      row,
      other: guest.row,
      changes: [{ row, kg: on }],
      odds: oddsOf(guest.rate, beside),
      right,
    },
  ];
}
