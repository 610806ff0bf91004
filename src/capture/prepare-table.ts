import { waysOf } from './column-uses.ts';
import {
  DELIMITER_WORDS,
  DELIMITERS,
  type DecimalSign,
  type Delimiter,
  type Guess,
  guessDecimal,
  guessDelimiter,
  headRows,
} from './detect.ts';
import type { Setup } from './form-reader.ts';
import { isKnownHeading } from './headings.ts';
import { type Mapping, mapColumns, type Overrides } from './mapping.ts';
import type { Assumption } from './preview.ts';
import { Problems } from './problems.ts';
import { isQuantity, type TableForm } from './table-forms.ts';
import type { TableRequest } from './table-request.ts';
import type { TableAs } from './table-rows.ts';
import { type Head, readHead } from './text-source.ts';

/** How a table is to be read, before any of its rows is checked. */
export interface Prepared {
  readonly setup: Setup;
  readonly as: TableAs;
  readonly head: Head;
  readonly delimiter: Guess<Delimiter>;
  readonly decimal: Guess<DecimalSign>;
  /** Rows below the headings in the first piece of the file. */
  readonly firstRows: readonly (readonly string[])[];
}

const ROWS_LOOKED_AT = 200;

/**
 * Guesses how a table is written and what its columns hold; what is wrong so far goes to the
 * setup's problems.
 * @throws RefusalError when the file is empty or no text.
 */
export async function prepareTable(request: TableRequest): Promise<Prepared> {
  const overrides = request.overrides ?? {};
  const problems = new Problems(request.file);
  const head = await readHead(request.open, request.file);
  const isKnown = (heading: string) => isKnownHeading(request.form, heading);
  const delimiter = request.sheet
    ? ofSheet<Delimiter>(',')
    : guessDelimiter(head, isKnown, overrides.delimiter);
  const [headings = [], ...firstRows] = headRows(head, delimiter.value, ROWS_LOOKED_AT);
  const mapping =
    headings.length > 1
      ? mapColumns(request.form, headings, overrides, problems)
      : unmapped(request.form, headings);
  if (headings.length === 1) oneColumn(headings[0] ?? '', head, isKnown, problems);
  const decimal =
    request.sheet && overrides.decimal === undefined
      ? ofSheet<DecimalSign>('.')
      : guessDecimal(quantityCells(mapping, firstRows), overrides.decimal);
  const setup: Setup = {
    request,
    overrides,
    mapping,
    decimal: decimal.value,
    condition: request.condition ?? request.view.header.condition,
    frame: request.frame ?? 'vehicle',
    problems,
  };
  checkStudy(setup);
  if (request.sheet && overrides.delimiter) problems.add(noDelimiter(overrides.delimiter));
  checkWay(overrides, request.form, problems);
  checkSpreads(overrides, request.form, problems);
  const { encoding, newline } = head;
  const as: TableAs = {
    open: request.open,
    encoding,
    headings,
    delimiter: delimiter.value,
    newline,
  };
  return { setup, as, head, delimiter, decimal, firstRows };
}

const noDelimiter = (value: Delimiter) => ({
  ...{ row: 1, column: 'delimiter', value },
  why: 'nothing parts the cells of a workbook',
  next: 'Leave --delimiter out.',
});

/** Cells and numbers of a sheet have no signs of their own; they are written out with these. */
const ofSheet = <T>(value: T): Guess<T> => ({
  ...{ value, why: 'cells and numbers of a workbook', given: false, others: [] },
});

const unmapped = (form: TableForm, headings: readonly string[]): Mapping => ({
  form,
  headings,
  columns: [],
  column: () => undefined,
});

function oneColumn(
  heading: string,
  head: Head,
  isKnown: (heading: string) => boolean,
  problems: Problems,
): void {
  const better = guessDelimiter(head, isKnown);
  const columns = headRows(head, better.value, 1)[0]?.length ?? 1;
  const said = DELIMITERS.map((d) => DELIMITER_WORDS[d]).join(', ');
  problems.add({
    row: 1,
    column: heading,
    value: heading,
    why: 'the headings make one column only',
    next:
      columns > 1
        ? `A ${DELIMITER_WORDS[better.value]} would make ${columns} columns: --delimiter ${DELIMITER_WORDS[better.value]}.`
        : `Say what parts the cells (--delimiter ${said}), or save the table as CSV.`,
  });
}

