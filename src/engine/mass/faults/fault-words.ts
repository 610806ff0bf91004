import type { FaultKind } from './candidate.ts';
import type { Slip } from './find-faults.ts';
import { type MassRecord, type MassRow, massOf } from './mass-record.ts';

interface Words {
  /** Kind of slip, a few words. */
  readonly kind: string;
  /** What would have happened in this row. */
  readonly what: (slip: Slip, names: Names) => string;
  /** A look of about a minute that tells. */
  readonly check: (slip: Slip, names: Names) => string;
}
interface Names {
  readonly own: string;
  readonly other: string;
  readonly otherNumber: string;
  readonly recorded: string;
  readonly right: string;
}

const again = (name: string): string => `Weigh ${name} once more`;

/** What each kind of slip is called, says of a row, and how it is told in a minute. */
export const FAULT_WORDS: Readonly<Record<FaultKind, Words>> = {
  pounds: {
    kind: 'pounds as kilograms',
    what: (_, n) => `${n.right} kg, not ${n.recorded}`,
    check: (_, n) => `${again(n.own)} and read the unit on the display.`,
  },
  decimal: {
    kind: 'decimal shifted',
    what: (_, n) => `${n.right} kg, not ${n.recorded}`,
    check: (_, n) => `${again(n.own)} and compare the digits.`,
  },
  doubled: {
    kind: 'weighed twice',
    what: (_, n) => `${n.right} kg, not ${n.recorded}`,
    check: (_, n) => `${again(n.own)}, alone on the scale.`,
  },
  miscount: {
    kind: 'quantity miscounted',
    what: ({ candidate }, n) => `${candidate.by} pieces: ${n.right} kg, not ${n.recorded}`,
    check: (_, n) => `Count the pieces of ${n.own} again.`,
  },
  tare: {
    kind: 'tare not taken off',
    what: ({ candidate }, n) => `${candidate.by}: ${n.right} kg, not ${n.recorded}`,
    check: (_, n) => `${again(n.own)}, without a tote.`,
  },
  'weighed-with': {
    kind: 'weighed with another that has its own row',
    what: (_, n) => `${n.other} on it: ${n.right} kg alone, not ${n.recorded}`,
    check: (_, n) => `${again(n.own)}, and look that ${n.otherNumber} is off it.`,
  },
  sides: {
    kind: 'sides differ',
    what: (_, n) => `${n.other} has ${n.right} kg, this one ${n.recorded}`,
    check: () => `${again('both sides')}, one after the other.`,
  },
  swapped: {
    kind: 'swapped with the next row',
    what: (_, n) => `with ${n.other}`,
    check: (_, n) => `${again(n.own)}, then ${n.otherNumber}.`,
  },
  absorbed: {
    kind: 'weighed with a part that has no reading',
    what: ({ absorbedKg }, n) => `${n.other}${aboutKg(absorbedKg)}`,
    check: (_, n) =>
      `Look whether ${n.otherNumber} is still on ${n.own}; take it off and weigh both.`,
  },
};

const aboutKg = (of: Slip['absorbedKg']): string =>
  of && of.kg > 0 ? `: about ${of.kg.toPrecision(2)} ± ${of.u.toPrecision(1)} kg` : '';

export interface SlipWords {
  readonly kind: string;
  readonly what: string;
  readonly check: string;
}

/** A slip in words, for the table of suspects. */
export function slipWords(slip: Slip, { rows }: MassRecord): SlipWords {
  const { candidate } = slip;
  const [own, other] = [rows[candidate.row], rows[candidate.other ?? -1]];
  const names = {
    own: own?.number ?? '',
    other: nameOf(other),
    otherNumber: other?.number ?? '',
    recorded: own?.written || massText(massOf(own)),
    right: candidate.right === undefined ? '' : massText(candidate.right),
  };
  const { kind, what, check } = FAULT_WORDS[candidate.kind];
  return { kind, what: what(slip, names), check: check(slip, names) };
}

const nameOf = (row: MassRow | undefined): string =>
  row === undefined ? '' : row.name === '' ? row.number : `${row.number} (${row.name})`;

/** To the digits that a scale of parts shows. */
const massText = (kg: number): string => String(Number(kg.toPrecision(4)));
