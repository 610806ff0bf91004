import type { Answer, Out, Question } from '../../../src/engine/index.ts';
import { type Kind, kindDef } from '../../../src/quantity/index.ts';
import type { CellRef, Id } from '../../../src/study/index.ts';

/** Contributions shown for each output; the rest is one line. */
const SHOWN = 12;

/** Where a share of an output's spread comes from. */
export interface Contribution {
  readonly label: string;
  readonly what: Answer['variables'][string]['what'];
  /** Signed standard contribution in SI of the output. */
  readonly c: number;
  /** Share of the variance, 0 to 1. */
  readonly share: number;
  /** The cell it stands in, for readings. */
  readonly of?: CellRef;
}

/** An output with its largest contributions instead of all of them. */
export interface SheetOut extends Omit<Out, 'linear'> {
  readonly shown: string;
  readonly step: boolean;
  readonly contributions: readonly Contribution[];
  readonly others: { readonly count: number; readonly share: number };
}

/** A sum of an answer's groups: how it is named and shown. */
export interface GroupTerm {
  readonly name: string;
  readonly symbol: string;
  readonly shown: string;
  readonly kind: Kind;
  readonly unit: string;
}

/** An answer as its card needs it: small enough to hand over whole, whatever the study's size. */
export interface AnswerSheet
  extends Pick<
    Answer,
    | 'question'
    | 'version'
    | 'key'
    | 'title'
    | 'wording'
    | 'steps'
    | 'groups'
    | 'detail'
    | 'figures'
    | 'further'
    | 'findings'
    | 'basis'
    | 'sources'
    | 'assumptions'
    | 'cautions'
  > {
  /** Node it was asked of; absent for bare values. */
  readonly subject?: Id;
  readonly outs: readonly SheetOut[];
  readonly groupTerms: readonly GroupTerm[];
  readonly groupedBy?: string;
  /** Cells that were looked for and are not there. */
  readonly absent: readonly CellRef[];
}

export function answerSheet(question: Question, answer: Answer, subject?: Id): AnswerSheet {
  const { body } = question;
  const { variables: _variables, reads, outs, ...rest } = answer;
  return {
    ...rest,
    ...(subject === undefined ? {} : { subject }),
    outs: body.outputs.flatMap(({ name, shown, step }) => {
      const out = outs[name];
      return out ? [sheetOut(out, shown, step === true, answer)] : [];
    }),
    groupTerms: body.body === 'tally' ? body.terms.map(groupTerm) : [],
    ...(body.body === 'tally' && body.groupBy ? { groupedBy: body.groupBy } : {}),
    absent: distinct(reads.filter((r) => !r.there).map((r) => r.of)),
  };
}

const groupTerm = ({
  name,
  symbol,
  shown,
  kind,
}: GroupTerm | Omit<GroupTerm, 'unit'>): GroupTerm => ({
  name,
  symbol,
  shown,
  kind,
  unit: kindDef(kind).show[0],
});

function sheetOut(out: Out, shown: string, step: boolean, answer: Answer): SheetOut {
  const { linear, ...rest } = out;
  const variance = linear.reduce((sum, [, c]) => sum + c * c, 0);
  const share = (c: number) => (variance === 0 ? 0 : (c * c) / variance);
  const top = linear.slice(0, SHOWN);
  const left = linear.slice(SHOWN);
  return {
    ...rest,
    shown,
    step,
    contributions: top.map(([id, c]) => {
      const variable = answer.variables[id];
      return {
        label: variable?.label ?? id,
        what: variable?.what ?? 'reading',
        c,
        share: share(c),
        ...(variable?.of ? { of: variable.of } : {}),
      };
    }),
    others: { count: left.length, share: left.reduce((sum, [, c]) => sum + share(c), 0) },
  };
}

const distinct = (cells: readonly CellRef[]): CellRef[] => [
  ...new Map(cells.map((c) => [`${c.subject}\n${c.property}\n${c.condition}`, c])).values(),
];
