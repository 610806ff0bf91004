import type { Material, MaterialValue } from './material.ts';
import { OWN_MATERIALS } from './materials-own.ts';

type Status = MaterialValue['status'];

/** A published value; `relative` is its standard uncertainty between lots, as common practice. */
const published = (
  x: number,
  relative: number,
  source: string,
  status: Status = 'from memory',
): MaterialValue => ({
  x,
  spread: { s: 'normal', u: relative * x },
  how: 'supplied',
  source,
  status,
});

/** Limits that a delivery standard sets; the middle is taken, all between alike. */
const between = (low: number, high: number, source: string): MaterialValue => ({
  x: (low + high) / 2,
  spread: { s: 'rectangular', half: (high - low) / 2 },
  how: 'supplied',
  source,
  status: 'from memory',
});

/** A guaranteed minimum: by how much a delivery is above it is not known. */
const atLeast = (x: number, source: string, status: Status = 'from memory'): MaterialValue => ({
  x,
  spread: { s: 'unknown' },
  how: 'supplied',
  source,
  status,
});

/** What the trade reckons with; half-width `half` by judgement. */
const usual = (x: number, half: number): MaterialValue => ({
  x,
  spread: { s: 'rectangular', half },
  how: 'guessed',
  source: 'common practice, no source',
  status: 'common practice, no source',
});

const EC3 = 'EN 1993-1-1:2005, 3.2.6';
const EC3_GRADES = 'EN 1993-1-1:2005, Table 3.1, thickness to 40 mm';
const EC3_STAINLESS = 'EN 1993-1-4:2006, 2.1';
const EC9 = 'EN 1999-1-1:2007, 3.2.5';
const EC9_GRADES = 'EN 1999-1-1:2007, Table 3.2b, extruded profiles';
const THERMAL = 'EN ISO 10456:2007, Table 3';
const STAINLESS = 'EN 10088-1, annex of physical properties, austenitic 1.4301';
const DEEP_DRAWING = 'EN 10130:2006, Table 2';
const COATED = 'EN 10346:2015, tables of mechanical properties';
const GREY_IRON = 'EN 1561, informative annex, EN-GJL-250';
const DUCTILE_IRON = 'EN 1563, informative annex, EN-GJS-400-15';

/** Rows of a grade take the constants of their family. */
const STEEL = {
  modulus: published(210e9, 0.02, EC3, 'seen'),
  poisson: published(0.3, 0.03, EC3, 'seen'),
  density: published(7850, 0.005, 'EN 1991-1-1:2002, Table A.4, 78.5 kN/m³', 'seen'),
  expansion: published(12e-6, 0.05, EC3, 'seen'),
  conductivity: published(50, 0.2, THERMAL),
};
const ALUMINIUM = {
  modulus: published(70e9, 0.015, EC9, 'seen'),
  poisson: published(0.3, 0.05, EC9, 'seen'),
  density: published(2700, 0.01, EC9, 'seen'),
  expansion: published(23e-6, 0.03, EC9, 'seen'),
  conductivity: published(160, 0.15, THERMAL),
};

