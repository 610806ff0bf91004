/** A label wanted at a point along a line, and where it comes to stand. CSS pixels. */
export interface LabelWanted {
  readonly id: string;
  readonly text: string;
  /** Where its part is. */
  readonly at: number;
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

/** Sets labels side by side between two ends, as near to their parts as they go without overlap. */
export function placeLabels(
  wanted: readonly LabelWanted[],
  from: number,
  to: number,
): LabelPlaced[] {
  const sorted = [...wanted].sort((a, b) => a.at - b.at);
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
