import type { PlainInputs, PlainRow, ScalarColumn, ScalarInput, TermColumn } from '../method.ts';
import { chosen } from './inputs.ts';
import type { Point } from './point.ts';

/** Metres for one unit of the drawing, from the scale bar: drawings in mm need none. */
export const SCALE_INPUTS: readonly ScalarInput[] = [
  chosen(
    {
      ...{ name: 'barLength', symbol: 'L', kind: 'length', unit: 'mm' },
      meaning: 'true length of the scale bar',
      range: [0.1, 5000],
      bounds: { above: 0 },
    },
    { written: 'exactly 1 mm', x: 1e-3 },
    'not in the record: the scale bar in the photograph; drawings in mm need none',
  ),
  chosen(
    {
      ...{ name: 'barDrawn', symbol: 'l', kind: 'ratio', unit: '1' },
      meaning: 'length of the scale bar in units of the drawing',
      range: [0.01, 20000],
      bounds: { above: 0 },
    },
    { written: 'exactly 1', x: 1 },
    'not in the record: traced on the photograph; drawings in mm need none',
  ),
];

/** A column of coordinates in units of the drawing. */
export const coordinate = (name: 'x' | 'y', meaning: string): ScalarColumn => ({
  in: 'scalar',
  name,
  symbol: name,
  kind: 'ratio',
  unit: '1',
  meaning,
  range: [-20000, 20000],
  where: 'not in the record: traced on the photograph, or off a drawing',
  find: (at) => at.missing(meaning, 'no tracing is in the record'),
});

/** A column of words that no record holds. */
export const word = (name: string, meaning: string, options?: readonly string[]): TermColumn => ({
  in: 'term',
  name,
  meaning,
  ...(options ? { options } : {}),
  where: 'not in the record: as traced',
  find: (at) => at.word(''),
});

/** Metres for one unit of the drawing. */
export const scaleOf = ({ scalars }: PlainInputs): number =>
  (scalars.barLength ?? Number.NaN) / (scalars.barDrawn ?? Number.NaN);

/** A row of coordinates as a point, m. */
export const pointOf = (row: PlainRow, scale: number): Point => ({
  x: scale * Number(row.x),
  y: scale * Number(row.y),
});
