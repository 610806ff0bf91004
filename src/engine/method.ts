import type { Kind, LinearForm, Spread, VariableId, Way } from '../quantity/index.ts';
import type {
  Cause,
  CellRef,
  Finding,
  Id,
  InForce,
  NodeKind,
  Place,
  PropertyId,
  RateCell,
  StudyView,
} from '../study/index.ts';
import type { Figure } from './figure.ts';

/**
 * What a question is. One file defines one question and default-exports it; the registry, the
 * command line, the HTTP API, the web form and answer card, the methods pages and the report's
 * appendix are all made from it. See docs/methods/adding-a-question.md.
 */
export interface Question {
  /** Kebab case, equal to the file's name. */
  readonly id: string;
  /** Raised when the same inputs can give another answer. */
  readonly version: number;
  /** The question in the client's words, ending in a question mark. */
  readonly wording: string;
  /** A few words for a table of contents. */
  readonly title: string;
  /** Kind of node it is asked of. */
  readonly subject: NodeKind | 'study';
  readonly inputs: readonly InputSpec[];
  readonly body: Body;
  /** Checks on the bound inputs beside the ranges: what is outside the method's validity. */
  readonly valid?: (x: PlainInputs) => readonly Finding[];
  /** Typical error of the method itself, for each output that has one. */
  readonly modelError: Readonly<Record<string, ModelError>>;
  readonly sources: readonly Source[];
  readonly assumptions: readonly string[];
  /** Ids in data/cautions.ts, or the caution itself. */
  readonly cautions: readonly (string | Caution)[];
  /** Checks against something outside the project; never empty. */
  readonly checks: readonly [CheckRef, ...CheckRef[]];
  /** A complete set of plain inputs, as people would write them: for help, forms and tests. */
  readonly example: WrittenInputs;
  /** Section of reports and pages in which it stands. */
  readonly section: Section;
  /** Questions whose answers it reads through Finder.ask. */
  readonly uses?: readonly string[];
  /**
   * Asked of the node somebody names, or by a claim; never of every node of its kind when a
   * whole study is answered.
   */
  readonly onRequest?: true;
  /**
   * Looks once at the bound inputs with their spreads, for a search or a table that needs more
   * than nominal numbers. Its table stands in the place of the body's.
   */
  readonly look?: (bound: BoundLook, run: Run) => Looked;
  /**
   * What it draws beside its numbers, from the nominal inputs, the results and the answer's
   * table. Must not throw: a figure with a number that is none is left out and found. Results
   * that decide and sums of groups are drawn without it.
   */
  readonly figures?: (
    x: PlainInputs,
    outs: Readonly<Record<string, Out>>,
    detail: DetailTable | undefined,
  ) => readonly Figure[];
}

/** Inputs as they were bound: cells with their linear forms. */
export interface BoundLook {
  readonly scalars: Readonly<Record<string, Found>>;
  readonly terms: Readonly<Record<string, FoundTerm>>;
  readonly tables: Readonly<Record<string, readonly FoundRow[]>>;
}
export interface Looked extends Pick<Solved, 'findings' | 'detail'> {
  /** Tables beside the first one. */
  readonly further?: readonly DetailTable[];
  /** Drawn before the figures that need no spreads. */
  readonly figures?: readonly Figure[];
}

export interface Section {
  readonly id: string;
  readonly title: string;
  readonly order: number;
}

/** A number wanted by a question. */
export interface ScalarInput {
  readonly in: 'scalar';
  readonly name: string;
  readonly symbol: string;
  readonly kind: Kind;
  /** UCUM code in which people give it. */
  readonly unit: string;
  readonly meaning: string;
  /** Plausible range in `unit`; outside it is a finding, not a stop. */
  readonly range: readonly [low: number, high: number];
  /** Outside these it is refused, in `unit`. */
  readonly bounds?: { readonly above?: number; readonly below?: number; readonly atLeast?: number };
  /** Where in a study it is found, in words. */
  readonly where: string;
  readonly find: (at: Finder) => Found;
  /** Value used, and marked as assumed, when none is given from outside a study. */
  readonly assumed?: string;
  /** Which way the first output goes when this grows, all else kept, wherever that is certain. */
  readonly moves?: 'up' | 'down';
}

/** A word wanted by a question: one of `options`, or any text when there are none. */
export interface TermInput {
  readonly in: 'term';
  readonly name: string;
  readonly meaning: string;
  readonly options?: readonly string[];
  readonly where: string;
  readonly find: (at: Finder) => FoundTerm;
}

