import type { DistanceTable, ElementTimes, WeightBand } from '../../data/index.ts';

/** Time units of one element, and what they rest on; or why there are none. */
export type ElementRead =
  | { readonly units: number; readonly from: string; readonly between?: true }
  | { readonly why: string };

/** Own values by code, in time units. */
export type OwnUnits = ReadonlyMap<string, number>;

const OWN = 'own table';
const REACH = /^R(\d+(?:\.\d+)?)([A-E])$/;
const MOVE = /^M(\d+(?:\.\d+)?)([A-C])(\d+(?:\.\d+)?)?$/;

export const elementCode = (text: string): string => text.replace(/\s/g, '').toUpperCase();

/** The codes of a sequence: "R16C G4A M10B5". */
export const elementCodes = (text: string): string[] =>
  text
    .split(/[\s,;+]+/)
    .map(elementCode)
    .filter((code) => code !== '');

/**
 * Time units of an element by its code: R reach and M move with a distance in inches, a case and,
 * for a move, a weight in pounds; the others by name. Own values go first; then the tables in
 * their order.
 */
export function elementUnits(
  code: string,
  own: OwnUnits,
  tables: readonly ElementTimes[],
): ElementRead {
  const mine = own.get(code);
  if (mine !== undefined) return { units: mine, from: OWN };
  let why = tables.length === 0 ? 'there is no table of element times' : `no table has ${code}`;
  for (const table of tables) {
    const read = fromTable(code, table);
    if ('units' in read) return read;
    why = read.why;
  }
  return { why };
}

function fromTable(code: string, table: ElementTimes): ElementRead {
  const single = table.single[code];
  if (single !== undefined) return { units: single, from: table.source };
  const [, reach = '', reachCase = ''] = REACH.exec(code) ?? [];
  if (reach !== '') return at(table.reach, Number(reach), reachCase, table.source);
  const [, move = '', moveCase = '', pounds] = MOVE.exec(code) ?? [];
  if (move === '') return { why: `no table has ${code}` };
  const light = at(table.move, Number(move), moveCase, table.source);
  return pounds === undefined || 'why' in light
    ? light
    : withWeight(light, Number(pounds), table.weights);
}

/** Listed, between two listed distances by straight line, or beyond the last by its rate an inch. */
function at(table: DistanceTable, inches: number, motionCase: string, from: string): ElementRead {
  const units = table.units[motionCase];
  const [first = Number.NaN] = table.inches;
  const last = table.inches.at(-1) ?? Number.NaN;
  if (!units || inches < first)
    return { why: `the table has no case ${motionCase} over ${inches} in` };
  if (inches > last) {
    const rate = table.beyond[motionCase];
    return rate === undefined
      ? { why: `the table ends at ${last} in for case ${motionCase}` }
      : { units: (units.at(-1) ?? Number.NaN) + rate * (inches - last), from };
  }
  const i = table.inches.findIndex((x) => x >= inches);
  const [x1, y1] = [table.inches[i] ?? last, units[i] ?? Number.NaN];
  if (x1 === inches) return { units: y1, from };
  const [x0, y0] = [table.inches[i - 1] ?? x1, units[i - 1] ?? y1];
  return { units: y0 + ((y1 - y0) * (inches - x0)) / (x1 - x0), from, between: true };
}

function withWeight(
  light: Extract<ElementRead, { units: number }>,
  pounds: number,
  bands: readonly WeightBand[],
): ElementRead {
  if (pounds === 0) return light;
  const band = bands.find((b) => pounds > b.over && pounds <= b.upTo);
  return band
    ? { ...light, units: band.factor * light.units + band.constant }
    : { why: `the table has no legible band for a weight of ${pounds} lb` };
}
