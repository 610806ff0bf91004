import type { Kind } from '../quantity/index.ts';
import type { DecisionWord, OutputSpec } from './method.ts';

/** Words for more and for less of a kind of quantity; higher and lower where there are none. */
const WORDS: Partial<Readonly<Record<Kind, Directions>>> = {
  mass: { more: 'heavier', less: 'lighter' },
  money: { more: 'dearer', less: 'cheaper' },
  time: { more: 'longer', less: 'shorter' },
  stiffness: { more: 'stiffer', less: 'softer' },
  flexuralRigidity: { more: 'stiffer', less: 'softer' },
  torsionalRigidity: { more: 'stiffer', less: 'softer' },
  density: { more: 'denser', less: 'less dense' },
  length: { more: 'larger', less: 'smaller' },
  area: { more: 'larger', less: 'smaller' },
  volume: { more: 'larger', less: 'smaller' },
  count: { more: 'more', less: 'fewer' },
};
const ANY: Directions = { more: 'higher', less: 'lower' };

export interface Directions {
  readonly more: string;
  readonly less: string;
}

/** Words that settle a direction; with any other word none is stated. */
const SETTLED: ReadonlySet<DecisionWord> = new Set(['different', 'holds', 'fails']);
export const isSettled = (word: DecisionWord | undefined): boolean =>
  word !== undefined && SETTLED.has(word);

/** Word of direction of a difference d; only where its decision word proves one. */
export function directionOf(
  word: DecisionWord,
  d: number,
  spec: Pick<OutputSpec, 'kind' | 'directions'>,
): string | undefined {
  if (word !== 'different' || d === 0) return undefined;
  const { more, less } = spec.directions ?? WORDS[spec.kind] ?? ANY;
  return d > 0 ? more : less;
}
