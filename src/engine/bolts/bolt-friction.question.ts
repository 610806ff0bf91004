import { question } from '../method.ts';
import { BOLTS } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { DIAMETER, FORCE_EACH, HEAD_HOLE, HEAD_OUTER, PITCH, told } from './bolt-inputs.ts';
import { pitchDiameter } from './thread-geometry.ts';

export default question({
  id: 'bolt-friction',
  version: 1,
  title: 'Friction of a bolt from torque and preload',
  wording: 'Which friction does a bolt have that pulled so hard at this torque?',
  subject: 'joint',
  onRequest: true,
  section: BOLTS,
  inputs: [
    told({
      ...{ name: 'T', symbol: 'T', kind: 'torque', unit: 'N.m', meaning: 'torque measured' },
      ...{ range: [0.1, 3000], bounds: { above: 0 } },
    }),
    FORCE_EACH('F', 'F', 'preload measured with it'),
    DIAMETER,
    PITCH,
    HEAD_OUTER,
    HEAD_HOLE,
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['mu', 'μ', 'ratio', '1'] as const),
        'friction, thread and head taken alike',
        'μ = (T / F − P / (2 π)) / (0.577 d₂ + (d_w + d_h) / 4)',
        (T, F, d, P, dw, dh) =>
          (T / F - P / (2 * Math.PI)) / (0.577 * pitchDiameter(d, P) + (dw + dh) / 4),
      ),
      worked(
        ...(['nut', 'K', 'ratio', '1'] as const),
        'torque over preload and diameter',
        'K = T / (F d)',
        (T, F, d) => T / (F * d),
      ),
    ],
  },
  modelError: {},
  sources: [{ title: 'ISO 16047', at: 'total coefficient of friction', status: 'from memory' }],
  assumptions: [
    'One coefficient stands for thread and head; the preload was measured, not worked out.',
  ],
  cautions: ['bolt-tightening'],
  checks: [
    {
      what: 'torque and preload of M10 give back the friction they were made with; K 0.2 at 25 kN, 50 N·m',
      source: 'ISO 16047 formulas, closed form',
      status: 'from memory, recomputed',
      test: 'test/published/vdi-2230-bolts.test.ts',
    },
  ],
  example: {
    T: '48.95 ± 1 N.m',
    F: '30 ± 0.6 kN',
    d: 'exactly 10 mm',
    P: 'exactly 1.5 mm',
    dw: '14.6 ± 0.1 mm',
    dh: '11 ± 0.1 mm',
  },
});
