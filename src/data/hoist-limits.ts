import type { Kind, Spread, Way } from '../quantity/index.ts';

/**
 * The margin asked for on the hoist where a study records none: our own default, editable, and no
 * standard's. The instructions of the lift and of the vehicle come first.
 */
export interface HoistDefault {
  readonly id: string;
  readonly property: string;
  readonly words: string;
  readonly kind: Kind;
  /** SI. */
  readonly x: number;
  readonly spread: Spread;
  readonly how: Way;
  readonly source: string;
}

const ours = (property: string, words: string, kind: Kind, x: number): HoistDefault => ({
  id: `hoist/${property}`,
  ...{ property, words, kind, x, spread: { s: 'exact' }, how: 'supplied' },
  source: 'default of this project, no standard',
});

export const HOIST_DEFAULTS = {
  'margin.shareX': ours('margin.shareX', 'share of the pad span in X', 'ratio', 0.15),
  'margin.leastX': ours('margin.leastX', 'least margin in X', 'length', 0.25),
  'margin.shareY': ours('margin.shareY', 'share of the pad span in Y', 'ratio', 0.15),
} as const;

/** An arm of a lift is taken to carry a quarter of the rating where its own is not recorded. */
export const ARM_SHARE = 0.25;