/** Rows of numbers and words: parts, joints, angles of an axle lift. */
export interface TableInput {
  readonly in: 'table';
  readonly name: string;
  /** What one row is. */
  readonly meaning: string;
  readonly columns: readonly (ScalarColumn | TermColumn)[];
  readonly where: string;
  /** The nodes that are its rows, in the order of their ids. */
  readonly rows: (at: Finder) => readonly Id[];
  /** Which of them are rows after all, where that hangs on their readings: asked row by row. */
  readonly only?: (at: Finder, row: Id) => boolean;
}

/** Columns are found row by row, so that one edit binds one row again. */
export type ScalarColumn = Omit<ScalarInput, 'find' | 'assumed'> & {
  /** Rows may lack it: that is no gap, and a structured body sees NaN. */
  readonly optional?: true;
  readonly find: (at: Finder, row: Id) => Found;
};
export type TermColumn = Omit<TermInput, 'find'> & {
  readonly find: (at: Finder, row: Id) => FoundTerm;
};
export type InputSpec = ScalarInput | TermInput | TableInput;

/** A bound row: its subject, and what stands in each column, by column name. */
export interface FoundRow {
  readonly subject: Id;
  readonly label: string;
  readonly cells: Readonly<Record<string, Found>>;
  readonly terms: Readonly<Record<string, FoundTerm>>;
}

/** A word found, and how it is known; empty when there is none. */
export interface FoundTerm {
  readonly text: string;
  readonly how: Way | 'given' | 'missing';
  readonly place: Place;
}

/** What a finder hands back for a number: see the makers on Finder. */
export type Found = Cell | MissingCell;

/** A number ready for calculation: nominal value and the independent variables it moves with. */
export interface Cell {
  readonly form: LinearForm;
  /** How its best reading is known; `assumed` when a default stood in. */
  readonly how: Way | 'assumed' | 'exact';
  /** Some of its spread is unknown: the answer is incomplete. */
  readonly unknownSpread?: true;
  readonly place: Place;
  /** As shown in the working: label of the subject and property, or the input's name. */
  readonly label: string;
  readonly from?: InForce;
}
export interface MissingCell {
  readonly missing: true;
  readonly place: Place;
  readonly label: string;
  readonly why: string;
}

/** Reads a study from one subject for one question, and records every cell read or missing. */
export interface Finder {
  readonly view: StudyView;
  readonly subject: Id;
  /** Rate-book version asked for; the latest when undefined. */
  readonly ratesVersion: string | undefined;
  /** The value in force; vectors by component. Counts and flags come as numbers. */
  number(subject: Id, property: PropertyId, component?: 0 | 1 | 2): Found;
  /** Several scalars added: a total of what is there, missing when any is. */
  sum(label: string, parts: readonly Found[]): Found;
  text(subject: Id, property: PropertyId): FoundTerm;
  /** A word that is no reading: a label, a group. */
  word(text: string): FoundTerm;
  /** Another question's output, asked of a node: named in `uses`. */
  ask(question: string, subject: Id, output: string): Found;
  /** A cell of the rate book whose id starts with `group` and that matches the words. */
  rate(group: string, words: string): (Cell & { readonly rate: RateCell }) | MissingCell;
  /** A value of a table of data/; whatever reads it shares its variable. */
  tabled(value: TabledValue): Cell;
  exact(x: number, label: string): Cell;
  missing(label: string, why: string): MissingCell;
  /** For a trial or joint: a node by its label, below the subject or anywhere. */
  node(label: string): Id | undefined;
  /** What was written over an input of this question, for rows that hang on it; empty when nothing was. */
  given(input: string): string;
  /** Something about the study seen on the way to the inputs: stands among the answer's findings. */
  note(finding: Finding): void;
}

/** A published or usual value with its spread, as the tables of data/ hold them. */
export interface TabledValue {
  /** Names it among all tables: its variable goes by it. */
  readonly id: string;
  readonly words: string;
  /** SI. */
  readonly x: number;
  readonly spread: Spread;
  readonly how: Way;
  readonly source: string;
}

/** Variables behind the forms, for contributions, second order and sampling. */
export interface Variable {
  readonly id: VariableId;
  readonly label: string;
  readonly what: 'reading' | 'given' | Cause['what'];
  /** Cell of the study that it stands in, for readings. */
  readonly of?: CellRef;
  readonly spread: Spread;
  /** One standard uncertainty in SI. */
  readonly u: number;
  /** Mean less nominal value, in standard uncertainties: a skewed price is not centred on its mode. */
  readonly shift: number;
  /** Null for unlimited. */
  readonly dof: number | null;
  readonly place: Place;
}

