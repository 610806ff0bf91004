/**
 * Kinds of quantity. A kind is narrower than a dimension: a torque is no energy, an absolute
 * pressure is no pressure difference, an absolute temperature is affine.
 *
 * Exponents are over the SI base units in the order m, kg, s, A, K, mol, cd, followed by
 * money (the unit of account of a rate book), which is treated as a base unit of its own.
 */
export type Dimension = readonly [
  m: number,
  kg: number,
  s: number,
  A: number,
  K: number,
  mol: number,
  cd: number,
  money: number,
];

export interface KindDef {
  readonly dim: Dimension;
  /** UCUM code of the coherent SI unit in which the value is stored. */
  readonly si: string;
  /** UCUM codes offered to people, the usual one first. */
  readonly show: readonly [string, ...string[]];
  /** True when zero is not the zero of the dimension (degree Celsius). */
  readonly affine?: true;
}

const dim = (m = 0, kg = 0, s = 0, A = 0, K = 0, mol = 0, cd = 0, money = 0): Dimension => [
  m,
  kg,
  s,
  A,
  K,
  mol,
  cd,
  money,
];

/** Every kind of quantity the tool knows, with its dimension, its SI unit and the units shown. */
export const KINDS = {
  ratio: { dim: dim(), si: '1', show: ['1', '%'] },
  count: { dim: dim(), si: '1', show: ['1'] },
  angle: { dim: dim(), si: 'rad', show: ['deg', "'", 'rad', 'mrad'] },
  mass: { dim: dim(0, 1), si: 'kg', show: ['kg', 'g', '[lb_av]', 't'] },
  length: { dim: dim(1), si: 'm', show: ['mm', 'm', 'um', 'cm', '[in_i]', '[ft_i]'] },
  area: { dim: dim(2), si: 'm2', show: ['mm2', 'cm2', 'm2'] },
  volume: { dim: dim(3), si: 'm3', show: ['L', 'mm3', 'cm3', 'm3', 'mL'] },
  time: { dim: dim(0, 0, 1), si: 's', show: ['s', 'min', 'h', 'd', 'a'] },
  speed: { dim: dim(1, 0, -1), si: 'm/s', show: ['m/s', 'km/h', 'mm/s', 'm/min', '[mi_i]/h'] },
  acceleration: { dim: dim(1, 0, -2), si: 'm/s2', show: ['m/s2', '[g]'] },
  frequency: { dim: dim(0, 0, -1), si: 'Hz', show: ['Hz', '/min', '/s'] },
  force: { dim: dim(1, 1, -2), si: 'N', show: ['N', 'kN', '[lbf_av]'] },
  torque: { dim: dim(2, 1, -2), si: 'N.m', show: ['N.m', 'kN.m', '[lbf_av].[ft_i]'] },
  energy: { dim: dim(2, 1, -2), si: 'J', show: ['J', 'kJ', 'kW.h', 'W.h'] },
  power: { dim: dim(2, 1, -3), si: 'W', show: ['W', 'kW'] },
  pressureAbs: { dim: dim(-1, 1, -2), si: 'Pa', show: ['kPa', 'Pa', 'bar', 'mbar', '[psi]'] },
  pressureDiff: { dim: dim(-1, 1, -2), si: 'Pa', show: ['kPa', 'Pa', 'bar', 'mbar', '[psi]'] },
  gasFlow: {
    dim: dim(2, 1, -3),
    si: 'Pa.m3/s',
    show: ['Pa.m3/s', 'mbar.L/s', 'atm.cm3/s', 'mm[Hg].L/s'],
  },
  volumeFlow: { dim: dim(3, 0, -1), si: 'm3/s', show: ['cm3/min', 'L/min', 'L/h', 'm3/s'] },
  molarFlow: { dim: dim(0, 0, -1, 0, 0, 1), si: 'mol/s', show: ['umol/s', 'mol/s'] },
  volumeCompliance: { dim: dim(4, -1, 2), si: 'm3/Pa', show: ['mL/kPa', 'L/kPa', 'm3/Pa'] },
  viscosity: { dim: dim(-1, 1, -1), si: 'Pa.s', show: ['uPa.s', 'mPa.s', 'Pa.s'] },
  molarMass: { dim: dim(0, 1, 0, 0, 0, -1), si: 'kg/mol', show: ['g/mol', 'kg/mol'] },
  surfaceTension: { dim: dim(0, 1, -2), si: 'N/m', show: ['mN/m', 'N/m'] },
  stress: { dim: dim(-1, 1, -2), si: 'Pa', show: ['MPa', 'GPa', 'Pa'] },
  stiffness: { dim: dim(0, 1, -2), si: 'N/m', show: ['N/mm', 'kN/mm', 'N/m'] },
  lineLoad: { dim: dim(0, 1, -2), si: 'N/m', show: ['N/mm', 'N/m'] },
  flexuralRigidity: { dim: dim(2, 1, -2), si: 'N.m', show: ['N.m', 'kN.m'] },
  tempAbs: { dim: dim(0, 0, 0, 0, 1), si: 'K', show: ['Cel', 'K'], affine: true },
  tempDiff: { dim: dim(0, 0, 0, 0, 1), si: 'K', show: ['K'] },
  thermalExpansion: { dim: dim(0, 0, 0, 0, -1), si: '/K', show: ['um/m/K', '/K'] },
  thermalResistance: { dim: dim(0, -1, 3, 0, 1), si: 'm2.K/W', show: ['m2.K/W'] },
  secondMoment: { dim: dim(4), si: 'm4', show: ['cm4', 'mm4', 'm4'] },
  sectionModulus: { dim: dim(3), si: 'm3', show: ['cm3', 'mm3', 'm3'] },
  warpingConstant: { dim: dim(6), si: 'm6', show: ['cm6', 'mm6', 'm6'] },
  torsionalRigidity: { dim: dim(3, 1, -2), si: 'N.m2', show: ['N.m2', 'kN.m2'] },
  curvature: { dim: dim(-1), si: '/m', show: ['/m', '/mm'] },
  twistRate: { dim: dim(-1), si: 'rad/m', show: ['deg/m', 'rad/m'] },
  density: { dim: dim(-3, 1), si: 'kg/m3', show: ['kg/m3', 'g/cm3'] },
  arealMass: { dim: dim(-2, 1), si: 'kg/m2', show: ['kg/m2'] },
  lineMass: { dim: dim(-1, 1), si: 'kg/m', show: ['kg/m', 'g/m'] },
  massMoment: { dim: dim(1, 1), si: 'kg.m', show: ['kg.m', 'kg.mm'] },
  inertia: { dim: dim(2, 1), si: 'kg.m2', show: ['kg.m2'] },
  specificEnergy: { dim: dim(2, 0, -2), si: 'J/kg', show: ['W.h/kg', 'J/kg'] },
  energyDensity: { dim: dim(-1, 1, -2), si: 'J/m3', show: ['W.h/L', 'J/m3'] },
  diffusivity: { dim: dim(2, 0, -1), si: 'm2/s', show: ['mm2/s', 'm2/s'] },
  volumeRate: { dim: dim(3, 0, -1), si: 'm3/s', show: ['cm3/min', 'mm3/s', 'm3/s'] },
  timePerArea: { dim: dim(-2, 0, 1), si: 's/m2', show: ['s/mm2', 'min/cm2'] },
  timePerLength: { dim: dim(-1, 0, 1), si: 's/m', show: ['s/mm', 's/m'] },
  voltage: { dim: dim(2, 1, -3, -1), si: 'V', show: ['V', 'kV', 'mV'] },
  current: { dim: dim(0, 0, 0, 1), si: 'A', show: ['A', 'mA'] },
  charge: { dim: dim(0, 0, 1, 1), si: 'C', show: ['A.h', 'C'] },
  resistance: { dim: dim(2, 1, -3, -2), si: 'Ohm', show: ['Ohm', 'mOhm', 'kOhm', 'MOhm'] },
  resistivity: {
    dim: dim(3, 1, -3, -2),
    si: 'Ohm.m',
    show: ['nOhm.m', 'Ohm.mm2/m', 'Ohm.m'],
  },
  money: { dim: dim(0, 0, 0, 0, 0, 0, 0, 1), si: '{u}', show: ['{u}'] },
  moneyPerMass: { dim: dim(0, -1, 0, 0, 0, 0, 0, 1), si: '{u}/kg', show: ['{u}/kg'] },
  moneyPerTime: { dim: dim(0, 0, -1, 0, 0, 0, 0, 1), si: '{u}/s', show: ['{u}/h', '{u}/min'] },
  moneyPerArea: { dim: dim(-2, 0, 0, 0, 0, 0, 0, 1), si: '{u}/m2', show: ['{u}/m2'] },
  moneyPerEnergy: {
    dim: dim(-2, -1, 2, 0, 0, 0, 0, 1),
    si: '{u}/J',
    show: ['{u}/(kW.h)'],
  },
  moneyPerLength: { dim: dim(-1, 0, 0, 0, 0, 0, 0, 1), si: '{u}/m', show: ['{u}/m'] },
} as const satisfies Record<string, KindDef>;

export type Kind = keyof typeof KINDS;

declare const kindBrand: unique symbol;
/**
 * A plain number in coherent SI of one kind. Branded, so that an angle handed where a length is
 * wanted, or a mass where a force is, fails to compile.
 */
export type Si<K extends Kind> = number & { readonly [kindBrand]: K };

/** Brands a number already in the coherent SI unit of its kind. */
export const si = <K extends Kind>(_kind: K, x: number): Si<K> => x as Si<K>;

export const kindDef = (kind: Kind): KindDef => KINDS[kind];
export const isKind = (name: string): name is Kind => Object.hasOwn(KINDS, name);
export const KIND_NAMES = Object.keys(KINDS) as Kind[];
