import type { Kind } from '../quantity/index.ts';
import type { NodeKind } from './entries.ts';
import type { PropertyId } from './reading.ts';

/** What a property of a node means. Properties outside the table are allowed and shown by their id. */
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

export const scalar = (
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
  notNegative: true,
});

/** A scalar that may well be below zero: a coordinate, a gain, a change. */
export const signed = (
  id: PropertyId,
  words: string,
  kind: Kind,
  unit: string,
  ...of: NodeKind[]
): PropertyDef => ({ id, words, holds: 'scalar', kind, unit, of });

export const text = (id: PropertyId, words: string, ...of: NodeKind[]): PropertyDef => ({
  id,
  words,
  holds: 'text',
  of,
});
