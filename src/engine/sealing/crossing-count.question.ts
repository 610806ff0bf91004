import type { Id } from '../../study/index.ts';
import { type Finder, question, type ScalarInput, type TallyBody } from '../method.ts';
import { SEALING } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import {
  crossingCount,
  crossingOf,
  leadsInto,
  nameColumn,
  numberOr,
  recordedWord,
  sealing,
} from './sealing-columns.ts';

/** Crossings of the subject that lead into a dry zone. */
const intoDry = (at: Finder): readonly Id[] => {
  const { dry } = sealing(at);
  return at.view
    .nodes('crossing', at.subject)
    .map((n) => n.id)
    .filter((id) => leadsInto(crossingOf(at, id), dry));
};

const side = (name: string, symbol: string, which: 'length' | 'width' | 'height'): ScalarInput => ({
  in: 'scalar',
  ...{ name, symbol, kind: 'length', unit: 'mm', meaning: `${which} of its envelope` },
  ...{ range: [10, 5000], bounds: { above: 0 } },
  where: `envelope ${which} of the assembly`,
  find: (at) => at.number(at.subject, `envelope.${which}`),
});

type Term = TallyBody['terms'][number];
const sum = (
  name: string,
  symbol: string,
  kind: Term['kind'],
  more: Pick<Term, 'shown' | 'needs' | 'each'>,
): Term => ({
  ...{ name, symbol, kind },
  ...more,
});

export default question({
  id: 'crossing-count',
  version: 1,
  title: 'Crossings and seal length',
  wording: 'How many crossings and how much seal does it take to keep it dry?',
  subject: 'assembly',
  section: SEALING,
  inputs: [
    {
      in: 'table',
      name: 'crossings',
      meaning: 'what leads into a dry zone',
      where: 'crossings of the assembly that join a dry zone to another',
      rows: intoDry,
      columns: [
        nameColumn('crossing'),
        recordedWord('kind', 'crossing.kind'),
        recordedWord('seal', 'crossing.seal'),
        crossingCount,
        {
          in: 'scalar',
          ...{ name: 'length', symbol: 'l', kind: 'length', unit: 'm', range: [0, 100] },
          ...{ meaning: 'length of seal, each', bounds: { atLeast: 0 } },
          where: 'length of seal; none for a fastener where none is recorded',
          find: (at, row) =>
            numberOr(at, row, 'crossing.sealLength', at.exact(0, 'no length of seal recorded')),
        },
      ],
    },
    side('envLength', 'a', 'length'),
    side('envWidth', 'b', 'width'),
    side('envHeight', 'h', 'height'),
    {
      in: 'scalar',
      ...{ name: 'energy', symbol: 'E', kind: 'energy', unit: 'kW.h' },
      ...{ meaning: 'energy of the pack', range: [0.1, 300], bounds: { above: 0 } },
      where: 'energy of the assembly',
      find: (at) => at.number(at.subject, 'packEnergy'),
    },
  ],
  body: {
    body: 'tally',
    table: 'crossings',
    groupBy: 'kind',
    terms: [
      sum('pieces', 'N', 'count', { shown: 'Σ n', needs: ['count'], each: (n) => n }),
      sum('seal', 'L', 'length', {
        shown: 'Σ n l',
        needs: ['count', 'length'],
        each: (n, l) => n * l,
      }),
    ],
    outputs: [
      worked('pieces', 'N', 'count', '1', 'crossings', 'N = Σ n', (n) => n),
      worked('seal', 'L', 'length', 'm', 'length of seal', 'L = Σ n l', (_n, l) => l),
      worked(
        ...(['litre', 'N_V', 'ratio', '1'] as const),
        'crossings for each litre of the envelope',
        'N_V = N V₁ / (a b h)',
        (n, _l, a, b, h) => (n * LITRE) / (a * b * h),
      ),
      worked(
        ...(['energy', 'N_E', 'ratio', '1'] as const),
        'crossings for each kWh',
        'N_E = N E₁ / E',
        (n, _l, _a, _b, _h, e) => (n * KWH) / e,
      ),
      worked(
        ...(['sealLitre', 'L_V', 'length', 'mm'] as const),
        'length of seal for each litre of the envelope',
        'L_V = L V₁ / (a b h)',
        (_n, l, a, b, h) => (l * LITRE) / (a * b * h),
      ),
      worked(
        ...(['sealEnergy', 'L_E', 'length', 'mm'] as const),
        'length of seal for each kWh',
        'L_E = L E₁ / E',
        (_n, l, _a, _b, _h, e) => (l * KWH) / e,
      ),
    ],
  },
  modelError: {},
  sources: [{ title: 'Counting', status: 'common practice, no source' }],
  assumptions: [
    'Fasteners that end blind are no crossings; one that goes through two walls is one crossing.',
    'V₁ is a litre and E₁ a kilowatt hour, so that packs of other sizes compare.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: 'counts and lengths of a made-up pack by hand',
      source: 'own inputs',
      status: 'own inputs, published formula',
      test: 'test/engine/sealing/crossing-paths.test.ts',
    },
  ],
  example: {
    crossings: [
      { name: 'screws', kind: 'fastener', seal: 'none', count: '6', length: 'exactly 0 m' },
      { name: 'lid', kind: 'gasket', seal: 'cord', count: '1', length: '5.54 ± 0.01 m' },
      { name: 'seams', kind: 'seam', seal: 'weld', count: '9', length: '1.46 ± 0.005 m' },
    ],
    envLength: '1520 ± 1 mm',
    envWidth: '1250 ± 1 mm',
    envHeight: '170 ± 1 mm',
    energy: '56.3 ± 0.3 kW.h',
  },
});

/** m³ and J. */
const LITRE = 1e-3;
const KWH = 3.6e6;
