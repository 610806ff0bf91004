import type { Caution, CheckRef, DecisionWord, Source } from '../engine/index.ts';
import type { WorkedLine } from '../formula/index.ts';
import type { Kind } from '../quantity/index.ts';
import type { Finding } from '../study/index.ts';
import type { ReportFigure } from './figures.ts';
import type { MapDrawing } from './map.ts';
import type { LineUnder } from './wording.ts';

/** A number in the words in which it is printed, beside the SI numbers it was made from. */
export interface ShownNumber {
  readonly x: number;
  readonly u: number | 'incomplete';
  /** What of the spread is known, SI, also when incomplete. */
  readonly knownU: number;
  readonly kind: Kind;
  /** UCUM code. */
  readonly unit: string;
  /** Digits, grouped by narrow no-break spaces. */
  readonly value: string;
  /** One standard uncertainty, to the place of the value; empty when exact or nothing is known. */
  readonly spread: string;
  /** Unit as printed; empty for the number one. */
  readonly symbol: string;
  /** What is not complete, in a word; empty when nothing is. */
  readonly incomplete: string;
  /** Line under the number, and the word it stands for. */
  readonly line: LineUnder;
  readonly how: string;
}

export interface ReportDecision {
  readonly word: DecisionWord;
  /** The word with its direction, where one is proven: "different, closes high". */
  readonly says: string;
  readonly rule: string;
}

/** A share of the variance of a result, largest first. */
export interface Contribution {
  readonly label: string;
  /** What kind of cause it is, and where it stands. */
  readonly what: string;
  /** 0 to 1. */
  readonly share: number;
}

export interface ReportOut {
  readonly name: string;
  /** Results of other questions with this word are set beside it. */
  readonly alike: string;
  /** It decides something, or will once it is complete. */
  readonly decides: boolean;
  readonly symbol: string;
  readonly meaning: string;
  readonly shown: ShownNumber;
  readonly decision?: ReportDecision;
  /** Its contributions are drawn as bars; those of the others stand in one line. */
  readonly leads: boolean;
  readonly contributions: readonly Contribution[];
  /** Contributions too small to stand alone. */
  readonly others?: { readonly words: string; readonly share: number };
  readonly doubts: readonly string[];
  /** Places where a reading is missing, and where one has no known spread. */
  readonly missing: readonly string[];
  readonly unknownSpread: readonly string[];
  /** Degrees of freedom and shift of the mean, where they matter. */
  readonly notes: readonly string[];
}

export interface ReportStep {
  readonly symbol: string;
  readonly meaning: string;
  readonly shown: string;
  readonly number: ShownNumber;
  readonly place: string;
  /** The line in mathematics, with numbers put in where they all are known. */
  readonly worked: WorkedLine;
}

/** Who says what a reading says: by whom, with what, when, where it came in, on which photographs. */
export interface ReportSaid {
  readonly label: string;
  readonly asWritten: string;
  readonly by: string;
  /** Captions; empty where there is none. */
  readonly photos: string;
}

/** Rows of words and numbers; a column of numbers is set to the right. */
export interface ReportTable {
  readonly title: string;
  readonly columns: readonly { readonly head: string; readonly numbers: boolean }[];
  readonly rows: readonly (readonly string[])[];
}

/** Sensitivity indices of a cause, as shares of the variance. */
export interface ReportInfluence {
  readonly label: string;
  readonly first: string;
  readonly total: string;
}

/** A result by Monte Carlo, beside the linear one. */
export interface ReportSampledOut {
  readonly meaning: string;
  /** Mean and spread of the samples. */
  readonly shown: ShownNumber;
  readonly symmetric: string;
  readonly shortest: string;
  /** Interval of the linear result. */
  readonly linear: string;
  readonly holds: boolean;
  readonly verdict: string;
  /** How far the ends of both intervals lie apart, and how far they may. */
  readonly apart: string;
  /** Decision word by the samples, where there is one. */
  readonly word?: DecisionWord;
  /** Samples without a number; empty when there are none. */
  readonly none: string;
  readonly influences: readonly ReportInfluence[];
}

export interface ReportSampled {
  /** How many samples, from which seed, and whether they had settled. */
  readonly about: string;
  readonly outs: readonly ReportSampledOut[];
}

/** Findings that say the same of several places. */
export interface FindingGroup {
  readonly code: string;
  readonly level: Finding['level'];
  readonly what: string;
  readonly next: string;
  readonly at: readonly { readonly place: string; readonly value: string }[];
}

