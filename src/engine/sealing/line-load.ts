import { heldMiddle, pressedBeside, pressedMiddle, spreadOf, whereItFalls } from './flange.ts';

/** What the line load of a lid rests on; SI. */
export interface Lid {
  readonly pitch: number;
  readonly cornerPitch: number;
  readonly perimeter: number;
  /** Area within the seal. */
  readonly area: number;
  readonly width: number;
  readonly thickness: number;
  readonly modulus: number;
  readonly free: number;
  readonly squeezed: number;
  /** Line load of the gasket at the squeezed height. */
  readonly rest: number;
  readonly demand: number;
  /** Pressure inside above outside. */
  readonly pressure: number;
  /** Force of one fastener. */
  readonly force: number;
}

/** Stiffness of the gasket by length, from its line load and squeeze: a straight line. */
export const bedOf = (l: Lid): number => l.rest / (l.free - l.squeezed);
export const spread = (l: Lid): number =>
  spreadOf(bedOf(l), (l.modulus * l.width * l.thickness ** 3) / 12);
/** Line load with which the pressure inside lifts the lid. */
export const lift = (l: Lid): number => (l.pressure * l.area) / l.perimeter;

/** Least line load half-way between two fasteners `pitch` apart, flange held by limiters. */
export const held = (l: Lid, pitch: number, lifted: number): number =>
  l.rest - (l.rest + lifted) * (1 - heldMiddle(spread(l) * pitch));

/** Pitch at which it comes down to the demand. */
export const heldPitch = (l: Lid): number =>
  whereItFalls(heldMiddle, 1 - (l.rest - l.demand) / l.rest) / spread(l);

/** Mean line load where the fasteners' force presses the flange on the gasket. */
export const pressedMean = (l: Lid): number => l.force / l.pitch;
export const pressed = (l: Lid): number => pressedMean(l) * pressedMiddle(spread(l) * l.pitch);
export const pressedPitch = (l: Lid): number => {
  const beta = spread(l);
  return whereItFalls((u) => pressedMiddle(u) / u, l.demand / (l.force * beta)) / beta;
};
/** Least line load in the middle of a wider gap between rows at the usual pitch. */
export const pressedCorner = (l: Lid): number => {
  const beta = spread(l);
  return l.force * beta * pressedBeside(beta * l.pitch, beta * l.cornerPitch, 0);
};
