import { question } from '../method.ts';
import { PLATES } from '../sections.ts';
import { isotropicShear } from './fibre-mixture.ts';
import { size } from './inputs.ts';
import { MODULUS, POISSON } from './material-inputs.ts';
import { output } from './outputs.ts';
import { SHEAR } from './plate-outputs.ts';

export default question({
  id: 'shear-panel',
  version: 1,
  title: 'Shear stiffness of a flat panel',
  wording: 'How much does a flat panel stiffen its frame in shear?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    size('t', 't', 'thickness of the panel', [0.3, 30], 'thickness'),
    size('length', 'L', 'length of the panel along the shear force', [20, 4000], 'envelope.length'),
    size('height', 'a', 'height of the panel across it', [20, 4000], 'envelope.width'),
    MODULUS,
    POISSON,
  ],
  body: {
    body: 'row',
    outputs: [
      {
        ...SHEAR,
        shown: 'G t = E t / (2 (1 + ν))',
        of: (t, _l, _a, e, nu) => isotropicShear(e, nu) * t,
      },
      {
        ...output(
          'K',
          'K',
          'stiffness',
          'kN/mm',
          'shear force for a shift of the opposite edges',
          'K = G t L / a',
        ),
        of: (t, l, a, e, nu) => (isotropicShear(e, nu) * t * l) / a,
      },
    ],
  },
  modelError: { K: { relative: 0.1, sharedFraction: 0.5 } },
  sources: [
    {
      title: 'Shear of a thin panel in a hinged frame, closed form',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Flat, not buckled, joined all along its four edges; joints and frame take no part: spot welds and holes make it softer.',
  ],
  cautions: [],
  checks: [
    {
      what: 'G t of steel 0.8 mm 64.64 kN/mm, of aluminium 1.2 mm 31.56 kN/mm',
      source: 'closed form',
      status: 'own inputs, published formula',
      test: 'test/published/plate-substitution.test.ts',
    },
  ],
  example: {
    t: '0.8 ± 0.02 mm',
    length: '1200 ± 5 mm',
    height: '800 ± 5 mm',
    modulus: '210 ± 4 GPa',
    poisson: '0.3 ± 0.01',
  },
});
