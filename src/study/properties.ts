import type { Kind } from '../quantity/index.ts';
import type { NodeKind } from './entries.ts';
import type { PropertyId } from './reading.ts';

/** What a property of a node means. Properties outside this table are allowed and shown by their id. */
export interface PropertyDef {
  readonly id: PropertyId;
  readonly words: string;
  readonly holds: 'scalar' | 'vector' | 'text';
  /** For scalars and vectors. */
  readonly kind?: Kind;
  /** UCUM code shown first. */
  readonly unit?: string;
  readonly of: readonly NodeKind[];
  /** A reading below zero is a slip of sign or tare. */
  readonly notNegative?: true;
}

const scalar = (
  id: PropertyId,
  words: string,
  kind: Kind,
  unit: string,
  ...of: NodeKind[]
): PropertyDef => ({
  id,
  words,
  holds: 'scalar',
  kind,
  unit,
  of,
  // A load gained in an axle lift is the one quantity here that may well be negative.
  ...(id === 'frontLoadGain' ? {} : { notNegative: true }),
});
const text = (id: PropertyId, words: string, ...of: NodeKind[]): PropertyDef => ({
  id,
  words,
  holds: 'text',
  of,
});

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
  scalar('frontLoadGain', 'load gained by the front axle', 'mass', 'kg', 'trial'),
  scalar('moduleMass', 'mass of the module as lowered', 'mass', 'kg', 'assembly', 'trial'),
  scalar('packEnergy', 'energy of the pack', 'energy', 'kW.h', 'assembly'),
  scalar('envelope.length', 'envelope length', 'length', 'mm', 'assembly', 'part', 'vehicle'),
  scalar('envelope.width', 'envelope width', 'length', 'mm', 'assembly', 'part', 'vehicle'),
  scalar('envelope.height', 'envelope height', 'length', 'mm', 'assembly', 'part', 'vehicle'),

  text('type', 'kind of joint', 'joint'),
  text('spec', 'specification', 'joint'),
  scalar('count.holes', 'count by holes', 'count', '1', 'joint'),
  scalar('count.bag', 'count by bag', 'count', '1', 'joint'),
  scalar('torque.specified', 'torque, specified', 'torque', 'N.m', 'joint'),
  text('axis', 'axis', 'joint'),
  text('side', 'tool side', 'joint'),
  scalar('time.access', 'time to reach, each', 'time', 's', 'joint'),
  scalar('time.drive', 'time to drive, each', 'time', 's', 'joint'),
  text('words.from', 'holds, as spoken', 'joint'),
  text('words.to', 'onto, as spoken', 'joint'),
];

const BY_ID = new Map(PROPERTIES.map((p) => [p.id, p]));

export const propertyDef = (id: PropertyId): PropertyDef | undefined => BY_ID.get(id);

/** Words for a property, its id when it has none of its own. */
export const propertyWords = (id: PropertyId): string => BY_ID.get(id)?.words ?? id;
