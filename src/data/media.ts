/**
 * Whether the words name a place that lines run through or a crush zone: it has no medium to be
 * kept out, and no barriers are looked for.
 */
export const isPlace = (words: string): boolean =>
  mediumClass(words) === undefined &&
  /\b(bay|place|channel|crush zone|sill|tunnel)\b/.test(words.toLowerCase());

/** What a zone holds, as far as tightness goes. */
export type MediumClass = 'wet' | 'drained' | 'dry' | 'fluid';

const WORDS: readonly (readonly [MediumClass, RegExp])[] = [
  ['drained', /\b(drained|ventilated)\b/],
  ['dry', /\bdry\b/],
  ['wet', /\b(wet|outside|splash|wading|weather)\b/],
  ['fluid', /\b(coolant|refrigerant|oil|fluid|water|fuel|wash)\b/],
];

/**
 * The class of a medium by the words that people write: wet outside, a cavity that water reaches
 * and leaves, a volume that must stay dry, a fluid that is kept in. Undefined for other words.
 * Common practice, no source.
 */
export const mediumClass = (words: string): MediumClass | undefined =>
  WORDS.find(([, pattern]) => pattern.test(words.toLowerCase()))?.[0];
