import { isWay, type Value, WAYS, type Way } from '../quantity/index.ts';
import {
  didYouMean,
  type Entry,
  type Finding,
  PROPERTIES,
  propertyDef,
  type Reading,
} from '../study/index.ts';
import { waysOf } from './column-uses.ts';
import {
  type FormReader,
  note,
  openCondition,
  putInstrument,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import type { Problem } from './problems.ts';
import { isRefused, readLongValue } from './read-long-value.ts';
import { RowSubjects } from './row-subjects.ts';

/** Readings in long form: a row says of what, which property, how much and how it is known. */
export class ReadingsForm implements FormReader {
  readonly #setup: Setup;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #subjects: RowSubjects;
  readonly #instruments = new Set<string>();
  readonly #conditions = new Set<string>();
  /** Properties without a meaning of their own, to the rows that have them first. */
  readonly #strange = new Map<string, number>();
  #rows = 0;

  constructor(setup: Setup) {
    this.#setup = setup;
    this.#texts = rowTexts(setup.mapping);
    this.#subjects = new RowSubjects(setup);
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const problem = this.#subjects.check(texts) ?? this.#wrongReading(texts);
    if (problem) this.#setup.problems.add(problem);
    this.#rows++;
  }

  #wrongReading(texts: RowText): Problem | undefined {
    const property = texts.text('property');
    if (property === '')
      return texts.problem('property', 'the row has no property', 'Say what was read, e.g. mass.');
    const value = readLongValue(texts, this.#setup);
    if (isRefused(value)) return value;
    const how = this.#how(texts);
    if (how === undefined)
      return texts.problem('how', 'no such way of knowing', `Write one of ${WAYS.join(', ')}.`);
    const instrument = this.#instrument(texts);
    if (how === 'measured' && instrument === '' && value.value.t !== 'absent')
      return texts.problem(
        'instrument',
        'a measured value names no instrument',
        'Name the instrument, or say how else the value is known.',
      );
    if (this.#isThere(texts, value.asWritten))
      return texts.problem(
        'value',
        'this very reading is in the study already, from this file and row',
        'Import each file once; a repeat of a measurement goes into a row or file of its own.',
      );
    if (instrument !== '') this.#instruments.add(instrument);
    this.#conditions.add(this.#condition(texts));
    if (!propertyDef(property) && !this.#strange.has(property))
      this.#strange.set(property, texts.row);
    return undefined;
  }

  /** The same row of the same file counted again would make its value look better known than it is. */
  #isThere(texts: RowText, asWritten: string): boolean {
    const { view, file } = this.#setup.request;
    const subject = view.find(texts.text('subject'));
    if (!subject) return false;
    return view
      .readings(subject.id, texts.text('property'))
      .some(
        ({ reading, withdrawn }) =>
          !withdrawn &&
          reading.asWritten === asWritten &&
          reading.source?.file === file &&
          reading.source.row === texts.row,
      );
  }

  #instrument = (texts: RowText): string =>
    texts.text('instrument') || (this.#setup.overrides.instrument ?? '');

  #condition = (texts: RowText): string => texts.text('condition') || this.#setup.condition;

  #how(texts: RowText): Way | undefined {
    const word = texts.text('how');
    if (word !== '') return isWay(word) ? word : undefined;
    const ways = waysOf(this.#setup.overrides);
    return this.#instrument(texts) === '' ? ways.without : ways.withInstrument;
  }

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}

  opening(): readonly Entry[] {
    const { view } = this.#setup.request;
    const instruments = [...this.#instruments].filter((label) => !view.instrument(label));
    return [
      ...[...this.#conditions].flatMap((id) => openCondition(id, view)),
      ...instruments.map(putInstrument),
      ...this.#subjects.entries(),
    ];
  }

  entries(chunk: RowChunk): readonly Entry[] {
    return chunk.rows.map((cells, i): Entry => {
      const reading = this.#reading(this.#texts(cells, chunk.firstRow + i));
      return { v: 1, e: 'reading.add', reading };
    });
  }

  #reading(texts: RowText): Reading {
    const { request, mapping } = this.#setup;
    const value = readLongValue(texts, this.#setup);
    const subject = this.#subjects.idOf(texts.text('subject'));
    const how = this.#how(texts);
    if (isRefused(value) || subject === undefined || how === undefined)
      throw new Error(`row ${texts.row} of ${request.file} passed the check and can not be read`);
    const instrument = this.#instrument(texts);
    const note = texts.text('note');
    return {
      id: request.ids(),
      of: { subject, property: texts.text('property'), condition: this.#condition(texts) },
      value: value.value,
      asWritten: value.asWritten,
      ...(note === '' ? {} : { note }),
      how,
      by: request.by,
      takenAt: request.takenAt,
      ...(instrument === '' ? {} : { instrument }),
      evidence: [],
      causes: [],
      source: {
        file: request.file,
        row: texts.row,
        column: mapping.column('value')?.column ?? 'value',
      },
    };
  }

  values(cells: readonly string[], row: number): ReadonlyMap<number, Value> {
    const value = readLongValue(this.#texts(cells, row), this.#setup);
    const column = this.#setup.mapping.column('value');
    return new Map(column && !isRefused(value) ? [[column.index, value.value]] : []);
  }

  counts = (): Readonly<Record<string, number>> => ({
    readings: this.#rows,
    'subjects made': this.#subjects.made,
    instruments: this.#instruments.size,
  });

  notes = (): readonly Finding[] => [
    ...this.#subjects.notes(),
    ...[...this.#strange].map(([property, row]) =>
      note(
        { file: this.#setup.request.file, row, column: 'property' },
        `the property ${property} has no meaning of its own here; its readings are kept and shown`,
        `${didYouMean(
          property,
          PROPERTIES.map((p) => p.id),
        )}Correct the word where it was meant to be one of: ${PROPERTIES.map((p) => p.id).join(', ')}.`,
        property,
      ),
    ),
  ];
}