/** Cells of the first rows that hold quantities, for the guess of the decimal sign. */
function quantityCells(mapping: Mapping, rows: readonly (readonly string[])[]): string[] {
  const isNumber = (field: string) => field === 'value' || field === 'u';
  const columns = mapping.columns.filter(
    (c) => c.field && (isQuantity(c.field) || isNumber(c.field.field)),
  );
  return rows.flatMap((row) => columns.map((c) => row[c.index] ?? ''));
}

const NEEDS_VEHICLE: ReadonlySet<TableForm> = new Set([
  'parts',
  'joints',
  'bags',
  'precedence',
  'assemblies',
  'modules',
  'removals',
  'element-times',
  'zones',
  'barriers',
  'crossings',
  'lines',
]);

function checkStudy({ request, problems }: Setup): void {
  if (!NEEDS_VEHICLE.has(request.form) || request.view.root()) return;
  problems.add({
    row: 1,
    column: 'parent',
    value: request.view.header.title,
    why: `the study has no vehicle that ${request.form} could belong to`,
    next: 'Import the table of readings that names the vehicle first.',
  });
}

function checkWay({ how, instrument }: Overrides, form: TableForm, problems: Problems): void {
  if (how !== 'measured' || instrument !== undefined || form === 'claims') return;
  problems.add({
    row: 1,
    column: 'how',
    value: how,
    why: 'a measured value needs an instrument',
    next: 'Name it: --instrument "scale B"; or say how else the values are known.',
  });
}

/** Where a row has a column for its own spread there is none that columns share. */
function checkSpreads({ spreads }: Overrides, form: TableForm, problems: Problems): void {
  const [first] = Object.entries(spreads ?? {});
  if (!first || form === 'parts' || form === 'joints') return;
  problems.add({
    row: 1,
    column: first[0],
    value: first[1],
    why: `a table of ${form} has no columns that share a spread`,
    next: 'Leave --spread out.',
  });
}

/** What holds for the whole table where it does not say it itself. */
export const assumptions = (setup: Setup): Assumption[] => [
  ...sheetTaken(setup.request),
  ...assumedOfValues(setup),
];

function sheetTaken({ sheet }: TableRequest): Assumption[] {
  if (!sheet) return [];
  const { sheet: value, others, given } = sheet;
  const why = others.length === 0 ? 'the only one' : `the first; others are ${others.join(', ')}`;
  return [{ what: 'sheet', value, why: given ? 'as you said' : why, given }];
}

function assumedOfValues(setup: Setup): Assumption[] {
  const { overrides, mapping, request } = setup;
  if (request.form === 'assemblies' || request.form === 'claims') return [];
  const ways = waysOf(overrides);
  const given = overrides.how !== undefined;
  const hasPosition = mapping.columns.some((c) => c.field?.property === 'position');
  return [
    {
      what: 'how values without an instrument are known',
      value: ways.without,
      why: given ? 'as you said' : 'the least that a written value claims',
      given,
    },
    {
      what: 'how values with an instrument are known',
      value: ways.withInstrument,
      why:
        given && overrides.instrument !== undefined
          ? 'as you said'
          : 'they name what they were read with',
      given: given && overrides.instrument !== undefined,
    },
    {
      what: 'condition',
      value: setup.condition,
      why: request.condition === undefined ? "the study's own" : 'as you said',
      given: request.condition !== undefined,
    },
    ...Object.entries(overrides.spreads ?? {}).map(([fields, share]) => ({
      what: `common relative spread of ${fields}`,
      value: share,
      why: 'as you said',
      given: true,
    })),
    ...(hasPosition
      ? [
          {
            what: 'frame of positions',
            value: setup.frame,
            why: request.frame === undefined ? 'X rearward, Y to the right, Z up' : 'as you said',
            given: request.frame !== undefined,
          },
        ]
      : []),
  ];
}
