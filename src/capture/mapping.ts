import { spokenUnit, unitProblem, unitSymbol, type Way } from '../quantity/index.ts';
import type { DecimalSign, Delimiter } from './detect.ts';
import { readHeading, unitIn } from './headings.ts';
import type { Problems } from './problems.ts';
import { FIELDS, type FieldDef, isQuantity, type MappedForm, plainHeading } from './table-forms.ts';

/** What people say where a guess is not right. */
export interface Overrides {
  /** Heading to field; `skip` leaves a column out. */
  readonly columns?: Readonly<Record<string, string>>;
  /** Field or heading to a unit, as a UCUM code or as written. */
  readonly units?: Readonly<Record<string, string>>;
  readonly delimiter?: Delimiter;
  readonly decimal?: DecimalSign;
  /** Instrument of every quantity for which no column names one. */
  readonly instrument?: string;
  /** How values are known for which nothing else says it. */
  readonly how?: Way;
  /** Fields, parted by commas, to a relative spread that all their values share: "15 %". */
  readonly spreads?: Readonly<Record<string, string>>;
  /** Make the assemblies that rows name as parent and that are not in the study. */
  readonly makeAssemblies?: boolean;
}

/** What one column is taken for, and why. */
export interface ColumnGuess {
  /** 0-based. */
  readonly index: number;
  readonly column: string;
  /** Absent where the column is left out. */
  readonly field?: FieldDef;
  /** UCUM code. */
  readonly unit?: string;
  readonly why: string;
  /** Said by the user. */
  readonly given: boolean;
}

export interface Mapping {
  readonly form: MappedForm;
  readonly headings: readonly string[];
  readonly columns: readonly ColumnGuess[];
  /** The column that holds a field; undefined when none does. */
  column(field: string): ColumnGuess | undefined;
}

export const SKIP = 'skip';

/** Which column holds what, from its heading or as the user says. */
export function mapColumns(
  form: MappedForm,
  headings: readonly string[],
  overrides: Overrides,
  problems: Problems,
): Mapping {
  const asked = askedColumns(form, headings, overrides, problems);
  const columns = headings.map((column, index) =>
    withUnit(guessColumn(form, column, index, asked.get(index), problems), overrides, problems),
  );
  checkUnitNames(columns, overrides, problems);
  const mapping: Mapping = {
    form,
    headings,
    columns,
    column: (field) => columns.find((c) => c.field?.field === field),
  };
  checkFields(mapping, problems);
  return mapping;
}

type Asked = ReadonlyMap<number, FieldDef | typeof SKIP>;

function askedColumns(
  form: MappedForm,
  headings: readonly string[],
  overrides: Overrides,
  problems: Problems,
): Asked {
  const asked = new Map<number, FieldDef | typeof SKIP>();
  for (const [heading, name] of Object.entries(overrides.columns ?? {})) {
    const index = headings.findIndex(
      (h) => h === heading || plainHeading(h) === plainHeading(heading),
    );
    const field = name === SKIP ? SKIP : FIELDS[form].find((f) => f.field === name);
    if (index < 0) problems.add(noColumn(heading, headings));
    else if (!field) problems.add(noField(form, heading, name));
    else asked.set(index, field);
  }
  return asked;
}

const noColumn = (heading: string, headings: readonly string[]) => ({
  row: 1,
  column: heading,
  value: headings.join(' | '),
  why: `the table has no column "${heading}"`,
  next: 'Name one of its headings.',
});

const noField = (form: MappedForm, column: string, value: string) => ({
  row: 1,
  column,
  value,
  why: `a table of ${form} has no field "${value}"`,
  next: `Say one of ${FIELDS[form].map((f) => f.field).join(', ')}, or ${SKIP}.`,
});

function guessColumn(
  form: MappedForm,
  column: string,
  index: number,
  asked: FieldDef | typeof SKIP | undefined,
  problems: Problems,
): ColumnGuess {
  if (asked === SKIP) return { index, column, why: 'left out as you said', given: true };
  const read = readHeading(form, column);
  if (asked)
    return {
      index,
      column,
      field: asked,
      ...(isQuantity(asked) ? unitIn(column, asked) : {}),
      why: 'as you said',
      given: true,
    };
  if (!read)
    return { index, column, why: 'ignored unless mapped: the heading is not known', given: false };
  if (read.problem)
    problems.add({
      row: 1,
      column,
      value: column,
      why: read.problem,
      next: `Correct the heading, or say what is in the column: --column "${column}=…".`,
    });
  const { field, unit } = read;
  const why = `"${column}" is ${field.words}${unit ? `, in ${unitSymbol(unit)}` : ''}`;
  return { index, column, field, ...(unit ? { unit } : {}), why, given: false };
}

/** The unit that the user gave for the field or heading; counts need none. */
function withUnit(guess: ColumnGuess, overrides: Overrides, problems: Problems): ColumnGuess {
  const { field } = guess;
  if (!field?.kind || !isQuantity(field)) return guess;
  const said = saidUnit(guess, overrides);
  if (said === undefined)
    return guess.unit === undefined && field.kind === 'count' ? { ...guess, unit: '1' } : guess;
  const unit = spokenUnit(said, field.kind);
  const problem = unit ? unitProblem(unit, field.kind) : `"${said}" is no unit known here`;
  if (!problem && unit) return { ...guess, unit, why: `${guess.why}; unit as you said` };
  problems.add({
    row: 1,
    column: guess.column,
    value: said,
    why: problem ?? 'no unit',
    next: `Say another unit: --unit ${field.field}=…`,
  });
  return guess;
}

function saidUnit(guess: ColumnGuess, overrides: Overrides): string | undefined {
  const names = [guess.column, guess.field?.field, ...componentsOf(guess.field)];
  const units = Object.entries(overrides.units ?? {});
  return units.find(([name]) => names.includes(name))?.[1];
}

/** `position` stands for all three of its columns. */
const componentsOf = (field: FieldDef | undefined): readonly string[] =>
  field?.component === undefined || field.property === undefined ? [] : [field.property];

function checkUnitNames(
  columns: readonly ColumnGuess[],
  overrides: Overrides,
  problems: Problems,
): void {
  for (const [name, unit] of Object.entries(overrides.units ?? {})) {
    const named = columns.some(
      (c) =>
        c.field &&
        isQuantity(c.field) &&
        [c.column, c.field.field, ...componentsOf(c.field)].includes(name),
    );
    if (named) continue;
    const fields = columns.flatMap((c) => (c.field && isQuantity(c.field) ? [c.field.field] : []));
    problems.add({
      row: 1,
      column: name,
      value: unit,
      why: `no column of the table holds a quantity "${name}"`,
      next: `Give units for ${fields.join(', ') || 'none: no column holds a quantity'}.`,
    });
  }
}

/** One column for each field, and a column for each field that can't be done without. */
function checkFields(mapping: Mapping, problems: Problems): void {
  for (const field of FIELDS[mapping.form]) {
    const [first, second] = mapping.columns.filter((c) => c.field?.field === field.field);
    if (first && second)
      problems.add({
        row: 1,
        column: second.column,
        value: `${first.column} | ${second.column}`,
        why: `columns ${first.index + 1} and ${second.index + 1} both look like ${field.words}`,
        next: `Leave one out: --column "${second.column}=${SKIP}".`,
      });
    if (!first && field.required)
      problems.add({
        row: 1,
        column: field.field,
        value: mapping.headings.join(' | '),
        why: `no column holds the ${field.words}`,
        next: `Say which one does: --column "HEADING=${field.field}". Known headings are ${field.known.slice(0, 4).join(', ')}.`,
      });
  }
}
