/**
 * What is left of VAN-27 (invented) on the hoist as modules come off, in order: mass and centre
 * of gravity from sums made apart from this project's code, and the distance to the nearer pad
 * line. Wheels off is all of 62 with the repair kit; the rear of 63 lies behind X 2,000.
 */
export const HOIST_STAGES = [
  { left: 'kerb', kg: 1645.6, xMm: 1288, yMm: 7, zMm: 522, marginMm: 728 },
  { left: 'wheels off', kg: 1558.2, xMm: 1276, yMm: 8, zMm: 532, marginMm: 716 },
  { left: 'pack out', kg: 1093.9, xMm: 1216, yMm: 11, zMm: 647, marginMm: 656 },
  { left: 'front module out', kg: 874.1, xMm: 1512, yMm: 12, zMm: 721, marginMm: 868 },
  { left: 'rear module out', kg: 782.8, xMm: 1346, yMm: 14, zMm: 767, marginMm: 786 },
  { left: 'closures and glazing off', kg: 645.1, xMm: 1276, yMm: -19, zMm: 715, marginMm: 716 },
  { left: 'interior out', kg: 493.8, xMm: 1249, yMm: -12, zMm: 689, marginMm: 689 },
] as const;

/**
 * An order that ends near a pad line: wheels, pack and rear module out, rear doors with hinges
 * and everything named "Cargo" off, the front module still in. An 80 kg pull at `pull.xMm` then
 * leaves less than 15 % of the pad span, which is 273 mm.
 */
export const BAD_ORDER = {
  kg: 943.9,
  xMm: 931,
  marginMm: 371,
  pull: { kg: 80, xMm: -820, marginMm: 234 },
  limitMm: 273,
} as const;
