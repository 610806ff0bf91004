import { type PropertyDef, scalar, signed } from './property-def.ts';

/** What is recorded of zones and of the tests of their tightness. */
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
];
