import type { Contribution } from '../worker/answer-sheet.ts';

/** What a share of the spread stems from. */
export const WHAT_WORDS: Readonly<Record<Contribution['what'], string>> = {
  reading: 'reading',
  given: 'given',
  gain: 'gain of an instrument, shared',
  offset: 'offset of an instrument, shared',
  frame: 'frame, shared',
  rate: 'rate, shared',
  density: 'density, shared',
  model: 'error of the method itself',
  specimen: 'specimen, shared',
};

/** Hatching of its bar: one way for what stands alone, another for what is shared. */
export const hatchOf = (what: Contribution['what']): 'own' | 'shared' | 'method' =>
  what === 'reading' || what === 'given' ? 'own' : what === 'model' ? 'method' : 'shared';
