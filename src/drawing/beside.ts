import { type Ink, type Spot, words } from './picture.ts';
import { textWidth } from './text-width.ts';

/** A rectangle that is taken: left, top, right, bottom. */
type Taken = readonly [number, number, number, number];

const HALF = 8;

/** Finds places for words beside points, each clear of the words before it where that is possible. */
export class PlacesBeside {
  readonly #taken: Taken[] = [];
  readonly #width: number;

  constructor(width: number) {
    this.#width = width;
  }

  /** Keeps words off a square about a point. */
  keep([x, y]: Spot, reach: number): void {
    this.#taken.push([x - reach, y - reach, x + reach, y + reach]);
  }

  /** Words beside a point, `away` units off: right, left, above or below, then further off. */
  put([x, y]: Spot, text: string, away: number): Ink {
    const size = textWidth(text);
    const tries = [0, 1, 2].flatMap((n) => {
      const d = away + 14 * n;
      return [
        { at: [x + d, y - 0.95 * d] as const, anchor: 'start' as const },
        { at: [x - d, y - 0.95 * d] as const, anchor: 'end' as const },
        { at: [x + d, y + 1.05 * d] as const, anchor: 'start' as const },
        { at: [x - d, y + 1.05 * d] as const, anchor: 'end' as const },
      ];
    });
    const boxes = tries.map((t) => ({ ...t, box: boxOf(t.at, t.anchor, size) }));
    const inside = boxes.filter(({ box }) => box[0] >= 0 && box[2] <= this.#width);
    const free = inside.find(({ box }) => !this.#taken.some((t) => overlap(t, box)));
    const chosen = free ?? inside[0] ?? boxes[0];
    if (!chosen) throw new RangeError('there is always a place to try');
    this.#taken.push(chosen.box);
    return words(chosen.at, text, { anchor: chosen.anchor, onPaper: true });
  }
}

function boxOf([x, y]: Spot, anchor: 'start' | 'end', size: number): Taken {
  const left = anchor === 'start' ? x : x - size;
  return [left, y - HALF, left + size, y + HALF];
}

const overlap = (a: Taken, b: Taken): boolean =>
  a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
