import {
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
  const value = readValue(view, edit);
  check(view, edit);
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

function check(view: StudyView, edit: CellEdit): void {
  const place = {
    subject: view.node(edit.subject)?.label ?? edit.subject,
    property: edit.property,
  };
  if (edit.how === 'measured' && edit.instrument.trim() === '')
    throw refuse(
      { ...place, column: 'instrument' },
      '',
      'a measured value names no instrument',
      'Name the instrument, or say how else the value is known.',
    );
  if (
    edit.mode === 'correct' &&
    edit.why.trim() === '' &&
    !isMissing(view.cell(edit.subject, edit.property))
  )
    throw refuse(
      { ...place, column: 'reason' },
      '',
      'a correction gives no reason',
      'Say in a few words what was wrong with the old value: it stays in the record, withdrawn.',
    );
}

/** Reads what was typed as a value of the property. @throws RefusalError. */
function readValue(view: StudyView, edit: CellEdit): Value {
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
      {
        subject: view.node(edit.subject)?.label ?? edit.subject,
        property: edit.property,
        ...(column ? { column } : {}),
      },
      text,
      read.why,
      read.next,
    );
  });
  const [first] = parsed;
  if (!first) throw new TypeError('an edit needs something written');
  if (holds === 'vector') return vectorValue(view, edit, parsed);
  if (kind !== 'count') return first.value;
  const { x, spread } = first.value;
  return { t: 'count', n: x, spread: spread.s === 'unknown' ? { s: 'exact' } : spread };
}

function textValue(view: StudyView, edit: CellEdit): Value {
  const text = (edit.written[0] ?? '').trim();
  if (text !== '') return { t: 'text', text };
  const subject = view.node(edit.subject)?.label ?? edit.subject;
  throw refuse(
    { subject, property: edit.property },
    '',
    'nothing is written',
    'Write a word or two.',
  );
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

const refuse = (place: Refusal['place'], value: string, why: string, next: string): RefusalError =>
  new RefusalError({ code: 'bad-value', place, value, why, next });
