/** Coordinates in the vehicle's frame, m. */
export type Point = readonly [x: number, y: number, z: number];
export type Axis = 0 | 1 | 2;

/** A wall across an axis: its two faces, and how far it reaches; unlimited where that is not known. */
export interface Wall {
  readonly axis: Axis;
  readonly box: readonly (readonly [low: number | undefined, high: number | undefined])[];
}

/** A fastener as a straight line from its seat. */
export interface Fastener {
  readonly seat: Point;
  readonly axis: Axis;
  readonly sign: 1 | -1;
  readonly reach: number;
}

/** A wall on a fastener's way, with the distances of its faces from the seat. */
export interface Met<W> {
  readonly wall: W;
  readonly near: number;
  readonly far: number;
}
export interface Placed<W> {
  /** Walls that it goes right through, in order. */
  readonly passed: readonly Met<W>[];
  /** The wall that it ends in: blind. */
  readonly within?: Met<W>;
  /** The next wall that it does not reach. */
  readonly ahead?: Met<W>;
  /** Distance from its end to the face that decides: small means that the walls must be known well. */
  readonly clear: number;
}

const DIRECTION = /^([+-−–]?)\s*([XYZ])$/i;

/** "+Y", "−z", "X" as an axis and a sign; undefined for other words. */
export function axisAndSign(words: string): Pick<Fastener, 'axis' | 'sign'> | undefined {
  const found = DIRECTION.exec(words.trim());
  if (!found) return undefined;
  const axis = 'XYZ'.indexOf((found[2] ?? '').toUpperCase()) as Axis;
  return { axis, sign: found[1] === '' || found[1] === '+' ? 1 : -1 };
}

/** "Y" as an axis; undefined for other words. */
export function axisOf(words: string): Axis | undefined {
  const at = 'XYZ'.indexOf(words.trim().toUpperCase());
  return words.trim().length === 1 && at >= 0 ? (at as Axis) : undefined;
}

/**
 * Where a fastener ends, by its length and the walls on its way. Walls are looked at one after
 * the other without making anything for those that are not met: there may be thousands of
 * fasteners.
 */
export function placeFastener<W extends Wall>(f: Fastener, walls: readonly W[]): Placed<W> {
  const met: Met<W>[] = [];
  for (const wall of walls)
    if (wall.axis === f.axis) {
      const found = meet(f, wall);
      if (found) met.push(found);
    }
  if (met.length > 1) met.sort((a, b) => a.near - b.near || a.far - b.far);
  const passed: Met<W>[] = [];
  let within: Met<W> | undefined;
  let ahead: Met<W> | undefined;
  let clear = Number.POSITIVE_INFINITY;
  for (const m of met) {
    clear = Math.min(clear, Math.abs(m.near - f.reach), Math.abs(m.far - f.reach));
    if (m.far < f.reach) passed.push(m);
    else if (m.near < f.reach) within ??= m;
    else ahead ??= m;
  }
  return { passed, ...(within ? { within } : {}), ...(ahead ? { ahead } : {}), clear };
}

/** Distances of a wall's faces along the fastener; undefined where it is beside or behind. */
function meet<W extends Wall>(f: Fastener, wall: W): Met<W> | undefined {
  const [low, high] = wall.box[f.axis] ?? [];
  if (low === undefined || high === undefined) return undefined;
  const seat = f.seat[f.axis];
  const far = f.sign > 0 ? high - seat : seat - low;
  if (!(far > 0) || isBeside(f, wall)) return undefined;
  return { wall, near: f.sign > 0 ? low - seat : seat - high, far };
}

function isBeside({ seat, axis }: Fastener, { box }: Wall): boolean {
  for (let i = 0; i < 3; i++) {
    const at = seat[i as Axis];
    const [low, high] = box[i] ?? [];
    if (i === axis) continue;
    if ((low !== undefined && at < low) || (high !== undefined && at > high)) return true;
  }
  return false;
}