/** Plain SI numbers and words by input name, as bodies of the `solve` kind and `valid` see them. */
export interface PlainInputs {
  readonly scalars: Readonly<Record<string, number>>;
  readonly terms: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, readonly PlainRow[]>>;
}
export type PlainRow = Readonly<Record<string, number | string>>;

/** Inputs as people write them: "12.5 ± 0.2 kg". Tables are lists of rows. */
export type WrittenInputs = Readonly<
  Record<string, string | readonly Readonly<Record<string, string>>[]>
>;

/** A formula of positional SI numbers, and where a question supplies them its partial derivatives. */
export type Formula = (...x: number[]) => number;
interface Differentiable {
  /** By each argument of the formula, in their order; differences are taken where there are none. */
  readonly derivatives?: readonly Formula[];
}

/** A result, with its own formula over the positional SI inputs. */
export interface OutputSpec {
  readonly name: string;
  readonly symbol: string;
  readonly kind: Kind;
  /** UCUM code in which it is shown. */
  readonly unit: string;
  readonly meaning: string;
  /** The formula as printed in the working, in the symbols of the inputs. */
  readonly shown: string;
  /** Intermediate results stand in the working only. */
  readonly step?: true;
  /** The decision word that applies to it as it stands: against zero. */
  readonly decides?: 'difference' | 'margin';
  /** What a proven difference is called: "closes high". The usual words of its kind when absent. */
  readonly directions?: { readonly more: string; readonly less: string };
  /** Reports set results of a section side by side that share this word; the name when absent. */
  readonly alike?: string;
}

/** One scalar formula for each output. Arguments: the scalar inputs in the order declared. */
export interface RowBody {
  readonly body: 'row';
  readonly outputs: readonly (OutputSpec & Differentiable & { readonly of: Formula })[];
}

/**
 * Sums over the rows of one table, then a formula over the sums. `each` takes the
 * columns it needs, `of` takes the sums in the order of `terms`, then the scalar inputs.
 */
export interface TallyBody {
  readonly body: 'tally';
  readonly table: string;
  readonly terms: readonly (Differentiable & {
    readonly name: string;
    readonly symbol: string;
    readonly kind: Kind;
    readonly shown: string;
    /** Columns it takes, in order; a row that lacks one is left out of this sum and named. */
    readonly needs: readonly string[];
    readonly each: Formula;
  })[];
  readonly outputs: readonly (OutputSpec & Differentiable & { readonly of: Formula })[];
  /** Term column by whose words the sums are also given group by group. */
  readonly groupBy?: string;
  /** Rows for a plain table beside the numbers. */
  readonly detail?: (x: PlainInputs) => DetailTable;
}

/** Structured input (graph, mesh, linkage, regression): one function of everything. */
export interface SolveBody {
  readonly body: 'solve';
  readonly outputs: readonly OutputSpec[];
  /**
   * Outputs by name, and words and findings beside them. Called again with shifted numbers for
   * the derivatives: it must be smooth in them and must not keep state.
   */
  readonly solve: (x: PlainInputs, run: Run) => Solved;
}
/** Handed to long work: tells how far it is, and throws when it has been stopped. */
export interface Run {
  tick(share: number): void;
}
export interface Solved {
  readonly outputs: Readonly<Record<string, number>>;
  readonly findings?: readonly Finding[];
  /** Rows for a plain table beside the numbers: a census by kind, for example. */
  readonly detail?: DetailTable;
}
export interface DetailTable {
  readonly title: string;
  readonly columns: readonly {
    readonly name: string;
    readonly unit?: string;
    readonly kind?: Kind;
  }[];
  /** Numbers in SI of their column's kind. */
  readonly rows: readonly (readonly (string | number)[])[];
}

export type Body = RowBody | TallyBody | SolveBody;

/** Standard error of the method, of whose variance a fraction is common to all designs it is used on. */
export type ModelError = { readonly sharedFraction: number } & (
  | { readonly relative: number }
  /** In the unit of the output. */
  | { readonly absolute: number }
);

/** What can hurt, and what the usual practice is; always defers to local rules and licensed people. */
export interface Caution {
  readonly id: string;
  readonly words: string;
  readonly source: string;
}

