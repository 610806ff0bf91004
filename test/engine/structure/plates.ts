import type { WrittenInputs } from '../../../src/engine/index.ts';

/** Edges at x = 0 and a, y = 0 and b, by a letter each: S supported, C clamped, F free. */
export function edges(letters: string): Record<string, string> {
  const words: Readonly<Record<string, string>> = { S: 'supported', C: 'clamped', F: 'free' };
  return Object.fromEntries(
    ['x0', 'xa', 'y0', 'yb'].map((name, i) => [name, words[letters.charAt(i)] ?? '']),
  );
}

/** A plate of D = 1 N·m whose short side is 1 m along x, and its long side along y. */
export const plate = (ratio: number, letters: string, nu = 0.3): WrittenInputs => ({
  ...{ a: 'exactly 1 m', b: `exactly ${ratio} m`, D: 'exactly 1 N.m', poisson: `exactly ${nu}` },
  ...edges(letters),
});
