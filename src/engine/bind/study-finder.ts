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
} from '../../study/index.ts';
import { formOfOut, modelsOf } from '../answer-forms.ts';
import { FormMaker } from '../forms/form-maker.ts';
import { IndexedForm } from '../forms/indexed-form.ts';
import type { Variables } from '../forms/variables.ts';
import type {
  Answer,
  Cell,
  Finder,
  Found,
  FoundTerm,
  MissingCell,
  Out,
  TabledValue,
  Variable,
  WrittenInputs,
} from '../method.ts';
import { nodeLabel } from '../node-label.ts';
import { cellOf, rateCell, tabledCell } from './cells.ts';
import { expiredRate } from './expired-rate.ts';
import type { WatchedView } from './watched-view.ts';

/** Answers a question asked from within another one; missing when there is no such output. */
export type AskWithin = (question: string, subject: Id) => Answer | string;

/** What a finder works with. */
export interface FinderSetting {
  readonly view: WatchedView;
  readonly subject: Id;
  readonly ratesVersion: string | undefined;
  readonly variables: Variables;
  readonly askWithin: AskWithin;
  /** Rates looked up before, by group and words. */
  readonly rates: Map<string, ReturnType<Finder['rate']>>;
  readonly over: WrittenInputs;
}

/** How far a finder had come, to tell what was found since. */
interface Mark {
  readonly read: number;
  readonly noted: number;
}

/** Finder over a study's view: remembers every cell that was looked at. */
export class StudyFinder implements Finder {
  readonly view: WatchedView;
  readonly subject: Id;
  readonly ratesVersion: string | undefined;
  readonly book: RateBook | undefined;
  readonly read: (InForce | Missing)[] = [];
  /** What was noted, and what the outputs lack that were asked of other questions. */
  readonly found: Finding[] = [];
  /** Errors of methods that come with the answers asked for, by number. */
  readonly models = new Map<number, Variable>();
  ratesUsed = false;
  #labelled: { readonly subject: Id; readonly label: string } | undefined;

  constructor(private readonly setting: FinderSetting) {
    this.view = setting.view;
    this.subject = setting.subject;
    this.ratesVersion = setting.ratesVersion;
    this.book = setting.view.rates(setting.ratesVersion);
  }

  /** Where it is now; rates used from here on are told apart. */
  mark(): Mark {
    this.ratesUsed = false;
    return { read: this.read.length, noted: this.found.length };
  }

  /** Takes out what was read and noted since. */
  since(mark: Mark): {
    readonly read: readonly (InForce | Missing)[];
    readonly noted: readonly Finding[];
    readonly ratesUsed: boolean;
  } {
    return {
      read: this.read.splice(mark.read),
      noted: this.found.splice(mark.noted),
      ratesUsed: this.ratesUsed,
    };
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
    return cellOf(got, component, this.view, label, this.setting.variables);
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
    const { variables } = this.setting;
    const form = new FormMaker(variables);
    let unknown = false;
    for (const part of parts) {
      if ('missing' in part) return { ...part, label };
      form.add(variables.form(part.form));
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
    const key = `${group}\n${words}`;
    const found = this.setting.rates.get(key) ?? this.#rate(group, words);
    this.setting.rates.set(key, found);
    const version = this.book?.version ?? '';
    const expired = 'missing' in found ? undefined : expiredRate(found.rate, version, this.view);
    if (expired) this.note(expired);
    return found;
  }

  #rate(group: string, words: string): ReturnType<Finder['rate']> {
    if (!this.book)
      return this.missing(rateWords(group), 'no rate book of this version in the study');
    const low = words.toLowerCase();
    const best = this.book.cells
      .filter((c) => inGroup(c.id, group))
      .flatMap((cell) =>
        cell.match
          .filter((m) => low.includes(m.toLowerCase()))
          .map((m) => ({ cell, length: m.length })),
      )
      .reduce((a, b) => (b.length > a.length ? b : a), { cell: undefined, length: 0 } as Match);
    if (!best.cell)
      return this.missing(
        `${rateWords(group)} ${words}`,
        `the rate book has no ${rateWords(group)} for "${words}"`,
      );
    return rateCell(best.cell, this.book.version, this.setting.variables);
  }

  ask(question: string, subject: Id, output: string): Found {
    this.view.unfollowed();
    const answer = this.setting.askWithin(question, subject);
    if (typeof answer === 'string')
      return this.missing(`${question}, ${this.labelOf(subject)}`, answer);
    const label = `${answer.title}, ${this.labelOf(subject)}`;
    const out = answer.outs[output];
    if (!out) return this.missing(label, `no ${output} could be worked out`);
    this.found.push(...gapsBehind(out, answer.findings));
    const form = this.setting.variables.form(formOfOut(out));
    for (const v of modelsOf(answer)) this.models.set(this.setting.variables.put(v), v);
    const place = { subject: label };
    const whole = out.u !== 'incomplete';
    return { form, how: 'calculated', place, label, ...(whole ? {} : { unknownSpread: true }) };
  }

  tabled(value: TabledValue): Cell {
    return tabledCell(value, this.setting.variables);
  }

  exact(x: number, label: string): Cell {
    const form = new IndexedForm(x, [], [], this.setting.variables);
    return { form, how: 'exact', place: { subject: label }, label };
  }

  missing(label: string, why: string): MissingCell {
    return { missing: true, place: { subject: label }, label, why };
  }

  node(label: string): Id | undefined {
    return this.view.find(label)?.id;
  }

  given(input: string): string {
    const text = this.setting.over[input];
    return typeof text === 'string' ? text.trim() : '';
  }

  note(finding: Finding): void {
    this.found.push(finding);
  }

  /** Number and name of a node; a row asks for it again and again. */
  labelOf(subject: Id): string {
    if (this.#labelled?.subject !== subject)
      this.#labelled = { subject, label: nodeLabel(this.view, subject) };
    return this.#labelled.label;
  }
}

/** The findings that say what an output lacks, of all that its answer found. */
function gapsBehind(out: Out, findings: readonly Finding[]): Finding[] {
  const places = new Set([...out.missing, ...out.unknownSpread].map(canonicalText));
  return findings.filter((f) => places.has(canonicalText(f.place)));
}

/** The group of a rate as it is said: `factor/overhead` is the "overhead factor". */
const rateWords = (group: string): string => group.split('/').reverse().join(' ');

/** `factor/yield` holds itself, `factor/yield stamping` and `factor/yield/stamping`. */
const inGroup = (id: string, group: string): boolean =>
  id === group || id.startsWith(`${group}/`) || id.startsWith(`${group} `);

interface Match {
  readonly cell: RateBook['cells'][number] | undefined;
  readonly length: number;
}
