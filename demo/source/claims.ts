/**
 * Claims as typed at the vehicle (invented): words first, then the part and the question that
 * would answer them, and what would make them true. `value` is in `unit`.
 */
export interface WrittenClaim {
  readonly id: string;
  readonly words: string;
  readonly subject: string;
  readonly question: string;
  readonly output: string;
  readonly is: 'at least' | 'at most';
  readonly value: number;
  /** UCUM code. */
  readonly unit: string;
  readonly how: 'seen' | 'inferred' | 'guessed';
  readonly by: string;
  /** Local date and time. */
  readonly at: string;
}

export const CLAIMS: readonly WrittenClaim[] = [
  {
    id: 'C1',
    words: 'The pack is over 120 Wh/kg',
    subject: '40',
    question: 'pack-energy-density',
    output: 'specific',
    is: 'at least',
    value: 120,
    unit: 'W.h/kg',
    how: 'guessed',
    by: 'lead',
    at: '2026-10-05T10:42',
  },
  {
    id: 'C2',
    words: 'Centre of gravity sits under 530 mm',
    subject: 'VAN-27',
    question: 'cg-height-axle-lift',
    output: 'height',
    is: 'at most',
    value: 530,
    unit: 'mm',
    how: 'guessed',
    by: 'lead',
    at: '2026-10-05T11:15',
  },
  {
    id: 'C3',
    words: 'The record is short of the scales by no more than three kilos',
    subject: 'VAN-27',
    question: 'mass-closure',
    output: 'gap',
    is: 'at least',
    value: -3,
    unit: 'kg',
    how: 'inferred',
    by: 'second engineer',
    at: '2026-10-09T16:30',
  },
  {
    id: 'C4',
    words: 'All of its joints go together in under an hour',
    subject: 'VAN-27',
    question: 'install-time',
    output: 'time',
    is: 'at most',
    value: 60,
    unit: 'min',
    how: 'guessed',
    by: 'lead',
    at: '2026-10-07T14:05',
  },
  {
    id: 'C5',
    words: 'That welded floor costs more than two hundred to make',
    subject: '40-002',
    question: 'part-cost',
    output: 'cost',
    is: 'at least',
    value: 200,
    unit: '{u}',
    how: 'guessed',
    by: 'lead',
    at: '2026-10-06T09:20',
  },
  {
    id: 'C6',
    words: 'The 12 V battery is over 90 Wh/kg',
    subject: '80',
    question: 'pack-energy-density',
    output: 'specific',
    is: 'at least',
    value: 90,
    unit: 'W.h/kg',
    how: 'guessed',
    by: 'second engineer',
    at: '2026-10-05T15:50',
  },
  {
    id: 'C7',
    words: 'Clips instead of screws would do on that lid',
    subject: 'LID',
    question: 'lid-choice',
    output: 'clipPressure',
    is: 'at least',
    value: 0,
    unit: 'N/mm',
    how: 'guessed',
    by: 'lead',
    at: '2026-10-06T11:30',
  },
];
