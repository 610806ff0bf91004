import { FormBuilder, formUncertainty, type LinearForm } from '../../../quantity/index.ts';
import type { BoundLook, Cell, Found, FoundRow } from '../../method.ts';
import { listIn, moduleClosures } from '../module-closure.ts';
import { productOf } from '../product.ts';
import { BOLT_SPREAD, boltMass } from './fasteners.ts';
import type { JointEnds, MassModule, MassRecord, MassRow, WholeVehicle } from './mass-record.ts';

/** Relative spread taken for a mass that was written without one. */
const UNSTATED = 0.01;

/** Reads the bound inputs of a search for slips as a record. */
export function readRecord(bound: BoundLook): MassRecord {
  const parts = bound.tables.parts ?? [];
  const rows = parts.map(rowOf);
  const at = new Map(parts.map((row, i) => [row, i]));
  return {
    rows,
    modules: moduleClosures(bound).flatMap((closure): MassModule[] => {
      const holds = new Set(closure.rows.flatMap((row) => at.get(row) ?? []));
      return holds.size > 0 && closure.unknown.length === 0
        ? [{ label: closure.label, mass: closure.weighed, holds }]
        : [];
    }),
    whole: wholeOf(bound),
    tares: (bound.tables.tares ?? []).flatMap((row) => {
      const kg = formOf(row.cells.tare)?.x;
      return kg === undefined ? [] : [{ label: row.label, kg }];
    }),
    joints: (bound.tables.joints ?? []).map(jointOf),
  };
}

function rowOf(row: FoundRow): MassRow {
  const { number, name, assembly, instrument, written } = row.terms;
  const at = [row.cells.x, row.cells.y, row.cells.z].map(formOf);
  const [x, y, z] = at;
  const label = number?.text || row.label;
  return {
    number: label,
    label: row.label,
    name: name?.text ?? '',
    group: assembly?.text ?? '',
    mass: spreadForm(row.cells.mass, label),
    at: x && y && z ? [x, y, z] : undefined,
    pieces: formOf(row.cells.pieces)?.x ?? Number.NaN,
    instrument: instrument?.text ?? '',
    written: written?.text ?? '',
    ...expectedOf(row),
  };
}

/** A mass expected by other means than a scale; of no use without a spread. */
function expectedOf({ cells, terms }: FoundRow): Pick<MassRow, 'expected'> {
  const { expected, pieces } = cells;
  if (expected && !('missing' in expected) && !expected.unknownSpread && expected.form.x > 0)
    return {
      expected: { kg: expected.form.x, relative: formUncertainty(expected.form) / expected.form.x },
    };
  const bolts = boltMass(terms.name?.text ?? '', formOf(pieces)?.x ?? Number.NaN);
  return bolts === undefined ? {} : { expected: { kg: bolts, relative: BOLT_SPREAD } };
}

const formOf = (found: Found | undefined): LinearForm | undefined =>
  found === undefined || 'missing' in found ? undefined : found.form;

/** A mass with the spread taken for it where none was stated. */
function spreadForm(found: Found | undefined, label: string): LinearForm | undefined {
  if (found === undefined || 'missing' in found) return undefined;
  return found.unknownSpread ? withUnstated(found, label) : found.form;
}

function withUnstated({ form }: Cell, label: string): LinearForm {
  const spread = new FormBuilder().add(form).contribute(`unstated:${label}`, UNSTATED * form.x);
  return spread.done();
}

function jointOf(row: FoundRow): JointEnds {
  return {
    label: row.label,
    spec: row.terms.spec?.text ?? '',
    count: formOf(row.cells.count)?.x ?? Number.NaN,
    ends: listIn(row.terms.ends?.text ?? ''),
  };
}

/** Mass and moments of the whole vehicle, as far as its readings go. */
function wholeOf({ scalars }: BoundLook): WholeVehicle {
  const form = (name: string) => formOf(scalars[name]);
  const [fl, fr, rl, rr] = ['fl', 'fr', 'rl', 'rr'].map(form);
  if (!fl || !fr || !rl || !rr) return {};
  const sum = (...terms: readonly (readonly [LinearForm, number])[]) =>
    terms.reduce((made, [f, k]) => made.add(f, k), new FormBuilder()).done();
  const mass = sum([fl, 1], [fr, 1], [rl, 1], [rr, 1]);
  const [wheelbase, front, rear, height] = ['wheelbase', 'frontTrack', 'rearTrack', 'height'].map(
    form,
  );
  return {
    mass,
    ...(wheelbase ? { x: productOf(wheelbase, sum([rl, 1], [rr, 1])) } : {}),
    ...(front && rear
      ? { y: toRight(front, sum([fr, 1], [fl, -1]), rear, sum([rr, 1], [rl, -1])) }
      : {}),
    ...(height ? { z: productOf(mass, height) } : {}),
    ...(wheelbase && front && rear ? { wheels: wheelsAt(wheelbase.x, front.x, rear.x) } : {}),
  };
}

const toRight = (
  front: LinearForm,
  atFront: LinearForm,
  rear: LinearForm,
  atRear: LinearForm,
): LinearForm =>
  new FormBuilder().add(productOf(front, atFront), 0.5).add(productOf(rear, atRear), 0.5).done();

/** In the order front left, front right, rear left, rear right. */
const wheelsAt = (wheelbase: number, front: number, rear: number) => [
  { x: 0, y: -front / 2 },
  { x: 0, y: front / 2 },
  { x: wheelbase, y: -rear / 2 },
  { x: wheelbase, y: rear / 2 },
];
