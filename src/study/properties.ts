import { COST_PROPERTIES } from './cost-properties.ts';
import { HOIST_PROPERTIES } from './hoist-properties.ts';
import { JOINT_PROPERTIES } from './joint-properties.ts';
import { LINE_PROPERTIES } from './line-properties.ts';
import { type PropertyDef, scalar, signed, text } from './property-def.ts';
import type { PropertyId } from './reading.ts';
import { RECEIVED_PROPERTIES } from './received-properties.ts';
import { SEALING_PROPERTIES } from './sealing-properties.ts';

export type { PropertyDef } from './property-def.ts';

/** The properties with a meaning of their own. Masses of parts are of all the row's pieces together. */
export const PROPERTIES: readonly PropertyDef[] = [
  scalar('mass', 'mass, all pieces', 'mass', 'kg', 'part'),
  scalar('count', 'pieces', 'count', '1', 'part'),
  scalar('thickness', 'thickness', 'length', 'mm', 'part'),
  {
    id: 'position',
    words: 'centre of gravity',
    holds: 'vector',
    kind: 'length',
    unit: 'mm',
    of: ['part'],
  },
  scalar('volume', 'volume of the material, each piece', 'volume', 'cm3', 'part'),
  scalar('density', 'density', 'density', 'kg/m3', 'part'),
  scalar('sampleCount', 'pieces of the sample', 'count', '1', 'part'),
  scalar('sampleMass', 'mass of the sample', 'mass', 'g', 'part'),
  scalar('fillVolume', 'volume filled by the book', 'volume', 'L', 'part'),
  text('material', 'material', 'part'),
  text('process', 'process', 'part'),

  scalar('cornerLoad.FL', 'corner load, front left', 'mass', 'kg', 'vehicle'),
  scalar('cornerLoad.FR', 'corner load, front right', 'mass', 'kg', 'vehicle'),
  scalar('cornerLoad.RL', 'corner load, rear left', 'mass', 'kg', 'vehicle'),
  scalar('cornerLoad.RR', 'corner load, rear right', 'mass', 'kg', 'vehicle'),
  scalar('wheelbase', 'wheelbase', 'length', 'mm', 'vehicle'),
  scalar('track.front', 'track, front', 'length', 'mm', 'vehicle'),
  scalar('track.rear', 'track, rear', 'length', 'mm', 'vehicle'),
  scalar('tyreRadius', 'loaded tyre radius', 'length', 'mm', 'vehicle'),
  scalar('payload', 'payload', 'mass', 'kg', 'vehicle'),
  scalar('liftAngle', 'lift angle', 'angle', 'deg', 'trial'),
  signed('frontLoadGain', 'load gained by the front axle', 'mass', 'kg', 'trial'),
  scalar('moduleMass', 'mass of the module as lowered', 'mass', 'kg', 'assembly', 'trial'),
  scalar('tareMass', 'mass of the empty tote', 'mass', 'kg', 'trial'),
  scalar('packEnergy', 'energy of the pack', 'energy', 'kW.h', 'assembly'),
  scalar('envelope.length', 'envelope length', 'length', 'mm', 'assembly', 'part', 'vehicle'),
  scalar('envelope.width', 'envelope width', 'length', 'mm', 'assembly', 'part', 'vehicle'),
  scalar('envelope.height', 'envelope height', 'length', 'mm', 'assembly', 'part', 'vehicle'),

  ...JOINT_PROPERTIES,
  ...COST_PROPERTIES,
  ...SEALING_PROPERTIES,
  ...LINE_PROPERTIES,
  ...HOIST_PROPERTIES,
  ...RECEIVED_PROPERTIES,
];

const BY_ID = new Map(PROPERTIES.map((p) => [p.id, p]));

export const propertyDef = (id: PropertyId): PropertyDef | undefined => BY_ID.get(id);

/** Words for a property, its id when it has none of its own. */
export const propertyWords = (id: PropertyId): string => BY_ID.get(id)?.words ?? id;
