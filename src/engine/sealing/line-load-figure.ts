import type { Figure, LinePlot } from '../figure.ts';
import { heldAt, pressedBeside } from './flange.ts';
import { type Lid, lift, spread } from './line-load.ts';

/** A lid from its numbers in the order in which the question asks for them. */
export function lidOf(x: readonly number[]): Lid {
  const at = (i: number): number => x[i] ?? Number.NaN;
  return {
    ...{ pitch: at(0), cornerPitch: at(1), perimeter: at(2), area: at(3) },
    ...{ width: at(4), thickness: at(5), modulus: at(6) },
    ...{ free: at(7), squeezed: at(8), rest: at(9), demand: at(10) },
    ...{ pressure: at(11), force: at(12) },
  };
}

/** Places in each bay at which the load is worked out. */
const STEPS = 24;

/** Line load along the flange over a corner and a bay to each side, with and without limiters. */
export function lineLoadPlots(l: Lid): readonly Figure[] {
  if (![spread(l), lift(l), l.force, l.demand].every(Number.isFinite)) return [];
  return [
    plot('with compression limiters', l, [
      ['at rest', 'continuous', (x) => heldAlong(l, x, 0)],
      ['with the pressure inside', 'dashed', (x) => heldAlong(l, x, lift(l))],
    ]),
    plot('without limiters', l, [['at rest', 'continuous', (x) => pressedAlong(l, x)]]),
  ];
}

type Curve = readonly [label: string, line: 'continuous' | 'dashed', at: (x: number) => number];

function plot(how: string, l: Lid, curves: readonly Curve[]): LinePlot {
  const half = l.cornerPitch / 2;
  const places = steps(-half - l.pitch, half + l.pitch);
  return {
    f: 'line',
    title: `Line load along the flange, ${how}`,
    alt: 'Line load over a corner, in the middle, and over a bay to each side of it, with the demand of the gasket; least half-way between fasteners.',
    x: { label: 'along the flange, the corner at 0', kind: 'length', unit: 'mm' },
    y: { label: 'line load', kind: 'lineLoad', unit: 'N/mm' },
    series: curves.map(([label, line, at]) => ({
      label,
      line,
      points: places.map((x) => ({ at: x, x: at(x) })),
    })),
    demands: [{ label: 'demand', y: l.demand }],
    marks: [-half - l.pitch, -half, half, half + l.pitch].map((x) => ({
      label: 'fastener',
      number: { x },
    })),
  };
}

const steps = (from: number, to: number): number[] =>
  Array.from({ length: 3 * STEPS + 1 }, (_, i) => from + ((to - from) * i) / (3 * STEPS));

function heldAlong(l: Lid, x: number, lifted: number): number {
  const half = l.cornerPitch / 2;
  const [from, length] =
    x < -half ? [-half - l.pitch, l.pitch] : x > half ? [half, l.pitch] : [-half, l.cornerPitch];
  const share = heldAt(spread(l) * length, (x - from) / length);
  return l.rest - (l.rest + lifted) * (1 - share);
}

function pressedAlong(l: Lid, x: number): number {
  const beta = spread(l);
  return l.force * beta * pressedBeside(beta * l.pitch, beta * l.cornerPitch, beta * x);
}
