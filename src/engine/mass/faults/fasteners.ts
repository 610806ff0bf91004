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