const PUBLISHED_MATERIALS: readonly Material[] = [
  { id: 'steel', words: 'steel', match: ['steel', 'high-strength low-alloy'], ...STEEL },
  {
    id: 'steel-s235',
    words: 'structural steel S235',
    match: ['s235'],
    ...STEEL,
    yield: atLeast(235e6, EC3_GRADES, 'seen'),
    strength: atLeast(360e6, EC3_GRADES, 'seen'),
  },
  {
    id: 'steel-s355',
    words: 'structural steel S355',
    match: ['s355'],
    ...STEEL,
    yield: atLeast(355e6, EC3_GRADES, 'seen'),
    strength: atLeast(490e6, EC3_GRADES, 'seen'),
  },
  {
    id: 'steel-dc04',
    words: 'deep-drawing steel DC04',
    match: ['dc04'],
    ...STEEL,
    yield: between(140e6, 210e6, DEEP_DRAWING),
    strength: between(270e6, 350e6, DEEP_DRAWING),
  },
  {
    id: 'steel-hx340lad',
    words: 'micro-alloyed steel HX340LAD',
    match: ['hx340lad', 'hc340la', 'high-strength low-alloy 340'],
    ...STEEL,
    yield: between(340e6, 420e6, COATED),
    strength: between(410e6, 510e6, COATED),
  },
  {
    id: 'steel-hct590x',
    words: 'dual-phase steel HCT590X',
    match: ['hct590x', 'dual-phase steel 600', 'dual-phase steel 590'],
    ...STEEL,
    yield: between(330e6, 430e6, COATED),
    strength: atLeast(590e6, COATED),
  },
  {
    id: 'steel-hct980x',
    words: 'dual-phase steel HCT980X',
    match: ['hct980x', 'dual-phase steel 980'],
    ...STEEL,
    yield: between(590e6, 740e6, COATED),
    strength: atLeast(980e6, COATED),
  },
  {
    id: 'stainless-steel',
    words: 'stainless steel, austenitic',
    match: ['stainless'],
    modulus: published(200e9, 0.02, EC3_STAINLESS),
    poisson: published(0.3, 0.03, EC3_STAINLESS),
    density: published(7900, 0.01, STAINLESS),
    expansion: published(16e-6, 0.03, STAINLESS),
    conductivity: published(15, 0.1, STAINLESS),
  },
  { id: 'aluminium', words: 'aluminium alloy', match: ['al', 'aluminium'], ...ALUMINIUM },
  {
    id: 'aluminium-6060-t6',
    words: 'aluminium EN AW-6060 T6',
    match: ['6060-t6', '6060 t6'],
    ...ALUMINIUM,
    yield: atLeast(140e6, EC9_GRADES),
    strength: atLeast(170e6, EC9_GRADES),
  },
  {
    id: 'aluminium-6082-t6',
    words: 'aluminium EN AW-6082 T6, to 5 mm',
    match: ['6082-t6', '6082 t6'],
    ...ALUMINIUM,
    yield: atLeast(250e6, EC9_GRADES),
    strength: atLeast(290e6, EC9_GRADES),
  },
  {
    id: 'magnesium-casting',
    words: 'magnesium die casting',
    match: ['magnesium', 'az91', 'am50', 'am60'],
    modulus: usual(45e9, 1.5e9),
    poisson: usual(0.35, 0.02),
    density: usual(1800, 30),
    expansion: usual(26e-6, 1e-6),
    conductivity: usual(62, 12),
  },
  {
    id: 'grey-iron-250',
    words: 'grey cast iron EN-GJL-250',
    match: ['gjl', 'grey iron', 'grey cast iron'],
    modulus: between(103e9, 118e9, GREY_IRON),
    poisson: published(0.26, 0.05, GREY_IRON),
    density: published(7200, 0.01, GREY_IRON),
    strength: between(250e6, 350e6, GREY_IRON),
  },
  {
    id: 'ductile-iron-400',
    words: 'ductile cast iron EN-GJS-400-15',
    match: ['gjs', 'ductile iron', 'nodular iron'],
    modulus: published(169e9, 0.02, DUCTILE_IRON),
    poisson: published(0.275, 0.03, DUCTILE_IRON),
    density: published(7100, 0.01, DUCTILE_IRON),
    yield: atLeast(250e6, DUCTILE_IRON),
    strength: atLeast(400e6, DUCTILE_IRON),
    expansion: published(12.5e-6, 0.05, DUCTILE_IRON),
    conductivity: published(36.2, 0.1, DUCTILE_IRON),
  },
  {
    id: 'copper',
    words: 'copper',
    match: ['copper', 'cu-etp'],
    modulus: usual(120e9, 8e9),
    poisson: usual(0.34, 0.02),
    density: published(8900, 0.01, THERMAL),
    expansion: usual(17e-6, 0.5e-6),
    conductivity: published(380, 0.05, THERMAL),
  },
  {
    id: 'smc-glass-30',
    words: 'moulded glass-polyester, 30 % glass by mass',
    match: ['smc', 'glass-polyester', 'glass polyester'],
    composite: true,
    modulus: usual(10e9, 2e9),
    poisson: usual(0.3, 0.03),
    density: usual(1850, 80),
    expansion: usual(18e-6, 6e-6),
    conductivity: usual(0.4, 0.15),
  },
  {
    id: 'glass-fibre-moulding',
    words: 'moulded glass-fibre plate, long or woven fibre',
    match: ['glass-fibre', 'glass fibre', 'gfrp'],
    composite: true,
    modulus: usual(20e9, 4e9),
    poisson: usual(0.3, 0.05),
    density: usual(1900, 80),
    expansion: usual(14e-6, 5e-6),
    conductivity: usual(0.4, 0.15),
  },
  {
    id: 'pa66-gf30',
    words: 'polyamide 66 with 30 % glass, conditioned',
    match: ['pa66-gf30', 'pa66 gf30', 'pa 66 gf 30'],
    composite: true,
    modulus: usual(7e9, 1.5e9),
    poisson: usual(0.38, 0.03),
    density: usual(1360, 20),
    expansion: usual(40e-6, 20e-6),
    conductivity: usual(0.3, 0.08),
  },
];

/** Every material, the shop's own first. */
export const MATERIALS: readonly Material[] = [...OWN_MATERIALS, ...PUBLISHED_MATERIALS];

/**
 * The material whose words are the longest of those found in `text`; among equals the earlier
 * row, so that the shop's own stands before the published. Undefined when none is found, and for
 * texts such as "steel/PA", which name several materials.
 */
export function materialOf(
  text: string,
  among: readonly Material[] = MATERIALS,
): Material | undefined {
  const low = text.toLowerCase();
  let best: { material?: Material; length: number } = { length: 0 };
  for (const material of among) {
    if (low.includes('/') && !material.composite) continue;
    for (const word of material.match)
      if (word.length > best.length && holdsWord(low, word))
        best = { material, length: word.length };
  }
  return best.material;
}

/** Found as a word of its own: "Al 6082", but not "metal 6082". */
function holdsWord(text: string, word: string): boolean {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1))
    if (!isLetter(text[at - 1]) && !isLetter(text[at + word.length])) return true;
  return false;
}

const isLetter = (c: string | undefined): boolean => c !== undefined && /\p{L}/u.test(c);
