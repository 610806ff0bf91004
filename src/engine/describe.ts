import { cautionsOf } from './cautions-of.ts';
import type {
  Caution,
  OutputSpec,
  Question,
  ScalarColumn,
  ScalarInput,
  TableInput,
  TermColumn,
  TermInput,
} from './method.ts';

/** Member by member, where `I` is a union. */
type Plain<I> = I extends { readonly find: unknown } ? Omit<I, 'find'> : never;
type PlainTable = Omit<TableInput, 'rows' | 'only' | 'columns'> & {
  readonly columns: readonly Plain<ScalarColumn | TermColumn>[];
};

/** A question without its formulas: what forms, help and other programs need to ask it. */
export interface PlainQuestion
  extends Pick<
    Question,
    | 'id'
    | 'version'
    | 'wording'
    | 'title'
    | 'subject'
    | 'section'
    | 'modelError'
    | 'sources'
    | 'assumptions'
    | 'checks'
    | 'example'
  > {
  readonly inputs: readonly (Plain<ScalarInput | TermInput> | PlainTable)[];
  readonly outputs: readonly OutputSpec[];
  /** Term column by whose words the sums are also given group by group. */
  readonly groupedBy?: string;
  readonly cautions: readonly Caution[];
  readonly uses: readonly string[];
}

/** Everything of a question that is plain data. @throws TypeError when it names an unknown caution. */
export function describeQuestion(q: Question): PlainQuestion {
  const { id, version, wording, title, subject, section, modelError } = q;
  const { sources, assumptions, checks, example, uses = [] } = q;
  const groupedBy = q.body.body === 'tally' ? q.body.groupBy : undefined;
  return {
    ...{ id, version, wording, title, subject, section, modelError },
    ...{ sources, assumptions, checks, example, uses },
    inputs: q.inputs.map((input) => (input.in === 'table' ? plainTable(input) : plain(input))),
    outputs: q.body.outputs.map(plainOutput),
    ...(groupedBy === undefined ? {} : { groupedBy }),
    cautions: cautionsOf(q),
  };
}

function plainTable({ rows: _rows, only: _only, columns, ...rest }: TableInput): PlainTable {
  return { ...rest, columns: columns.map(plain) };
}

function plain<I extends { readonly find: unknown }>({ find: _find, ...rest }: I): Plain<I> {
  return rest as unknown as Plain<I>;
}

/** An output without its formula and derivatives, where they stand in it. */
function plainOutput(
  output: OutputSpec & { readonly of?: unknown; readonly derivatives?: unknown },
): OutputSpec {
  const { of: _of, derivatives: _derivatives, ...rest } = output;
  return rest;
}
