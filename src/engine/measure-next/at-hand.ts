import { USUAL_INSTRUMENTS } from '../../data/index.ts';
import type { Kind } from '../../quantity/index.ts';
import type { Instrument, StudyView } from '../../study/index.ts';
import type { AtHand } from './measure-next-types.ts';

/** Minutes of a reading with an instrument of the study of which they are not known. */
const USUAL_MINUTES = 5;

/** An instrument of a study as one at hand; nothing when its spread is not known. */
function known(instrument: Instrument): AtHand[] {
  const { label, kind, u, relativeU, minutes = USUAL_MINUTES, range } = instrument;
  if (kind === undefined || (u === undefined && relativeU === undefined)) return [];
  return [
    {
      ...{ label, kind, minutes, betters: 'reading' },
      ...{ u: u ?? 0, relativeU: relativeU ?? 0 },
      range: [range?.low ?? Number.NEGATIVE_INFINITY, range?.high ?? Number.POSITIVE_INFINITY],
    },
  ];
}

/** Instruments of a study of which enough is known, and the usual ones of a workshop. */
export const instrumentsAtHand = (view: StudyView): readonly AtHand[] => [
  ...view.instruments().flatMap(known),
  ...USUAL_INSTRUMENTS,
];

/** Standard uncertainty of one reading of `x` with it, SI. */
export const uWith = ({ u, relativeU }: AtHand, x: number): number =>
  Math.hypot(u, relativeU * Math.abs(x));

/**
 * Instruments that read a property of a kind at this value. Some properties have instruments of
 * their own, and nothing else is offered for those.
 */
export function instrumentsFor(
  all: readonly AtHand[],
  betters: AtHand['betters'],
  kind: Kind,
  property: string,
  x: number | undefined,
): readonly AtHand[] {
  const fit = all.filter(
    (i) => i.betters === betters && i.kind === kind && (x === undefined || isWithin(i, x)),
  );
  const own = fit.filter((i) => i.properties?.some((start) => property.startsWith(start)));
  const isSpecial = all.some((i) => i.properties?.some((start) => property.startsWith(start)));
  return isSpecial ? own : fit.filter((i) => i.properties === undefined);
}

const isWithin = ({ range: [low, high] }: AtHand, x: number): boolean => x >= low && x <= high;
