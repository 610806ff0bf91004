import { question, type ScalarInput } from '../method.ts';
import { PLATES } from '../sections.ts';
import { size, stated } from './inputs.ts';
import { DENSITY, MODULUS } from './material-inputs.ts';
import { output } from './outputs.ts';

const other = (input: ScalarInput, name: string, symbol: string, meaning: string): ScalarInput =>
  stated(
    { ...input, name, symbol, meaning },
    'not in the record: of the other material, from its data sheet or the table of materials',
  );

/** Mass ratio at equal stiffness: ρ₂/ρ₁ (E₁/E₂)^(1/p), p = 1 tie, 2 beam of one shape, 3 panel. */
const massRatio = (p: number) => (_t: number, e1: number, r1: number, e2: number, r2: number) =>
  (r2 / r1) * (e1 / e2) ** (1 / p);

const SHAPES = [
  ['panel', 'panel in bending', 3, '⅓', 'its thickness is free'],
  ['beam', 'beam in bending', 2, '½', 'it keeps the shape of its section'],
  ['tie', 'tie or shear panel', 1, '1', 'its section is free'],
] as const;

export default question({
  id: 'stiffness-substitution',
  version: 1,
  title: 'The same stiffness in another material',
  wording: 'What would a part weigh in another material at the same stiffness?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    size('t', 't₁', 'thickness as it is', [0.3, 60], 'thickness'),
    { ...MODULUS, symbol: 'E₁' },
    { ...DENSITY, symbol: 'ρ₁' },
    other(MODULUS, 'otherModulus', 'E₂', 'Young’s modulus of the other material'),
    other(DENSITY, 'otherDensity', 'ρ₂', 'density of the other material'),
  ],
  body: {
    body: 'row',
    outputs: [
      {
        ...output(
          'ratio',
          't₂/t₁',
          'ratio',
          '1',
          'ratio of thicknesses of a panel of equal D',
          't₂/t₁ = (E₁/E₂)^⅓',
        ),
        of: (_t, e1, _r1, e2) => Math.cbrt(e1 / e2),
      },
      {
        ...output(
          'thickness',
          't₂',
          'length',
          'mm',
          'thickness of a panel of equal D',
          't₂ = t₁ (E₁/E₂)^⅓',
        ),
        of: (t, e1, _r1, e2) => t * Math.cbrt(e1 / e2),
      },
      ...SHAPES.map(([name, words, p, power, free]) => ({
        ...output(
          `${name}Mass`,
          `m₂/m₁ (${name})`,
          'ratio',
          '1',
          `ratio of masses, ${words}, where ${free}`,
          `m₂/m₁ = (ρ₂/ρ₁)(E₁/E₂)^${power}`,
        ),
        of: massRatio(p),
      })),
      ...SHAPES.map(([name, words, p, power]) => ({
        ...output(
          `${name}Saving`,
          `s (${name})`,
          'ratio',
          '%',
          `saving of mass, ${words}; below zero it gets heavier`,
          `s = 1 − (ρ₂/ρ₁)(E₁/E₂)^${power}`,
        ),
        decides: 'difference' as const,
        of: (...x: [number, number, number, number, number]) => 1 - massRatio(p)(...x),
      })),
      {
        ...output(
          'index',
          'M₁',
          'ratio',
          '1',
          'panel index as it is, E in GPa and ρ in Mg/m³',
          'M₁ = E₁^⅓ / ρ₁',
        ),
        of: (_t, e1, r1) => Math.cbrt(e1 / 1e9) / (r1 / 1e3),
      },
      {
        ...output(
          'otherIndex',
          'M₂',
          'ratio',
          '1',
          'panel index of the other material',
          'M₂ = E₂^⅓ / ρ₂',
        ),
        of: (_t, _e1, _r1, e2, r2) => Math.cbrt(e2 / 1e9) / (r2 / 1e3),
      },
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'Ashby, Materials Selection in Mechanical Design',
      at: 'material indices for stiffness at least mass: E/ρ, E^½/ρ, E^⅓/ρ',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Stiffness alone decides: strength, dents, joints, smallest wall and shape are others’ questions.',
    'A panel is solid and free to grow thicker; two skins on a core gain less, see the exponent of two-skin-stiffness.',
    'A tie, or a panel in shear, is lighter only where E/ρ is higher.',
  ],
  cautions: [],
  checks: [
    {
      what: 'steel to aluminium, magnesium, glass-fibre and carbon laminate: ratios and indices',
      source: 'Ashby, Materials Selection in Mechanical Design (indices), closed form',
      status: 'own inputs, published formula',
      test: 'test/published/plate-substitution.test.ts',
    },
  ],
  example: {
    t: '0.8 ± 0.02 mm',
    modulus: '210 ± 4 GPa',
    density: '7850 ± 40 kg/m3',
    otherModulus: '70 ± 1 GPa',
    otherDensity: '2700 ± 20 kg/m3',
  },
});
