import { question } from '../method.ts';
import { LINES } from '../sections.ts';
import { chosen } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';
import { LENGTH, ofLine } from './line-columns.ts';

const resistance = (L: number, A: number, rho: number, n: number): number => (n * rho * L) / A;

export default question({
  id: 'voltage-drop',
  version: 1,
  title: 'Loss of voltage in a cable',
  wording: 'How much voltage and power is lost in the cable?',
  subject: 'line',
  section: LINES,
  inputs: [
    LENGTH,
    ofLine(
      {
        ...{ name: 'area', symbol: 'A', kind: 'area', unit: 'mm2' },
        ...{ meaning: 'area of the conductor', range: [0.05, 400] },
      },
      'line.conductor',
    ),
    ofLine(
      {
        ...{ name: 'current', symbol: 'I', kind: 'current', unit: 'A' },
        ...{ meaning: 'current', range: [0.001, 2000] },
      },
      'line.current',
    ),
    ofLine(
      {
        ...{ name: 'voltage', symbol: 'U', kind: 'voltage', unit: 'V' },
        ...{ meaning: 'nominal voltage', range: [1, 1500] },
      },
      'line.voltage',
    ),
    chosen(
      {
        ...{ name: 'resistivity', symbol: 'ρ', kind: 'resistivity', unit: 'nOhm.m' },
        ...{ meaning: 'resistivity of the conductor, warm', range: [15, 60] },
        bounds: { above: 0 },
      },
      { written: 'exactly 20.6 nOhm.m', x: 20.6e-9 },
      'taken as copper at 65 °C (17.24 nΩ·m at 20 °C, 0.39 % a kelvin, IEC 60028, from memory)',
    ),
    chosen(
      {
        ...{ name: 'ways', symbol: 'n', kind: 'ratio', unit: '1' },
        ...{ meaning: 'conductors in series: 2 there and back, 1 where the body returns' },
        ...{ range: [1, 2], bounds: { above: 0 } },
      },
      { written: 'exactly 2', x: 2 },
      'taken as there and back',
    ),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['drop', 'ΔU', 'voltage', 'V'] as const),
        'loss of voltage',
        'ΔU = n ρ L I / A',
        (L, A, I, _U, rho, n) => resistance(L, A, rho, n) * I,
      ),
      worked(
        ...(['share', 'δ', 'ratio', '%'] as const),
        'share of the nominal voltage',
        'δ = ΔU / U',
        (L, A, I, U, rho, n) => (resistance(L, A, rho, n) * I) / U,
      ),
      worked(
        ...(['power', 'P', 'power', 'W'] as const),
        'heat in the cable',
        'P = n ρ L I² / A',
        (L, A, I, _U, rho, n) => resistance(L, A, rho, n) * I ** 2,
      ),
      worked(
        ...(['resistance', 'R', 'resistance', 'mOhm'] as const),
        'resistance',
        'R = n ρ L / A',
        (L, A, _I, _U, rho, n) => resistance(L, A, rho, n),
      ),
    ],
  },
  modelError: {},
  sources: [{ title: 'Ohm’s law; IEC 60028 for copper', status: 'from memory' }],
  assumptions: ['Direct current; contacts and fuses are not in it.'],
  cautions: ['high-voltage'],
  checks: [
    {
      what: '10 m of 10 mm² copper at 17.24 nΩ·m and 100 A, one way: 1.724 V, 172.4 W',
      source: 'Ohm’s law, own inputs',
      status: 'own inputs, published formula',
      test: 'test/engine/lines/lines.test.ts',
    },
  ],
  example: {
    length: '2.6 ± 0.05 m',
    area: '50 ± 1 mm2',
    current: '160 ± 10 A',
    voltage: '358 ± 5 V',
    resistivity: '20.6 ± 0.5 nOhm.m',
    ways: 'exactly 2',
  },
});
