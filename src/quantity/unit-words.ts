import type { Kind } from './kinds.ts';
import { parseUnit } from './parse-unit.ts';
import { fitsKind } from './units.ts';

/**
 * What people write, by UCUM code, with hyphens for blanks. Words in small letters are also found
 * in capitals, where those mean nothing else.
 */
const WRITTEN: Readonly<Record<string, string>> = {
  '[lb_av]': 'lb lbs pound pounds lbm',
  '[oz_av]': 'oz ounce ounces',
  '[lbf_av]': 'lbf pound-force pounds-force',
  '[lbf_av].[ft_i]': 'ftlb lbft ft-lb ft-lbs lb-ft lbs-ft ftlbf lbfft',
  '[lbf_av].[in_i]': 'inlb lbin in-lb in-lbs lb-in inlbf lbfin',
  '[in_i]': 'in inch inches " ″ “ ”',
  '[ft_i]': 'ft foot feet',
  '[yd_i]': 'yd yds yard yards',
  '[mi_i]': 'mi mile miles',
  '[mi_i]/h': 'mph',
  '[mil_i]': 'mil mils thou',
  '[psi]': 'psi',
  '[HP]': 'hp horsepower',
  '[gal_us]': 'gal gallon gallons us-gal',
  '[qt_us]': 'qt quart quarts us-qt',
  "[in_i'Hg]": 'inHg',
  "[in_i'H2O]": 'inH2O',
  'm[H2O]': 'mH2O',
  'mm[H2O]': 'mmH2O',
  'cm[H2O]': 'cmH2O',
  'mm[Hg]': 'mmHg',
  kg: 'kg kgs kilo kilos',
  km: 'km',
  kW: 'kw',
  kN: 'kn',
  kPa: 'kpa',
  t: 'tonne tonnes ton-metric metric-ton metric-tons',
  gf: 'gf',
  '[g]': 'gₙ gn gee gees',
  mm: 'mm',
  cm: 'cm',
  um: 'micron microns',
  cm3: 'cc ccm',
  L: 'ltr',
  s: 'sec secs',
  min: 'mins',
  h: 'hr hrs',
  d: 'day days',
  a: 'yr yrs year years',
  wk: 'week weeks',
  'km/h': 'kph kmh kmph',
  '/min': 'rpm rev/min r/min',
  deg: '° degree degrees degs',
  "'": '′ arcmin',
  "''": '″″ arcsec',
  Cel: '°C ℃ degC deg-C degrees-C degrees-celsius degrees-Celsius degree-Celsius celsius',
  '[degF]': '°F ℉ degF deg-F degrees-F degrees-fahrenheit degrees-Fahrenheit fahrenheit',
  'N.m': 'Nm',
  'kN.m': 'kNm',
  'N.mm': 'Nmm',
  'W.h': 'Wh',
  'kW.h': 'kWh kwh',
  'MW.h': 'MWh',
  'A.h': 'Ah',
  'mA.h': 'mAh',
  'kg.m': 'kgm',
  kOhm: 'kohm kilohm kilohms',
  MOhm: 'megohm megohms',
  A: 'amp amps',
  '%': 'percent pct per-cent',
  '[ppth]': '‰',
  '[ppm]': 'ppm',
  '[ppb]': 'ppb',
  '{u}': 'u',
};

const WORDS: ReadonlyMap<string, string> = new Map(
  Object.entries(WRITTEN).flatMap(([code, words]) => words.split(' ').map((w) => [w, code])),
);

/** Full names that take the full names of prefixes and a plural s. */
const NAMES: Readonly<Record<string, string>> = {
  metre: 'm',
  meter: 'm',
  gram: 'g',
  gramme: 'g',
  second: 's',
  minute: 'min',
  hour: 'h',
  newton: 'N',
  pascal: 'Pa',
  joule: 'J',
  watt: 'W',
  volt: 'V',
  ampere: 'A',
  coulomb: 'C',
  ohm: 'Ohm',
  litre: 'L',
  liter: 'L',
  hertz: 'Hz',
  radian: 'rad',
  kelvin: 'K',
};
const PREFIX_NAMES: Readonly<Record<string, string>> = {
  micro: 'u',
  milli: 'm',
  centi: 'c',
  deci: 'd',
  hecto: 'h',
  kilo: 'k',
  mega: 'M',
  giga: 'G',
};
const FULL_NAME = new RegExp(
  `^(${Object.keys(PREFIX_NAMES).join('|')})?(${Object.keys(NAMES).join('|')})s?$`,
);

function fullName(word: string): string | undefined {
  const match = FULL_NAME.exec(word.toLowerCase());
  if (!match) return undefined;
  return `${PREFIX_NAMES[match[1] ?? ''] ?? ''}${NAMES[match[2] ?? ''] ?? ''}`;
}

