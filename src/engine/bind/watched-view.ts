import type { Id, StudyView } from '../../study/index.ts';

/**
 * What a piece of binding has looked at: nodes whose readings it rests on, and whether it looked
 * at something that any change may move. Tree, links, rates and causes are not noted: where they
 * change everything is bound anew.
 */
export class Watch {
  volatile = false;
  /** The one node looked at, as with most rows; a set where there are more. */
  #only: Id | undefined;
  #more: Set<Id> | undefined;

  add(subject: Id): void {
    if (this.#more) this.#more.add(subject);
    else if (this.#only === undefined) this.#only = subject;
    else if (this.#only !== subject) this.#more = new Set([this.#only, subject]);
  }

  get subjects(): readonly Id[] {
    if (this.#more) return [...this.#more];
    return this.#only === undefined ? [] : [this.#only];
  }

  /** True when no readings were looked at but those of this node. */
  isOnly(subject: Id): boolean {
    return !this.volatile && !this.#more && (this.#only ?? subject) === subject;
  }
}

/** A view that notes what is read of it. */
export class WatchedView implements StudyView {
  #watch = new Watch();

  constructor(private readonly view: StudyView) {}

  /** Runs a piece of binding and says what it looked at. */
  during<T>(bind: () => T): { readonly made: T; readonly watch: Watch } {
    const outer = this.#watch;
    const watch = new Watch();
    this.#watch = watch;
    try {
      return { made: bind(), watch };
    } finally {
      this.#watch = outer;
    }
  }

  /** Notes that what is being bound rests on things that are not followed. */
  unfollowed(): StudyView {
    this.#watch.volatile = true;
    return this.view;
  }

  #of(subject: Id): StudyView {
    this.#watch.add(subject);
    return this.view;
  }

  get study() {
    return this.view.study;
  }
  get header() {
    return this.view.header;
  }
  get revision() {
    return this.unfollowed().revision;
  }
  get changes() {
    return this.unfollowed().changes;
  }
  get findings() {
    return this.unfollowed().findings;
  }
  get line() {
    return this.unfollowed().line;
  }
  touchedSince: StudyView['touchedSince'] = (changes) => this.unfollowed().touchedSince(changes);

  root: StudyView['root'] = () => this.view.root();
  node: StudyView['node'] = (id) => this.view.node(id);
  find: StudyView['find'] = (label) => this.view.find(label);
  children: StudyView['children'] = (id) => this.view.children(id);
  nodes: StudyView['nodes'] = (kind, under) => this.view.nodes(kind, under);
  links: StudyView['links'] = (kind, end) => this.view.links(kind, end);
  cause: StudyView['cause'] = (id) => this.view.cause(id);
  instrument: StudyView['instrument'] = (id) => this.view.instrument(id);
  instruments: StudyView['instruments'] = () => this.view.instruments();
  condition: StudyView['condition'] = (id) => this.view.condition(id);
  rates: StudyView['rates'] = (version) => this.view.rates(version);
  rateVersions: StudyView['rateVersions'] = () => this.view.rateVersions();

  cell: StudyView['cell'] = (subject, ...rest) => this.#of(subject).cell(subject, ...rest);
  readings: StudyView['readings'] = (subject, of) => this.#of(subject).readings(subject, of);
  properties: StudyView['properties'] = (subject) => this.#of(subject).properties(subject);

  reading: StudyView['reading'] = (id) => this.unfollowed().reading(id);
  claims: StudyView['claims'] = () => this.unfollowed().claims();
  ties: StudyView['ties'] = (claim) => this.unfollowed().ties(claim);
  photos: StudyView['photos'] = (subject) => this.unfollowed().photos(subject);
  photoMarks: StudyView['photoMarks'] = (photo) => this.unfollowed().photoMarks(photo);
  speeches: StudyView['speeches'] = () => this.unfollowed().speeches();
  drafts: StudyView['drafts'] = (speech) => this.unfollowed().drafts(speech);
  draft: StudyView['draft'] = (id) => this.unfollowed().draft(id);
  wordRules: StudyView['wordRules'] = () => this.unfollowed().wordRules();
  marks: StudyView['marks'] = () => this.unfollowed().marks();
  step: StudyView['step'] = (id) => this.unfollowed().step(id);
  gestures: StudyView['gestures'] = () => this.unfollowed().gestures();
}
