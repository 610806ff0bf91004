import { type OutputSpec, question } from '../method.ts';
import { BALANCE } from '../sections.ts';
import { BALANCE_TERMS, gapInForce, gapInX, gapInY, gapInZ } from './balance-body.ts';
import { partsTable, searchColumns } from './balance-parts.ts';
import { CORNER_LOADS_ALIKE, HEIGHT, TRACKS, WHEELBASE } from './corner-loads.ts';
import { JOINT_ENDS, TARES } from './fault-inputs.ts';
import { lookForFaults } from './faults/faults-look.ts';
import { MODULES } from './module-inputs.ts';

const net = (axis: 'X' | 'Y' | 'Z', about: string): OutputSpec => ({
  name: `net${axis}`,
  symbol: `ΔS${axis.toLowerCase()}`,
  kind: 'massMoment',
  unit: 'kg.m',
  meaning: `net gap to be explained in moments along ${axis}`,
  shown: `ΔS${axis.toLowerCase()} = S${axis.toLowerCase()} − M′ ${about}`,
});

const part = (number: string, name: string, mass: string, y: string, written: string) => ({
  ...{ number, name, mass, x: '60 ± 5 mm', y, z: '230 ± 5 mm', assembly: '60', pieces: '1' },
  ...{ expected: '5 ± 3 kg', instrument: 'scale B', written },
});

export default question({
  id: 'mass-faults',
  version: 1,
  title: 'Slips in the record that would explain the gaps of the mass',
  wording: 'Which rows are likely wrong, given what does not close?',
  subject: 'study',
  section: BALANCE,
  uses: ['cg-height-axle-lift'],
  inputs: [
    partsTable(searchColumns),
    MODULES,
    TARES,
    JOINT_ENDS,
    ...CORNER_LOADS_ALIKE,
    WHEELBASE,
    ...TRACKS,
    HEIGHT,
  ],
  body: {
    body: 'tally',
    table: 'parts',
    terms: BALANCE_TERMS,
    outputs: [
      {
        name: 'net',
        symbol: 'ΔM',
        kind: 'mass',
        unit: 'kg',
        meaning: 'net gap to be explained in force, parts less scales',
        shown: 'ΔM = M − (mFL + mFR + mRL + mRR)',
        of: gapInForce,
      },
      { ...net('X', 'L (mRL + mRR) / m'), of: gapInX },
      { ...net('Y', '(bF (mFR − mFL) + bR (mRR − mRL)) / 2 m'), of: gapInY },
      { ...net('Z', 'h'), of: gapInZ },
    ],
  },
  look: lookForFaults,
  modelError: {},
  sources: [
    { title: 'Sum of masses and of their moments (elementary statics)', status: 'from memory' },
    {
      title:
        "Bayes' rule with normal errors (JCGM 106:2012, clause 6, from memory), over sets of slips found by branch and bound",
      status: 'from memory',
    },
    {
      title: 'How often each kind of slip is made, and how alike the two sides of a design are',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Kinds of slip: pounds as kilograms, decimal shifted, weighed twice, quantity miscounted, tare not taken off (of the totes in the record), weighed with another part that has its own row (its bolts, its bush), sides that differ, mass swapped with the next row, a part without a reading still on another. Others come out as unexplained.',
    'One slip a row and a pair of sides; a part without a reading is missing, its mass anything from nothing up.',
    'Two sides of one design differ by 1.4 %, as single units scatter; a mass written without a spread is taken as ± 1 %; a part without a position may be anywhere.',
    'Slips are looked for by branch and bound, best first, because all sets near the best are wanted and the sums are few; the search is limited and says so when its limit was met.',
    'Probabilities rank what to check first; they are no proof, and the order of suspects that fit alike rests on how often slips are made.',
  ],
  cautions: ['hoist-balance'],
  checks: [
    {
      what: 'one wrong row found against a search of all single and double slips written out anew',
      source: "Bayes' rule; own inputs, every set tried",
      status: 'own inputs, published formula',
      test: 'test/published/fault-search.test.ts',
    },
  ],
  example: {
    parts: [
      part('60-004', 'Lower control arm LH', '3.35 ± 0.01 kg', '-520 ± 5 mm', '3.35'),
      part('60-005', 'Lower control arm RH', '7.37 ± 0.01 kg', '520 ± 5 mm', '7.37'),
      part('60-018', 'Anti-roll bar', '5.30 ± 0.01 kg', '0 ± 5 mm', '5.30'),
      { ...part('60-021', 'Bar bolts M10x30', '0.24 ± 0.002 kg', '0 ± 5 mm', '0.24'), pieces: '4' },
    ],
    modules: [{ moduleMass: '12.2 ± 0.05 kg', holds: '60-004;60-005;60-018;60-021' }],
    tares: [{ tare: '0.62 ± 0.002 kg' }],
    joints: [{ spec: 'M10x30', count: '4', ends: '60-018' }],
    fl: '6.2 ± 0.1 kg',
    fr: '6.2 ± 0.1 kg',
    rl: '0 ± 0.1 kg',
    rr: '0 ± 0.1 kg',
    wheelbase: '2700 ± 2 mm',
    frontTrack: '1560 ± 3 mm',
    rearTrack: '1540 ± 3 mm',
    height: '230 ± 8 mm',
  },
});
