import { signedArea } from './area-moments.ts';
import { eachEdge, type Ring, type Shape } from './point.ts';

/** Steps that halve an interval of doubles until nothing is left of it. */
const HALVINGS = 64;

/**
 * Plastic section modulus about the axis along x (or y), through the line that halves the area,
 * found by bisection: ∫ |distance from that line| dA. Exact for a polygon.
 */
export function plasticModulus(shape: Shape, about: 'x' | 'y'): number {
  const turned = about === 'x' ? shape : swapAxes(shape);
  const rings = [turned.outline, ...turned.holes].map((ring, i) => ({
    ring,
    sign: Math.sign(signedArea(ring)) * (i === 0 ? 1 : -1),
  }));
  const above = (level: number) => {
    const sum = { area: 0, moment: 0 };
    for (const { ring, sign } of rings) addAbove(ring, level, sign, sum);
    return sum;
  };
  const ys = turned.outline.map((p) => p.y);
  let [low, high] = [Math.min(...ys), Math.max(...ys)];
  const whole = above(low);
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (above(middle).area > whole.area / 2) low = middle;
    else high = middle;
  }
  const level = (low + high) / 2;
  const upper = above(level);
  const bottom = Math.min(...ys);
  // Moment of the whole about the level, from that about the lowest point.
  return 2 * upper.moment - (whole.moment - whole.area * (level - bottom));
}

const swapAxes = ({ outline, holes }: Shape): Shape => {
  const swap = (ring: Ring) => ring.map(({ x, y }) => ({ x: y, y: x }));
  return { outline: swap(outline), holes: holes.map(swap) };
};

/** Adds area and first moment of the part of a ring above a level, by Green's theorem. */
function addAbove(
  ring: Ring,
  level: number,
  sign: number,
  sum: { area: number; moment: number },
): void {
  eachEdge(ring, (a, b) => {
    const [p, q] = [Math.max(0, a.y - level), Math.max(0, b.y - level)];
    if (p === 0 && q === 0) return;
    // Share of the edge that is above; the rest has no height.
    const share = p > 0 && q > 0 ? 1 : (p + q) / Math.abs(b.y - a.y);
    const width = sign * share * (a.x - b.x);
    sum.area += (width * (p + q)) / 2;
    sum.moment += (width * (p * p + p * q + q * q)) / 6;
  });
}
