import { type MadeRecord, type MadeRow, SPREADS } from './made-record.ts';
import type { Random } from './random.ts';
import type { TruePart, TrueVehicle } from './true-vehicle.ts';

/** What the vehicle truly measures where a record only has readings. m and rad. */
const NOMINAL = { wheelbase: 2.92, front: 1.55, rear: 1.56, radius: 0.325 };
const ANGLES = [4, 8, 12].map((deg) => (deg * Math.PI) / 180);
/** Load that the right rear wheel has over the left one, kg. */
const REAR_TO_RIGHT = 19;
/** Relative scatter of one design's mass from piece to piece. */
const SCATTER = 0.003;

/** Steps of the scales of the demo, kg. */
const STEPS: Readonly<Record<string, number>> = {
  'scale A': 0.001,
  'scale B': 0.01,
  'scale D': 0.5,
};
export const stepOf = (instrument: string): number => STEPS[instrument] ?? 0.01;

/** A number to a step, written with the digits of the step and no zeros behind. */
export const toStep = (x: number, step: number): string =>
  String(Number((Math.round(x / step) * step).toFixed(3)));

/** A record without faults: every part, module and axle weighed once more, with the spread of each. */
export function weigh(vehicle: TrueVehicle, random: Random): MadeRecord {
  const truth = vehicle.parts.map((p) => ({
    ...p,
    mass: p.mass * (1 + SCATTER * random.normal()),
  }));
  return {
    rows: truth.map((p) => rowOf(p, random)),
    ...wholeOf(truth, random),
    modules: vehicle.modules.map(({ label, holds }) => ({
      label,
      holds: [...holds],
      mass: round(
        sum(
          truth.filter((p) => holds.includes(p.number)),
          () => 1,
        ) +
          SPREADS.moduleKg * random.normal(),
        0.1,
      ),
    })),
    joints: vehicle.joints,
    tares: vehicle.tares,
  };
}

function rowOf(p: TruePart, random: Random): MadeRow {
  const { number, name, assembly, instrument, massU, positionU, pieces } = p;
  const near = (x: number) => round(x + positionU * random.normal(), 0.001);
  return {
    ...{ number, name, assembly, instrument, massU, positionU, pieces },
    mass: toStep(p.mass + massU * random.normal(), stepOf(instrument)),
    at: [near(p.at[0]), near(p.at[1]), near(p.at[2])],
  };
}

/** Corner loads and axle lift by statics from the true parts. */
function wholeOf(truth: readonly TruePart[], random: Random) {
  const off = (x: number, u: number) => x + u * random.normal();
  const wheelbase = off(NOMINAL.wheelbase, SPREADS.wheelbaseM);
  const track = {
    front: off(NOMINAL.front, SPREADS.trackM),
    rear: off(NOMINAL.rear, SPREADS.trackM),
  };
  const radius = off(NOMINAL.radius, SPREADS.radiusM);
  const mass = sum(truth, () => 1);
  const [sx, sy, sz] = [0, 1, 2].map((axis) => sum(truth, (p) => p.at[axis] ?? 0)) as [
    number,
    number,
    number,
  ];
  const rear = sx / wheelbase;
  const toRight = (2 * (sy - (track.rear * REAR_TO_RIGHT) / 2)) / track.front;
  const load = (axle: number, right: number) =>
    round(off((axle + right) / 2, SPREADS.cornerKg), 0.5);
  return {
    corners: {
      fl: load(mass - rear, -toRight),
      fr: load(mass - rear, toRight),
      rl: load(rear, -REAR_TO_RIGHT),
      rr: load(rear, REAR_TO_RIGHT),
    },
    wheelbase: NOMINAL.wheelbase,
    track: { front: NOMINAL.front, rear: NOMINAL.rear },
    radius: NOMINAL.radius,
    lifts: ANGLES.map((angle) => {
      const gain = ((sz - mass * radius) * Math.tan(off(angle, SPREADS.angleRad))) / wheelbase;
      return { angle, gain: round(off(gain, SPREADS.gainKg), 0.1) };
    }),
  };
}

const sum = (parts: readonly TruePart[], arm: (p: TruePart) => number): number =>
  parts.reduce((s, p) => s + p.mass * arm(p), 0);
const round = (x: number, step: number): number => Number((Math.round(x / step) * step).toFixed(6));
