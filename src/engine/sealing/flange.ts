/**
 * A flange between fasteners as a beam on the gasket as its elastic bed (Hetényi, Beams on
 * Elastic Foundation, 1946, from memory). `k` is the bed's stiffness, force by length and
 * deflection, Pa; `EI` the flange's bending rigidity, N·m²; lengths in m, loads in N/m.
 */

/** Inverse length over which a load spreads, (k / 4EI)^¼. */
export const spreadOf = (k: number, EI: number): number => (k / (4 * EI)) ** 0.25;

const middle = (u: number): number =>
  Math.sinh(u / 2) * Math.cos(u / 2) + Math.cosh(u / 2) * Math.sin(u / 2);

/**
 * Line load half-way between fasteners over that at rest, where the flange is held at the height
 * of compression limiters: a beam clamped at both ends on a bed that presses it up evenly.
 * `u` is β times the pitch.
 */
export const heldMiddle = (u: number): number =>
  u < SMALL ? 1 - u ** 4 / 96 : (2 * middle(u)) / (Math.sinh(u) + Math.sin(u));

/** Below this the closed form loses its digits; the first term of its series is exact to 1e-9. */
const SMALL = 0.02;

/** Line load half-way between fasteners over the mean, where their force presses the flange down. */
export const pressedMiddle = (u: number): number => (u * middle(u)) / (Math.cosh(u) - Math.cos(u));
/** And under a fastener. */
export const pressedUnder = (u: number): number =>
  ((u / 2) * (Math.sinh(u) + Math.sin(u))) / (Math.cosh(u) - Math.cos(u));

/** Line load at a distance x from one of the fasteners that hold the flange, 0 to the pitch, over that at rest. */
export function heldAt(u: number, x: number): number {
  // Terms of cosh cos and sinh sin about the middle; clamped where |z| = u/2.
  const h = u / 2;
  const [sh, ch, s, c] = [Math.sinh(h), Math.cosh(h), Math.sin(h), Math.cos(h)];
  const over = sh * ch + s * c;
  const [A, B] = [(sh * c + ch * s) / over, (ch * s - sh * c) / over];
  const z = u * x - h;
  return A * Math.cosh(z) * Math.cos(z) + B * Math.sinh(z) * Math.sin(z);
}

/** Deflection of an endless beam by a unit load at a distance x, times k / β. */
export const spreadLoad = (x: number): number =>
  0.5 * Math.exp(-Math.abs(x)) * (Math.cos(x) + Math.sin(Math.abs(x)));

/** Fasteners to each side that still count: e^(−βx) is below 1e-9 from 20 on. */
const REACH = 24;

/** Line load at x over F β, of rows of fasteners with a wider gap around zero; NaN without a pitch. */
export function pressedBeside(u: number, gap: number, x: number): number {
  // A gasket of no give makes β infinite: there would be no end to the rows.
  if (!(u > 0 && u < Number.POSITIVE_INFINITY)) return Number.NaN;
  let sum = 0;
  for (let at = gap / 2; at <= gap / 2 + REACH + u; at += u)
    sum += spreadLoad(x - at) + spreadLoad(x + at);
  return sum;
}

/**
 * The u at which what falls with u comes down to `wanted`; NaN where it starts below. By halving,
 * to the last digits.
 */
export function whereItFalls(load: (u: number) => number, wanted: number): number {
  let [low, high] = [LOWEST, 1];
  if (!(load(low) > wanted)) return Number.NaN;
  while (high < HIGHEST && load(high) > wanted) high *= 1.3;
  for (let i = 0; i < HALVINGS; i++) {
    const mid = (low + high) / 2;
    if (load(mid) > wanted) low = mid;
    else high = mid;
  }
  return (low + high) / 2;
}
const LOWEST = 1e-6;
const HIGHEST = 60;
const HALVINGS = 80;
