import { spokenUnit, unitProblem } from '../quantity/index.ts';
import { FIELDS, type FieldDef, isQuantity, type MappedForm, plainHeading } from './table-forms.ts';

/** What a heading says: a field, perhaps with its unit, or a unit that does not fit it. */
export interface HeadingRead {
  readonly field: FieldDef;
  readonly unit?: string;
  readonly problem?: string;
}

/** `mass [kg]`, `mass (kg)`, `mass / kg`, `mass, kg`, `mass_kg`, `mass kg`. */
const WITH_UNIT: readonly { readonly shape: RegExp; readonly sure: boolean }[] = [
  { shape: /^(.+?)\s*\[([^\]]+)\]$/, sure: true },
  { shape: /^(.+?)\s*\(([^)]+)\)$/, sure: true },
  { shape: /^([^/]+?)\s*\/\s*(.+)$/, sure: false },
  { shape: /^(.+?),\s*([^,]+)$/, sure: false },
  { shape: /^(.+)[_\s]+([^_\s]+)$/, sure: false },
];

/** The field and unit that a heading names; undefined when it is none that the form knows. */
export function readHeading(form: MappedForm, heading: string): HeadingRead | undefined {
  const whole = knownField(form, heading);
  if (whole) return { field: whole };
  for (const { shape, sure } of WITH_UNIT) {
    const m = shape.exec(heading.trim());
    const field = m && knownField(form, m[1] ?? '');
    if (!m || !field || !isQuantity(field) || !field.kind) continue;
    const unit = spokenUnit(m[2] ?? '', field.kind);
    const problem = unit ? unitProblem(unit, field.kind) : undefined;
    if (unit && !problem) return { field, unit };
    if (sure && unit && problem) return { field, problem };
  }
  return undefined;
}

const knownField = (form: MappedForm, heading: string): FieldDef | undefined =>
  FIELDS[form].find((f) => f.known.includes(plainHeading(heading)));

/** The unit that ends a heading whose field the user gave. */
export function unitIn(heading: string, field: FieldDef): { unit?: string } {
  for (const { shape } of WITH_UNIT) {
    const written = shape.exec(heading.trim())?.[2];
    const unit = written && field.kind ? spokenUnit(written, field.kind) : undefined;
    if (unit && field.kind && !unitProblem(unit, field.kind)) return { unit };
  }
  return {};
}

/** True when headings name everything that each row of the form must give. */
export const hasRequired = (form: MappedForm, headings: readonly string[]): boolean => {
  const named = new Set(headings.map((heading) => readHeading(form, heading)?.field.field));
  return FIELDS[form].every((f) => !f.required || named.has(f.field));
};

/** True when a heading means something in this form. */
export const isKnownHeading = (form: MappedForm, heading: string): boolean =>
  readHeading(form, heading) !== undefined;
