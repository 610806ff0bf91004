import type { StudyView } from '../study/index.ts';
import { assemblyBody, type Body, DRAWN_DENSITY, partBody, wheelsOf } from './map-bodies.ts';
import { planView, sideView } from './map-views.ts';

/**
 * The vehicle drawn from its record, in plan above side view, both to one scale along X. Sizes
 * and positions are mm in the view: x to the right (rearward), y down the paper.
 */
export interface MapDrawing {
  readonly caption: string;
  readonly alt: string;
  readonly views: readonly MapView[];
  /** Parts named by a number on the drawing, heaviest first. */
  readonly items: readonly { readonly item: number; readonly words: string }[];
}

export interface MapView {
  readonly title: string;
  readonly axes: string;
  /** Left, top, width and height of what is drawn. */
  readonly frame: readonly [left: number, top: number, width: number, height: number];
  readonly shapes: readonly MapShape[];
}

export type MapShape =
  | {
      readonly s: 'box';
      readonly x: number;
      readonly y: number;
      readonly w: number;
      readonly h: number;
      readonly bold: boolean;
      readonly hatch: boolean;
    }
  | { readonly s: 'circle'; readonly x: number; readonly y: number; readonly r: number }
  | { readonly s: 'line'; readonly from: Point; readonly to: Point; readonly chain: boolean }
  | { readonly s: 'mark'; readonly x: number; readonly y: number; readonly sign: MapMark['sign'] }
  | { readonly s: 'item'; readonly x: number; readonly y: number; readonly item: number }
  | {
      readonly s: 'dimension';
      readonly from: number;
      readonly to: number;
      readonly y: number;
      readonly text: string;
    };
export type Point = readonly [x: number, y: number];

/** A centre of gravity to mark, SI in the vehicle frame: circle with cross, or square with cross. */
export interface MapMark {
  readonly words: string;
  readonly sign: 'circle' | 'square';
  readonly x: number;
  readonly y: number;
  readonly z?: number;
}

/** Parts numbered on the drawing, and parts drawn: the heaviest. */
const ITEMS = 8;
const DRAWN = 1000;

/** Draws what a study's readings allow; undefined when no part has a place. */
export function mapDrawing(
  view: StudyView,
  marks: readonly MapMark[] = [],
): MapDrawing | undefined {
  const parts = view.nodes('part').flatMap((n) => partBody(view, n));
  if (parts.length === 0) return undefined;
  const heaviest = [...parts].sort((a, b) => b.mass - a.mass).slice(0, DRAWN);
  const items = heaviest.slice(0, ITEMS);
  // Small ones last, so that large ones do not hide them.
  const bySize = [...heaviest].sort((a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1]);
  const bodies = [
    ...view.nodes('assembly').flatMap((n) => assemblyBody(view, n, parts)),
    ...bySize,
  ];
  const wheels = wheelsOf(view);
  return {
    caption: captionOf(heaviest.length, parts.length, marks),
    alt: altOf(bodies, marks),
    views: [planView(bodies, items, wheels, marks), sideView(bodies, items, wheels, marks)],
    items: items.map((b, i) => ({ item: i + 1, words: `${b.label} ${b.words}` })),
  };
}

function captionOf(drawn: number, placed: number, marks: readonly MapMark[]): string {
  const count = drawn < placed ? `the ${drawn} heaviest of ${placed} parts` : `${placed} parts`;
  const signs = marks.map((m) => `${m.sign} with cross: ${m.words}`);
  return [
    `${count} by position; size by envelope, else a cube of one piece's mass at ${DRAWN_DENSITY} kg/m³, no outline`,
    ...signs,
  ].join(' · ');
}

const altOf = (bodies: readonly Body[], marks: readonly MapMark[]): string =>
  `Plan and side view of the vehicle with ${bodies.length} boxes at the recorded positions` +
  marks
    .map(
      (m) =>
        `, ${m.words} at X ${mm(m.x)} mm, Y ${mm(m.y)} mm${m.z === undefined ? '' : `, Z ${mm(m.z)} mm`}`,
    )
    .join('') +
  '.';

const mm = (metres: number): number => Math.round(1000 * metres);
