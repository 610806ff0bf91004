/** Rotates a word of 32 bits to the left. */
const rotated = (x: number, by: number): number => (x << by) | (x >>> (32 - by));

/**
 * Numbers that look random and are the same on every run: xoshiro128** (Blackman and Vigna,
 * "Scrambled linear pseudorandom number generators", 2018), period 2¹²⁸ − 1, whole numbers of 32
 * bits only, so that every engine gives the same digits.
 */
export class Random {
  constructor(
    private a: number,
    private b: number,
    private c: number,
    private d: number,
  ) {}

  /** A stream of its own for these words, each of 32 bits. */
  static of(...words: readonly number[]): Random {
    const next = (salt: number) => words.reduce((h, word) => mixed(h ^ word), mixed(salt)) | 0;
    // A state of four zeros would stay there.
    return new Random(next(1) | 1, next(2), next(3), next(4));
  }

  /** 32 bits, from 0. */
  bits(): number {
    const out = Math.imul(rotated(Math.imul(this.b, 5), 7), 9) >>> 0;
    const t = this.b << 9;
    this.c ^= this.a;
    this.d ^= this.b;
    this.b ^= this.c;
    this.a ^= this.d;
    this.c ^= t;
    this.d = rotated(this.d, 11);
    return out;
  }

  /** In (0, 1), never an end: in the middle of one of 2³² steps. */
  unit(): number {
    return (this.bits() + 0.5) / 2 ** 32;
  }

  /** A whole number from 0 up to `n` − 1. */
  below(n: number): number {
    return Math.floor(this.unit() * n);
  }

  /** The numbers from 0 to `n` − 1 in a random order (Fisher and Yates). */
  permutation(n: number): Uint32Array {
    const order = Uint32Array.from({ length: n }, (_, i) => i);
    for (let i = n - 1; i > 0; i--) {
      const j = this.below(i + 1);
      const held = order[i] ?? 0;
      order[i] = order[j] ?? 0;
      order[j] = held;
    }
    return order;
  }
}

/** Stirs 32 bits so that near numbers come out far apart (the finish of MurmurHash3). */
export function mixed(h: number): number {
  let x = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return (x ^ (x >>> 16)) >>> 0;
}

/** 32 bits of a text (Fowler, Noll and Vo, FNV-1a), stirred. */
export function hashOf(text: string, salt = 0): number {
  let h = 0x811c9dc5 ^ salt;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return mixed(h);
}
