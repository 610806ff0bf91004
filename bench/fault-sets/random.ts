/** Random numbers from a seed, the same on every machine. */
export class Random {
  #state: number;

  constructor(seed: number) {
    this.#state = (Math.imul(seed | 0, 0x9e3779b1) ^ 0x5bf03635) >>> 0;
    for (let i = 0; i < 8; i++) this.uniform();
  }

  /** In [0, 1): mulberry32, public domain (from memory). */
  uniform(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let t = this.#state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  }

  between = (low: number, high: number): number => low + (high - low) * this.uniform();

  /** Standard normal, by Box and Muller's method. */
  normal(): number {
    const r = Math.sqrt(-2 * Math.log(1 - this.uniform()));
    return r * Math.cos(2 * Math.PI * this.uniform());
  }

  pick<T>(list: readonly T[]): T {
    if (list.length === 0) throw new RangeError('nothing to pick from');
    return list[Math.floor(this.uniform() * list.length)] as T;
  }

  /** One of a list, each as often as its weight says. */
  weighted<T>(list: readonly (readonly [T, number])[]): T {
    let at = this.uniform() * list.reduce((sum, [, w]) => sum + w, 0);
    for (const [item, w] of list) {
      at -= w;
      if (at < 0) return item;
    }
    return this.pick(list)[0];
  }
}
