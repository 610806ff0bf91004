import { type OutputSpec, question } from '../method.ts';
import { BALANCE } from '../sections.ts';
import { asDistance, BALANCE_TERMS, gapInForce, gapInX, gapInY, gapInZ } from './balance-body.ts';
import { balanceColumns, partsTable } from './balance-parts.ts';
import { CORNER_LOADS_ALIKE, HEIGHT, TRACKS, WHEELBASE } from './corner-loads.ts';
import { gapDrawings } from './gap-drawings.ts';
import { moduleTable } from './module-closure.ts';
import { MODULES } from './module-inputs.ts';

const inMoments = (axis: 'X' | 'Y' | 'Z', about: string): OutputSpec => ({
  name: `moment${axis}`,
  symbol: `ΔS${axis.toLowerCase()}`,
  kind: 'massMoment',
  unit: 'kg.m',
  meaning: `gap in moments along ${axis}, about the centre of gravity by the scales`,
  shown: `ΔS${axis.toLowerCase()} = S${axis.toLowerCase()} − M′ ${about}`,
  decides: 'difference',
});

const inPlace = (axis: 'X' | 'Y' | 'Z', about: string): OutputSpec => ({
  name: `shift${axis}`,
  symbol: `Δ${axis}`,
  kind: 'length',
  unit: 'mm',
  meaning: `centre of gravity of the parts less that by the scales, ${axis}`,
  shown: `Δ${axis} = S${axis.toLowerCase()} / M′ − ${about}`,
});

const part = (number: string, mass: string, x: string, y: string, z: string) => ({
  ...{ number, mass, x, y, z },
});

export default question({
  id: 'mass-balance',
  version: 1,
  title: 'Balance of the mass, in force and in moments',
  wording: 'Do the parts close against the scales in force and in moments, module by module?',
  subject: 'study',
  section: BALANCE,
  uses: ['cg-height-axle-lift'],
  inputs: [
    partsTable(balanceColumns),
    MODULES,
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
        name: 'force',
        symbol: 'ΔM',
        kind: 'mass',
        unit: 'kg',
        meaning: 'gap in force, parts less scales',
        shown: 'ΔM = M − (mFL + mFR + mRL + mRR)',
        decides: 'difference',
        of: gapInForce,
      },
      { ...inMoments('X', 'L (mRL + mRR) / m'), of: gapInX },
      { ...inMoments('Y', '(bF (mFR − mFL) + bR (mRR − mRL)) / 2 m'), of: gapInY },
      { ...inMoments('Z', 'h'), of: gapInZ },
      { ...inPlace('X', 'L (mRL + mRR) / m'), of: asDistance(gapInX) },
      { ...inPlace('Y', '(bF (mFR − mFL) + bR (mRR − mRL)) / 2 m'), of: asDistance(gapInY) },
      { ...inPlace('Z', 'h'), of: asDistance(gapInZ) },
    ],
  },
  look: moduleTable,
  figures: gapDrawings,
  modelError: {},
  sources: [
    { title: 'Sum of masses and of their moments (elementary statics)', status: 'from memory' },
    {
      title: 'ISO 10392:2011, Road vehicles – Determination of centre of gravity',
      at: 'horizontal position by wheel loads; height by axle lift',
      status: 'published',
    },
  ],
  assumptions: [
    'Parts, modules and corner loads belong to one condition: loads read in another condition only are refused. Payload and people are no parts and stand apart.',
    'Fluids count where they have a row of their own; what was left in a part counts with that part.',
    'A part without a reading is missing, not zero; a part without a position is left out of the moments.',
    'Gaps are net: errors of opposite sign cancel in them, so the gross error may be larger.',
  ],
  cautions: ['hoist-balance'],
  checks: [
    {
      what: 'four corner loads as four parts where the wheels stand close in force and in X and Y',
      source: 'moments about the axles, after ISO 10392 (horizontal position)',
      status: 'own inputs, published formula',
      test: 'test/published/mass-balance.test.ts',
    },
  ],
  example: {
    parts: [
      part('F', '890.0 ± 0.3 kg', '0 ± 2 mm', '-12 ± 2 mm', '560 ± 8 mm'),
      part('R', '750.4 ± 0.3 kg', '2700 ± 2 mm', '-12 ± 2 mm', '540 ± 8 mm'),
    ],
    modules: [{ moduleMass: '750.2 ± 0.3 kg', holds: 'R' }],
    fl: '452 ± 0.5 kg',
    fr: '438 ± 0.5 kg',
    rl: '381 ± 0.5 kg',
    rr: '369 ± 0.5 kg',
    wheelbase: '2700 ± 2 mm',
    frontTrack: '1560 ± 3 mm',
    rearTrack: '1540 ± 3 mm',
    height: '550 ± 8 mm',
  },
});
