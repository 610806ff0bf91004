import {
  parseQuantity,
  roundToUncertainty,
  spreadFromSi,
  standardUncertainty,
} from '../../../src/quantity/index.ts';
import { isMissing, readingU, type StudyView } from '../../../src/study/index.ts';

/** Units in which a mass is typed at the scale. */
export const MASS_UNITS = ['kg', 'g', 'lb'] as const;
export type MassUnit = (typeof MASS_UNITS)[number];

/** What stands typed at the scale. */
export interface Typed {
  readonly text: string;
  readonly unit: MassUnit;
  /** Label of the scale; empty while none is chosen. */
  readonly scale: string;
}

/** What is typed as it would be written down, with its spread; or why it can not be read. */
export interface Weighed {
  /** Empty while it can not be read. */
  readonly written: string;
  /** Where a spread that was not typed comes from. */
  readonly spreadFrom: string;
  readonly why: string;
}

/** Code of pounds as people write it. */
const UCUM: Readonly<Record<MassUnit, string>> = { kg: 'kg', g: 'g', lb: '[lb_av]' };

/**
 * Reads what is typed at the scale. A spread that is not typed is that of the scale: as the
 * record knows it, else that of the nearest mass that was read on it.
 */
export function weighed(view: StudyView, { text, unit, scale }: Typed): Weighed {
  const own = text.trim();
  if (own === '') return notRead('');
  const written = /[a-z]$/i.test(own) ? own : `${own} ${unit}`;
  const read = parseQuantity(written, 'mass', { unit: UCUM[unit] });
  if (!read.ok) return notRead(`not read: ${read.why}. ${read.next}`);
  const { x, spread } = read.value;
  if (!(x > 0)) return notRead('a mass at the scale is above zero');
  const isStated = spread.s !== 'unknown' || read.approximate;
  const known = isStated ? undefined : spreadOn(view, scale, x);
  if (!known) return { written, spreadFrom: '', why: '' };
  const u = spreadFromSi(known.u, read.unit, 'mass');
  return { written: withSpread(written, u), spreadFrom: known.from, why: '' };
}

const notRead = (why: string): Weighed => ({ written: '', spreadFrom: '', why });

/** "6.24 kg" with its spread before the unit: "6.24 ± 0.010 kg". */
const withSpread = (written: string, u: number): string =>
  written.replace(/\s*([a-z]+)$/i, ` ± ${roundToUncertainty(u, u).u} $1`);

/** Standard uncertainty of a reading of `x` kg on a scale of the record, and where it comes from. */
function spreadOn(
  view: StudyView,
  scale: string,
  x: number,
): { readonly u: number; readonly from: string } | undefined {
  const instrument = view.instrument(scale);
  const own = instrument && readingU(instrument, x);
  if (own !== undefined) return { u: own, from: `of ${scale}` };
  const nearest = readOn(view, scale).reduce<OnScale | undefined>(
    (best, r) => (best && Math.abs(best.x - x) <= Math.abs(r.x - x) ? best : r),
    undefined,
  );
  return nearest && { u: nearest.u, from: `as ${scale} read ${nearest.label}` };
}

interface OnScale {
  readonly label: string;
  readonly x: number;
  readonly u: number;
}

/** Masses of parts in force that were read on a scale and have a spread. */
const readOn = (view: StudyView, scale: string): OnScale[] =>
  view.nodes('part').flatMap(({ id, label }) => {
    const cell = view.cell(id, 'mass');
    if (isMissing(cell) || cell.value.t !== 'scalar') return [];
    const { x, spread } = cell.value;
    const u = standardUncertainty(spread, x);
    const isHere = cell.from.some(({ reading }) => reading.instrument === scale);
    return isHere && u !== undefined && u > 0 ? [{ label, x, u }] : [];
  });

/** Instruments on which a mass was read, or that are made for it: the most used first. */
export function scalesOf(view: StudyView): string[] {
  const uses = new Map<string, number>();
  for (const { label, kind } of view.instruments()) if (kind === 'mass') uses.set(label, 0);
  for (const { id } of view.nodes('part')) {
    const cell = view.cell(id, 'mass');
    if (isMissing(cell)) continue;
    for (const { reading } of cell.from)
      if (reading.instrument) uses.set(reading.instrument, (uses.get(reading.instrument) ?? 0) + 1);
  }
  return [...uses].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([label]) => label);
}

/** A part that waits for its mass. */
export interface Waiting {
  readonly id: string;
  readonly label: string;
  readonly name: string;
}

/** Parts without a mass, in the order of the record; those of one assembly stand together. */
export const waitingForMass = (view: StudyView): Waiting[] =>
  view
    .nodes('part')
    .filter(({ id }) => isMissing(view.cell(id, 'mass')))
    .map(({ id, label, name }) => ({ id, label, name }));
