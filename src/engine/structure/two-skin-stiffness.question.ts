import { question, type ScalarInput } from '../method.ts';
import { PLATES } from '../sections.ts';
import { isotropicShear } from './fibre-mixture.ts';
import { size, stated } from './inputs.ts';
import { DENSITY, MODULUS, POISSON } from './material-inputs.ts';
import { output } from './outputs.ts';
import { AREAL_MASS, BENDING, SHEAR } from './plate-outputs.ts';
import { bendingStiffness, coreExponent, ribStiffness, type Skins, skinExponent } from './skins.ts';

const CORE_MASS: ScalarInput = stated(
  {
    name: 'coreMass',
    symbol: 'mc',
    kind: 'arealMass',
    unit: 'kg/m2',
    meaning: 'mass of the core for an area: ribs, or foam and glue',
    range: [0.05, 40],
    bounds: { atLeast: 0 },
  },
  'not in the record: weigh a piece and take off its skins',
);

const skins = (
  top: number,
  bottom: number,
  core: number,
  modulus: number,
  poisson: number,
): Skins => ({ top, bottom, core, modulus, poisson });

export default question({
  id: 'two-skin-stiffness',
  version: 1,
  title: 'Stiffness and mass of two skins on a core',
  wording:
    'How stiff and how heavy is a floor of two skins, and how much hangs on their thickness?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    size('top', 't₁', 'thickness of the upper skin', [0.2, 20], 'thickness'),
    size('bottom', 't₂', 'thickness of the lower skin', [0.2, 20], 'thickness'),
    {
      ...size('core', 'c', 'height of the core between the skins', [1, 200]),
      bounds: { atLeast: 0 },
    },
    MODULUS,
    POISSON,
    DENSITY,
    CORE_MASS,
  ],
  body: {
    body: 'row',
    outputs: [
      {
        ...BENDING,
        meaning: 'bending stiffness for a width, skins alone',
        shown: 'D = E/(1 − ν²) ((t₁³ + t₂³)/12 + t₁ t₂ d²/(t₁ + t₂)), d = c + (t₁ + t₂)/2',
        of: (t1, t2, c, e, nu) => bendingStiffness(skins(t1, t2, c, e, nu)),
      },
      {
        ...output(
          'Dalong',
          'D∥',
          'flexuralRigidity',
          'N.m',
          'bending stiffness for a width along the ribs, ribs of the skins’ material',
          'D∥ = D + E (mc / ρ c) c³ / 12',
        ),
        of: (t1, t2, c, e, nu, rho, mass) => {
          const s = skins(t1, t2, c, e, nu);
          return bendingStiffness(s) + ribStiffness(s, mass, rho);
        },
      },
      {
        ...SHEAR,
        meaning: 'shear stiffness in the plane, skins alone',
        shown: 'G t = E (t₁ + t₂) / (2 (1 + ν))',
        of: (t1, t2, _c, e, nu) => isotropicShear(e, nu) * (t1 + t2),
      },
      {
        ...AREAL_MASS,
        shown: 'm = ρ (t₁ + t₂) + mc',
        of: (t1, t2, _c, _e, _nu, rho, mass) => rho * (t1 + t2) + mass,
      },
      {
        ...output(
          'skinExponent',
          'nₜ',
          'ratio',
          '1',
          'exponent with which D depends on the skins, core held',
          'nₜ = d ln D / d ln t',
        ),
        of: (t1, t2, c, e, nu) => skinExponent(skins(t1, t2, c, e, nu)),
      },
      {
        ...output(
          'coreExponent',
          'nc',
          'ratio',
          '1',
          'exponent with which D depends on the height of the core, skins held',
          'nc = d ln D / d ln c',
        ),
        of: (t1, t2, c, e, nu) => coreExponent(skins(t1, t2, c, e, nu)),
      },
      {
        ...output(
          'massExponent',
          'nₘ',
          'ratio',
          '1',
          'exponent with which the mass depends on the skins; G t goes with 1',
          'nₘ = ρ (t₁ + t₂) / m',
        ),
        of: (t1, t2, _c, _e, _nu, rho, mass) => (rho * (t1 + t2)) / (rho * (t1 + t2) + mass),
      },
    ],
  },
  modelError: {
    D: { relative: 0.03, sharedFraction: 0.5 },
    Dalong: { relative: 0.03, sharedFraction: 0.5 },
  },
  sources: [
    { title: 'Parallel-axis theorem (Steiner)', status: 'common practice, no source' },
    {
      title: 'Zenkert, An Introduction to Sandwich Construction, 1995',
      at: 'flexural rigidity of a sandwich',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Skins and ribs of one isotropic material; the core keeps the skins apart and is stiff in shear: across the ribs a real floor is softer than D.',
    'D is that of the skins by parallel axes; ribs count only along themselves.',
    'A reading of the thickness of the part counts for both skins, and then they share its spread.',
  ],
  cautions: [],
  checks: [
    {
      what: 'two skins of 2 mm on a core of 10 mm: D goes with the skins to the power 1.35, and u(D) with it',
      source: 'logarithmic derivative of (c + 2 t)³ − c³, closed form',
      status: 'own inputs, published formula',
      test: 'test/published/plate-substitution.test.ts',
    },
  ],
  example: {
    top: '2 ± 0.05 mm',
    bottom: '2 ± 0.05 mm',
    core: '10 ± 0.1 mm',
    modulus: '70 ± 1 GPa',
    poisson: '0.33 ± 0.01',
    density: '2700 ± 20 kg/m3',
    coreMass: '2.1 ± 0.2 kg/m2',
  },
});
