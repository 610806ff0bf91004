import { materialOf } from '../../data/index.ts';
import { standardUncertainty } from '../../quantity/index.ts';
import type { DetailTable, PlainRow } from '../method.ts';
import { isotropicShear } from './fibre-mixture.ts';
import { bentPlate } from './plate-bending.ts';
import { bendingStiffness, ribStiffness, type Skins, skinExponent } from './skins.ts';
import { strikeOf, unitStrike } from './strike.ts';

/** What all designs share: sides of the floor, and of the square struck at its middle; m. */
export interface Floor {
  readonly length: number;
  readonly width: number;
  readonly patch: number;
}

/** One design of a floor, worked out; SI. */
export interface Design {
  readonly name: string;
  readonly needs: string;
  readonly skins: Skins;
  readonly d: number;
  readonly ribs: number;
  readonly gt: number;
  readonly arealMass: number;
  readonly mass: number;
  readonly price: number;
  readonly edge: number;
  /** Elastic work until the face reaches its limit, J; empty without a limit. */
  readonly strike: number | '';
  /** Deflection at that, in thicknesses. */
  readonly struck: number | '';
  readonly resistance: number | '';
  readonly growth: number | '';
}

/** An optional cell: nothing when it is empty. */
const orNone = (cell: number | string | undefined): number =>
  typeof cell === 'number' && Number.isFinite(cell) ? cell : 0;

/** Works out a row of the table of designs for a floor. */
export function designOf(row: PlainRow, floor: Floor): Design {
  const { length, width } = floor;
  const [t, core, modulus] = [Number(row.thickness), orNone(row.core), Number(row.modulus)];
  const [density, poisson] = [Number(row.density), Number(row.poisson)];
  const skins = { top: t / 2, bottom: t / 2, core, modulus, poisson };
  const coreMass = orNone(row.coreMass);
  const arealMass = density * t + coreMass;
  const material = materialOf(String(row.material ?? ''));
  const expansion = material?.expansion?.x;
  return {
    name: String(row.design),
    needs: String(row.needs ?? ''),
    skins,
    d: bendingStiffness(skins),
    ribs: ribStiffness(skins, coreMass, density),
    gt: isotropicShear(modulus, poisson) * t,
    arealMass,
    mass: arealMass * length * width + orNone(row.beside),
    price: orNone(row.price),
    edge: orNone(row.edge),
    ...struckBy(skins, orNone(row.limit), floor),
    resistance: resistanceOf(t, core, coreMass / density, material?.conductivity?.x),
    growth: expansion === undefined ? '' : 1e3 * expansion * length,
  };
}

const SUPPORTED = { x0: 'supported', xa: 'supported', y0: 'supported', yb: 'supported' } as const;

/** Elastic work of a floor supported on all edges, pressed on a square at its middle. */
function struckBy(
  s: Skins,
  limit: number,
  { length, width, patch }: Floor,
): Pick<Design, 'strike' | 'struck'> {
  const none = { strike: '', struck: '' } as const;
  if (!(limit > 0) || !(patch <= Math.min(length, width))) return none;
  const square = { x: length / 2, y: width / 2, u: patch, v: patch };
  const bent = bentPlate(length, width, 0, SUPPORTED, { on: 'patch', ...square });
  if (!bent) return none;
  const at = { a: length, b: width, u: patch, v: patch };
  const unit = unitStrike(bent, at, s.poisson, SUPPORTED, 'first yield');
  const depth = s.top + s.core + s.bottom;
  const { work, w } = strikeOf(unit, bendingStiffness(s), depth, limit / s.modulus);
  return { strike: work, struck: w / depth };
}

/** Thermal resistance through a floor, m²·K/W: skins, and ribs as straight conductors. */
function resistanceOf(t: number, core: number, ribs: number, k: number | undefined): number | '' {
  if (k === undefined || (core > 0 && ribs === 0)) return '';
  return core > 0 ? (t + core ** 2 / ribs) / k : t / k;
}

/** Relative standard uncertainty of a material's conductivity; undefined when it is not known. */
export function conductivitySpread(material: string): number | undefined {
  const k = materialOf(material)?.conductivity;
  const u = k && standardUncertainty(k.spread, k.x);
  return k && u !== undefined ? u / k.x : undefined;
}

/** All designs side by side. */
export const optionsTable = (designs: readonly Design[]): DetailTable => ({
  title: 'Options, as built first',
  columns: [
    { name: 'design' },
    { name: 'D, skins', kind: 'flexuralRigidity', unit: 'N.m' },
    { name: 'ribs, along them', kind: 'flexuralRigidity', unit: 'N.m' },
    { name: 'exponent of D in the thickness' },
    { name: 'G t', kind: 'stiffness', unit: 'kN/mm' },
    { name: 'mass for an area', kind: 'arealMass', unit: 'kg/m2' },
    { name: 'mass with what it needs', kind: 'mass', unit: 'kg' },
    { name: 'needs beside it' },
    { name: 'price of that', kind: 'money', unit: '{u}' },
    { name: 'edge to trim or seal', kind: 'length', unit: 'm' },
    { name: 'strike work', kind: 'energy', unit: 'J' },
    { name: 'deflection at that, in thicknesses' },
    { name: 'thermal resistance', kind: 'thermalResistance', unit: 'm2.K/W' },
    { name: 'growth of its length, mm/K' },
  ],
  rows: designs.map((o) => [
    o.name,
    o.d,
    o.ribs,
    skinExponent(o.skins),
    o.gt,
    o.arealMass,
    o.mass,
    o.needs || 'nothing named',
    o.price,
    o.edge,
    o.strike,
    o.struck,
    o.resistance,
    o.growth,
  ]),
});
