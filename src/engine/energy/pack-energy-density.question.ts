import { question, type ScalarInput } from '../method.ts';
import { ENERGY } from '../sections.ts';

const side = (name: 'length' | 'width' | 'height', symbol: string): ScalarInput => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'length',
  unit: 'mm',
  meaning: `envelope ${name} of the pack`,
  range: [50, 4000],
  bounds: { above: 0 },
  where: `envelope ${name} of the assembly`,
  find: (at) => at.number(at.subject, `envelope.${name}`),
});

export default question({
  id: 'pack-energy-density',
  version: 1,
  title: 'Energy of the pack by mass and by volume',
  wording: 'How much energy does the pack hold for its mass and its volume?',
  subject: 'assembly',
  section: ENERGY,
  uses: ['mass-roll-up'],
  inputs: [
    {
      in: 'scalar',
      name: 'energy',
      symbol: 'E',
      kind: 'energy',
      unit: 'kW.h',
      meaning: 'energy of the pack',
      range: [1, 300],
      bounds: { above: 0 },
      where: 'energy of the assembly',
      find: (at) => at.number(at.subject, 'packEnergy'),
    },
    {
      in: 'scalar',
      name: 'mass',
      symbol: 'm',
      kind: 'mass',
      unit: 'kg',
      meaning: 'mass of the pack',
      range: [10, 2000],
      bounds: { above: 0 },
      where: 'mass of the parts of the assembly',
      find: (at) => at.ask('mass-roll-up', at.subject, 'mass'),
    },
    side('length', 'l'),
    side('width', 'w'),
    side('height', 'h'),
  ],
  body: {
    body: 'row',
    outputs: [
      {
        name: 'specific',
        symbol: 'E/m',
        kind: 'specificEnergy',
        unit: 'W.h/kg',
        meaning: 'energy by mass',
        shown: 'E / m',
        of: (energy, mass) => energy / mass,
      },
      {
        name: 'volume',
        symbol: 'V',
        kind: 'volume',
        unit: 'L',
        meaning: 'envelope volume',
        shown: 'V = l w h',
        step: true,
        of: (_e, _m, length, width, height) => length * width * height,
      },
      {
        name: 'volumetric',
        symbol: 'E/V',
        kind: 'energyDensity',
        unit: 'W.h/L',
        meaning: 'energy by envelope volume',
        shown: 'E / (l w h)',
        of: (energy, _m, length, width, height) => energy / (length * width * height),
      },
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'Definitions of specific energy and energy density (quotients)',
      status: 'from memory',
    },
  ],
  assumptions: [
    'The energy is the one stated, not measured here.',
    'The envelope is the box around the pack, brackets included as read.',
  ],
  cautions: ['high-voltage'],
  checks: [
    {
      what: 'pack of 63.072 kWh, 390 kg, 300 L: 161.72 Wh/kg and 210.24 Wh/L',
      source: 'quotients recomputed, own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/pack-energy.test.ts',
    },
  ],
  example: {
    energy: '63.072 ± 0.3 kW.h',
    mass: '390 ± 1 kg',
    length: '2000 ± 1 mm',
    width: '1250 ± 1 mm',
    height: '120 ± 1 mm',
  },
});
