import { question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { size, stated } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';

export default question({
  id: 'bolt-pitch-rule',
  version: 1,
  title: 'Bolt pitch by the rule of pressure flanges',
  wording: 'How far apart does the rule of pressure flanges let bolts stand?',
  subject: 'joint',
  onRequest: true,
  section: SEALING,
  inputs: [
    size('a', 'a', 'nominal diameter of the bolts', [3, 64]),
    size('t', 't', 'thickness of the flange', [1, 200]),
    stated(
      {
        ...{ name: 'm', symbol: 'm', kind: 'ratio', unit: '1' },
        ...{ meaning: 'gasket factor', range: [0, 8], bounds: { atLeast: 0 } },
      },
      'not in the record: by the kind of gasket',
    ),
    size('pitch', 's', 'pitch as it is', [10, 1000]),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['most', 's_m', 'length', 'mm'] as const),
        'largest pitch by the rule',
        's_m = 2 a + 6 t / (m + 0.5)',
        (a, t, m) => 2 * a + (6 * t) / (m + 0.5),
      ),
      worked(
        ...(['factor', 'B', 'ratio', '1'] as const),
        'factor by which the moment on the flange is raised at a wide pitch',
        'B = √(s / (2 a + t))',
        (a, t, _m, s) => Math.sqrt(s / (2 * a + t)),
      ),
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'TEMA standards, flange rules of the Taylor Forge form',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Made for steel pressure flanges: indicative for covers. seal-line-load works the lid’s own flange out.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: 'a 16, t 20, m 2: 80 mm; a 6, t 8, m 0.5: 60 mm; pitch 100 with a 16, t 20: 1.387',
      source: 'TEMA form, recomputed',
      status: 'seen',
      test: 'test/published/hetenyi-beams.test.ts',
    },
  ],
  example: { a: 'exactly 6 mm', t: '8 ± 0.1 mm', m: '0.5 ± 0.1', pitch: '89 ± 0.5 mm' },
});
