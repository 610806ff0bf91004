import type { Candidate, Clues, MakeCandidates } from './candidate.ts';
import {
  decimalShifted,
  piecesMiscounted,
  poundsTyped,
  sidesDiffer,
  tareLeftOn,
  weighedTwice,
} from './single-row-faults.ts';
import { neighboursSwapped, stillOnAnother } from './two-row-faults.ts';
import { weighedWithAnother } from './weighed-with.ts';

const MAKERS: readonly MakeCandidates[] = [
  poundsTyped,
  decimalShifted,
  weighedTwice,
  piecesMiscounted,
  tareLeftOn,
  weighedWithAnother,
  sidesDiffer,
  neighboursSwapped,
  stillOnAnother,
];

/** Every slip of the known kinds that may have been made in a record. */
export const candidatesOf = (clues: Clues): Candidate[] => MAKERS.flatMap((make) => make(clues));
