type Point = readonly [x: number, y: number];

/** A scale in a picture: its two ends in pixels, and what lies between them in metres. */
export interface PictureScale {
  readonly points: readonly [Point, Point];
  readonly lengthM: number;
  /** Standard uncertainty of that length. */
  readonly uM: number;
}

const distance = ([[x1, y1], [x2, y2]]: readonly [Point, Point]): number =>
  Math.hypot(x2 - x1, y2 - y1);

/**
 * A length in the plane of a scale, in metres with its standard uncertainty: L = scale × d / d₀.
 * `uPixel` is the standard uncertainty of each picked coordinate; a distance has √2 of it
 * (JCGM 100:2008, 5.1.2). What lies nearer or farther than the scale is not covered.
 * @throws RangeError when the scale's ends coincide.
 */
export function pictureLength(
  scale: PictureScale,
  ends: readonly [Point, Point],
  uPixel: number,
): { readonly x: number; readonly u: number } {
  const [d, d0] = [distance(ends), distance(scale.points)];
  if (!(d0 > 0)) throw new RangeError('the ends of the scale coincide');
  const x = (scale.lengthM * d) / d0;
  const perPixel = scale.lengthM / d0;
  const picked = Math.SQRT2 * uPixel;
  const u = Math.hypot(perPixel * picked, (x / d0) * picked, (x / scale.lengthM) * scale.uM);
  return { x, u };
}
