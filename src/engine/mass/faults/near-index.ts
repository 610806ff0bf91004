/** Side of a cell of the grid, in the unit of the vectors. */
const CELL = 4;
/** Coordinates that the grid goes by. */
const AXES = 3;
const BUCKETS = 1 << 14;

/**
 * Finds vectors near a point by their first three coordinates: a grid of cells, looked up with
 * its neighbours. Vectors are rows of `d` numbers of one flat array.
 */
export class NearIndex {
  readonly #heads = new Int32Array(BUCKETS).fill(-1);
  readonly #next: Int32Array;
  readonly #which: Int32Array;
  readonly #cells: Int32Array;
  readonly #axes: number;

  constructor(vectors: Float64Array, d: number, which: readonly number[]) {
    this.#axes = Math.min(AXES, d);
    this.#which = Int32Array.from(which);
    this.#next = new Int32Array(which.length);
    this.#cells = new Int32Array(which.length * AXES);
    for (const [slot, i] of which.entries()) {
      for (let k = 0; k < this.#axes; k++)
        this.#cells[slot * AXES + k] = Math.floor((vectors[i * d + k] ?? 0) / CELL);
      const bucket = bucketOf(this.#cell(slot, 0), this.#cell(slot, 1), this.#cell(slot, 2));
      this.#next[slot] = this.#heads[bucket] ?? -1;
      this.#heads[bucket] = slot;
    }
  }

  #cell = (slot: number, k: number): number => this.#cells[slot * AXES + k] ?? 0;

  /** Calls back with every vector in the point's cell or one beside it. */
  near(point: Float64Array, found: (i: number) => void): void {
    const at = (k: number) => (k < this.#axes ? Math.floor((point[k] ?? 0) / CELL) : 0);
    const [a, b, c] = [at(0), at(1), at(2)];
    const reach = (k: number) => (k < this.#axes ? 1 : 0);
    for (let i = a - reach(0); i <= a + reach(0); i++)
      for (let j = b - reach(1); j <= b + reach(1); j++)
        for (let k = c - reach(2); k <= c + reach(2); k++) this.#inCell(i, j, k, found);
  }

  #inCell(a: number, b: number, c: number, found: (i: number) => void): void {
    for (let s = this.#heads[bucketOf(a, b, c)] ?? -1; s >= 0; s = this.#next[s] ?? -1)
      if (this.#cell(s, 0) === a && this.#cell(s, 1) === b && this.#cell(s, 2) === c)
        found(this.#which[s] ?? 0);
  }
}

/** Spreads whole numbers over the buckets; factors are large primes. */
const bucketOf = (a: number, b: number, c: number): number =>
  (Math.imul(a, 73856093) ^ Math.imul(b, 19349663) ^ Math.imul(c, 83492791)) & (BUCKETS - 1);
