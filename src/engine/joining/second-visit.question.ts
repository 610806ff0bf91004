import { question, type ScalarInput } from '../method.ts';
import { CENSUS } from '../sections.ts';

const asked = (name: string, symbol: string, meaning: string, output: string): ScalarInput => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'money',
  unit: '{u}',
  meaning,
  range: [0, 100_000],
  bounds: { atLeast: 0 },
  where: `way to the part, ${output}`,
  find: (at) => at.ask('removal-path', at.subject, output),
});

export default question({
  id: 'second-visit',
  version: 1,
  title: 'Cost of a second visit',
  wording: 'What does a second visit cost, fasteners that can not be used again in it?',
  subject: 'study',
  onRequest: true,
  section: CENSUS,
  uses: ['removal-path'],
  inputs: [
    asked('out', 'C₁', 'labour of taking it off', 'labour'),
    asked('back', 'C₂', 'labour of putting it back', 'refit'),
    asked('renewals', 'Q', 'what is renewed at each opening', 'renewals'),
  ],
  body: {
    body: 'row',
    outputs: [
      {
        name: 'visit',
        symbol: 'C',
        kind: 'money',
        unit: '{u}',
        meaning: 'cost of the second visit, as of each further one',
        shown: 'C = C₁ + C₂ + Q',
        of: (out, back, renewals) => out + back + renewals,
      },
      {
        name: 'reusable',
        symbol: 'C₀',
        kind: 'money',
        unit: '{u}',
        meaning: 'what it would cost if everything could be used again',
        shown: 'C₀ = C₁ + C₂',
        of: (out, back) => out + back,
      },
      {
        name: 'extra',
        symbol: 'Q',
        kind: 'money',
        unit: '{u}',
        meaning: 'what fasteners that can not be used again add',
        shown: 'Q',
        decides: 'difference',
        of: (_out, _back, renewals) => renewals,
      },
      {
        name: 'share',
        symbol: 'Q/C',
        kind: 'ratio',
        unit: '%',
        meaning: 'their share of the visit',
        shown: 'Q / C',
        of: (out, back, renewals) => renewals / (out + back + renewals),
      },
    ],
  },
  modelError: {},
  sources: [
    { title: 'Labour both ways, and what is renewed', status: 'common practice, no source' },
  ],
  assumptions: [
    'What is renewed at the first visit is renewed at the second: the price is that of one opening.',
    'The repair itself, diagnosis, travel and waiting are not in it.',
  ],
  cautions: ['hoist-balance', 'high-voltage', 'lifting-by-hand'],
  checks: [
    {
      what: 'labour out 4, back 5, renewals 3: visit 12, of which 25 % renewals',
      source: 'own inputs, sums worked by hand',
      status: 'own inputs, published formula',
      test: 'test/engine/joining/removal-questions.test.ts',
    },
  ],
  example: { out: '4 ± 0.5 {u}', back: '5 ± 0.6 {u}', renewals: '3 ± 0.4 {u}' },
});