export interface Source {
  /** Author or body, title, edition. */
  readonly title: string;
  /** Clause, page, equation. */
  readonly at?: string;
  readonly status: 'published' | 'common practice, no source' | 'from memory';
}

export interface CheckRef {
  readonly what: string;
  readonly source: string;
  /** Whether inputs and result were seen in the source, recomputed from memory, or are practice. */
  readonly status:
    | 'seen'
    | 'from memory, recomputed'
    | 'own inputs, published formula'
    | 'common practice';
  /** Test file that does it, from the project's root. */
  readonly test: string;
}

/** What an answer rests on. */
export interface Basis {
  readonly study?: string;
  readonly revision?: string;
  readonly subject?: string;
  readonly conditions: readonly string[];
  readonly rates?: string;
  readonly currency?: string;
  readonly invented?: boolean;
}

export type DecisionWord =
  | 'different'
  | 'indicated'
  | 'not distinguishable'
  | 'holds'
  | 'not proven'
  | 'fails';

/** A decision word with what it rests on. */
export interface Decision {
  readonly word: DecisionWord;
  /** Difference or margin, SI of the output. */
  readonly d: number;
  readonly u: number;
  readonly dof: number | null;
  /** The rule in words, printed wherever the word is. */
  readonly rule: string;
  /** Word of direction of a difference, only where it is proven: "cheaper", "closes high". */
  readonly direction?: string;
}

/** One result of an answer. */
export interface Out {
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly kind: Kind;
  readonly unit: string;
  /** SI; NaN never: an output that could not be worked out is left out and found. */
  readonly x: number;
  /** Standard uncertainty, SI; `incomplete` when something is missing or its spread unknown. */
  readonly u: number | 'incomplete';
  /** What of the spread is known, SI, also when incomplete. */
  readonly knownU: number;
  /** Effective degrees of freedom (Welch–Satterthwaite); null for unlimited. */
  readonly dof: number | null;
  /** Mean less the value at nominal inputs: skewed inputs and second-order terms, SI. */
  readonly meanShift: number;
  /** Signed standard contributions, largest first, SI. */
  readonly linear: readonly (readonly [VariableId, number])[];
  /** Where the output decides something and the answer is complete. */
  readonly decision?: Decision;
  readonly missing: readonly Place[];
  readonly unknownSpread: readonly Place[];
  /** Standard uncertainty with second-order terms, SI, where they add more than a tenth to the variance. */
  readonly secondOrderU?: number;
  /** Reasons to doubt the linear spread. */
  readonly doubts: readonly string[];
}

/** A line of the working. */
export interface StepRow {
  readonly symbol: string;
  readonly meaning: string;
  /** Formula, or where the value comes from. */
  readonly shown: string;
  readonly kind: Kind;
  readonly unit: string;
  readonly x: number;
  readonly u: number | 'incomplete';
  readonly how?: Way | 'assumed' | 'exact';
  readonly place?: Place;
}

export interface GroupRow {
  readonly group: string;
  /** Terms of the tally by name; a term that no row has is not there. */
  readonly terms: Readonly<Record<string, GroupSum>>;
  readonly rows: number;
  /** Rows that lack a number which some term needs. */
  readonly missing: number;
}
/** One sum of a group, SI. */
export interface GroupSum {
  readonly x: number;
  /** What of its spread is known. */
  readonly u: number;
  /** Values that are not in it, and values in it whose spread is not known. */
  readonly missing: number;
  readonly unknownSpread: number;
}

export interface Answer {
  readonly question: string;
  readonly version: number;
  /** question@version and a digest of the bound inputs, rate book and settings. */
  readonly key: string;
  readonly title: string;
  readonly wording: string;
  readonly outs: Readonly<Record<string, Out>>;
  readonly steps: readonly StepRow[];
  readonly groups?: readonly GroupRow[];
  readonly detail?: DetailTable;
  /** Tables beside it. */
  readonly further?: readonly DetailTable[];
  readonly figures?: readonly Figure[];
  readonly findings: readonly Finding[];
  readonly basis: Basis;
  readonly variables: Readonly<Record<VariableId, Variable>>;
  readonly sources: readonly Source[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly Caution[];
  /** Every cell looked at, there or missing: for measure next, holds and staleness. */
  readonly reads: readonly { readonly of: CellRef; readonly there: boolean }[];
}

/** Lets the compiler check a question where it stands, without widening it. */
export const question = (q: Question): Question => q;
