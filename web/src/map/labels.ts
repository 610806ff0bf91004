/** A label wanted at a point along a line, and where it comes to stand. CSS pixels. */
export interface LabelWanted {
  readonly id: string;
  readonly text: string;
  /** Where its part is, across and down. */
  readonly at: number;
  readonly down: number;
  readonly width: number;
}
export interface LabelPlaced extends LabelWanted {
  /** Middle of the label. */
  readonly x: number;
}

const GAP = 8;

/** The first of the labels wanted for which there is room side by side between two ends. */
export function thatFit(wanted: readonly LabelWanted[], from: number, to: number): LabelWanted[] {
  let used = -GAP;
  return wanted.filter(({ width }) => {
    used += width + GAP;
    return used <= to - from;
  });
}

/**
 * Sets labels side by side between two ends, as near to their parts as they go without overlap,
 * in an order in which no leader line crosses another.
 */
export function placeLabels(
  wanted: readonly LabelWanted[],
  from: number,
  to: number,
): LabelPlaced[] {
  let placed = inARow(
    [...wanted].sort((a, b) => a.at - b.at),
    from,
    to,
  );
  // Two lines that cross become shorter by an exchange, so that this ends; the limit is for ties.
  for (let tries = wanted.length ** 2; tries > 0; tries--) {
    const pair = crossing(placed);
    if (!pair) break;
    const [i, j] = pair;
    const swapped = placed.map((label, k) => placed[k === i ? j : k === j ? i : k] ?? label);
    placed = inARow(swapped, from, to);
  }
  return placed;
}

/** The first two leader lines that cross, by their places in the row. */
function crossing(placed: readonly LabelPlaced[]): [number, number] | undefined {
  for (const [i, a] of placed.entries())
    for (const [j, b] of placed.entries()) if (i < j && cross(a, b)) return [i, j];
  return undefined;
}

/** Lines go from the row, at height 0, down to their parts; a's label stands left of b's. */
function cross(a: LabelPlaced, b: LabelPlaced): boolean {
  const depth = Math.min(a.down, b.down);
  if (!(depth > 0)) return false;
  const across = (l: LabelPlaced) => l.x + ((l.at - l.x) * depth) / l.down;
  return across(a) > across(b) + 1e-6;
}

function inARow(sorted: readonly LabelWanted[], from: number, to: number): LabelPlaced[] {
  const lefts: number[] = [];
  let free = from;
  for (const label of sorted) {
    const left = Math.max(label.at - label.width / 2, free);
    lefts.push(left);
    free = left + label.width + GAP;
  }
  let end = to;
  for (let i = sorted.length - 1; i >= 0; i--) {
    const width = sorted[i]?.width ?? 0;
    lefts[i] = Math.min(lefts[i] ?? from, end - width);
    end = (lefts[i] ?? from) - GAP;
  }
  return sorted.map((label, i) => ({ ...label, x: (lefts[i] ?? from) + label.width / 2 }));
}
