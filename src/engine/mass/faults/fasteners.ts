import type { JointEnds } from './mass-record.ts';

/** Words by which rows of fasteners go. */
const FASTENER = /\b(bolts?|screws?|nuts?|studs?|rivets?|washers?|fasteners?|pins?|clips?)\b/i;
/** Metric thread with its length, where there is one: M6, M6x20, M14x1.5. */
const THREAD = /\bM(\d+(?:\.\d+)?)(?:\s*[x×]\s*(\d+(?:\.\d+)?))?/gi;

export const namesFastener = (name: string): boolean => FASTENER.test(name);

/** Threads named in words, as written there: `M6x20`. */
export const threadsIn = (words: string): string[] =>
  [...words.matchAll(THREAD)].map((m) => (m[2] === undefined ? `M${m[1]}` : `M${m[1]}x${m[2]}`));

/** The joints that use a thread which a name has. */
const jointsWith = (name: string, joints: readonly JointEnds[]): JointEnds[] => {
  const wanted = threadsIn(name);
  return joints.filter((j) => threadsIn(j.spec).some((t) => wanted.includes(t)));
};

/** Counts that a row of these fasteners may have: of one joint, or of all that use them. */
export function fastenerCounts(name: string, joints: readonly JointEnds[]): number[] {
  const counts = jointsWith(name, joints)
    .map((j) => j.count)
    .filter((n) => Number.isFinite(n));
  return counts.length > 1 ? [...counts, counts.reduce((a, b) => a + b, 0)] : counts;
}

const STEEL = 7850;
/** Head over thread: diameter and height, common practice for hexagon and socket heads. */
const HEAD = { diameter: 1.6, height: 0.8 };
/** Relative spread of a fastener's mass by its thread and length: heads, washers and points differ. */
export const BOLT_SPREAD = 0.35;

/**
 * Mass of so many steel bolts of the one thread and length that a name has, kg; undefined where
 * it has none or several, or a pitch in the place of the length.
 */
export function boltMass(name: string, pieces: number): number | undefined {
  const sizes = threadsIn(name).flatMap((t) => {
    const [d, l] = t.slice(1).split('x').map(Number);
    return d !== undefined && l !== undefined && l > d ? [{ d: d / 1000, l: l / 1000 }] : [];
  });
  const [size, ...more] = sizes;
  if (!size || more.length > 0 || threadsIn(name).length > 1 || !(pieces > 0)) return undefined;
  const head = (Math.PI / 4) * (HEAD.diameter * size.d) ** 2 * HEAD.height * size.d;
  return pieces * STEEL * ((Math.PI / 4) * size.d ** 2 * size.l + head);
}
