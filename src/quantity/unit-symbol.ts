import { PREFIXES } from './unit-table.ts';

/** Atoms whose printed sign is not their UCUM code. */
const SIGNS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    deg: '°',
    "'": '′',
    "''": '″',
    Ohm: 'Ω',
    Cel: '°C',
    '[degF]': '°F',
    '[g]': 'gₙ',
    '[pi]': 'π',
    '[ppth]': '‰',
    '[ppm]': 'ppm',
    '[ppb]': 'ppb',
    '[in_i]': 'in',
    '[ft_i]': 'ft',
    '[yd_i]': 'yd',
    '[mi_i]': 'mi',
    '[mil_i]': 'mil',
    '[sin_i]': 'sq in',
    '[sft_i]': 'sq ft',
    '[cin_i]': 'cu in',
    '[cft_i]': 'cu ft',
    '[gal_us]': 'US gal',
    '[qt_us]': 'US qt',
    '[lb_av]': 'lb',
    '[oz_av]': 'oz',
    '[lbf_av]': 'lbf',
    '[psi]': 'psi',
    '[HP]': 'hp',
    'm[H2O]': 'mH₂O',
    'm[Hg]': 'mHg',
    "[in_i'Hg]": 'inHg',
    "[in_i'H2O]": 'inH₂O',
    '[c]': 'c',
    '[ly]': 'ly',
  }),
);

const SUPERSCRIPTS: Readonly<Record<string, string>> = Object.fromEntries(
  [...'⁰¹²³⁴⁵⁶⁷⁸⁹'].map((sign, digit) => [String(digit), sign]).concat([['-', '⁻']]),
);
const superscript = (power: string): string =>
  [...power].map((c) => SUPERSCRIPTS[c] ?? '').join('');

/** A run of a code: a power of ten, an annotation, an atom with its exponent (and a remark, which is not printed), or a dot. */
const CODE_PART =
  /10[*^]([+-]?\d*)|\{([^}]*)\}|((?:\[[^\]]+\]|[A-Za-z%'])+)([+-]?\d*)(?:\{[^}]*\})?|\./g;

/**
 * A unit as it is printed: `N.m` as "N·m", `mm2` as "mm²", `{u}/kg` as "u/kg", `Cel` as "°C";
 * the number one has no sign.
 */
export function unitSymbol(code: string): string {
  if (code === '1') return '';
  const symbol = code.replace(CODE_PART, (_part, ten, note, atom, power) => {
    if (ten !== undefined) return `10${superscript(ten)}`;
    if (note !== undefined) return note;
    return atom === undefined ? '·' : `${atomSign(atom)}${superscript(power)}`;
  });
  return symbol.startsWith('/') ? `1${symbol}` : symbol;
}

function atomSign(atom: string): string {
  const whole = SIGNS.get(atom);
  if (whole) return whole;
  const prefix = [atom.slice(0, 2), atom.slice(0, 1)].find(
    (p) => p in PREFIXES && (p.length === 1 || p === 'da'),
  );
  if (!prefix) return atom;
  const rest = atom.slice(prefix.length);
  // `min` and `mol` are no prefixed units; `um` and `mOhm` are.
  if (!SIGNS.has(rest) && prefix !== 'u') return atom;
  return `${prefix === 'u' ? 'µ' : prefix}${SIGNS.get(rest) ?? rest}`;
}
