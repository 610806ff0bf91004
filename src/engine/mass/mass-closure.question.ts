import type { Finding } from '../../study/index.ts';
import { type PlainInputs, question } from '../method.ts';
import { BALANCE } from '../sections.ts';
import { CORNER_LOADS_ALIKE } from './corner-loads.ts';
import { partMass } from './part-columns.ts';

export default question({
  id: 'mass-closure',
  version: 1,
  title: 'Closure of the mass',
  wording: 'Do the parts add up to what the whole vehicle weighed?',
  subject: 'study',
  section: BALANCE,
  inputs: [
    {
      in: 'table',
      name: 'parts',
      meaning: 'every part of the vehicle',
      where: 'every part below the subject',
      rows: (at) => at.view.nodes('part', at.subject).map((n) => n.id),
      columns: [partMass],
    },
    ...CORNER_LOADS_ALIKE,
  ],
  body: {
    body: 'tally',
    table: 'parts',
    terms: [
      { name: 'mass', symbol: 'M', kind: 'mass', shown: 'Σ m', needs: ['mass'], each: (m) => m },
    ],
    outputs: [
      {
        name: 'parts',
        symbol: 'M',
        kind: 'mass',
        unit: 'kg',
        meaning: 'mass of the parts',
        shown: 'M = Σ m',
        of: (mass) => mass,
      },
      {
        name: 'scales',
        symbol: 'm',
        kind: 'mass',
        unit: 'kg',
        meaning: 'mass on the corner scales',
        shown: 'm = mFL + mFR + mRL + mRR',
        of: (_mass, fl, fr, rl, rr) => fl + fr + rl + rr,
      },
      {
        name: 'gap',
        symbol: 'Δ',
        kind: 'mass',
        unit: 'kg',
        meaning: 'gap, parts less scales',
        shown: 'Δ = M − m',
        decides: 'difference',
        directions: { more: 'closes high', less: 'closes low' },
        of: (mass, fl, fr, rl, rr) => mass - (fl + fr + rl + rr),
      },
    ],
  },
  valid: grossMayBeLarger,
  modelError: {},
  sources: [{ title: 'Sum of masses (elementary statics)', status: 'from memory' }],
  assumptions: [
    'Parts and corner loads belong to one condition; unlike conditions are not compared.',
    'The gap is a net one: errors of opposite sign cancel in it, so the gross error may be larger.',
  ],
  cautions: ['hoist-balance'],
  checks: [
    {
      what: 'four corner loads sum to the vehicle',
      source: 'corner loads after ISO 10392 (horizontal position)',
      status: 'own inputs, published formula',
      test: 'test/published/iso-10392.test.ts',
    },
  ],
  example: {
    parts: [{ mass: '820.1 ± 0.2 kg' }, { mass: '819.6 ± 0.2 kg' }],
    fl: '452 ± 0.5 kg',
    fr: '438 ± 0.5 kg',
    rl: '381 ± 0.5 kg',
    rr: '369 ± 0.5 kg',
  },
});

function grossMayBeLarger(x: PlainInputs): readonly Finding[] {
  const missing = (x.tables.parts ?? []).filter((row) => !Number.isFinite(row.mass));
  if (missing.length === 0) return [];
  return [
    {
      code: 'gross-error-may-be-larger',
      level: 'doubt',
      place: { property: 'gap' },
      value: missing.map((row) => row.subject).join('; '),
      what: `the gap is net of ${missing.length} missing reading${missing.length === 1 ? '' : 's'}; errors of opposite sign may hide in it, so the gross error may be larger`,
      next: 'Weigh what is missing, then look at the gap again.',
    },
  ];
}
