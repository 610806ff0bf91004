import { type Proportion, parseUnit, proportion } from '../../quantity/index.ts';
import type { Draft } from '../read-drafts.ts';
import type { KeyRow } from './read-key.ts';

export const SCORED = ['part', 'quantity', 'way of knowing'] as const;
export type Scored = (typeof SCORED)[number];

export interface FieldScore {
  readonly field: Scored;
  readonly precision: Proportion;
  readonly recall: Proportion;
}

export interface Score {
  readonly items: number;
  readonly traps: number;
  readonly drafts: number;
  readonly fields: readonly FieldScore[];
  /** Ids of the traps that something was drafted from. */
  readonly caught: readonly string[];
  /** What was drafted wrong, and what was not found, a line each. */
  readonly wrong: readonly string[];
  readonly missed: readonly string[];
}

/** A number is right when it differs by no more than this share. */
const NEAR = 0.01;
const overlaps = (a: { from: number; to: number }, b: { from: number; to: number }): boolean =>
  a.from < b.to && b.from < a.to;
const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= NEAR * Math.max(Math.abs(a), Math.abs(b));

/** Both ends of a draft's quantity in SI. */
function siOf({ quantity }: Draft): { low: number; high: number } | undefined {
  if (!quantity) return undefined;
  const unit = parseUnit(quantity.unit);
  const si = (x: number): number => x * (unit?.factor ?? 1) + (unit?.offset ?? 0);
  return { low: si(quantity.low), high: si(quantity.high) };
}

function sameQuantity(draft: Draft, row: KeyRow): boolean {
  const own = siOf(draft);
  return (
    own !== undefined &&
    row.quantity !== undefined &&
    near(own.low, row.quantity.low) &&
    near(own.high, row.quantity.high)
  );
}

const samePart = (draft: Draft, row: KeyRow): boolean =>
  draft.parts.length === 0
    ? row.parts.length === 0
    : draft.parts.every((part) => row.parts.includes(part.label));

/** What a draft says in a field, and whether a row of the key bears it out. */
const RIGHT: Readonly<Record<Scored, (draft: Draft, row: KeyRow) => boolean>> = {
  part: samePart,
  quantity: sameQuantity,
  'way of knowing': (draft, row) => draft.how === row.how,
};
const SAYS: Readonly<Record<Scored, (draft: Draft) => boolean>> = {
  part: (draft) => draft.parts.length > 0,
  quantity: (draft) => draft.quantity !== undefined,
  'way of knowing': () => true,
};
const ASKED: Readonly<Record<Scored, (row: KeyRow) => boolean>> = {
  part: (row) => row.parts.length > 0,
  quantity: (row) => row.quantity !== undefined,
  'way of knowing': (row) => row.how !== undefined,
};

/** Drafts against a hand-marked key: precision and recall of each field, and the traps. */
export function scoreDrafts(drafts: readonly Draft[], key: readonly KeyRow[]): Score {
  const items = key.filter((row) => row.kind === 'item');
  const traps = key.filter((row) => row.kind === 'trap');
  const either = key.filter((row) => row.kind === 'either');
  const judged = drafts.filter(
    (draft) =>
      items.some((row) => overlaps(draft, row)) || !either.some((row) => overlaps(draft, row)),
  );
  const wrong: string[] = [];
  const missed: string[] = [];
  const fields = SCORED.map((field): FieldScore => {
    const said = judged.filter(SAYS[field]);
    const asked = items.filter(ASKED[field]);
    const isRight = (draft: Draft): boolean =>
      items.some((row) => overlaps(draft, row) && RIGHT[field](draft, row));
    const isFound = (row: KeyRow): boolean =>
      judged.some((draft) => overlaps(draft, row) && RIGHT[field](draft, row));
    wrong.push(...said.filter((draft) => !isRight(draft)).map((draft) => wrongLine(field, draft)));
    missed.push(
      ...asked.filter((row) => !isFound(row)).map((row) => `${field}: ${row.id} "${row.words}"`),
    );
    return {
      field,
      precision: proportion(said.filter(isRight).length, said.length),
      recall: proportion(asked.filter(isFound).length, asked.length),
    };
  });
  const caught = traps
    .filter((trap) => drafts.some((draft) => overlaps(draft, trap) && springs(draft, trap)))
    .map((trap) => trap.id);
  return {
    items: items.length,
    traps: traps.length,
    drafts: judged.length,
    fields,
    caught,
    wrong,
    missed,
  };
}

/** A trap with a quantity catches that quantity; one without catches all that is drafted from its words. */
const springs = (draft: Draft, trap: KeyRow): boolean =>
  trap.quantity === undefined || sameQuantity(draft, trap);

function wrongLine(field: Scored, draft: Draft): string {
  const parts = draft.parts.map((part) => part.label).join('|') || 'no part';
  const q = draft.quantity;
  const quantity = q ? ` ${q.low === q.high ? q.low : `${q.low}-${q.high}`} ${q.unit}` : '';
  return `${field}: ${Math.floor(draft.fromS / 60)}:${String(Math.floor(draft.fromS % 60)).padStart(2, '0')} "${draft.words}" as ${draft.kind}${quantity}, ${parts}, ${draft.how}`;
}
