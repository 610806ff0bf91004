import type { PropertyDef } from './property-def.ts';
import { scalar, text } from './property-def.ts';

/** What is written down of an alternative design: its lines, each a thing it is made of or needs. */
export const COST_PROPERTIES: readonly PropertyDef[] = [
  text('cost.functions', 'functions and their shares of the cost', 'part', 'assembly'),
  scalar('cost.volume', 'pieces a year', 'count', '1', 'vehicle'),
  text('cost.function', 'function that the alternatives serve', 'alternative'),
  text('cost.risk', 'what may go wrong with the change', 'alternative'),
  text('cost.timing', 'when the change could come', 'alternative'),
  text('cost.in', 'designs that the line is in', 'alternative'),
  text('cost.material', 'material of the line', 'alternative'),
  text('cost.process', 'process of the line, for its yield', 'alternative'),
  text('cost.conversion', 'process of the line, charged by mass', 'alternative'),
  text('cost.machine', 'machine of the line', 'alternative'),
  scalar('cost.pieces', 'pieces, or metres', 'ratio', '1', 'alternative'),
  scalar('cost.price', 'price, each', 'money', '{u}', 'alternative'),
  scalar('cost.mass', 'mass, each', 'mass', 'kg', 'alternative'),
  scalar('cost.gross', 'gross over net mass', 'ratio', '1', 'alternative'),
  scalar('cost.time', 'time of people, each', 'time', 's', 'alternative'),
  scalar('cost.machineTime', 'time of the machine, each', 'time', 's', 'alternative'),
  scalar('cost.coated', 'area coated, each', 'area', 'm2', 'alternative'),
  scalar('cost.tool', 'price of a set of tools', 'money', '{u}', 'alternative'),
  scalar('cost.toolLife', 'pieces that a set of tools lasts', 'count', '1', 'alternative'),
  scalar('cost.crossings', 'leak crossings, each', 'ratio', '1', 'alternative'),
  scalar('cost.service', 'time in service, each', 'time', 's', 'alternative'),
  scalar('cost.face', 'face of the plate', 'area', 'm2', 'alternative'),
  scalar('cost.core', 'core between two skins', 'length', 'mm', 'alternative'),
  scalar(
    'cost.thickness',
    'thickness of the plate, or of both skins',
    'length',
    'mm',
    'alternative',
  ),
  scalar('cost.modulus', 'Young’s modulus of the plate', 'stress', 'GPa', 'alternative'),
  scalar('cost.poisson', 'Poisson ratio of the plate', 'ratio', '1', 'alternative'),
  scalar('cost.density', 'density of the plate', 'density', 'kg/m3', 'alternative'),
];
