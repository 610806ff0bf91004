import { question, type ScalarInput } from '../method.ts';
import { SEALING } from '../sections.ts';
import { size, stated } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';

const STATE = 'not in the record: state it';
const told = (
  name: string,
  symbol: string,
  kind: ScalarInput['kind'],
  unit: string,
  meaning: string,
  range: ScalarInput['range'],
): ScalarInput => stated({ name, symbol, kind, unit, meaning, range }, STATE);
const modulus = (name: string, symbol: string, meaning: string): ScalarInput => ({
  ...told(name, symbol, 'stress', 'GPa', meaning, [0.5, 220]),
  bounds: { above: 0 },
});

type Args = [
  a1: number,
  a2: number,
  dT: number,
  L: number,
  G: number,
  t: number,
  E1: number,
  t1: number,
  E2: number,
  t2: number,
];
const lambda = (...[, , , , G, t, E1, t1, E2, t2]: Args): number =>
  Math.sqrt((G / t) * (1 / (E1 * t1) + 1 / (E2 * t2)));
const apart = (a1: number, a2: number, dT: number): number => Math.abs((a1 - a2) * dT);
const shear = (...x: Args): number => {
  const [a1, a2, dT, L, G, t] = x;
  return (G * apart(a1, a2, dT) * Math.tanh(lambda(...x) * L)) / (lambda(...x) * t);
};
const of =
  (f: (...x: Args) => number) =>
  (...x: number[]): number =>
    f(...(x as Args));

export default question({
  id: 'bonded-edge',
  version: 1,
  title: 'Thermal mismatch in a bonded edge',
  wording: 'How hard does a change of temperature shear the bond between two materials?',
  subject: 'joint',
  onRequest: true,
  section: SEALING,
  inputs: [
    told('a1', 'α₁', 'thermalExpansion', 'um/m/K', 'thermal expansion of the first', [-2, 200]),
    told('a2', 'α₂', 'thermalExpansion', 'um/m/K', 'thermal expansion of the second', [-2, 200]),
    told('dT', 'ΔT', 'tempDiff', 'K', 'change of temperature since the bond set', [-150, 150]),
    size('L', 'L', 'distance from the middle that stays to the end', [1, 5000]),
    {
      ...told('G', 'G', 'stress', 'MPa', 'shear modulus of the adhesive', [0.05, 3000]),
      bounds: { above: 0 },
    },
    size('t', 't', 'thickness of the bond', [0.05, 15]),
    modulus('E1', 'E₁', 'modulus of the first'),
    size('t1', 't₁', 'thickness of the first', [0.3, 50]),
    modulus('E2', 'E₂', 'modulus of the second'),
    size('t2', 't₂', 'thickness of the second', [0.3, 50]),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['slide', 'δ', 'length', 'mm'] as const),
        'how far the ends would part if they were free',
        'δ = |α₁ − α₂| ΔT L',
        of((a1, a2, dT, L) => apart(a1, a2, dT) * L),
      ),
      worked(
        ...(['stress', 'τ', 'stress', 'MPa'] as const),
        'shear stress at the end of the bond',
        'τ = G |α₁ − α₂| ΔT tanh(λ L) / (λ t)',
        of(shear),
      ),
      worked(
        ...(['strain', 'γ', 'ratio', '%'] as const),
        'shear strain there',
        'γ = τ / G',
        of((...x) => shear(...x) / x[4]),
      ),
      worked(
        ...(['zone', 'l', 'length', 'mm'] as const),
        'length of the end that carries it; longer bonds are stressed no more',
        'l = 2 / λ',
        of((...x) => 2 / lambda(...x)),
      ),
    ],
  },
  modelError: { stress: { relative: 0.15, sharedFraction: 0.7 } },
  sources: [
    {
      title: 'Chen and Nelson, Thermal stress in bonded joints, IBM J. Res. Dev. 23 (1979)',
      at: 'two strips, shear in the bond only',
      status: 'from memory',
    },
  ],
  assumptions: [
    'λ² = G (1/(E₁ t₁) + 1/(E₂ t₂)) / t. Flat strips that do not bend, elastic adhesive; a soft thick bond is stressed little, a stiff thin one at its ends only.',
  ],
  cautions: [],
  checks: [
    {
      what: 'soft bond: strain is the free sliding over the thickness; long bond: G Δα ΔT / (λ t); force balance along a strip in small steps',
      source: 'Chen and Nelson 1979, limits of the closed form',
      status: 'own inputs, published formula',
      test: 'test/published/clips-and-edges.test.ts',
    },
  ],
  example: {
    a1: '23.5 ± 0.3 um/m/K',
    a2: '22 ± 1 um/m/K',
    dT: '60 ± 1 K',
    L: '700 ± 5 mm',
    G: '1.2 ± 0.1 MPa',
    t: '3 ± 0.2 mm',
    E1: '70 ± 1 GPa',
    t1: '3 ± 0.05 mm',
    E2: '10 ± 0.5 GPa',
    t2: '2.6 ± 0.05 mm',
  },
});