const FORCES: Readonly<Record<string, string>> = { lb: '[lbf_av]', lbs: '[lbf_av]' };
const PIECES = Object.fromEntries(
  ['pc', 'pcs', 'piece', 'pieces', 'off', 'ea'].map((w) => [w, '1']),
);
const TEMPERATURES: Readonly<Record<string, string>> = { C: 'Cel', F: '[degF]' };

/** Words that mean something else for one kind: g of acceleration, " of an angle, pounds of force. */
const OF_KIND: Partial<Record<Kind, Readonly<Record<string, string>>>> = {
  acceleration: { g: '[g]' },
  angle: { '"': "''", '″': "''", '”': "''", '’': "'" },
  length: { "'": '[ft_i]', '′': '[ft_i]', '’': '[ft_i]' },
  force: FORCES,
  torque: FORCES,
  energy: FORCES,
  stiffness: FORCES,
  lineLoad: FORCES,
  count: PIECES,
  tempAbs: TEMPERATURES,
  tempDiff: TEMPERATURES,
};

function ofKind(word: string, kind: Kind | undefined): string | undefined {
  const words = kind && OF_KIND[kind];
  return words && Object.hasOwn(words, word) ? words[word] : undefined;
}

/**
 * The UCUM code of a unit as people write it: "lbs", "N·m", "Nm", "kWh", "°C", "millimetres",
 * "u/h", or a UCUM code itself; undefined when it is none. A `kind` settles words with two
 * meanings: "g" is a gram, but of an acceleration it is the standard one.
 */
export function spokenUnit(word: string, kind?: Kind): string | undefined {
  const plain = plainSigns(word);
  const hyphened = plain.replace(/ /g, '-');
  const codes = [
    ofKind(plain, kind),
    WORDS.get(plain),
    WORDS.get(hyphened),
    composed(plain, kind),
    plain,
    word.trim(),
    // Last, for capitals may be meant: MOhm is no mOhm.
    WORDS.get(hyphened.toLowerCase()),
  ].filter((code): code is string => !!code && parseUnit(code) !== undefined);
  return codes.find((code) => kind && fits(code, kind)) ?? codes[0];
}

function fits(code: string, kind: Kind): boolean {
  const unit = parseUnit(code);
  return unit !== undefined && fitsKind(unit, kind);
}

/** Superscripts, middle dots, micro signs and "per" as UCUM writes them; blanks single. */
const plainSigns = (word: string): string =>
  word
    .trim()
    .replace(/\b10(?=[⁰¹²³⁴⁵⁶⁷⁸⁹⁻])/, '10*')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹⁻]/g, (sign) => (sign === '⁻' ? '-' : String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(sign))))
    .replace(/₂/g, '2')
    .replace(/[\u00b5\u03bc]/g, 'u')
    .replace(/[\u2126\u03a9]/g, 'Ohm')
    .replace(/°\s+/g, '°')
    .replace(/−/g, '-')
    .replace(/\s*[·⋅∙×]\s*/g, '.')
    .replace(/(?<!10)[*^]/g, (sign) => (sign === '*' ? '.' : ''))
    .replace(/\s*\/\s*|\s+per\s+/gi, '/')
    .replace(/^1\//, '/')
    .replace(
      /\b(square|sq|cubic|cu)\.?\s+([a-z]+)/gi,
      (_all, power: string, name: string) =>
        `${name}${power.toLowerCase().startsWith('s') ? 2 : 3}`,
    )
    .replace(/\s+/g, ' ');

/** A product or quotient of words, each looked up by itself: "lb/ft", "newton metres". */
function composed(plain: string, kind: Kind | undefined): string | undefined {
  const parts = plain.replace(/ /g, '.').split(/([./()])/);
  let code = '';
  for (const part of parts) {
    if (/^\d/.test(part) && !/^10[*^]/.test(part)) return undefined;
    const one = part === '' || /^[./()]$/.test(part) ? part : wordWithPower(part, kind);
    const isProduct = code.endsWith('/') && /[./]/.test(one.slice(1));
    code += isProduct ? `(${one})` : one;
  }
  return code === plain ? undefined : code;
}

function wordWithPower(part: string, kind: Kind | undefined): string {
  const whole = unitOfWord(part, kind);
  if (whole !== undefined) return whole;
  const match = /^(.*?[^\d+-])([+-]?\d+)$/.exec(part);
  const name = match?.[1] && unitOfWord(match[1], kind);
  if (name) return `${name}${match?.[2]}`;
  return parseUnit(part) ? part : (WORDS.get(part.toLowerCase()) ?? part);
}

/** A word that is written otherwise than its code. */
const unitOfWord = (word: string, kind: Kind | undefined): string | undefined =>
  ofKind(word, kind) ?? WORDS.get(word) ?? fullName(word);
