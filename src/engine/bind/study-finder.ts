import { exactForm, FormBuilder } from '../../quantity/index.ts';
import {
  canonicalText,
  type Finding,
  type Id,
  type InForce,
  isMissing,
  type Missing,
  type PropertyId,
  propertyWords,
  type RateBook,
  type StudyView,
} from '../../study/index.ts';
import type {
  Answer,
  Cell,
  Finder,
  Found,
  FoundTerm,
  MissingCell,
  Out,
  TabledValue,
  WrittenInputs,
} from '../method.ts';
import { cellOf, rateCell, tabledCell, type Variables } from './variables.ts';

/** Answers a question asked from within another one; missing when there is no such output. */
export type AskWithin = (question: string, subject: Id) => Answer | string;

/** Finder over a study's view: remembers every cell that was looked at. */
export class StudyFinder implements Finder {
  readonly read: (InForce | Missing)[] = [];
  /** What was noted, and what the outputs lack that were asked of other questions. */
  readonly found: Finding[] = [];
  readonly #book: RateBook | undefined;
  ratesUsed = false;

  constructor(
    readonly view: StudyView,
    readonly subject: Id,
    readonly ratesVersion: string | undefined,
    private readonly variables: Variables,
    private readonly askWithin: AskWithin,
    private readonly over: WrittenInputs = {},
  ) {
    this.#book = view.rates(ratesVersion);
  }

  get book(): RateBook | undefined {
    return this.#book;
  }

  number(subject: Id, property: PropertyId, component: 0 | 1 | 2 = 0): Found {
    const got = this.view.cell(subject, property);
    this.read.push(got);
    const label = this.labelOf(subject);
    if (isMissing(got)) {
      const place = { subject: label, property };
      return {
        missing: true,
        place,
        label,
        why: `${propertyWords(property)}: ${this.#whyOf(got)}`,
      };
    }
    return cellOf(got, component, this.view, label, this.variables);
  }

  /** A reading in another condition is no reading in this one, but worth a word. */
  #whyOf(got: Missing): string {
    const live = this.view.readings(got.of.subject, got.of.property).filter((s) => !s.withdrawn);
    const elsewhere = live.find((s) => s.reading.of.condition !== got.of.condition);
    if (!elsewhere) return got.why;
    const [here, there] = [got.of.condition, elsewhere.reading.of.condition];
    return `read in the condition "${this.view.condition(there)}" only, not in "${this.view.condition(here)}"; unlike conditions are not mixed`;
  }

  sum(label: string, parts: readonly Found[]): Found {
    const form = new FormBuilder();
    let unknown = false;
    for (const part of parts) {
      if ('missing' in part) return { ...part, label };
      form.add(part.form);
      unknown ||= part.unknownSpread === true;
    }
    const place = { subject: label };
    return {
      form: form.done(),
      how: 'calculated',
      place,
      label,
      ...(unknown ? { unknownSpread: true } : {}),
    };
  }

  text(subject: Id, property: PropertyId): FoundTerm {
    const got = this.view.cell(subject, property);
    this.read.push(got);
    const place = { subject: this.labelOf(subject), property };
    if (isMissing(got)) return { text: '', how: 'missing', place };
    const v = got.value;
    const text = v.t === 'text' ? v.text : v.t === 'term' ? v.code : '';
    return { text, how: got.how, place };
  }

  word(text: string): FoundTerm {
    return { text, how: 'given', place: {} };
  }

  rate(group: string, words: string): ReturnType<Finder['rate']> {
    this.ratesUsed = true;
    if (!this.#book) return this.missing(group, 'no rate book of this version in the study');
    const low = words.toLowerCase();
    const best = this.#book.cells
      .filter((c) => inGroup(c.id, group))
      .flatMap((cell) =>
        cell.match
          .filter((m) => low.includes(m.toLowerCase()))
          .map((m) => ({ cell, length: m.length })),
      )
      .reduce((a, b) => (b.length > a.length ? b : a), { cell: undefined, length: 0 } as Match);
    if (!best.cell)
      return this.missing(`${group} ${words}`, `the rate book has no ${group} for "${words}"`);
    return rateCell(best.cell, this.#book.version, this.variables);
  }

  ask(question: string, subject: Id, output: string): Found {
    const answer = this.askWithin(question, subject);
    const label = `${question}, ${this.labelOf(subject)}`;
    if (typeof answer === 'string') return this.missing(label, answer);
    const out = answer.outs[output];
    if (!out) return this.missing(label, `no ${output} could be worked out`);
    for (const v of Object.values(answer.variables)) this.variables.all.set(v.id, v);
    this.found.push(...gapsBehind(out, answer.findings));
    const form = { x: out.x, by: new Map(out.linear) };
    const place = { subject: label };
    const whole = out.u !== 'incomplete';
    return { form, how: 'calculated', place, label, ...(whole ? {} : { unknownSpread: true }) };
  }

  tabled(value: TabledValue): Cell {
    return tabledCell(value, this.variables);
  }

  exact(x: number, label: string): Cell {
    return { form: exactForm(x), how: 'exact', place: { subject: label }, label };
  }

  missing(label: string, why: string): MissingCell {
    return { missing: true, place: { subject: label }, label, why };
  }

  node(label: string): Id | undefined {
    return this.view.find(label)?.id;
  }

  given(input: string): string {
    const text = this.over[input];
    return typeof text === 'string' ? text.trim() : '';
  }

  note(finding: Finding): void {
    this.found.push(finding);
  }

  labelOf(subject: Id): string {
    const node = this.view.node(subject);
    if (!node) return subject;
    return node.name === node.label ? node.label : `${node.label} ${node.name}`;
  }
}

/** The findings that say what an output lacks, of all that its answer found. */
function gapsBehind(out: Out, findings: readonly Finding[]): Finding[] {
  const places = new Set([...out.missing, ...out.unknownSpread].map(canonicalText));
  return findings.filter((f) => places.has(canonicalText(f.place)));
}

/** `factor/yield` holds itself, `factor/yield stamping` and `factor/yield/stamping`. */
const inGroup = (id: string, group: string): boolean =>
  id === group || id.startsWith(`${group}/`) || id.startsWith(`${group} `);

interface Match {
  readonly cell: RateBook['cells'][number] | undefined;
  readonly length: number;
}
