import { question, type ScalarInput } from '../method.ts';
import { BOLTS } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { DIAMETER, FORCE_EACH, HEAD_HOLE, HEAD_OUTER, told } from './bolt-inputs.ts';

const stress = (name: string, symbol: string, meaning: string): ScalarInput =>
  told({
    ...{ name, symbol, kind: 'stress', unit: 'MPa', meaning },
    ...{ range: [5, 3000], bounds: { above: 0 } },
  });
const underHead = (F: number, dw: number, dh: number): number =>
  F / ((Math.PI / 4) * (dw ** 2 - dh ** 2));

export default question({
  id: 'bolt-bearing',
  version: 1,
  title: 'Pressure under a head and in a hole',
  wording: 'Does the part bear the head of its bolt and the side of its shank?',
  subject: 'joint',
  onRequest: true,
  section: BOLTS,
  inputs: [
    {
      ...FORCE_EACH('F', 'F₂', 'largest preload of one bolt'),
      where: 'bolt-preload of the joint: largest preload within the scatter',
      find: (at) => at.ask('bolt-preload', at.subject, 'most'),
    },
    HEAD_OUTER,
    HEAD_HOLE,
    stress('limit', 'p_G', 'pressure that the material under the head bears, yours'),
    FORCE_EACH('side', 'F_Q', 'sideways force on one bolt'),
    DIAMETER,
    told({
      ...{ name: 'thickness', symbol: 't', kind: 'length', unit: 'mm' },
      ...{ meaning: 'thickness of the part at the hole', range: [0.3, 100], bounds: { above: 0 } },
    }),
    stress('holeLimit', 'σ_L', 'pressure that the side of the hole bears, yours'),
  ],
  uses: ['bolt-preload'],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['head', 'p', 'stress', 'MPa'] as const),
        'pressure under the head',
        'p = 4 F₂ / (π (d_w² − d_h²))',
        (F, dw, dh) => underHead(F, dw, dh),
      ),
      {
        ...worked(
          ...(['margin', 'm', 'stress', 'MPa'] as const),
          'what is left under the head',
          'm = p_G − p',
          (F, dw, dh, limit) => limit - underHead(F, dw, dh),
        ),
        decides: 'margin',
      },
      worked(
        ...(['hole', 'p_L', 'stress', 'MPa'] as const),
        'pressure on the side of the hole',
        'p_L = F_Q / (d t)',
        (_F, _w, _h, _l, side, d, t) => side / (d * t),
      ),
      {
        ...worked(
          ...(['holeMargin', 'm_L', 'stress', 'MPa'] as const),
          'what is left at the side of the hole',
          'm_L = σ_L − p_L',
          (_F, _w, _h, _l, side, d, t, limit) => limit - side / (d * t),
        ),
        decides: 'margin',
      },
    ],
  },
  modelError: {},
  sources: [
    { title: 'VDI 2230 part 1', at: 'surface pressure under the head', status: 'from memory' },
  ],
  assumptions: [
    'Flat ring of contact without chamfer of the hole or washer; limits are yours, tables of them differ.',
  ],
  cautions: ['bolt-tightening'],
  checks: [
    {
      what: '40 kN on a ring of 16.6 and 13.5 mm: 545.9 MPa; 6 kN on 12 mm × 3 mm: 166.7 MPa',
      source: 'closed form, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/vdi-2230-bolts.test.ts',
    },
  ],
  example: {
    F: '40 ± 2 kN',
    dw: '16.6 ± 0.1 mm',
    dh: '13.5 ± 0.1 mm',
    limit: '700 ± 50 MPa',
    side: '6 ± 0.5 kN',
    d: 'exactly 12 mm',
    thickness: '3 ± 0.05 mm',
    holeLimit: '400 ± 30 MPa',
  },
});
