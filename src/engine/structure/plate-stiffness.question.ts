import { question } from '../method.ts';
import { PLATES } from '../sections.ts';
import { isotropicShear } from './fibre-mixture.ts';
import { size } from './inputs.ts';
import { DENSITY, MODULUS, POISSON } from './material-inputs.ts';
import { output } from './outputs.ts';
import { AREAL_MASS, BENDING, SHEAR } from './plate-outputs.ts';
import { bendingStiffness, skinExponent, solidPlate } from './skins.ts';

export default question({
  id: 'plate-stiffness',
  version: 1,
  title: 'Stiffness and mass of a solid plate',
  wording: 'How stiff and how heavy is a plate of this thickness?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    size('t', 't', 'thickness of the plate', [0.3, 60], 'thickness'),
    MODULUS,
    POISSON,
    DENSITY,
  ],
  body: {
    body: 'row',
    outputs: [
      {
        ...BENDING,
        shown: 'D = E t³ / (12 (1 − ν²))',
        of: (t, modulus, poisson) => bendingStiffness(solidPlate(t, modulus, poisson)),
      },
      {
        ...SHEAR,
        shown: 'G t = E t / (2 (1 + ν))',
        of: (t, modulus, poisson) => isotropicShear(modulus, poisson) * t,
      },
      { ...AREAL_MASS, shown: 'm = ρ t', of: (t, _e, _nu, density) => density * t },
      {
        ...output(
          'exponent',
          'n',
          'ratio',
          '1',
          'exponent with which D depends on the thickness; G t and the mass go with 1',
          'n = d ln D / d ln t',
        ),
        of: (t, modulus, poisson) => skinExponent(solidPlate(t, modulus, poisson)),
      },
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition 1959',
      at: 'flexural rigidity of a plate',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Solid all through, of one isotropic material and one thickness.',
    'Thin: a tenth of the shorter side or less; plane stress.',
  ],
  cautions: [],
  checks: [
    {
      what: 'G t of steel 0.8 mm and aluminium 1.2 mm',
      source: 'closed form',
      status: 'own inputs, published formula',
      test: 'test/published/plate-substitution.test.ts',
    },
    {
      what: 'D behind the frequencies of a free square plate, 10 m, 50 mm thick',
      source: 'NAFEMS selected benchmarks, FV12',
      status: 'seen',
      test: 'test/published/plate-frequencies.test.ts',
    },
  ],
  example: {
    t: '2.5 ± 0.05 mm',
    modulus: '70 ± 1 GPa',
    poisson: '0.33 ± 0.01',
    density: '2700 ± 20 kg/m3',
  },
});
