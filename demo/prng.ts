/**
 * Numbers in [0, 1) from a seed, the same on every machine: mulberry32, a 32-bit generator in
 * the public domain (from memory). Good enough to make drawings look drawn; for nothing else.
 */
export function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}
