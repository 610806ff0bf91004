import {
  type AbsentWhy,
  absentWhy,
  kindDef,
  type ParsedQuantity,
  parseQuantity,
  standardUncertainty,
  type Value,
  type Way,
} from '../../../src/quantity/index.ts';
import {
  type CellRef,
  type Entry,
  type Id,
  isMissing,
  propertyDef,
  propertyWords,
  type Reading,
  type Refusal,
  RefusalError,
  type StudyView,
  wrongValue,
} from '../../../src/study/index.ts';

/** A value typed in the browser. */
export interface CellEdit {
  readonly subject: Id;
  readonly property: string;
  /** `correct` withdraws what carries the value now; `again` lets it stand beside the new one. */
  readonly mode: 'correct' | 'again';
  /** As typed: one text, or one for each component of a position. */
  readonly written: readonly string[];
  readonly how: Way;
  readonly instrument: string;
  readonly note: string;
  /** Why the old value is wrong; wanted for `correct`. */
  readonly why: string;
}

/** What the edit needs from outside: fresh ids, the time, who. */
export interface EditContext {
  readonly by: string;
  readonly takenAt: Reading['takenAt'];
  readonly id: () => Id;
}

/**
 * The entries of an edit, and the words of its gesture.
 * @throws RefusalError naming the field and what to do when it can not be recorded.
 */
export function editEntries(
  view: StudyView,
  edit: CellEdit,
  context: EditContext,
): { words: string; entries: Entry[] } {
  const { subject, property, mode } = edit;
  const cell = view.cell(subject, property);
  const value = checkedValue(view, edit);
  const withdrawn: Entry[] =
    mode === 'correct' && !isMissing(cell)
      ? cell.from.map(({ reading }) => ({
          v: 1,
          e: 'reading.withdraw',
          id: reading.id,
          subject,
          why: edit.why.trim(),
        }))
      : [];
  const reading = newReading(cell.of, edit, value, context);
  const instrument = newInstrument(view, edit.instrument.trim());
  const verb = mode === 'correct' ? 'correct' : 'measure again';
  const label = view.node(subject)?.label ?? subject;
  return {
    words: `${verb} ${propertyWords(property)} of ${label}`,
    entries: [...instrument, ...withdrawn, { v: 1, e: 'reading.add', reading }],
  };
}

/** An instrument that the record does not know yet is named in it. */
const newInstrument = (view: StudyView, label: string): Entry[] =>
  label === '' || view.instrument(label)
    ? []
    : [{ v: 1, e: 'instrument.put', instrument: { id: label, label } }];

function newReading(of: CellRef, edit: CellEdit, value: Value, context: EditContext): Reading {
  const instrument = edit.instrument.trim();
  const note = edit.note.trim();
  return {
    id: context.id(),
    of,
    value,
    asWritten: edit.written.map((text) => text.trim()).join(', '),
    ...(note === '' ? {} : { note }),
    how: edit.how,
    by: context.by,
    takenAt: context.takenAt,
    ...(instrument === '' ? {} : { instrument }),
    evidence: [],
    causes: [],
  };
}

/** The value of an edit whose fields are all in order. @throws RefusalError with all that is not. */
function checkedValue(view: StudyView, edit: CellEdit): Value {
  const value = readOrRefused(view, edit);
  const [first, ...more] = [
    ...(value instanceof RefusalError ? value.refusals : []),
    ...wrongFields(view, edit),
  ];
  if (first) throw new RefusalError(first, ...more);
  if (value instanceof RefusalError) throw value;
  return value;
}

function readOrRefused(view: StudyView, edit: CellEdit): Value | RefusalError {
  try {
    const value = readValue(view, edit);
    const wrong = wrongValue(value, edit.property);
    const place = placeOf(view, edit);
    return wrong ? refuse(place, edit.written.join(', '), wrong.why, wrong.next) : value;
  } catch (error) {
    if (error instanceof RefusalError) return error;
    throw error;
  }
}

const placeOf = (view: StudyView, edit: CellEdit): Refusal['place'] => ({
  subject: view.node(edit.subject)?.label ?? edit.subject,
  property: edit.property,
});

