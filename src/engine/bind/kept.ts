import type { Id, StudyView } from '../../study/index.ts';
import type { LaidOut } from '../bound-inputs.ts';
import { Variables } from '../forms/variables.ts';
import type { Answer, Finder, Question, TableInput } from '../method.ts';
import type { Questions } from '../registry.ts';
import type { KeptTable } from './bind-table.ts';

/**
 * What is kept along a line of views for one set of questions and one rate book: bound tables,
 * answers of the latest revision, and the variables by whose numbers both go. All of it could be
 * worked out anew; it is dropped when more than readings has changed.
 */
export class Kept {
  readonly variables = new Variables();
  /** Rates looked up, by group and words. */
  readonly rates = new Map<string, ReturnType<Finder['rate']>>();
  readonly #answers = new Map<Question, Map<Id, Answer>>();
  readonly #laidOut = new Map<Question, Map<Id, LaidOut>>();
  readonly #tables = new Map<Question, Map<string, KeptTable>>();
  /** Questions that led back to themselves: such answers are not kept. */
  circles = 0;
  changes: number;

  constructor({ changes }: StudyView) {
    this.changes = changes;
  }

  /** Goes on to a later revision: its answers are to be worked out from what is bound. */
  follow({ changes }: StudyView): this {
    this.#answers.clear();
    this.changes = changes;
    return this;
  }

  answer(question: Question, subject: Id): Answer | undefined {
    return this.#answers.get(question)?.get(subject);
  }

  keepAnswer(question: Question, subject: Id, answer: Answer): void {
    within(this.#answers, question).set(subject, answer);
  }

  /** Where a tally keeps its rows laid out, for one question and subject. */
  laidOut(question: Question, subject: Id): LaidOut {
    const own = within(this.#laidOut, question);
    const held = own.get(subject) ?? {};
    own.set(subject, held);
    return held;
  }

  table(question: Question, input: TableInput, subject: Id): KeptTable | undefined {
    return this.#tables.get(question)?.get(`${input.name} ${subject}`);
  }

  keepTable(question: Question, input: TableInput, subject: Id, table: KeptTable): void {
    within(this.#tables, question).set(`${input.name} ${subject}`, table);
  }
}

/** The inner map of a key, made when it is new. */
function within<A, B, C>(map: Map<A, Map<B, C>>, key: A): Map<B, C> {
  const inner = map.get(key) ?? new Map<B, C>();
  map.set(key, inner);
  return inner;
}

const KEPT = new WeakMap<object, WeakMap<Questions, Map<string, Kept>>>();

/** What is kept for a view, brought up to its revision. */
export function keptFor(view: StudyView, questions: Questions, rates: string | undefined): Kept {
  const byQuestions = KEPT.get(view.line) ?? new WeakMap<Questions, Map<string, Kept>>();
  KEPT.set(view.line, byQuestions);
  const byRates = byQuestions.get(questions) ?? new Map<string, Kept>();
  byQuestions.set(questions, byRates);
  const held = byRates.get(rates ?? '');
  if (held && held.changes === view.changes) return held;
  const follows = held && held.changes < view.changes && !view.touchedSince(held.changes).more;
  const kept = follows ? held.follow(view) : new Kept(view);
  byRates.set(rates ?? '', kept);
  return kept;
}
