import { question } from '../method.ts';
import { BOLTS } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { BOLT_COUNT, FORCE_EACH, ratio, told } from './bolt-inputs.ts';

export default question({
  id: 'bolt-slip',
  version: 1,
  title: 'Load at which a bolted joint slips',
  wording: 'Do these bolts hold a sideways load by friction?',
  subject: 'joint',
  onRequest: true,
  section: BOLTS,
  inputs: [
    BOLT_COUNT,
    {
      ...FORCE_EACH('F', 'F₁', 'least preload of one bolt'),
      where: 'bolt-preload of the joint: least preload within the scatter',
      find: (at) => at.ask('bolt-preload', at.subject, 'least'),
    },
    told(ratio('mu', 'μ', 'friction between the parts', [0.05, 0.6])),
    told({
      ...ratio('faces', 'i', 'faces that slide', [1, 6]),
      bounds: { atLeast: 1 },
    }),
    told({
      ...{ name: 'load', symbol: 'F_Q', kind: 'force', unit: 'kN' },
      ...{ meaning: 'sideways load on all of them', range: [0, 2000], bounds: { atLeast: 0 } },
    }),
  ],
  uses: ['bolt-preload'],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['capacity', 'F_R', 'force', 'kN'] as const),
        'load held by friction',
        'F_R = n F₁ μ i',
        (n, F, mu, i) => n * F * mu * i,
      ),
      {
        ...worked(
          ...(['margin', 'm', 'force', 'kN'] as const),
          'load held less load',
          'm = n F₁ μ i − F_Q',
          (n, F, mu, i, load) => n * F * mu * i - load,
        ),
        decides: 'margin',
      },
      worked(
        ...(['use', 'k', 'ratio', '%'] as const),
        'share of what is held that the load takes',
        'k = F_Q / F_R',
        (n, F, mu, i, load) => load / (n * F * mu * i),
      ),
    ],
  },
  modelError: { capacity: { relative: 0.1, sharedFraction: 0.5 } },
  sources: [{ title: 'VDI 2230 part 1', at: 'clamp load against slip', status: 'from memory' }],
  assumptions: [
    'All bolts share evenly, the load passes through their middle, and no working load opens the joint.',
  ],
  cautions: ['bolt-tightening'],
  checks: [
    {
      what: '4 bolts of 20 kN, friction 0.2, two faces: 32 kN',
      source: 'Coulomb, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/vdi-2230-bolts.test.ts',
    },
  ],
  example: { n: '4', F: '20 ± 1 kN', mu: '0.2 ± 0.03', faces: '2 ± 0.01', load: '12 ± 1 kN' },
});
