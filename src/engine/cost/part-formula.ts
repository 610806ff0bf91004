import { wholeSets } from './cost-lines.ts';

/** Columns that the cost of a part is made of, in the order in which its formula takes them. */
export const NEEDED = [
  ...(['mass', 'price', 'gross', 'conversion', 'tool', 'life', 'pieces', 'made'] as const),
] as const;

/** Cost of a part with overhead, all pieces: the columns, then overhead and whether tools are apart. */
export const partCostOf = (
  ...[m = 0, p = 0, y = 0, c = 0, t = 0, l = 1, n = 1, made = 1, k = 1, apart = 0]: number[]
): number => k * (m * (y * p + c) + (apart * t * wholeSets((n * made) / l)) / made);