export interface ReportAnswer {
  readonly question: string;
  readonly version: number;
  readonly key: string;
  readonly title: string;
  readonly wording: string;
  /** Label of the node asked about; empty for the study itself. */
  readonly subject: string;
  readonly outs: readonly ReportOut[];
  readonly figures: readonly ReportFigure[];
  readonly tables: readonly ReportTable[];
  readonly steps: readonly ReportStep[];
  /** Steps of the working that are not printed here. */
  readonly stepsLeftOut: number;
  /** Readings that vouch for it, those first on which it hangs most. */
  /** By Monte Carlo, where it was run. */
  readonly sampled?: ReportSampled;
  readonly said: readonly ReportSaid[];
  readonly saidLeftOut: number;
  /** Values that stand in for readings. */
  readonly assumed: readonly string[];
  readonly findings: readonly FindingGroup[];
  readonly sources: readonly Source[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly Caution[];
  readonly basis: string;
}

/** Results of one name, from different questions, side by side. */
export interface Comparison {
  readonly meaning: string;
  readonly entries: readonly { readonly from: string; readonly shown: ShownNumber }[];
  readonly figure?: ReportFigure;
}

export interface ReportSection {
  readonly id: string;
  readonly title: string;
  readonly order: number;
  readonly comparisons: readonly Comparison[];
  readonly answers: readonly ReportAnswer[];
}

/** One answer in short: its first result large, the others beside it. */
export interface SummaryLine {
  readonly title: string;
  readonly subject: string;
  readonly outs: readonly {
    readonly meaning: string;
    readonly shown: ShownNumber;
    /** Decision word, with its direction where one is proven. */
    readonly word?: string;
  }[];
  /** What keeps it open; empty when nothing does. */
  readonly open: string;
}

export interface ReportClaim {
  readonly words: string;
  readonly by: string;
  readonly heard: string;
  readonly how: string;
  readonly line: LineUnder;
  readonly about: readonly string[];
  /** `open` until a question answers it with a number, a spread and a word. */
  readonly state: 'open' | DecisionWord;
  /** What would make it true: "at most 12 s, by install-time". */
  readonly test: string;
  readonly shown?: ShownNumber;
  readonly rule: string;
  /** Why it is open. */
  readonly why: string;
}

/** Something that is not settled: a claim, or a total that is wider than asked. */
export interface ReportOpen {
  readonly words: string;
  /** Value and spread; empty when it could not be worked out. */
  readonly number: string;
  /** Its decision word, or what keeps it open. */
  readonly state: string;
  /** The spread asked for; empty when none was. */
  readonly asked: string;
}

/** A reading worth taking next. */
export interface ReportNextReading {
  readonly label: string;
  /** What it lacks; empty where it narrows. */
  readonly why: string;
  readonly instrument: string;
  readonly minutes: string;
  /** Share of the open spreads that a minute of work takes off. */
  readonly perMinute: string;
  /** What it would do, one open thing each. */
  readonly effects: readonly string[];
}

/** What to measure next. */
export interface ReportNext {
  readonly open: readonly ReportOpen[];
  /** Readings that keep results incomplete, and readings that would narrow them, best first. */
  readonly lacking: readonly ReportNextReading[];
  readonly bettering: readonly ReportNextReading[];
  readonly leftOut: number;
}

/** The hoist in words: the same for paper, line and page. */
export interface ReportHoist {
  readonly steps: readonly ReportStepAt[];
  readonly proposals: readonly ReportTable[];
  /** What is wrong with the order of the plan. */
  readonly order: readonly string[];
}
export interface ReportStepAt {
  readonly label: string;
  readonly name: string;
  /** "done", "to be done", "stopped", "marked, not shown as done". */
  readonly standing: string;
  readonly balance: string;
  readonly against: readonly string[];
  readonly waitsFor: readonly string[];
  readonly gates: readonly ReportGate[];
  readonly holds: readonly string[];
  readonly notShown: readonly string[];
}
export interface ReportGate {
  readonly id: string;
  readonly title: string;
  /** "complete", "not complete", or the override with its name and reason. */
  readonly says: string;
  readonly lacking: readonly string[];
}

/** How one question is answered, as printed in the appendix. */
export interface ReportMethod {
  readonly id: string;
  readonly version: number;
  readonly title: string;
  readonly wording: string;
  readonly formulas: readonly {
    readonly symbol: string;
    readonly meaning: string;
    readonly shown: string;
  }[];
  readonly inputs: readonly {
    readonly symbol: string;
    readonly meaning: string;
    readonly where: string;
  }[];
  readonly modelError: readonly string[];
  readonly sources: readonly Source[];
  readonly assumptions: readonly string[];
  readonly checks: readonly CheckRef[];
}

/** One thing that is not known, and where. */
export interface UnknownGroup {
  /** Title of the question it keeps open; empty when it is none's alone. */
  readonly of: string;
  readonly what: string;
  readonly items: readonly string[];
}

export interface PrintedPhoto {
  readonly caption: string;
  readonly mediaType: string;
  readonly base64: string;
}

export interface ReportStudy {
  readonly title: string;
  readonly vehicle: string;
  readonly condition: string;
  readonly revision: string;
  readonly invented: boolean;
  readonly note: string;
}

export interface ReportRates {
  readonly version: string;
  readonly date: string;
  readonly region: string;
  readonly currency: string;
  readonly volume: string;
  readonly invented: boolean;
}

/** Everything a report says, as plain data: the same for paper and for the terminal. */
export interface ReportModel {
  readonly title: string;
  readonly study: ReportStudy;
  readonly rates?: ReportRates;
  /** ISO 8601 date of issue, handed in. */
  readonly date: string;
  /** Units in which results are shown, as printed. */
  readonly units: string;
  readonly roundingRule: string;
  readonly summary: readonly SummaryLine[];
  readonly map?: MapDrawing;
  readonly sections: readonly ReportSection[];
  readonly claims: readonly ReportClaim[];
  /** Absent where it was not asked for. */
  readonly next?: ReportNext;
  /** The removal plan with its gates; absent where the study has none. */
  readonly hoist?: ReportHoist;
  readonly unknown: readonly UnknownGroup[];
  readonly findings: readonly FindingGroup[];
  readonly cautions: readonly Caution[];
  readonly methods: readonly ReportMethod[];
  readonly photos: readonly PrintedPhoto[];
}
