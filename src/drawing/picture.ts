/**
 * A figure laid out on paper: lines, areas and words, each at its place. One unit is a CSS pixel
 * on a screen and 0.231 mm in print (a line of text is 13 units high on both); x to the right,
 * y down. Whatever is drawn in words or lines looks the same at every door.
 */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly inks: readonly Ink[];
  /** Heights at which it may be cut to go on another sheet, from the top; none when in one piece. */
  readonly cuts: readonly number[];
}

export type Spot = readonly [x: number, y: number];

/** Pens by their width, and the line types of narrow lines. */
export type Pen =
  | 'wide'
  | 'medium'
  | 'narrow'
  | 'hair'
  | 'dashed'
  | 'chain'
  | 'double chain'
  | 'none';

/** White paper, ink all over, or one of the hatchings. */
export type Fill =
  | 'none'
  | 'paper'
  | 'ink'
  | 'lines'
  | 'lines back'
  | 'cross'
  | 'dense cross'
  | 'short lines'
  | 'dots'
  | 'levels';

export type Ink =
  | { readonly i: 'line'; readonly spots: readonly Spot[]; readonly pen: Pen }
  /** Inside an odd number of rings it is filled. */
  | {
      readonly i: 'area';
      readonly rings: readonly (readonly Spot[])[];
      readonly pen: Pen;
      readonly fill: Fill;
    }
  | {
      readonly i: 'circle';
      readonly at: Spot;
      readonly r: number;
      readonly pen: Pen;
      readonly fill: Fill;
    }
  | Words;

/** One line of text; `at` is its start, middle or end, half way up the capitals. */
export interface Words {
  readonly i: 'words';
  readonly at: Spot;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly size: 'plain' | 'small';
  readonly tone: 'plain' | 'strong' | 'soft' | 'open';
  /** Reads from below to above. */
  readonly turned?: true;
  /** Whatever is drawn before it is covered. */
  readonly onPaper?: true;
}

export const words = (
  at: Spot,
  text: string,
  more: Partial<Omit<Words, 'i' | 'at' | 'text'>> = {},
): Words => ({ i: 'words', at, text, anchor: 'start', size: 'plain', tone: 'plain', ...more });

export const line = (pen: Pen, ...spots: readonly Spot[]): Ink => ({ i: 'line', spots, pen });

export const box = (x: number, y: number, w: number, h: number, pen: Pen, fill: Fill): Ink => ({
  i: 'area',
  rings: [
    [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ],
  ],
  pen,
  fill,
});

/** Filled arrow head with its tip at `tip`, pointing along a direction of any length. */
export function arrowHead([x, y]: Spot, [dx, dy]: Spot, length = 9): Ink {
  const size = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / size, dy / size];
  const half = length / 3.6;
  const [bx, by] = [x - length * ux, y - length * uy];
  const ring: readonly Spot[] = [
    [x, y],
    [bx - half * uy, by + half * ux],
    [bx + half * uy, by - half * ux],
  ];
  return { i: 'area', rings: [ring], pen: 'none', fill: 'ink' };
}
