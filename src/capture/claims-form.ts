import { isWay, parseQuantity, spokenUnit, type Value, WAYS } from '../quantity/index.ts';
import type { Claim, Entry, Finding, Tie } from '../study/index.ts';
import { sentence, wrongSign } from './check-cells.ts';
import {
  type FormReader,
  LOCAL_TIME,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import type { Problem } from './problems.ts';
import { kindOfUnit } from './read-long-value.ts';

const TESTS = ['at least', 'at most'] as const;

/** Claims heard at the vehicle, with the question that is to answer them where one is named. */
export class ClaimsForm implements FormReader {
  readonly #setup: Setup;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #rows = new Map<string, number>();
  readonly #entries = new Map<number, readonly Entry[]>();
  #tied = 0;

  constructor(setup: Setup) {
    this.#setup = setup;
    this.#texts = rowTexts(setup.mapping);
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const claim = this.#claim(texts);
    const tie = 'why' in claim ? undefined : this.#tie(texts, claim);
    if ('why' in claim) this.#setup.problems.add(claim);
    else if (tie && 'why' in tie) this.#setup.problems.add(tie);
    else this.#keep(row, claim, tie);
  }

  #keep(row: number, claim: Claim, tie: Tie | undefined): void {
    this.#rows.set(claim.id, row);
    if (tie) this.#tied++;
    this.#entries.set(row, [
      { v: 1, e: 'claim.put', claim },
      ...(tie ? [{ v: 1, e: 'claim.tie', tie } as const] : []),
    ]);
  }

  #claim(texts: RowText): Claim | Problem {
    const [id, how] = [texts.text('id'), texts.text('how')];
    const subject = this.#setup.request.view.find(texts.text('subject'));
    const earlier = this.#rows.get(id);
    if (id === '') return texts.problem('id', 'the claim has no number', 'Give it one.');
    if (earlier !== undefined)
      return texts.problem(
        'id',
        `claim ${id} stands in row ${earlier} already`,
        'Give it another number.',
      );
    if (this.#setup.request.view.claims().some((c) => c.id === id))
      return texts.problem('id', `claim ${id} is in the study already`, 'Give it another number.');
    if (texts.text('words') === '')
      return texts.problem('words', 'the claim says nothing', 'Write what was said.');
    if (subject === undefined)
      return texts.problem(
        'subject',
        `there is no ${texts.text('subject')} in the study`,
        'Correct the number, or import the parts first.',
      );
    if (!isWay(how))
      return texts.problem('how', 'no such way of knowing', `Write one of ${WAYS.join(', ')}.`);
    if (!LOCAL_TIME.test(texts.text('at')))
      return texts.problem('at', 'the time can not be read', 'Write it as 2026-10-05T10:42.');
    return {
      id,
      words: texts.text('words'),
      how,
      by: texts.text('by'),
      heard: texts.text('at'),
      about: [subject.id],
      evidence: [],
    };
  }

  /** The question that is to answer the claim; none where the row names none. */
  #tie(texts: RowText, claim: Claim): Tie | Problem | undefined {
    const [question, output] = [texts.text('question'), texts.text('output')];
    if (question === '') return undefined;
    if (!this.#setup.request.knowsOutput?.(question, output) && this.#setup.request.knowsOutput)
      return texts.problem(
        'question',
        `no question ${question} has an output "${output}"`,
        'Correct the two, or leave the question empty and tie the claim later.',
      );
    const is = TESTS.find((test) => test === texts.text('is'));
    if (is === undefined)
      return texts.problem('is', 'no such test', `Write one of ${TESTS.join(', ')}.`);
    const value = this.#value(texts);
    if (typeof value !== 'number') return value;
    const asWritten = `${texts.text('value')} ${texts.text('unit')}`.trim();
    const subject = claim.about[0] ?? '';
    const id = this.#setup.request.ids();
    return { id, claim: claim.id, question, subject, output, test: { is, value, asWritten } };
  }

  /** What the claim is held against, in SI. */
  #value(texts: RowText): number | Problem {
    const unit = texts.text('unit') || '1';
    const kind = kindOfUnit(unit);
    if (kind === undefined)
      return texts.problem('unit', 'the unit is none known here', 'Write a unit such as kg or mm.');
    const wrong = wrongSign(texts.text('value'), this.#setup.decimal);
    if (wrong) return texts.problem('value', wrong.why, wrong.next);
    const code = spokenUnit(unit, kind) ?? unit;
    const read = parseQuantity(texts.text('value'), kind, {
      unit: code,
      decimal: this.#setup.decimal,
    });
    return read.ok ? read.value.x : texts.problem('value', read.why, sentence(read.next));
  }

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}
  opening = (): readonly Entry[] => [];

  entries = (chunk: RowChunk): readonly Entry[] =>
    chunk.rows.flatMap((_, i) => this.#entries.get(chunk.firstRow + i) ?? []);

  values = (): ReadonlyMap<number, Value> => new Map();
  counts = (): Readonly<Record<string, number>> => ({ claims: this.#rows.size, tied: this.#tied });
  notes = (): readonly Finding[] => [];
}
