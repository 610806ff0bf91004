import { type Dimension, KIND_NAMES, type Kind, kindDef } from './kinds.ts';
import { parseUnit, type Unit } from './parse-unit.ts';
import { unitSymbol } from './unit-symbol.ts';

export const sameDimension = (a: Dimension, b: Dimension): boolean => a.every((n, i) => n === b[i]);

/** True when a number of this kind can be given in this unit. */
export function fitsKind(unit: Unit, kind: Kind): boolean {
  if (!sameDimension(unit.dim, kindDef(kind).dim)) return false;
  if (kind === 'angle') return unit.angle === 1;
  if (kind === 'count') return unit.angle === 0 && unit.factor === 1;
  return kind !== 'ratio' || unit.angle === 0;
}

/** What is wrong with this unit for this kind, naming both, or undefined when nothing is. */
export function unitProblem(code: string, kind: Kind): string | undefined {
  const unit = parseUnit(code);
  if (!unit)
    return `"${code}" is no unit known here; ${kindWords(kind)} is given in ${unitsOf(kind)}`;
  if (fitsKind(unit, kind)) return undefined;
  const other = KIND_NAMES.find((name) => fitsKind(unit, name));
  const is = other ? `a unit of ${kindWords(other)}` : 'a unit of something else';
  return `${unitSymbol(code) || '1'} is ${is}, not of ${kindWords(kind)} (${unitsOf(kind)})`;
}

const unitsOf = (kind: Kind): string =>
  kindDef(kind)
    .show.map((code) => unitSymbol(code) || 'a plain number')
    .join(', ');

/** `moneyPerMass` → "money per mass". */
export const kindWords = (kind: Kind): string => {
  const named: Partial<Record<Kind, string>> = {
    pressureAbs: 'absolute pressure',
    pressureDiff: 'pressure difference',
    tempAbs: 'temperature',
    tempDiff: 'temperature difference',
  };
  return named[kind] ?? kind.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`);
};

function unitFor(code: string, kind: Kind): Unit {
  const unit = parseUnit(code);
  if (unit && fitsKind(unit, kind)) return unit;
  throw new RangeError(unitProblem(code, kind));
}

const offsetFor = (unit: Unit, kind: Kind): number =>
  kindDef(kind).affine ? (unit.offset ?? 0) : 0;

/**
 * A number in the unit `code` as a number in the coherent SI unit of its kind. Only an absolute
 * temperature uses the offset of its scale: 20 Cel is 293.15 K, or a difference of 20 K.
 * @throws RangeError when the unit is unknown or of another dimension.
 */
export function toSi(x: number, code: string, kind: Kind): number {
  const unit = unitFor(code, kind);
  return (x * unit.times) / unit.over + offsetFor(unit, kind);
}

/**
 * A number in SI as a number in the unit `code`; the inverse of toSi.
 * @throws RangeError when the unit is unknown or of another dimension.
 */
export function fromSi(x: number, code: string, kind: Kind): number {
  const unit = unitFor(code, kind);
  return ((x - offsetFor(unit, kind)) * unit.over) / unit.times;
}

/** A standard uncertainty or other difference of a number of this kind, from SI: no offset. */
export function spreadFromSi(u: number, code: string, kind: Kind): number {
  const unit = unitFor(code, kind);
  return (u * unit.over) / unit.times;
}

/** A standard uncertainty or other difference of a number of this kind, to SI: no offset. */
export function spreadToSi(u: number, code: string, kind: Kind): number {
  const unit = unitFor(code, kind);
  return (u * unit.times) / unit.over;
}
