/**
 * What stands on four pads at the corners of a rectangle, in SI: its mass, the moments of its
 * mass about the frame's axes, where the pads are, what margin is asked for, and one extra pull.
 */
export interface OnPads {
  readonly mass: number;
  /** Of the parts with a position. */
  readonly placed: number;
  readonly momentX: number;
  readonly momentY: number;
  readonly momentZ: number;
  readonly front: number;
  readonly rear: number;
  readonly left: number;
  readonly right: number;
  readonly shareX: number;
  readonly leastX: number;
  readonly shareY: number;
  /** Downward, as the mass that weighs as much. */
  readonly pull: number;
  readonly pullX: number;
  readonly pullY: number;
  readonly rating: number;
  readonly armRating: number;
}

export const centreX = (s: OnPads): number => s.momentX / s.placed;
export const centreY = (s: OnPads): number => s.momentY / s.placed;
export const centreZ = (s: OnPads): number => s.momentZ / s.placed;

/** The centre of the vertical loads with the pull: equilibrium of moments. */
const withPull = (mass: number, centre: number, pull: number, at: number): number =>
  (mass * centre + pull * at) / (mass + pull);
export const pulledX = (s: OnPads): number => withPull(s.mass, centreX(s), s.pull, s.pullX);
export const pulledY = (s: OnPads): number => withPull(s.mass, centreY(s), s.pull, s.pullY);

/** Distance to the nearer of two pad lines, below zero outside of them. */
export const nearer = (at: number, low: number, high: number): number =>
  Math.min(at - low, high - at);

export const marginX = (s: OnPads): number => nearer(centreX(s), s.front, s.rear);
export const marginY = (s: OnPads): number => nearer(centreY(s), s.left, s.right);
export const pulledMarginX = (s: OnPads): number => nearer(pulledX(s), s.front, s.rear);
export const pulledMarginY = (s: OnPads): number => nearer(pulledY(s), s.left, s.right);

export const limitX = (s: OnPads): number => Math.max(s.shareX * (s.rear - s.front), s.leastX);
export const limitY = (s: OnPads): number => s.shareY * (s.right - s.left);

/** The worse of standing by itself and with the pull, less what is asked for. */
export const spareX = (s: OnPads): number => Math.min(marginX(s), pulledMarginX(s)) - limitX(s);
export const spareY = (s: OnPads): number => Math.min(marginY(s), pulledMarginY(s)) - limitY(s);

/** The pads as they are named everywhere: front or rear, left or right. */
export const PADS = ['FL', 'FR', 'RL', 'RR'] as const;
export type Pad = (typeof PADS)[number];

/** What a pad carries, kg. */
export interface PadLoad {
  readonly pad: Pad;
  /** Where both pad lines share out left and right alike: the split assumed. */
  readonly split: number;
  /** The least and the most it can carry, whatever the twist of body and arms. */
  readonly least: number;
  readonly most: number;
}

/**
 * Loads on four pads under a weight at (x, y). Three equilibrium equations leave one load free:
 * any value between `least` and `most` is in equilibrium with no pad pulling down. The split
 * assumed lets each pad carry its line's share in X times its side's share in Y.
 */
export function padLoads(mass: number, x: number, y: number, s: OnPads): readonly PadLoad[] {
  const rearShare = (x - s.front) / (s.rear - s.front);
  const rightShare = (y - s.left) / (s.right - s.left);
  return PADS.map((pad) => {
    const line = mass * (pad.startsWith('F') ? 1 - rearShare : rearShare);
    const side = mass * (pad.endsWith('L') ? 1 - rightShare : rightShare);
    return {
      pad,
      split: (line * side) / mass,
      least: Math.max(0, line + side - mass),
      most: Math.min(line, side),
    };
  });
}

export const padsAlone = (s: OnPads): readonly PadLoad[] =>
  padLoads(s.mass, centreX(s), centreY(s), s);
export const padsPulled = (s: OnPads): readonly PadLoad[] =>
  padLoads(s.mass + s.pull, pulledX(s), pulledY(s), s);

export const loadOn = (pad: Pad, s: OnPads): number =>
  padsAlone(s).find((p) => p.pad === pad)?.split ?? Number.NaN;

const largest = (s: OnPads, of: 'split' | 'most'): number =>
  Math.max(...[...padsAlone(s), ...padsPulled(s)].map((p) => p[of]));
/** The largest load of one arm by the split assumed, and the largest that is possible; pull included. */
export const armLoad = (s: OnPads): number => largest(s, 'split');
export const armMost = (s: OnPads): number => largest(s, 'most');

export const spareArm = (s: OnPads): number => s.armRating - armLoad(s);
export const spareLift = (s: OnPads): number => s.rating - s.mass - Math.max(0, s.pull);
