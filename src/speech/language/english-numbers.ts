import type { LanguagePack, SpokenUnit } from './pack.ts';

const list = (words: string): string[] => words.split(' ');
const from = (start: number, words: string): Record<string, number> =>
  Object.fromEntries(list(words).map((word, i) => [word, start + i]));

export const ENGLISH_NUMBERS: LanguagePack['numbers'] = {
  small: from(
    0,
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen',
  ),
  tens: {
    twenty: 20,
    thirty: 30,
    forty: 40,
    fourty: 40,
    fifty: 50,
    sixty: 60,
    seventy: 70,
    eighty: 80,
    ninety: 90,
  },
  times: { hundred: 100, thousand: 1000, million: 1_000_000 },
  point: ['point', 'dot'],
  and: ['and', 'n'],
  one: ['a', 'an'],
  half: 'half',
  fractions: {
    half: 1 / 2,
    halves: 1 / 2,
    third: 1 / 3,
    thirds: 1 / 3,
    quarter: 1 / 4,
    quarters: 1 / 4,
    fifth: 1 / 5,
    tenth: 1 / 10,
    tenths: 1 / 10,
    eighth: 1 / 8,
    eighths: 1 / 8,
    sixteenth: 1 / 16,
    sixteenths: 1 / 16,
  },
  loose: { couple: 2, dozen: 12 },
  rangeBetween: ['or', 'to', 'till'],
  between: 'between',
};

const unit = (code: string, kind: SpokenUnit['kind'], said: string): SpokenUnit => ({
  code,
  kind,
  said: said.split(', '),
});

/** "mil" is short for the millimetre in a European workshop; a mil of an inch is said "thou". */
export const ENGLISH_UNITS: readonly SpokenUnit[] = [
  unit(
    'mm',
    'length',
    'mm, millimetre, millimetres, millimeter, millimeters, mil, mils, mill, mills, millie metres, milli metre, milli metres, milli meters',
  ),
  unit('cm', 'length', 'cm, centimetre, centimetres, centimeter, centimeters, centis'),
  unit('m', 'length', 'metre, metres, meter, meters'),
  unit('um', 'length', 'micron, microns, micrometre, micrometres'),
  unit('[in_i]', 'length', 'inch, inches'),
  unit('[ft_i]', 'length', 'foot, feet'),
  unit('[mil_i]', 'length', 'thou'),
  unit('kg', 'mass', 'kg, kgs, kilo, kilos, kilogram, kilograms, kilogramme, kilogrammes'),
  unit('g', 'mass', 'g, gram, grams, gramme, grammes'),
  unit('[lb_av]', 'mass', 'pound, pounds, lb, lbs'),
  unit('t', 'mass', 'tonne, tonnes'),
  unit('deg', 'angle', 'degree, degrees, °'),
  unit(
    'N.m',
    'torque',
    'newton metre, newton metres, newton meter, newton meters, newtonmetres, newtons metre, nm, n m',
  ),
  unit('N', 'force', 'newton, newtons'),
  unit('kN', 'force', 'kilonewton, kilonewtons, kilo newton, kilo newtons, kn'),
  unit(
    'N/mm',
    'stiffness',
    'newton per millimetre, newtons per millimetre, newtons per millimeter, newtons a millimetre, newtons per mil, newtons per mill',
  ),
  unit('bar', 'pressureDiff', 'bar, bars'),
  unit('kPa', 'pressureDiff', 'kilopascal, kilopascals, kilo pascal, kilo pascals, k pa, kpa'),
  unit('MPa', 'stress', 'megapascal, megapascals, mega pascals, mpa'),
  unit('L', 'volume', 'litre, litres, liter, liters'),
  unit('mL', 'volume', 'millilitre, millilitres, milliliters, ml'),
  unit('s', 'time', 'second, seconds, secs'),
  unit('min', 'time', 'minute, minutes, mins'),
  unit('h', 'time', 'hour, hours'),
  unit('V', 'voltage', 'volt, volts'),
  unit('A', 'current', 'amp, amps'),
  unit('A.h', 'charge', 'amp hour, amp hours, ah'),
  unit('kW', 'power', 'kilowatt, kilowatts, kw'),
  unit('W', 'power', 'watt, watts'),
  unit('kW.h', 'energy', 'kilowatt hour, kilowatt hours, kwh'),
  unit('W.h', 'energy', 'watt hour, watt hours'),
  unit(
    'W.h/kg',
    'specificEnergy',
    'watt hours per kilo, watt hours a kilo, watt hours per kilogram',
  ),
  unit('%', 'ratio', 'percent, per cent, %'),
  unit('{u}', 'money', 'units of account, units of money, u'),
];

/** A number without a unit beside one of these is in millimetres, as lengths are spoken. */
export const ENGLISH_SIZES: Readonly<Record<string, string>> = {
  thick: 'thickness',
  thickness: 'thickness',
  wall: 'thickness',
  wide: 'envelope.width',
  width: 'envelope.width',
  long: 'envelope.length',
  length: 'envelope.length',
  high: 'envelope.height',
  height: 'envelope.height',
  tall: 'envelope.height',
  deep: 'depth',
  depth: 'depth',
  diameter: 'diameter',
  across: 'width.across',
  gap: 'gap',
  pitch: 'pitch',
  apart: 'pitch',
};
