import { question, type ScalarInput } from '../method.ts';
import { BOLTS } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { DIAMETER, PITCH, told } from './bolt-inputs.ts';
import { minorDiameter, pitchDiameter, stressArea } from './thread-geometry.ts';

/** Area sheared at the nut's thread for a length of engagement, over that length. */
const nutArea = (d: number, P: number): number =>
  ((Math.PI * d) / P) * (P / 2 + (d - pitchDiameter(d, P)) / Math.sqrt(3));
/** And at the bolt's thread. */
const boltArea = (d: number, P: number): number => {
  const d1 = minorDiameter(d, P);
  return ((Math.PI * d1) / P) * (P / 2 + (pitchDiameter(d, P) - d1) / Math.sqrt(3));
};
type Args = [d: number, P: number, l: number, tn: number, tb: number];
const nut = (...[d, P, l, tn]: Args): number => nutArea(d, P) * l * tn;
const bolt = (...[d, P, l, _tn, tb]: Args): number => boltArea(d, P) * l * tb;

const strength = (name: string, symbol: string, meaning: string): ScalarInput =>
  told({
    ...{ name, symbol, kind: 'stress', unit: 'MPa', meaning },
    ...{ range: [20, 1500], bounds: { above: 0 } },
  });

export default question({
  id: 'thread-stripping',
  version: 1,
  title: 'Engaged length and stripping of threads',
  wording: 'Does the bolt break before its threads strip?',
  subject: 'joint',
  onRequest: true,
  section: BOLTS,
  inputs: [
    DIAMETER,
    PITCH,
    {
      in: 'scalar',
      ...{ name: 'engaged', symbol: 'l', kind: 'length', unit: 'mm' },
      ...{ meaning: 'engaged length of thread', range: [1, 200], bounds: { above: 0 } },
      where: 'engaged length of thread of the joint',
      find: (at) => at.number(at.subject, 'thread.engaged'),
    },
    strength('nutShear', 'τ_N', 'shear strength of the tapped material'),
    strength('boltShear', 'τ_B', 'shear strength of the bolt'),
    strength('tensile', 'R_m', 'tensile strength of the bolt'),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['nut', 'F_N', 'force', 'kN'] as const),
        'load at which the tapped thread strips',
        'F_N = π d l (P / 2 + (d − d₂) / √3) τ_N / P',
        (d, P, l, tn, tb) => nut(d, P, l, tn, tb),
      ),
      worked(
        ...(['bolt', 'F_S', 'force', 'kN'] as const),
        'load at which the thread of the bolt strips',
        'F_S = π D₁ l (P / 2 + (d₂ − D₁) / √3) τ_B / P',
        (d, P, l, tn, tb) => bolt(d, P, l, tn, tb),
      ),
      worked(
        ...(['breaks', 'F_m', 'force', 'kN'] as const),
        'load at which the bolt breaks',
        'F_m = A_s R_m',
        (d, P, _l, _n, _b, Rm) => stressArea(d, P) * Rm,
      ),
      {
        ...worked(
          ...(['margin', 'm', 'force', 'kN'] as const),
          'stripping of the weaker thread less breaking of the bolt',
          'm = min(F_N; F_S) − F_m',
          (d, P, l, tn, tb, Rm) =>
            Math.min(nut(d, P, l, tn, tb), bolt(d, P, l, tn, tb)) - stressArea(d, P) * Rm,
        ),
        decides: 'margin',
      },
      worked(
        ...(['needed', 'l_m', 'length', 'mm'] as const),
        'engaged length from which on the bolt breaks first',
        'l_m = l F_m / min(F_N; F_S)',
        (d, P, l, tn, tb, Rm) =>
          (l * stressArea(d, P) * Rm) / Math.min(nut(d, P, l, tn, tb), bolt(d, P, l, tn, tb)),
      ),
    ],
  },
  modelError: {
    nut: { relative: 0.1, sharedFraction: 0.5 },
    bolt: { relative: 0.1, sharedFraction: 0.5 },
  },
  sources: [
    {
      title: 'Alexander, Analysis and design of threaded assemblies, SAE paper 770420 (1977)',
      at: 'shear areas, without his factors for dilation and bending',
      status: 'from memory',
    },
    { title: 'ISO 68-1', at: 'basic profile', status: 'published' },
  ],
  assumptions: [
    'Basic profile without tolerances: loose fits strip up to a fifth earlier; the first turn and chamfers do not count as engaged.',
  ],
  cautions: ['bolt-tightening'],
  checks: [
    {
      what: 'shear areas of M10 by millimetre: 7/8 of the cylinder of the nut and 3/4 of that of the bolt, by the profile of ISO 68-1',
      source: 'ISO 68-1 basic profile, closed form',
      status: 'own inputs, published formula',
      test: 'test/published/vdi-2230-bolts.test.ts',
    },
  ],
  example: {
    d: 'exactly 6 mm',
    P: 'exactly 1 mm',
    engaged: '9 ± 0.3 mm',
    nutShear: '150 ± 10 MPa',
    boltShear: '480 ± 20 MPa',
    tensile: '800 ± 20 MPa',
  },
});
