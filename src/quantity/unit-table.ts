/**
 * The unit atoms and prefixes the tool knows, after the tables of the Unified Code for Units of
 * Measure (UCUM, case-sensitive codes). Each atom is `times × 10^exp` of its definition; whole
 * numbers and powers of ten are kept apart so that factors do not pick up binary rounding.
 *
 * Two departures, both on purpose: the mole is a base unit as in SI (UCUM makes it a number),
 * and money (`{u}`, see units.ts) is a base unit of ours.
 */
export interface AtomDef {
  /** UCUM expression in simpler atoms. */
  readonly is: string;
  readonly times?: number;
  readonly exp?: number;
  /** Takes metric prefixes. */
  readonly metric?: true;
  /** SI value of the unit's zero, for scales that do not start at zero. */
  readonly offset?: number;
}

/** Base atoms with their place in a Dimension; the gram is 10^-3 of the SI base unit. */
export const BASE_ATOMS: Readonly<Record<string, { readonly at: number; readonly exp?: number }>> =
  {
    m: { at: 0 },
    g: { at: 1, exp: -3 },
    s: { at: 2 },
    A: { at: 3 },
    K: { at: 4 },
    mol: { at: 5 },
    cd: { at: 6 },
  };

/** Place of money, written `{u}`, in a Dimension. */
export const MONEY_AT = 7;

export const ATOMS: Readonly<Record<string, AtomDef>> = {
  // Numbers
  '%': { is: '1', exp: -2 },
  '[pi]': { is: '1', times: Math.PI },
  '[ppth]': { is: '1', exp: -3 },
  '[ppm]': { is: '1', exp: -6 },
  '[ppb]': { is: '1', exp: -9 },
  // Angle (rad itself is built into the parser)
  deg: { is: 'rad/180', times: Math.PI },
  gon: { is: 'deg', times: 9, exp: -1 },
  "'": { is: 'deg/60' },
  "''": { is: "'/60" },
  // Time
  min: { is: 's', times: 60 },
  h: { is: 'min', times: 60 },
  d: { is: 'h', times: 24 },
  wk: { is: 'd', times: 7 },
  a: { is: 'd', times: 36525, exp: -2 },
  Hz: { is: 's-1', metric: true },
  // Mechanics
  t: { is: 'kg', exp: 3, metric: true },
  L: { is: 'dm3', metric: true },
  l: { is: 'dm3', metric: true },
  N: { is: 'kg.m/s2', metric: true },
  Pa: { is: 'N/m2', metric: true },
  bar: { is: 'Pa', exp: 5, metric: true },
  J: { is: 'N.m', metric: true },
  W: { is: 'J/s', metric: true },
  '[g]': { is: 'm/s2', times: 980665, exp: -5, metric: true },
  gf: { is: 'g.[g]', metric: true },
  atm: { is: 'Pa', times: 101325 },
  'm[H2O]': { is: 'kPa', times: 980665, exp: -5, metric: true },
  'm[Hg]': { is: 'kPa', times: 133322, exp: -3, metric: true },
  // Electricity and light
  C: { is: 'A.s', metric: true },
  V: { is: 'J/C', metric: true },
  Ohm: { is: 'V/A', metric: true },
  S: { is: 'A/V', metric: true },
  F: { is: 'C/V', metric: true },
  Wb: { is: 'V.s', metric: true },
  T: { is: 'Wb/m2', metric: true },
  H: { is: 'Wb/A', metric: true },
  // Temperature
  Cel: { is: 'K', metric: true, offset: 273.15 },
  '[degF]': { is: 'K/9', times: 5, offset: 45967 / 180 },
  // Inch, pound and what is made of them
  '[in_i]': { is: 'cm', times: 254, exp: -2 },
  '[ft_i]': { is: '[in_i]', times: 12 },
  '[yd_i]': { is: '[ft_i]', times: 3 },
  '[mi_i]': { is: '[ft_i]', times: 5280 },
  '[mil_i]': { is: '[in_i]', exp: -3 },
  '[sin_i]': { is: '[in_i]2' },
  '[sft_i]': { is: '[ft_i]2' },
  '[cin_i]': { is: '[in_i]3' },
  '[cft_i]': { is: '[ft_i]3' },
  '[gal_us]': { is: '[cin_i]', times: 231 },
  '[qt_us]': { is: '[gal_us]/4' },
  '[lb_av]': { is: 'kg', times: 45359237, exp: -8 },
  '[oz_av]': { is: '[lb_av]/16' },
  '[lbf_av]': { is: '[lb_av].[g]' },
  '[psi]': { is: '[lbf_av]/[sin_i]' },
  "[in_i'Hg]": { is: 'm[Hg].[in_i]/m' },
  "[in_i'H2O]": { is: 'm[H2O].[in_i]/m' },
  '[HP]': { is: '[ft_i].[lbf_av]/s', times: 550 },
  // Astronomy, for the published conversion cases only
  '[c]': { is: 'm/s', times: 299792458, metric: true },
  '[ly]': { is: '[c].a', metric: true },
};

/** Metric prefixes and their powers of ten. */
export const PREFIXES: Readonly<Record<string, number>> = {
  Y: 24,
  Z: 21,
  E: 18,
  P: 15,
  T: 12,
  G: 9,
  M: 6,
  k: 3,
  h: 2,
  da: 1,
  d: -1,
  c: -2,
  m: -3,
  u: -6,
  n: -9,
  p: -12,
  f: -15,
  a: -18,
  z: -21,
  y: -24,
};
