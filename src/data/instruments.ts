import type { Kind } from '../quantity/index.ts';

/**
 * Instruments that a workshop usually has, with the standard uncertainty of one reading and the
 * minutes that it takes: for the choice of what to measure next where a study does not say what
 * is at hand. Judgement, to be replaced by the instruments of the study.
 */
export interface UsualInstrument {
  readonly label: string;
  readonly kind: Kind;
  /** What it can better: one reading, the gain that readings of its kind share, or a price. */
  readonly betters: 'reading' | 'gain' | 'rate';
  /** Fixed part, SI, and share of the value; at least one is above zero. */
  readonly u: number;
  readonly relativeU: number;
  readonly minutes: number;
  /** What it is made for, SI. */
  readonly range: readonly [low: number, high: number];
  /**
   * Beginnings of the properties that it is there for; nothing else is offered for those, and it
   * is offered for no others. Any property of its kind when absent.
   */
  readonly properties?: readonly string[];
}

const usual = (
  label: string,
  kind: Kind,
  u: number,
  relativeU: number,
  minutes: number,
  range: readonly [number, number],
): UsualInstrument => ({ label, kind, betters: 'reading', u, relativeU, minutes, range });

const DEGREE = Math.PI / 180;

export const USUAL_INSTRUMENTS: readonly UsualInstrument[] = [
  usual('bench scale, 6 kg', 'mass', 0.001, 0, 2, [0.005, 6]),
  usual('floor scale, 60 kg', 'mass', 0.01, 0, 4, [0.2, 60]),
  usual('crane scale, 600 kg', 'mass', 0.1, 0, 10, [2, 600]),
  {
    ...usual('corner scale pads', 'mass', 0.5, 0, 15, [5, 1500]),
    properties: ['cornerLoad.', 'frontLoadGain'],
  },
  usual('calliper', 'length', 2e-5, 0, 1, [0, 0.15]),
  {
    // A calliper reaches edges only: a wall is read in its field.
    ...usual('wall-thickness gauge', 'length', 3e-5, 0, 1, [0.0006, 0.02]),
    properties: ['thickness'],
  },
  usual('steel tape', 'length', 0.001, 0, 2, [0.02, 8]),
  {
    ...usual('part balanced on an edge, placed by measuring arm', 'length', 0.002, 0, 12, [-5, 10]),
    properties: ['position'],
  },
  usual('measuring arm', 'length', 0.0005, 0, 6, [0, 4]),
  usual('digital inclinometer', 'angle', 0.05 * DEGREE, 0, 2, [0, 90 * DEGREE]),
  usual('stop-watch over ten cycles', 'time', 0.03, 0.02, 5, [0.2, 3600]),
  usual('torque wrench with peak hold', 'torque', 0.1, 0.03, 2, [1, 400]),
  usual('push-pull gauge', 'force', 0.5, 0.02, 3, [2, 1000]),
  usual('second count', 'count', 0, 0, 2, [0, 100000]),
  { ...usual('check mass on the scale', 'mass', 0, 0.0002, 10, [0, 1e6]), betters: 'gain' },
  { ...usual('gauge block or rule', 'length', 0, 0.0005, 10, [0, 1e6]), betters: 'gain' },
  { ...usual('stop-watch on a sample of them', 'time', 0, 0.03, 60, [0, 1e6]), betters: 'gain' },
  { ...usual('quotation', 'moneyPerMass', 0, 0.05, 120, [0, 1e6]), betters: 'rate' },
  { ...usual('quotation', 'moneyPerTime', 0, 0.05, 120, [0, 1e6]), betters: 'rate' },
  { ...usual('quotation', 'moneyPerArea', 0, 0.05, 120, [0, 1e6]), betters: 'rate' },
];
