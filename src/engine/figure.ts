import type { Kind } from '../quantity/index.ts';

/**
 * What a question may draw beside its numbers, as plain data in SI. A figure says what is there,
 * never how large it stands on paper: each door lays it out with the words and the rounding of
 * its own. The numbers behind it are listed beside every figure, so none is only to be seen.
 */
export type Figure = Drawing | Bars | Graph | Isolines | LinePlot;

interface Head {
  readonly title: string;
  /** What is to be seen, for who can't: a sentence; the doors add the numbers. */
  readonly alt: string;
}

/**
 * A number on a figure, SI. Its standard uncertainty is 0 when exact, and not there where only
 * the nominal value was worked out.
 */
export interface FigureNumber {
  readonly x: number;
  readonly u?: number | 'incomplete';
  /** What of an incomplete spread is known. */
  readonly knownU?: number;
}

/** x to the right, y up. */
export type FigurePoint = readonly [x: number, y: number];

/**
 * Line types of technical drawings: continuous for edges, dashed for hidden ones, chain for axes,
 * double chain for neighbours and former positions (ISO 128-2, from memory).
 */
export type LineType = 'continuous' | 'dashed' | 'chain' | 'double chain';

/**
 * Areas cut through, told apart by hatching. One way of lines for any material, the other way for
 * the part beside it, solid where it is thin (ISO 128-3, from memory); signs by class of material
 * are common practice, no source.
 */
export type Hatch =
  | 'none'
  | 'metal'
  | 'metal beside'
  | 'polymer'
  | 'rubber'
  | 'composite'
  | 'foam'
  | 'liquid'
  | 'solid';

/** A drawing to one scale in both directions. */
export interface Drawing extends Head {
  readonly f: 'drawing';
  /** Kind and unit of its coordinates: a length, on nearly all. */
  readonly kind: Kind;
  readonly unit: string;
  /** Names of the directions. */
  readonly axes?: { readonly x: string; readonly y: string };
  readonly shapes: readonly DrawingShape[];
  /** Kind and unit of vectors; a sample arrow is drawn with them. */
  readonly vectors?: { readonly kind: Kind; readonly unit: string };
}

export type DrawingShape =
  /** Outline and holes: what lies inside an odd number of rings is hatched. */
  | {
      readonly s: 'area';
      readonly rings: readonly (readonly FigurePoint[])[];
      readonly hatch: Hatch;
    }
  | { readonly s: 'line'; readonly points: readonly FigurePoint[]; readonly line: LineType }
  | { readonly s: 'circle'; readonly at: FigurePoint; readonly r: number; readonly line: LineType }
  | {
      readonly s: 'mark';
      readonly at: FigurePoint;
      readonly sign: 'centroid' | 'other centre' | 'point';
      readonly label: string;
    }
  /** A chain line through a point and all across the drawing, `angle` rad from x, turning left. */
  | { readonly s: 'axis'; readonly at: FigurePoint; readonly angle: number; readonly label: string }
  /** The distance of two points along x or y, drawn beside everything else. */
  | {
      readonly s: 'dimension';
      readonly from: FigurePoint;
      readonly to: FigurePoint;
      readonly along: 'x' | 'y';
    }
  | { readonly s: 'text'; readonly at: FigurePoint; readonly text: string }
  /** An arrow that starts at `at`, of length and direction `by` in the kind of `vectors`. */
  | {
      readonly s: 'vector';
      readonly at: FigurePoint;
      readonly by: FigurePoint;
      readonly label?: string;
    };

/** A shape of a drawing without vectors. */
export type PlaneShape = Exclude<DrawingShape, { readonly s: 'vector' }>;

/** Numbers of one kind side by side, each with whiskers of two standard uncertainties. */
export interface Bars extends Head {
  readonly f: 'bars';
  readonly kind: Kind;
  readonly unit: string;
  /** Bars from zero, or marks on a scale of their own where zero is far away. */
  readonly from: 'zero' | 'nearest';
  readonly rows: readonly BarRow[];
  /** Numbers across all rows: what is demanded, a limit. */
  readonly lines?: readonly { readonly label: string; readonly x: number }[];
  /** The difference of two rows (by place), drawn as a dimension between their marks. */
  readonly gap?: {
    readonly of: number;
    readonly less: number;
    readonly number: FigureNumber;
    readonly word?: string;
  };
}
export interface BarRow {
  readonly label: string;
  /** Not there where nothing is known: no bar, never one of zero. */
  readonly number?: FigureNumber;
  /** What is to be said of it: what is missing, a decision word. */
  readonly word?: string;
  /** Where its bar begins, in a row of steps from one number to another; it ends its number further. */
  readonly start?: number;
}

/** What must come before what: boxes in layers, arrows from the earlier to the later. */
export interface Graph extends Head {
  readonly f: 'graph';
  /** Kind and unit of the numbers of its nodes: a time, say. */
  readonly kind?: Kind;
  readonly unit?: string;
  readonly nodes: readonly GraphNode[];
  readonly edges: readonly GraphEdge[];
}
export interface GraphNode {
  readonly id: string;
  readonly label: string;
  readonly number?: FigureNumber;
  /** Stands out: on the longest path, in hand. */
  readonly strong?: true;
}
export interface GraphEdge {
  readonly from: string;
  readonly to: string;
  readonly label?: string;
  readonly line?: LineType;
  readonly strong?: true;
}

/** A field over a plane grid, drawn as lines of equal value. */
export interface Isolines extends Head {
  readonly f: 'isolines';
  readonly kind: Kind;
  readonly unit: string;
  /** Coordinates of the columns and of the rows of the grid, rising; lengths. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Unit in which the plane's lengths are shown. */
  readonly lengthUnit: string;
  readonly axes?: { readonly x: string; readonly y: string };
  /** One list a row of the grid. */
  readonly values: readonly (readonly number[])[];
  readonly levels: readonly number[];
  /** Drawn over the field, in the plane's lengths: edges, supports, loads. */
  readonly shapes?: readonly PlaneShape[];
}

/** Numbers along a line or over another number, with bands of two standard uncertainties. */
export interface LinePlot extends Head {
  readonly f: 'line';
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly series: readonly {
    readonly label: string;
    readonly line: LineType;
    /** Rising in x. */
    readonly points: readonly (FigureNumber & { readonly at: number })[];
  }[];
  /** Numbers of y all along the plot: what is demanded, a limit. */
  readonly demands?: readonly { readonly label: string; readonly y: number }[];
  /** Places on the x axis, drawn up through the plot: a break-even point, say. */
  readonly marks?: readonly { readonly label: string; readonly number: FigureNumber }[];
}
export interface PlotAxis {
  readonly label: string;
  readonly kind: Kind;
  readonly unit: string;
}
