import { type PropertyDef, scalar, text } from './property-def.ts';

/** What is recorded of lines: pipes, hoses and cables. */
export const LINE_PROPERTIES: readonly PropertyDef[] = [
  text('line.kind', 'kind of line', 'line'),
  text('line.circuit', 'circuit', 'line'),
  /** Points in mm, "x y z" parted by semicolons. */
  text('line.route', 'points of the route, mm', 'line'),
  text('line.replaced', 'how it is replaced', 'line'),
  scalar('line.length', 'length', 'length', 'm', 'line'),
  scalar('line.bore', 'inner diameter', 'length', 'mm', 'line'),
  scalar('line.outer', 'outer diameter', 'length', 'mm', 'line'),
  scalar('line.clips', 'clips', 'count', '1', 'line'),
  scalar('line.connectors', 'connectors', 'count', '1', 'line'),
  scalar('line.bend', 'smallest bend radius', 'length', 'mm', 'line'),
  scalar('line.bendLimit', 'least bend radius allowed', 'length', 'mm', 'line'),
  scalar('line.flow', 'flow', 'volumeFlow', 'L/min', 'line'),
  scalar('line.density', 'density of the fluid', 'density', 'kg/m3', 'line'),
  scalar('line.viscosity', 'viscosity of the fluid', 'viscosity', 'mPa.s', 'line'),
  scalar('line.losses', 'loss coefficients of bends and fittings', 'ratio', '1', 'line'),
  scalar('line.current', 'current', 'current', 'A', 'line'),
  scalar('line.conductor', 'area of the conductor', 'area', 'mm2', 'line'),
  scalar('line.voltage', 'nominal voltage', 'voltage', 'V', 'line'),
];