/** What the fields beside the value lack. */
function wrongFields(view: StudyView, edit: CellEdit): Refusal[] {
  const place = placeOf(view, edit);
  const bad: Refusal[] = [];
  if (edit.how === 'measured' && edit.instrument.trim() === '' && !absentIn(edit.written))
    bad.push({
      code: 'bad-value',
      place: { ...place, column: 'instrument' },
      value: '',
      why: 'a measured value names no instrument',
      next: 'Name the instrument, or say how else the value is known.',
    });
  if (
    edit.mode === 'correct' &&
    edit.why.trim() === '' &&
    !isMissing(view.cell(edit.subject, edit.property))
  )
    bad.push({
      code: 'bad-value',
      place: { ...place, column: 'reason' },
      value: '',
      why: 'a correction gives no reason',
      next: 'Say in a few words what was wrong with the old value: it stays in the record, withdrawn.',
    });
  return bad;
}

/** Reads what was typed as a value of the property. @throws RefusalError. */
function readValue(view: StudyView, edit: CellEdit): Value {
  const absent = absentIn(edit.written);
  if (absent) return { t: 'absent', why: absent };
  const def = propertyDef(edit.property);
  const cell = view.cell(edit.subject, edit.property);
  const holds = def?.holds ?? (isMissing(cell) || cell.value.t !== 'text' ? 'scalar' : 'text');
  if (holds === 'text') return textValue(view, edit);
  const kind =
    def?.kind ?? (!isMissing(cell) && cell.value.t === 'scalar' ? cell.value.kind : 'ratio');
  const unit = def?.unit ?? kindDef(kind).show[0];
  const parsed = edit.written.map((text, i) => {
    const read = parseQuantity(text, kind, { unit });
    if (read.ok) return read;
    const column = holds === 'vector' ? 'XYZ'[i] : undefined;
    throw refuse(
      { ...placeOf(view, edit), ...(column ? { column } : {}) },
      text,
      read.why,
      read.next,
    );
  });
  const [first] = parsed;
  if (!first) throw new TypeError('an edit needs something written');
  if (holds === 'vector') return vectorValue(view, edit, parsed);
  return oneValue(first);
}

/** A number as read, as the value that is recorded: a count without a spread is exact. */
export function oneValue({ value }: ParsedQuantity): Value {
  if (value.kind !== 'count') return value;
  const { x, spread } = value;
  return { t: 'count', n: x, spread: spread.s === 'unknown' ? { s: 'exact' } : spread };
}

function textValue(view: StudyView, edit: CellEdit): Value {
  const text = (edit.written[0] ?? '').trim();
  if (text !== '') return { t: 'text', text };
  throw refuse(placeOf(view, edit), '', 'nothing is written', 'Write a word or two.');
}

/** Components typed one by one are taken as independent of each other. */
function vectorValue(view: StudyView, edit: CellEdit, parsed: readonly ParsedQuantity[]): Value {
  const old = view.cell(edit.subject, edit.property);
  const frame = !isMissing(old) && old.value.t === 'vector' ? old.value.frame : 'vehicle';
  const us = parsed.map(({ value }) => standardUncertainty(value.spread, value.x));
  const n = parsed.length;
  const cov = us.some((u) => u === undefined)
    ? []
    : Array.from({ length: n * n }, (_, k) =>
        k % (n + 1) === 0 ? (us[k / (n + 1)] ?? 0) ** 2 : 0,
      );
  const kind = parsed[0]?.value.kind ?? 'length';
  return { t: 'vector', kind, x: parsed.map(({ value }) => value.x), cov, frame };
}

/** Words that say why there is no value: written alone in the place of one. */
export const absentIn = (written: readonly string[]): AbsentWhy | undefined =>
  written.length === 1 ? absentWhy(written[0] ?? '') : undefined;

const refuse = (place: Refusal['place'], value: string, why: string, next: string): RefusalError =>
  new RefusalError({ code: 'bad-value', place, value, why, next });
