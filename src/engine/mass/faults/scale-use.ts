import type { MassRow } from './mass-record.ts';

/** More decimals than this are counted as this many. */
const MOST_DECIMALS = 9;

/** Digits behind the decimal sign of the first number in a text. */
export const decimalsOf = (written: string): number =>
  Math.min(MOST_DECIMALS, /\d[.,](\d+)/.exec(written)?.[1]?.length ?? 0);

/** What one scale of a record was used for: masses read on it, and digits written. */
class OneScale {
  readonly #kg: Float64Array;
  /** Rows with exactly so many decimals. */
  readonly #decimals = new Array<number>(MOST_DECIMALS + 1).fill(0);

  constructor(rows: readonly MassRow[]) {
    this.#kg = Float64Array.from(rows, (r) => r.mass?.x ?? 0).sort();
    for (const { written } of rows)
      this.#decimals[decimalsOf(written)] = this.#rowsWith(written) + 1;
  }

  #rowsWith = (written: string): number => this.#decimals[decimalsOf(written)] ?? 0;

  get others(): number {
    return this.#kg.length - 1;
  }

  /** Other rows of this scale that read as much or more, and less; `own` is among them. */
  moreThan(kg: number, own: number): number {
    let [low, high] = [0, this.#kg.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#kg[middle] ?? 0) < kg) low = middle + 1;
      else high = middle;
    }
    return this.#kg.length - low - (own >= kg ? 1 : 0);
  }

  /** Other rows written with so many decimals or more, and the finest of them. */
  finerThan(decimals: number, written: string): { rows: number; finest: number } {
    let [rows, finest] = [0, 0];
    for (const [d, count] of this.#decimals.entries()) {
      const others = d === decimalsOf(written) ? count - 1 : count;
      if (others > 0) finest = d;
      if (d >= decimals) rows += others;
    }
    return { rows, finest };
  }
}

/** How the scales of a record were used: a number beyond that was hardly read off them. */
export class ScaleUse {
  readonly #scales = new Map<string, OneScale>();

  constructor(rows: readonly MassRow[]) {
    const byScale = new Map<string, MassRow[]>();
    for (const row of rows) {
      if (!row.mass || row.instrument === '') continue;
      const own = byScale.get(row.instrument);
      if (own) own.push(row);
      else byScale.set(row.instrument, [row]);
    }
    for (const [scale, own] of byScale) this.#scales.set(scale, new OneScale(own));
  }

  /** ln of how often a scale of this record reads so far out, on its other rows. */
  reads(row: MassRow, kg: number): number {
    const scale = this.#scales.get(row.instrument);
    if (!scale || scale.others < 1 || !row.mass) return 0;
    const more = scale.moreThan(kg, row.mass.x);
    const beyond = Math.min(more, scale.others - more);
    return Math.log(Math.min(1, (2 * (beyond + 1)) / (scale.others + 2)));
  }

  /**
   * ln of how often a scale of this record is written with as many decimals as a row, or with
   * `more` than those. Each digit beyond the finest ever written is as rare as one row of all.
   */
  digits(row: MassRow, more = 0): number {
    const scale = this.#scales.get(row.instrument);
    if (!scale || scale.others < 1 || row.written === '') return 0;
    const mine = decimalsOf(row.written) + more;
    const { rows, finest } = scale.finerThan(mine, row.written);
    return (
      Math.log((rows + 1) / (scale.others + 1)) * (rows === 0 ? Math.max(1, mine - finest) : 1)
    );
  }
}
