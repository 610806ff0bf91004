import { momentsOf, symmetricInterval } from './summary.ts';
import { toleranceOf } from './tolerance.ts';

/** Mean, spread and ends of the interval of one block. */
type Figures = readonly [mean: number, u: number, low: number, high: number];

/** Samples of several results, block by block, and whether they have settled (JCGM 101:2008, 7.9). */
export class Blocks {
  count = 0;
  readonly #samples: Float64Array[][];
  readonly #figures: Figures[][];

  constructor(
    results: number,
    readonly coverage: number,
  ) {
    this.#samples = Array.from({ length: results }, () => []);
    this.#figures = Array.from({ length: results }, () => []);
  }

  /** Adds a block: one column of samples for each result. */
  add(columns: readonly Float64Array[]): void {
    this.count++;
    for (const [i, column] of columns.entries()) {
      this.#samples[i]?.push(column);
      const sorted = column.filter(Number.isFinite).sort();
      const { mean, u } = momentsOf(sorted);
      const { low, high } = symmetricInterval(sorted, this.coverage);
      this.#figures[i]?.push([mean, u, low, high]);
    }
  }

  /**
   * Twice the standard deviation of the mean over blocks, of each of the four figures of every
   * result, is below the tolerance of its spread (7.9.4 f to k). Never before the third block:
   * two that agree by chance say little.
   */
  haveSettled(digits: 1 | 2): boolean {
    if (this.count < 3) return false;
    return this.#figures.every((blocks) => {
      const u = meanOver(blocks.map((b) => b[1]));
      const tolerance = toleranceOf(u, digits);
      return [0, 1, 2, 3].every((k) => 2 * deviation(blocks.map((b) => b[k] ?? 0)) <= tolerance);
    });
  }

  /** All samples of a result in rising order, and the share that were no numbers. */
  all(i: number): { readonly sorted: Float64Array; readonly none: number } {
    const blocks = this.#samples[i] ?? [];
    const total = blocks.reduce((n, b) => n + b.length, 0);
    const joined = new Float64Array(total);
    let at = 0;
    for (const block of blocks) {
      joined.set(block, at);
      at += block.length;
    }
    const sorted = joined.filter(Number.isFinite).sort();
    return { sorted, none: total === 0 ? 0 : 1 - sorted.length / total };
  }
}

const meanOver = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0) / xs.length;

/** Standard deviation of the mean over blocks. */
function deviation(xs: readonly number[]): number {
  const mean = meanOver(xs);
  const squares = xs.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  return Math.sqrt(squares / (xs.length * (xs.length - 1)));
}
