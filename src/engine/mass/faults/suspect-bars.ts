import type { Bars } from '../../figure.ts';
import { FAULT_WORDS } from './fault-words.ts';
import type { Suspect } from './find-faults.ts';
import type { MassRecord } from './mass-record.ts';

/** How likely each suspect is, likeliest first, and what is left for faults of no known kind. */
export function suspectBars(
  listed: readonly Suspect[],
  unexplained: number | undefined,
  { rows }: MassRecord,
): Bars {
  return {
    f: 'bars',
    title: 'Suspects by probability',
    alt: 'A bar for each row that may be wrong, the likeliest first.',
    kind: 'ratio',
    unit: '%',
    from: 'zero',
    rows: [
      ...listed.map(({ row, probability, slips: [slip] }) => ({
        label: rows[row]?.label ?? '',
        number: { x: probability },
        word: FAULT_WORDS[slip.candidate.kind].kind,
      })),
      ...(unexplained === undefined
        ? []
        : [{ label: 'unexplained by any known kind of slip', number: { x: unexplained } }]),
    ],
  };
}
