/** How a crossing is sealed, from open to welded. */
export interface SealClass {
  readonly id: string;
  /** Larger is tighter. */
  readonly rank: number;
  readonly words: string;
  readonly match: RegExp;
}

/** From this rank on something seals. */
export const SEALED = 2;

/**
 * Classes of seals in the order of their tightness, the weakest first: a judgement that orders
 * paths and proves nothing of any one seal. Common practice, no source.
 */
export const SEAL_CLASSES: readonly SealClass[] = [
  { id: 'open', rank: 0, words: 'open', match: /\b(open|drain|hole)\b/ },
  {
    id: 'none',
    rank: 1,
    words: 'no seal',
    match: /^$|\b(none|no seal|not sealed|unsealed|bare|thread|rivet nut)\b/,
  },
  { id: 'membrane', rank: 2, words: 'membrane or valve', match: /\b(membrane|valve|eptfe)\b/ },
  {
    id: 'gasket',
    rank: 3,
    words: 'gasket, cord or lip',
    match: /\b(gasket|cord|foam|lip|grommet)\b/,
  },
  {
    id: 'sealant',
    rank: 4,
    words: 'sealant or adhesive',
    match: /\b(sealer|sealant|adhesive|bond|bonded|potted|potting|bead|patch|coated)\b/,
  },
  { id: 'ring', rank: 5, words: 'sealing ring', match: /\b(o-ring|oring|ring|washer)\b/ },
  { id: 'weld', rank: 6, words: 'welded or brazed', match: /\b(weld|welded|brazed|soldered)\b/ },
];

/**
 * The class that the words name; of several the tightest, for one seals where the other is
 * missing. Undefined for words of no class.
 */
export function sealClass(words: string): SealClass | undefined {
  const low = words.trim().toLowerCase();
  return SEAL_CLASSES.filter((s) => s.match.test(low)).at(-1);
}
