import { type PropertyId, propertyWords } from '../../study/index.ts';
import type { Finder, Found, ScalarInput, TabledValue } from '../method.ts';
import { chosen, stated } from '../structure/inputs.ts';

type Numbered = Omit<ScalarInput, 'in' | 'find' | 'where' | 'assumed'>;

/** A number that is a property of the zone asked about. */
export const ofZone = (input: Numbered, property: PropertyId): ScalarInput => ({
  in: 'scalar',
  ...input,
  where: `${propertyWords(property)} of the zone`,
  find: (at) => at.number(at.subject, property),
});

/** A property of the zone, else a marked value: `written` as people write it. */
export const ofZoneOr = (
  input: Numbered,
  property: PropertyId,
  written: string,
  value: TabledValue,
): ScalarInput => ({
  ...ofZone(input, property),
  where: `${propertyWords(property)} of the zone, else taken as ${written}`,
  assumed: written,
  find: (at) => readOr(at, property, value),
});

function readOr(at: Finder, property: PropertyId, value: TabledValue): Found {
  return at.view.properties(at.subject).includes(property)
    ? at.number(at.subject, property)
    : at.tabled(value);
}

const STATE = 'not in the record: state it';

export const VOLUME = ofZone(
  {
    ...{ name: 'V', symbol: 'V', kind: 'volume', unit: 'L', meaning: 'free volume' },
    ...{ range: [0.01, 1000], bounds: { above: 0 } },
  },
  'zone.volume',
);
export const TEST_TIME = ofZone(
  {
    ...{ name: 't', symbol: 't', kind: 'time', unit: 's', meaning: 'time of the reading' },
    ...{ range: [1, 36000], bounds: { above: 0 } },
  },
  'leak.time',
);
export const TEST_PRESSURE = ofZone(
  {
    ...{ name: 'p', symbol: 'p', kind: 'pressureAbs', unit: 'kPa' },
    ...{ meaning: 'absolute pressure in the test', range: [1, 1000], bounds: { above: 0 } },
  },
  'leak.pressure',
);
export const TEST_TEMPERATURE = ofZone(
  {
    ...{ name: 'T', symbol: 'T', kind: 'tempAbs', unit: 'Cel' },
    ...{ meaning: 'temperature of the gas', range: [-40, 90] },
  },
  'leak.temperature',
);
export const COMPLIANCE = ofZoneOr(
  {
    ...{ name: 'C', symbol: 'C', kind: 'volumeCompliance', unit: 'mL/kPa' },
    ...{ meaning: 'volume gained by a rise of pressure: walls that give way' },
    ...{ range: [0, 1000], bounds: { atLeast: 0 } },
  },
  'zone.compliance',
  'exactly 0 mL/kPa',
  {
    id: 'leak/rigid-walls',
    words: 'walls taken as rigid',
    x: 0,
    spread: { s: 'exact' },
    how: 'guessed',
    source: 'assumed where nothing is recorded',
  },
);

/** Gas temperature to which a stated flow belongs. */
export const FLOW_TEMPERATURE = chosen(
  {
    ...{ name: 'T', symbol: 'T', kind: 'tempAbs', unit: 'Cel' },
    ...{ meaning: 'temperature of the gas at which the flow is stated', range: [-40, 90] },
  },
  { written: 'exactly 20 Cel', x: 293.15 },
  'taken as 20 °C',
);
export const REFERENCE_TEMPERATURE = chosen(
  {
    ...{ name: 'Tref', symbol: 'Tₙ', kind: 'tempAbs', unit: 'Cel' },
    ...{ meaning: 'reference temperature of the standard volume', range: [0, 25] },
  },
  { written: 'exactly 0 Cel', x: 273.15 },
  'taken as 0 °C; some shops use 20 °C or 21.1 °C',
);
export const REFERENCE_PRESSURE = chosen(
  {
    ...{ name: 'pref', symbol: 'pₙ', kind: 'pressureAbs', unit: 'kPa' },
    ...{ meaning: 'reference pressure of the standard volume', range: [100, 102] },
    bounds: { above: 0 },
  },
  { written: 'exactly 101.325 kPa', x: 101325 },
  'taken as 1 atm',
);

export const GAS_FLOW = stated(
  {
    ...{ name: 'Q', symbol: 'Q', kind: 'gasFlow', unit: 'Pa.m3/s', meaning: 'leak' },
    ...{ range: [1e-9, 10], bounds: { atLeast: 0 } },
  },
  STATE,
);
export const HOLE = stated(
  {
    ...{ name: 'd', symbol: 'd', kind: 'length', unit: 'um', meaning: 'diameter of the hole' },
    ...{ range: [0.1, 3000], bounds: { above: 0 } },
  },
  STATE,
);
export const HOLE_LENGTH = stated(
  {
    ...{ name: 'L', symbol: 'L', kind: 'length', unit: 'mm' },
    ...{ meaning: 'length of the hole: width of the seal, thickness of the wall' },
    ...{ range: [0.05, 100], bounds: { above: 0 } },
  },
  STATE,
);
const pressure = (name: string, symbol: string, meaning: string): ScalarInput =>
  stated(
    {
      ...{ name, symbol, kind: 'pressureAbs', unit: 'kPa', meaning },
      ...{ range: [0, 1000], bounds: { atLeast: 0 } },
    },
    STATE,
  );
export const UPSTREAM = pressure('p1', 'p₁', 'absolute pressure before the hole');
export const DOWNSTREAM = pressure('p2', 'p₂', 'absolute pressure behind the hole');
export const GAS_VISCOSITY = chosen(
  {
    ...{ name: 'viscosity', symbol: 'η', kind: 'viscosity', unit: 'uPa.s' },
    ...{ meaning: 'viscosity of the gas', range: [5, 40], bounds: { above: 0 } },
  },
  { written: 'exactly 18.2 uPa.s', x: 18.2e-6 },
  'taken as that of air at 20 °C',
);
export const SURFACE_TENSION = chosen(
  {
    ...{ name: 'gamma', symbol: 'γ', kind: 'surfaceTension', unit: 'mN/m' },
    ...{ meaning: 'surface tension of the water', range: [20, 80], bounds: { above: 0 } },
  },
  { written: 'exactly 72.8 mN/m', x: 72.8e-3 },
  'taken as that of clean water at 20 °C',
);
