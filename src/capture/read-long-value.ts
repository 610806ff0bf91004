import {
  ABSENT_WHYS,
  absentWhy,
  fitsKind,
  KIND_NAMES,
  type Kind,
  parseUnit,
  spokenUnit,
  unitProblem,
  type Value,
} from '../quantity/index.ts';
import {
  type CellRead,
  type ColumnUse,
  propertyDef,
  readCell,
  readVector,
} from '../study/index.ts';
import {
  BARE_NUMBER,
  OWN_SPREAD,
  sentence,
  TWO_SPREADS,
  wrongSign,
  wrongValue,
} from './check-cells.ts';
import type { RowText, Setup } from './form-reader.ts';
import type { Problem } from './problems.ts';

export interface LongValue {
  readonly value: Value;
  readonly asWritten: string;
}
export const isRefused = (read: LongValue | Problem): read is Problem => 'why' in read;

/**
 * The value of a row in long form, with its unit and spread from their own columns. What the
 * property means settles the kind of quantity; for others the unit does, and without a unit the
 * value is words. Three numbers parted by `;` are the components of a vector.
 */
export function readLongValue(texts: RowText, setup: Setup): LongValue | Problem {
  const text = texts.text('value');
  if (text === '')
    return texts.problem(
      'value',
      'the row has no value',
      `Give it, or say why there is none: ${ABSENT_WHYS.join(', ')}.`,
    );
  const absent = absentWhy(text);
  if (absent) return { value: { t: 'absent', why: absent }, asWritten: text };
  const def = propertyDef(texts.text('property'));
  const kind = def ? def.kind : kindOfUnit(texts.text('unit'));
  if (kind === undefined && !def && texts.text('unit') !== '') return noKind(texts);
  return kind === undefined
    ? readWords(texts)
    : readNumber(texts, kind, def?.holds === 'vector', setup);
}

/** The first kind that a unit fits; `1` is a ratio. */
export function kindOfUnit(written: string): Kind | undefined {
  const code = written === '' ? undefined : spokenUnit(written);
  const unit = code === undefined ? undefined : parseUnit(code);
  return unit && KIND_NAMES.find((kind) => fitsKind(unit, kind));
}

const noKind = (texts: RowText): Problem =>
  texts.problem(
    'unit',
    'the unit is none known here',
    'Write a unit such as kg, mm or N.m; or leave it empty for words, and 1 for a plain number.',
  );

function readWords(texts: RowText): LongValue | Problem {
  const text = texts.text('value');
  if (texts.text('unit') !== '' || texts.text('u') !== '')
    return texts.problem(
      texts.text('unit') === '' ? 'u' : 'unit',
      `${texts.text('property')} is told in words and has neither unit nor spread`,
      'Leave the unit and the uncertainty empty.',
    );
  if (/^[-+−]?[\d.,\s]+$/.test(text) && !propertyDef(texts.text('property'))) return noUnit(texts);
  return { value: { t: 'text', text }, asWritten: text };
}

const noUnit = (texts: RowText): Problem =>
  texts.problem('unit', 'the value has no unit', 'Write its unit; for a plain number write 1.');

interface Units {
  readonly unit?: string;
  readonly uUnit?: string;
}

function readNumber(
  texts: RowText,
  kind: Kind,
  isVector: boolean,
  setup: Setup,
): LongValue | Problem {
  const unit = unitCode(texts, 'unit', kind);
  const uUnit = unitCode(texts, 'u.unit', kind);
  const text = texts.text('value');
  const parts = isVector ? text.split(';').map((part) => part.trim()) : [text];
  if (typeof unit === 'object') return unit;
  if (typeof uUnit === 'object') return uUnit;
  if (isVector && parts.length !== 3)
    return texts.problem('value', 'a point has three numbers', 'Write X; Y; Z in one cell.');
  const units = { ...(unit ? { unit } : {}), ...(uUnit ? { uUnit } : {}) };
  return (
    wrongTexts(texts, parts, kind, setup) ??
    accepted(texts, readParts(texts, parts, kind, units, setup), parts.length)
  );
}

/** What can be told from the texts alone. */
function wrongTexts(
  texts: RowText,
  parts: readonly string[],
  kind: Kind,
  setup: Setup,
): Problem | undefined {
  const u = texts.text('u');
  const needsUnit = kind !== 'count' && kind !== 'ratio' && texts.text('unit') === '';
  if (needsUnit && parts.some((part) => BARE_NUMBER.test(part))) return noUnit(texts);
  if (u !== '' && parts.some((part) => OWN_SPREAD.test(part)))
    return texts.problem('value', TWO_SPREADS.why, TWO_SPREADS.next);
  const cells = [...parts.map((part) => ['value', part] as const), ['u', u] as const];
  for (const [field, cell] of cells) {
    const wrong = wrongSign(cell, setup.decimal);
    if (wrong) return texts.problem(field, wrong.why, wrong.next);
  }
  return undefined;
}

/** Reads the numbers as cells of a row, the last of which is the spread of them all. */
function readParts(
  texts: RowText,
  parts: readonly string[],
  kind: Kind,
  units: Units,
  setup: Setup,
): CellRead {
  const isVector = parts.length > 1;
  const uses = parts.map(
    (_, i): ColumnUse => ({
      use: 'property',
      property: texts.text('property'),
      kind,
      ...units,
      ...(isVector ? { component: i as 0 | 1 | 2 } : {}),
      uColumn: parts.length,
    }),
  );
  const { decimal, frame } = setup;
  const writing = { columns: [...uses, { use: 'skip' as const }], decimal, frame };
  const row = [...parts, texts.text('u')];
  return isVector ? readVector(row, [0, 1, 2], writing) : readCell(row, 0, writing);
}

function accepted(texts: RowText, cell: CellRead, uColumn: number): LongValue | Problem {
  if (cell.read === 'empty') return texts.problem('value', 'the row has no value', 'Give it.');
  if (cell.read === 'bad')
    return texts.problem(cell.column === uColumn ? 'u' : 'value', cell.why, sentence(cell.next));
  const wrong = wrongValue(texts.text('property'), cell.value);
  return wrong ? texts.problem('value', wrong.why, wrong.next) : cell;
}

/** The code of a written unit, undefined when none is written. */
function unitCode(
  texts: RowText,
  field: 'unit' | 'u.unit',
  kind: Kind,
): string | undefined | Problem {
  const written = texts.text(field);
  if (written === '') return undefined;
  // A spread is a difference, whatever scale its value is on.
  const of = field === 'u.unit' && kind === 'tempAbs' ? 'tempDiff' : kind;
  const code = spokenUnit(written, of) ?? written;
  const why = unitProblem(code, of);
  return why === undefined ? code : texts.problem(field, why, 'Write a unit of that kind.');
}
