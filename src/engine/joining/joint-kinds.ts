/** Kinds of joints, with the words by which the trade calls them; the first that is found counts. */
const KINDS = [
  ['quick connector', /quick connector/],
  ['connector', /\bconnector|\bplug\b/],
  ['tube nut', /flare nut|tube nut|union nut/],
  ['bolt', /\bbolts?\b/],
  ['screw', /\bscrews?\b/],
  ['clip', /\bclips?\b|push pin/],
  ['friction stir weld', /friction[- ]stir/],
  ['laser weld', /laser (weld|seam)/],
  ['spot weld', /spot[- ]?weld|resistance[- ]spot/],
  ['arc weld', /\b(mig|mag|tig|arc)\b|\bweld seam|seam weld|\bweld\b/],
  ['adhesive', /adhesive|bonded|glue/],
  ['rivet', /\brivets?\b(?! nut)/],
  ['nut', /\bnuts?\b/],
  ['snap', /\bsnaps?\b|snap[- ]fit/],
  ['press fit', /press fit|pressed in|interference fit/],
  ['bayonet', /bayonet/],
  ['grommet', /grommet/],
  ['seat', /\bseat\b/],
] as const satisfies readonly (readonly [string, RegExp])[];

export type JointKind = (typeof KINDS)[number][0] | 'other';

/** The kind that the words of a joint's type name: "screw into rivet nut, cord gasket" is a screw. */
export function jointKind(words: string): JointKind {
  const low = words.toLowerCase();
  return KINDS.find(([, pattern]) => pattern.test(low))?.[0] ?? 'other';
}

const LOOSE: ReadonlySet<JointKind> = new Set(['bolt', 'screw', 'nut', 'rivet', 'tube nut']);
const WELDED: ReadonlySet<JointKind> = new Set(['friction stir weld', 'laser weld', 'arc weld']);

/** Joints whose fasteners come loose, are counted and kept in a bag. */
export const hasLooseFasteners = (kind: JointKind): boolean => LOOSE.has(kind);

/** Joints that are metres of weld. */
export const isSeam = (kind: JointKind): boolean => WELDED.has(kind);

/** Joints that a torque holds, and whose size one must know to judge it. */
export const isThreaded = (kind: JointKind): boolean => LOOSE.has(kind) && kind !== 'rivet';
