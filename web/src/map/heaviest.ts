import type { MapBody } from '../worker/map-model.ts';

/** How many parts a drawing brings out: as many as labels find room for. */
export const HEAVIEST = 12;

/** The heaviest of some bodies, heaviest first; one without a mass comes last. */
export const heaviest = (bodies: readonly MapBody[], count: number): MapBody[] =>
  [...bodies].sort((a, b) => (b.mass ?? 0) - (a.mass ?? 0)).slice(0, count);
