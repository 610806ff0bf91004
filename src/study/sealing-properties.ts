import { type PropertyDef, scalar, signed, text } from './property-def.ts';

const box = (axis: 'x' | 'y' | 'z', end: 0 | 1): PropertyDef =>
  signed(
    `box.${axis}${end}`,
    `${end === 0 ? 'smallest' : 'largest'} ${axis.toUpperCase()}`,
    'length',
    'mm',
    'zone',
    'barrier',
  );

/** What is recorded of zones, of what separates and crosses them, and of tests of their tightness. */
export const SEALING_PROPERTIES: readonly PropertyDef[] = [
  scalar('zone.volume', 'free volume', 'volume', 'L', 'zone'),
  scalar('zone.compliance', 'volume gained by pressure', 'volumeCompliance', 'mL/kPa', 'zone'),
  scalar('zone.vent', 'pressure at which vents open', 'pressureDiff', 'kPa', 'zone'),
  signed('leak.drop', 'fall of the pressure in the test', 'pressureDiff', 'Pa', 'zone'),
  scalar('leak.time', 'time of the test', 'time', 's', 'zone'),
  scalar('leak.pressure', 'absolute pressure in the test', 'pressureAbs', 'kPa', 'zone'),
  signed('leak.temperature', 'temperature of the gas in the test', 'tempAbs', 'Cel', 'zone'),
  signed('leak.warming', 'rise of temperature in the test', 'tempDiff', 'K', 'zone'),
  signed('leak.growth', 'growth of the volume in the test', 'ratio', '%', 'zone'),
  scalar('leak.limit', 'limit of leakage, set by the user', 'gasFlow', 'Pa.m3/s', 'zone'),
  text('zone.medium', 'medium', 'zone'),

  box('x', 0),
  box('x', 1),
  box('y', 0),
  box('y', 1),
  box('z', 0),
  box('z', 1),
  text('wall.axis', 'axis that the wall lies across', 'barrier'),

  scalar('seal.pitch', 'pitch of the fasteners', 'length', 'mm', 'joint'),
  scalar('seal.cornerPitch', 'distance of the fasteners around a corner', 'length', 'mm', 'joint'),
  scalar('seal.perimeter', 'length of the seal', 'length', 'm', 'joint'),
  scalar('seal.area', 'area within the seal', 'area', 'm2', 'joint'),
  scalar('seal.pressure', 'pressure inside', 'pressureDiff', 'kPa', 'joint'),
  scalar('seal.force', 'force of one fastener', 'force', 'N', 'joint', 'alternative'),
  text('seal.joint', 'joint that the designs are for', 'alternative'),
  scalar('flange.width', 'width of the flange', 'length', 'mm', 'joint'),
  scalar('flange.thickness', 'thickness of the flange', 'length', 'mm', 'joint'),
  scalar('flange.modulus', 'modulus of the flange', 'stress', 'GPa', 'joint'),
  scalar('gasket.free', 'height of the gasket, free', 'length', 'mm', 'joint'),
  scalar('gasket.squeezed', 'height of the gasket, squeezed', 'length', 'mm', 'joint'),
  scalar('gasket.lineLoad', 'line load of the gasket, squeezed', 'lineLoad', 'N/mm', 'joint'),
  scalar('gasket.demand', 'line load that the gasket needs', 'lineLoad', 'N/mm', 'joint'),

  text('crossing.kind', 'what goes through', 'crossing'),
  text('crossing.seal', 'what seals it', 'crossing'),
  scalar('crossing.count', 'pieces that go through', 'count', '1', 'crossing'),
  scalar('crossing.sealLength', 'length of seal, each', 'length', 'm', 'crossing'),
  scalar('crossing.leak', 'leak, each', 'gasFlow', 'Pa.m3/s', 'crossing'),
  text('crossing.direction', 'direction in which it goes', 'crossing'),
  scalar('crossing.reach', 'length from its seat to its end', 'length', 'mm', 'crossing'),
  {
    id: 'place',
    words: 'place',
    holds: 'vector',
    kind: 'length',
    unit: 'mm',
    of: ['crossing'],
  },
];
