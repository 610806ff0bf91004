import { formUncertainty } from '../../../quantity/index.ts';
import { EXPECTED_OFF, SIDES_ALIKE, SIDES_DIFFER } from './fault-rates.ts';
import { type MassRow, massOf } from './mass-record.ts';
import { mirrorsOf } from './mirror-pairs.ts';
import { ScaleUse } from './scale-use.ts';

/** What a row tells of itself, before any sum: logarithms of how likely a mass of it is. */
export class RowEvidence {
  readonly scales: ScaleUse;
  readonly mirrors: readonly (number | undefined)[];
  readonly #rows: readonly MassRow[];

  constructor(rows: readonly MassRow[]) {
    this.#rows = rows;
    this.mirrors = mirrorsOf(rows);
    this.scales = new ScaleUse(rows);
  }

  /** log density of a row's mass beside its mirror image's and its expected mass, up to a constant. */
  likely(row: number, kg: number): number {
    return this.#besideMirror(row, kg) + this.#besideExpected(row, kg);
  }

  #besideMirror(row: number, kg: number): number {
    const other = massOf(this.#rows[this.mirrors[row] ?? -1]);
    const u = this.mirrorSpread(row);
    return u === undefined ? 0 : mixed(Math.log(kg / other), u, SIDES_DIFFER);
  }

  /** Standard relative difference to be expected between a row and its mirror image. */
  mirrorSpread(row: number): number | undefined {
    const pair = [this.#rows[row], this.#rows[this.mirrors[row] ?? -1]];
    if (!pair.every((r) => r?.mass && r.mass.x > 0)) return undefined;
    return Math.hypot(
      SIDES_ALIKE,
      ...pair.map((r) => (r?.mass ? formUncertainty(r.mass) / r.mass.x : 0)),
    );
  }

  #besideExpected(row: number, kg: number): number {
    const expected = this.#rows[row]?.expected;
    if (!expected) return 0;
    return mixed(Math.log(kg / expected.kg), expected.relative, EXPECTED_OFF);
  }
}

/** log of a normal density that gives way to a wide one, so that no surprise is endless. */
function mixed(
  d: number,
  u: number,
  off: { readonly share: number; readonly spread: number },
): number {
  if (!Number.isFinite(d)) return Math.log(off.share / off.spread);
  const narrow = ((1 - off.share) / u) * Math.exp(-0.5 * (d / u) ** 2);
  const wide = (off.share / off.spread) * Math.exp(-0.5 * (d / off.spread) ** 2);
  return Math.log(narrow + wide);
}
