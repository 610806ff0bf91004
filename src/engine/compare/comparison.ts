import type { Kind, VariableId, Way } from '../../quantity/index.ts';
import type { Place } from '../../study/index.ts';
import type { Answer, Basis, Decision, Variable } from '../method.ts';

/** What a comparison is about: the units that were measured, or the designs they were built to. */
export type About = 'these specimens' | 'the designs';

/** Unit-to-unit scatter of one kind of quantity: relative to the value, or in SI. */
export type Scatter = { readonly how: Way; readonly source: string } & (
  | { readonly relative: number }
  | { readonly absolute: number }
);

export interface CompareOptions {
  readonly about?: About;
  /** Unit-to-unit scatter in place of what the table has, by kind. */
  readonly scatter?: Partial<Readonly<Record<Kind, Scatter>>>;
  /** Inputs, written over the study's or given without one, whose value both sides share. */
  readonly shares?: readonly string[];
}

/** One side of a comparison, SI. */
export interface ComparedSide {
  readonly x: number;
  readonly u: number | 'incomplete';
  readonly knownU: number;
  /** Standard deviation of single units about the design, where designs are compared. */
  readonly scatter?: number;
  readonly basis: Basis;
}

/** A variable that both sides move with: what is left of it in the difference. */
export interface SharedCause {
  readonly id: VariableId;
  readonly label: string;
  readonly what: Variable['what'];
  /** Signed contributions to the first side, to the second, and to the difference; SI. */
  readonly a: number;
  readonly b: number;
  readonly left: number;
}

/** The difference of one output between two answers, with the word that it allows. */
export interface Comparison {
  readonly question: string;
  readonly title: string;
  readonly output: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly kind: Kind;
  readonly unit: string;
  readonly about: About;
  readonly a: ComparedSide;
  readonly b: ComparedSide;
  /** First less second, SI. */
  readonly d: number;
  /** Standard uncertainty of the difference, correlation by shared causes included. */
  readonly u: number | 'incomplete';
  readonly knownU: number;
  /** What it would be if the two shared nothing. */
  readonly independentU: number;
  /** Correlation of the two, −1 to 1; 0 where one of them is exact. */
  readonly correlation: number;
  readonly dof: number | null;
  /** Largest in the two sides first. */
  readonly shared: readonly SharedCause[];
  /** Only of a complete difference. */
  readonly decision?: Decision;
  /** What was taken for unit-to-unit scatter, where designs are compared and it is known. */
  readonly scatter?: Scatter;
  /** What it lacks: readings, spreads, a scatter. */
  readonly lacks: readonly Place[];
}

export type Pair = readonly [a: Answer, b: Answer];
