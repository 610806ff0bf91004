import type { ElementTimes } from './element-times.ts';

/**
 * Values after the published 1948 method (Maynard, Stegemerten and Schwab, Methods-Time
 * Measurement, 1948). Only what was legible in reprints of its tables stands here: bands of
 * weight, positioning, turning, disengaging and body motions beyond these were not. Bands of
 * weight are 5 lb wide (their lower ends from memory); the band up to 42.5 lb lacks its factor
 * and is left out. A move of a weight in no band has no value.
 */
export const ELEMENT_TIMES_1948: ElementTimes = {
  id: '1948',
  source:
    'after the published 1948 method (Maynard, Stegemerten, Schwab, Methods-Time Measurement)',
  secondsAUnit: 0.036,
  reach: {
    inches: [1, 4, 6, 8, 10, 12, 14, 16, 20, 24, 30],
    units: {
      A: [2.5, 6.1, 7.0, 7.9, 8.7, 9.6, 10.5, 11.4, 13.1, 14.9, 17.5],
      B: [2.5, 6.4, 8.6, 10.1, 11.5, 12.9, 14.4, 15.8, 18.6, 21.5, 25.8],
      C: [3.6, 8.4, 10.1, 11.5, 12.9, 14.2, 15.6, 17.0, 19.8, 22.5, 26.7],
      D: [3.6, 8.4, 10.1, 11.5, 12.9, 14.2, 15.6, 17.0, 19.8, 22.5, 26.7],
      E: [2.4, 6.8, 8.0, 9.3, 10.5, 11.8, 13.0, 14.2, 16.7, 19.2, 22.9],
    },
    beyond: { A: 0.4, B: 0.7, E: 0.7 },
  },
  move: {
    inches: [1, 4, 6, 8, 10, 12, 16, 20, 24, 30],
    units: {
      A: [2.5, 6.1, 8.1, 9.7, 11.3, 12.9, 16.0, 19.2, 22.4, 27.1],
      B: [2.9, 6.9, 8.9, 10.6, 12.2, 13.4, 15.8, 18.2, 20.6, 24.3],
      C: [3.4, 8.0, 10.3, 11.8, 13.5, 15.2, 18.7, 22.1, 25.5, 30.7],
    },
    beyond: { A: 0.8, B: 0.6, C: 0.85 },
  },
  weights: [
    { over: 0, upTo: 7.5, factor: 1.06, constant: 2.2 },
    { over: 17.5, upTo: 22.5, factor: 1.22, constant: 7.4 },
    { over: 42.5, upTo: 47.5, factor: 1.5, constant: 16.0 },
  ],
  single: {
    G1A: 2.0,
    G1B: 3.5,
    G1C1: 7.3,
    G1C2: 8.7,
    G1C3: 10.8,
    G4A: 7.3,
    G4B: 9.1,
    G5: 0,
    EF: 7.3,
    P1NSE: 10.4,
    RL1: 2.0,
  },
};
