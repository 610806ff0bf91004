import type { Frame, View } from './views.ts';

/** Paper left free around views, CSS pixels: at the sides, for the title, for labels. */
const SIDE = 14;
const TITLE = 22;
const LABELS = 22;
/** Below a view that stands on the ground there is a dimension. */
const DIMENSION = 36;
const PLAIN = 8;

/** A view at its place: paper metres to CSS pixels by `x = x0 + k u`. */
export interface PlacedView {
  readonly view: View;
  readonly k: number;
  readonly x0: number;
  readonly y0: number;
  /** Where the view's field begins and how far it goes, CSS pixels. */
  readonly field: Frame;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly views: readonly PlacedView[];
}

/** A column or row of views: where its metres begin, how many there are, and where it stands. */
interface Band {
  readonly from: number;
  readonly size: number;
  readonly before: number;
  readonly after: number;
}

/**
 * Puts rows of views on a paper of the given size, all to one scale; views in a column share
 * their left edge, so that plan and side stand above each other.
 * @param height CSS pixels; the width alone sets the scale when absent.
 */
export function layOut(
  rows: readonly (readonly View[])[],
  width: number,
  height: number | undefined,
  hasLabels: boolean,
): Layout {
  const columns = columnBands(rows);
  const lines = rows.map((row) => rowBand(row, hasLabels));
  const fits = (room: number, bands: readonly Band[]) =>
    (room - sum(bands.map((b) => b.before + b.after))) / sum(bands.map((b) => b.size));
  const k = Math.max(Math.min(fits(width, columns), fits(height ?? Infinity, lines)), 1e-6);
  const extent = (b: Band) => b.before + k * b.size + b.after;
  const spare = Math.max(width - sum(columns.map(extent)), 0);
  const lefts = starts(columns.map(extent), spare / 2);
  const tops = starts(lines.map(extent), 0);
  const views = rows.flatMap((row, r) =>
    row.flatMap((view, c) => {
      const [column, line] = [columns[c], lines[r]];
      if (!column || !line) return [];
      const [left, top] = [lefts[c] ?? 0, tops[r] ?? 0];
      return [
        {
          ...{ view, k },
          x0: left + column.before - k * column.from,
          // All views of a row end at its foot.
          y0: top + line.before + k * (line.size - view.frame.height - view.frame.top),
          field: { left, top, width: extent(column), height: extent(line) },
        },
      ];
    }),
  );
  return { width, height: sum(lines.map(extent)), views };
}

function columnBands(rows: readonly (readonly View[])[]): Band[] {
  const count = Math.max(...rows.map((row) => row.length));
  return Array.from({ length: count }, (_, c) => {
    const frames = rows.flatMap((row) => (row[c] ? [row[c].frame] : []));
    const from = Math.min(...frames.map((f) => f.left));
    const size = Math.max(...frames.map((f) => f.left + f.width)) - from;
    return { from, size, before: SIDE, after: SIDE };
  });
}

function rowBand(row: readonly View[], hasLabels: boolean): Band {
  const onGround = row.some((view) => view.name !== 'plan');
  return {
    from: 0,
    size: Math.max(...row.map((view) => view.frame.height)),
    before: TITLE + (hasLabels ? LABELS : 0),
    after: onGround ? DIMENSION : PLAIN,
  };
}

/** Where each of a row of extents begins. */
const starts = (extents: readonly number[], from: number): number[] =>
  extents.map((_, i) => from + sum(extents.slice(0, i)));

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);
