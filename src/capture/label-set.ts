/**
 * Remembers which labels were seen by a digest of 53 bits each, at 8 to 16 bytes a label, so
 * that millions of rows can be checked for duplicates. Two labels may share a digest (about one
 * chance in two thousand for three million labels): a digest seen twice is a suspicion, to be
 * settled by comparing the labels themselves.
 */
export class LabelSet {
  /** Open addressing; 0 marks a free slot. */
  #slots = new Float64Array(1 << 12);
  #used = 0;

  /** False when a label of the same digest was added before. */
  add(label: string): boolean {
    if (this.#used * 2 >= this.#slots.length) this.#grow();
    const isNew = place(this.#slots, labelDigest(label));
    if (isNew) this.#used++;
    return isNew;
  }

  get size(): number {
    return this.#used;
  }

  #grow(): void {
    const larger = new Float64Array(this.#slots.length * 2);
    for (const digest of this.#slots) if (digest !== 0) place(larger, digest);
    this.#slots = larger;
  }
}

function place(slots: Float64Array, digest: number): boolean {
  const mask = slots.length - 1;
  for (let at = digest & mask; ; at = (at + 1) & mask) {
    if (slots[at] === digest) return false;
    if (slots[at] !== 0) continue;
    slots[at] = digest;
    return true;
  }
}

/** Digest of a text: a whole number from 1 to 2^53 − 1, from two interleaved FNV-1a sums. */
export function labelDigest(text: string): number {
  let low = 0x811c9dc5;
  let high = 0x9747b28c;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    low = Math.imul(low ^ code, 0x01000193);
    high = Math.imul(high ^ (code + i), 0x85ebca6b);
  }
  low = mixed(low);
  high = mixed(high);
  return (high & 0x1fffff) * 2 ** 32 + (low >>> 0) || 1;
}

/** Spreads the bits of a 32-bit word (finaliser of MurmurHash3, public domain). */
function mixed(word: number): number {
  let h = word;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
