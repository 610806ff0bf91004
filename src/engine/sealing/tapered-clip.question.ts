import { question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { size, stated } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';

const STATE = 'not in the record: state it';
/** Of a beam that tapers to half its thickness at the end. */
const TAPER = 1.09;
const root = (strain: number, L: number, y: number): number => (TAPER * strain * L ** 2) / y;

export default question({
  id: 'tapered-clip',
  version: 1,
  title: 'Tapered snap arm',
  wording: 'How thick may a snap arm be that tapers to half, and how hard does it hold?',
  subject: 'part',
  onRequest: true,
  section: SEALING,
  inputs: [
    stated(
      {
        ...{ name: 'strain', symbol: 'ε', kind: 'ratio', unit: '%' },
        ...{ meaning: 'strain allowed, yours', range: [0.1, 10], bounds: { above: 0 } },
      },
      STATE,
    ),
    size('L', 'L', 'length of the arm', [2, 100]),
    size('y', 'y', 'deflection at its end', [0.05, 20]),
    size('b', 'b', 'width of the arm', [1, 100]),
    stated(
      {
        ...{ name: 'secant', symbol: 'E_s', kind: 'stress', unit: 'MPa' },
        ...{ meaning: 'secant modulus at that strain', range: [50, 20000], bounds: { above: 0 } },
      },
      STATE,
    ),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['h', 'h', 'length', 'mm'] as const),
        'thickness at its root',
        'h = 1.09 ε L² / y',
        (e, L, y) => root(e, L, y),
      ),
      worked(
        ...(['force', 'P', 'force', 'N'] as const),
        'force at its end',
        'P = b h² E_s ε / (6 L)',
        (e, L, y, b, E) => (b * root(e, L, y) ** 2 * E * e) / (6 * L),
      ),
    ],
  },
  modelError: { force: { relative: 0.1, sharedFraction: 0.5 } },
  sources: [
    {
      title: 'Design guide of a moulding-material supplier, beam tapered to half',
      status: 'from memory',
    },
  ],
  assumptions: ['Rectangular section that tapers evenly to half its thickness; stiff mating part.'],
  cautions: [],
  checks: [
    {
      what: '2 %, 19 mm, 2.4 mm: 3.279 mm; 9.5 mm wide, 1815 MPa: 32.5 N',
      source: 'design guide of a moulding-material supplier',
      status: 'from memory, recomputed',
      test: 'test/published/clips-and-edges.test.ts',
    },
  ],
  example: {
    strain: '2 ± 0.1 %',
    L: '19 ± 0.1 mm',
    y: '2.4 ± 0.05 mm',
    b: '9.5 ± 0.1 mm',
    secant: '1815 ± 60 MPa',
  },
});
