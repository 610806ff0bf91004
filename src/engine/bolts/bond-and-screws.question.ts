import { question } from '../method.ts';
import { BOLTS } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { BOLT_COUNT, FORCE_EACH, told } from './bolt-inputs.ts';

type Args = [n: number, k: number, G: number, A: number, t: number];
const bond = (G: number, A: number, t: number): number => (G * A) / t;
const shareOf = (...[n, k, G, A, t]: Args): number => bond(G, A, t) / (bond(G, A, t) + n * k);

export default question({
  id: 'bond-and-screws',
  version: 1,
  title: 'Load shared between bond and screws',
  wording: 'How much of a sideways load goes through the bond and how much through the screws?',
  subject: 'joint',
  onRequest: true,
  section: BOLTS,
  inputs: [
    BOLT_COUNT,
    told({
      ...{ name: 'k', symbol: 'k', kind: 'stiffness', unit: 'kN/mm' },
      ...{ meaning: 'sideways stiffness of one screw and its holes', range: [0.05, 500] },
      bounds: { above: 0 },
    }),
    told({
      ...{ name: 'shear', symbol: 'G', kind: 'stress', unit: 'MPa' },
      ...{ meaning: 'shear modulus of the adhesive', range: [0.1, 3000], bounds: { above: 0 } },
    }),
    told({
      ...{ name: 'area', symbol: 'A', kind: 'area', unit: 'cm2', meaning: 'bonded area' },
      ...{ range: [0.1, 50000], bounds: { above: 0 } },
    }),
    told({
      ...{ name: 'thickness', symbol: 't', kind: 'length', unit: 'mm' },
      ...{ meaning: 'thickness of the bond', range: [0.05, 10], bounds: { above: 0 } },
    }),
    FORCE_EACH('load', 'F_Q', 'sideways load on the joint'),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['share', 'r', 'ratio', '%'] as const),
        'share that goes through the bond',
        'r = (G A / t) / (G A / t + n k)',
        (n, k, G, A, t) => shareOf(n, k, G, A, t),
      ),
      worked(
        ...(['stress', 'τ', 'stress', 'MPa'] as const),
        'mean shear stress in the bond',
        'τ = r F_Q / A',
        (n, k, G, A, t, load) => (shareOf(n, k, G, A, t) * load) / A,
      ),
      worked(
        ...(['each', 'F₁', 'force', 'N'] as const),
        'load on each screw',
        'F₁ = (1 − r) F_Q / n',
        (n, k, G, A, t, load) => ((1 - shareOf(n, k, G, A, t)) * load) / n,
      ),
      worked(
        ...(['alone', 'F₂', 'force', 'N'] as const),
        'load on each screw once the bond is gone',
        'F₂ = F_Q / n',
        (n, _k, _G, _A, _t, load) => load / n,
      ),
    ],
  },
  modelError: { share: { relative: 0.1, sharedFraction: 0.5 } },
  sources: [{ title: 'Springs side by side', status: 'common practice, no source' }],
  assumptions: [
    'Stiff parts, so that bond and screws slide alike; elastic; screws that bear, not held by friction. Stiff bonds are loaded at their ends well above the mean.',
  ],
  cautions: ['bolt-tightening'],
  checks: [
    {
      what: 'stiffnesses of 10 and 30 kN/mm side by side share 1 to 3',
      source: 'closed form, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/vdi-2230-bolts.test.ts',
    },
  ],
  example: {
    n: '6',
    k: '8 ± 1 kN/mm',
    shear: '1.2 ± 0.1 MPa',
    area: '180 ± 5 cm2',
    thickness: '2 ± 0.1 mm',
    load: '4 ± 0.2 kN',
  },
});
