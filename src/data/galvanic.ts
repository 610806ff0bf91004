/** A family of metals by its potential against gold in sea water. */
export interface Metal {
  readonly id: string;
  readonly words: string;
  /** Anodic index, V: the larger one of a pair corrodes. */
  readonly index: number;
  /** Words in a material, in lower case, each standing for itself. */
  readonly match: readonly string[];
}

/**
 * Anodic index of metals, V, as the table is reprinted in general engineering references that
 * go back to MIL-STD-889. Rows down to copper alloys and corrosion-resistant steel were seen in
 * reprints; those of iron, aluminium, zinc and magnesium are from memory. Carbon fibre is taken
 * as noble as gold: common practice, no source.
 */
export const METALS: readonly Metal[] = [
  {
    id: 'carbon-fibre',
    words: 'carbon fibre',
    index: 0,
    match: ['carbon fibre', 'cfrp', 'graphite'],
  },
  { id: 'silver', words: 'silver', index: 0.15, match: ['silver', 'ag'] },
  { id: 'nickel', words: 'nickel, titanium', index: 0.3, match: ['nickel', 'titanium', 'ti'] },
  { id: 'copper', words: 'copper', index: 0.35, match: ['copper', 'cu', 'cu-ni', 'cu-etp'] },
  { id: 'brass', words: 'brass, bronze', index: 0.4, match: ['brass', 'bronze'] },
  {
    id: 'stainless',
    words: 'corrosion-resistant steel, 18 % chromium',
    index: 0.5,
    match: ['stainless', 'a2', 'a4', '1.4301', '1.4401'],
  },
  { id: 'tin', words: 'tin plate', index: 0.65, match: ['tin', 'tinned', 'sn'] },
  { id: 'lead', words: 'lead', index: 0.7, match: ['lead', 'pb'] },
  { id: 'iron', words: 'steel or iron', index: 0.85, match: ['steel', 'iron', 'ndfeb'] },
  { id: 'aluminium', words: 'aluminium', index: 0.9, match: ['aluminium', 'al'] },
  { id: 'zinc', words: 'zinc', index: 1.25, match: ['zinc', 'zn', 'znni', 'galvanised'] },
  { id: 'magnesium', words: 'magnesium', index: 1.75, match: ['magnesium', 'mg', 'az91', 'am60'] },
];

/**
 * Differences of index up to which a pair is let stand, V: outside, wet or salty; inside, not
 * controlled; of controlled temperature and humidity. As reprinted with the table.
 */
export const GALVANIC_LIMITS = {
  harsh: 0.15,
  normal: 0.25,
  controlled: 0.5,
} as const;

/** Metals whose words do not name the surface when another one is named with them. */
const BENEATH: Readonly<Record<string, string>> = { stainless: 'iron', zinc: 'iron' };

/**
 * Every metal that a material's words name; words that name several materials give several.
 * Stainless is no plain steel, and of galvanised steel the zinc is what is touched.
 */
export function metalsIn(material: string): readonly Metal[] {
  const low = material.toLowerCase();
  const words = new Set(low.split(/[\s/,;()+]+/));
  const named = METALS.filter((m) =>
    m.match.some((w) => (w.includes(' ') ? low.includes(w) : words.has(w))),
  );
  const hidden = new Set(named.map((m) => BENEATH[m.id]));
  return named.filter((m) => !hidden.has(m.id));
}
