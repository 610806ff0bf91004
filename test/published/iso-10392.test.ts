/**
 * ISO 10392:2011, Road vehicles – Determination of centre of gravity.
 * Horizontal position (questions cg-from-corners, mass-closure, mass-roll-up): moments of the
 * wheel loads, own inputs, published formula, recomputed.
 * Axle lift (question cg-height-axle-lift): formula of 6.2.2 to 6.2.6 seen, own inputs,
 * recomputed, and set against plane statics written out here without that formula.
 */
import { describe, expect, it } from 'vitest';
import {
  type Answer,
  askWritten,
  loadQuestion,
  type WrittenInputs,
} from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

const written = async (id: string, inputs: WrittenInputs): Promise<Answer> =>
  askWritten((await loadQuestion(id)).question, inputs);

const LOADS = { fl: '452 ± 0.5 kg', fr: '438 ± 0.5 kg', rl: '381 ± 0.5 kg', rr: '369 ± 0.5 kg' };

describe('horizontal position from four corner loads', async () => {
  const answer = await written('cg-from-corners', {
    ...LOADS,
    wheelbase: '2700 ± 2 mm',
    frontTrack: 'exactly 1560 mm',
    rearTrack: 'exactly 1540 mm',
  });
  it.each([
    ['total', 1640, 0.5],
    ['x', 1.23476, 5e-6],
    ['y', -0.01229, 5e-6],
    ['frontShare', 0.54268, 5e-6],
    ['leftShare', 0.50793, 5e-6],
    ['cross', 0.49939, 5e-6],
  ])('gives %s', (name, x, within) => {
    expect(Math.abs(out(answer, name).x - x)).toBeLessThan(within);
  });

  it('knows X with 1.23 mm and the mass with 1.0 kg', () => {
    expect(Number(out(answer, 'x').u) * 1000).toBeCloseTo(1.23, 2);
    expect(out(answer, 'total').u).toBeCloseTo(1, 9);
  });

  it('sums to the vehicle in the closure', async () => {
    const closure = await written('mass-closure', {
      ...LOADS,
      parts: [{ mass: '1000 ± 0.1 kg' }, { mass: '642.5 ± 0.1 kg' }],
    });
    expect(out(closure, 'scales').x).toBeCloseTo(1640, 9);
    expect(out(closure, 'gap').x).toBeCloseTo(2.5, 9);
    expect(out(closure, 'gap').u).toBeCloseTo(Math.hypot(1, 0.1, 0.1), 9);
  });

  it('is where the roll-up puts four parts that stand where the wheels do', async () => {
    const at = (mass: string, x: number, y: number) => ({
      ...{
        mass,
        x: `exactly ${x} mm`,
        y: `exactly ${y} mm`,
        z: 'exactly 0 mm',
        assembly: 'wheels',
      },
    });
    const parts = [
      at(LOADS.fl, 0, -780),
      at(LOADS.fr, 0, 780),
      at(LOADS.rl, 2700, -770),
      at(LOADS.rr, 2700, 770),
    ];
    const rollUp = await written('mass-roll-up', { parts });
    expect(out(rollUp, 'mass').x).toBeCloseTo(1640, 9);
    expect(Math.abs(out(rollUp, 'x').x - 1.23476)).toBeLessThan(5e-6);
    expect(Math.abs(out(rollUp, 'y').x + 0.01229)).toBeLessThan(5e-6);
  });
});

/** The vehicle of the axle-lift case. SI; loads in kg as read on scales. */
const VAN = { wheelbase: 2.7, mass: 1640, rear: 750, radius: 0.31, height: 0.55 };
const RADIANS = Math.PI / 180;

/**
 * Load on the front scale, kg, with the rear raised by `theta`: every point of the vehicle turns
 * about the front axle, each wheel stands on its scale below its own axle, moments about the
 * front wheel's contact give the rear load.
 */
function frontLoad(theta: number): number {
  const { wheelbase, mass, rear, radius, height } = VAN;
  const level = { x: (wheelbase * rear) / mass, z: height - radius };
  const turned = level.x * Math.cos(theta) - level.z * Math.sin(theta);
  const rearContact = wheelbase * Math.cos(theta);
  return mass - (mass * turned) / rearContact;
}
const gainAt = (degrees: number) => frontLoad(degrees * RADIANS) - frontLoad(0);

const height = async (lifts: readonly (readonly [degrees: string, gain: string])[]) =>
  written('cg-height-axle-lift', {
    lifts: lifts.map(([angle, gain]) => ({ angle, gain })),
    mass: 'exactly 1640 kg',
    wheelbase: 'exactly 2700 mm',
    radius: '310 ± 3 mm',
  });

describe('height by axle lift', () => {
  it.each([
    [5, 12.754, 0.235],
    [10, 25.705, 0.469],
    [15, 39.061, 0.699],
  ])(
    'at %i degrees, by plane statics, the front gains %f kg at a lift of %f m',
    (deg, gain, lift) => {
      expect(gainAt(deg)).toBeCloseTo(gain, 3);
      expect(VAN.wheelbase * Math.sin(deg * RADIANS)).toBeCloseTo(lift, 3);
    },
  );

  it('at 10 degrees, by plane statics, the scales read 915.705 and 724.295 kg', () => {
    expect(frontLoad(10 * RADIANS)).toBeCloseTo(915.705, 3);
    expect(VAN.mass - frontLoad(10 * RADIANS)).toBeCloseTo(724.295, 3);
  });

  it('is found again from the loads that plane statics gives', async () => {
    const degrees = [5, 10, 15];
    const answer = await height(
      degrees.map((deg) => [`exactly ${deg} °`, `exactly ${gainAt(deg)} kg`]),
    );
    expect(out(answer, 'height').x).toBeCloseTo(VAN.height, 9);
    expect(answer.findings.map((f) => f.code)).not.toContain('few-lift-angles');
  });

  it.each([
    [25.7, 0.54996],
    [25.5, 0.54809],
    [26.0, 0.55276],
  ])('from one angle of 10 degrees and %f kg is %f m', async (gain, h) => {
    const answer = await height([['exactly 10 °', `exactly ${gain} kg`]]);
    expect(Math.abs(out(answer, 'height').x - h)).toBeLessThan(5e-6);
    expect(answer.findings.map((f) => f.code)).toContain('few-lift-angles');
  });

  it('is known with 7.7 mm at 10 degrees: 6.6 from the loads, 2.4 the angle, 3.0 the radius', async () => {
    const answer = await height([['10 ± 0.1 °', `25.705 ± ${0.5 * Math.SQRT2} kg`]]);
    const h = out(answer, 'height');
    const mm = Object.fromEntries(h.linear.map(([id, c]) => [id, Math.abs(c) * 1000]));
    expect(Number(h.u) * 1000).toBeCloseTo(7.7, 1);
    expect(mm['given:lifts.1.gain']).toBeCloseTo(6.6, 1);
    expect(mm['given:lifts.1.angle']).toBeCloseTo(2.4, 1);
    expect(mm['given:radius']).toBeCloseTo(3.0, 1);
  });

  it('goes by the tangent of the angle: by the lift over the wheelbase it would be 4 mm off', async () => {
    const sine = (VAN.wheelbase * 25.705) / (VAN.mass * Math.sin(10 * RADIANS)) + VAN.radius;
    const answer = await height([['exactly 10 °', 'exactly 25.705 kg']]);
    expect(Math.abs(out(answer, 'height').x - sine)).toBeGreaterThan(0.003);
  });
});
