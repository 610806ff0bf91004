import type { Figure, FigurePoint, PlaneShape } from '../figure.ts';
import { niceLevels } from '../levels.ts';
import type { BentPlate } from './plate-bending.ts';
import type { Edges } from './ritz-plate.ts';

/** Columns and rows of places at which the deflection is looked at: the longer side has more. */
const MOST = 36;
const LEAST = 12;
/** Lines of equal deflection. */
const LINES = 6;

/** A rectangle of the plate that is pressed, or the place that is looked at, m. */
export interface PlatePlace {
  readonly x: number;
  readonly y: number;
  readonly u?: number;
  readonly v?: number;
}

/**
 * A bent plate as lines of equal deflection, with how its edges are held and the place asked
 * about; `factor` takes the deflection of D = 1 to that of the plate and its load.
 */
export function plateFigures(
  bent: BentPlate | undefined,
  [a, b]: readonly [number, number],
  edges: Edges,
  factor: number,
  place: PlatePlace,
): readonly Figure[] {
  if (!bent || !Number.isFinite(factor * a * b)) return [];
  const [x, y] = [steps(a, Math.max(a, b)), steps(b, Math.max(a, b))];
  const values = y.map((v) => x.map((u) => factor * bent.at(u, v).w));
  const all = values.flat();
  return [
    {
      f: 'isolines',
      title: 'Deflection over the plate',
      alt: 'Lines of equal deflection, with how each edge is held and the place that is asked about.',
      kind: 'length',
      unit: 'mm',
      x,
      y,
      lengthUnit: 'mm',
      axes: { x: 'x', y: 'y' },
      values,
      levels: niceLevels(Math.min(...all), Math.max(...all), LINES, 1e-3).filter((l) => l !== 0),
      shapes: [...outline(a, b), ...edgeWords(a, b, edges), ...placeShapes(place), ...sizes(a, b)],
    },
  ];
}

const steps = (side: number, longer: number): number[] => {
  const count = Math.max(LEAST, Math.round((MOST * side) / longer));
  return Array.from({ length: count + 1 }, (_, i) => (i / count) * side);
};

const ring = (x: number, y: number, w: number, h: number): readonly FigurePoint[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
  [x, y],
];

const outline = (a: number, b: number): PlaneShape[] => [
  { s: 'line', points: ring(0, 0, a, b), line: 'continuous' },
];

/** How each edge is held, in words just within it. */
function edgeWords(a: number, b: number, { x0, xa, y0, yb }: Edges): PlaneShape[] {
  const off = 0.035 * Math.max(a, b);
  const words = (at: FigurePoint, text: string): PlaneShape => ({ s: 'text', at, text });
  return [
    words([a / 2, -off], y0),
    words([a / 2, b + off], yb),
    words([-2.6 * off, b / 2], x0),
    words([a + 2.6 * off, b / 2], xa),
  ];
}

function placeShapes({ x, y, u = 0, v = 0 }: PlatePlace): PlaneShape[] {
  const mark: PlaneShape = { s: 'mark', at: [x, y], sign: 'point', label: '' };
  const patch: PlaneShape = {
    s: 'line',
    points: ring(x - u / 2, y - v / 2, u, v),
    line: 'dashed',
  };
  return u > 0 || v > 0 ? [patch, mark] : [mark];
}

const sizes = (a: number, b: number): PlaneShape[] => [
  { s: 'dimension', from: [0, 0], to: [a, 0], along: 'x' },
  { s: 'dimension', from: [0, 0], to: [0, b], along: 'y' },
];
