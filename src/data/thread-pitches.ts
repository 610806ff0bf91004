/**
 * Coarse pitches of metric threads, mm, by nominal diameter, mm. ISO 261:1998 and ISO 262:1998,
 * seen in reprints of the table. Without a pitch in its designation a thread is of coarse pitch
 * (ISO 965-1, "designation").
 */
export const COARSE_PITCHES: ReadonlyMap<number, number> = new Map([
  [1, 0.25],
  [1.2, 0.25],
  [1.6, 0.35],
  [2, 0.4],
  [2.5, 0.45],
  [3, 0.5],
  [3.5, 0.6],
  [4, 0.7],
  [5, 0.8],
  [6, 1],
  [7, 1],
  [8, 1.25],
  [10, 1.5],
  [12, 1.75],
  [14, 2],
  [16, 2],
  [18, 2.5],
  [20, 2.5],
  [22, 2.5],
  [24, 3],
  [27, 3],
  [30, 3.5],
  [33, 3.5],
  [36, 4],
  [39, 4],
  [42, 4.5],
  [45, 4.5],
  [48, 5],
  [52, 5],
  [56, 5.5],
  [60, 5.5],
  [64, 6],
]);

/** Pitches that a designation may name, mm (ISO 261:1998, all columns). */
export const NAMED_PITCHES: ReadonlySet<number> = new Set([
  0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4,
  4.5, 5, 5.5, 6,
]);

export const PITCH_SOURCE = 'ISO 261:1998 and ISO 262:1998, coarse pitch';
