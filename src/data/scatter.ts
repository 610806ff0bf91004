import type { Kind, Way } from '../quantity/index.ts';

/**
 * How far single units of one design lie from each other, as a relative standard deviation: one
 * specimen is not the design. All of it is judgement, to be replaced by what is known of the
 * parts at hand; kinds that are not listed (a position, a share) are not known and leave a
 * comparison of designs without a word until somebody states a scatter.
 */
export interface UnitScatter {
  readonly kind: Kind;
  /** Standard deviation over the value. */
  readonly relative: number;
  readonly how: Way;
  readonly source: string;
}

const judged = (kind: Kind, relative: number, why: string): UnitScatter => ({
  kind,
  relative,
  how: 'guessed',
  source: `judgement: ${why}`,
});

export const UNIT_SCATTER: readonly UnitScatter[] = [
  judged('mass', 0.01, 'gauge and shot weight of formed, moulded and cast parts'),
  judged('area', 0.005, 'outline of formed and cut parts'),
  judged('volume', 0.01, 'envelope of assemblies'),
  judged('arealMass', 0.02, 'gauge of sheet and plies'),
  judged('lineMass', 0.015, 'walls of extrusions and tubes'),
  judged('density', 0.005, 'one grade from batch to batch'),
  judged('secondMoment', 0.02, 'walls and outline of profiles'),
  judged('sectionModulus', 0.02, 'walls and outline of profiles'),
  judged('flexuralRigidity', 0.04, 'gauge enters with its cube'),
  judged('torsionalRigidity', 0.04, 'walls, outline and modulus of profiles'),
  judged('stiffness', 0.05, 'rubber and joints from batch to batch'),
  judged('force', 0.1, 'friction and fit of seats and clips'),
  judged('torque', 0.15, 'friction in threads and under heads'),
  judged('lineLoad', 0.1, 'gaskets from batch to batch'),
  judged('energy', 0.01, 'cells as sorted for one pack'),
  judged('specificEnergy', 0.012, 'cells and masses of one pack'),
  judged('energyDensity', 0.012, 'cells and envelope of one pack'),
  judged('time', 0.05, 'fit and access from vehicle to vehicle'),
  judged('money', 0.01, 'follows the mass of the parts'),
  { kind: 'count', relative: 0, how: 'inferred', source: 'a count belongs to the design' },
];

export const unitScatter = (kind: Kind): UnitScatter | undefined =>
  UNIT_SCATTER.find((s) => s.kind === kind);
