import { type Kind, parseQuantity } from '../../quantity/index.ts';
import type { Cell, Finder, Found, ScalarInput } from '../method.ts';

/** What a cost input says of itself; it is never below zero unless its bounds say more. */
export type Spec = Omit<ScalarInput, 'in' | 'find' | 'where' | 'assumed'>;

/** Looked for first, before the usual value. */
export interface From {
  readonly where: string;
  readonly find: (at: Finder) => Found;
}

const SOURCE = 'usual value of this tool, an assumption; common practice, no source';
const INVENTED = 'rate shipped with this tool: invented';

/** Money in any form is a rate or price that was made up for this tool. */
const sourceOf = (kind: Kind): string => (kind.startsWith('money') ? INVENTED : SOURCE);

/**
 * A number with a usual value: taken from the study or the rate book where they have it, else
 * assumed, with its spread, and marked so. Whatever assumes the same value shares its variable.
 */
export function usual(spec: Spec, written: string, from?: From): ScalarInput {
  const value = parseQuantity(written, spec.kind, { unit: spec.unit });
  if (!value.ok) throw new RangeError(`${spec.name}: ${value.why}`);
  const { x, spread } = value.value;
  const source = sourceOf(spec.kind);
  const assumed = (at: Finder): Cell => ({
    ...at.tabled({
      ...{ id: `usual/${spec.name}/${written}`, words: spec.meaning, x, spread },
      ...{ how: 'guessed', source },
    }),
    how: 'assumed',
  });
  return {
    in: 'scalar',
    bounds: { atLeast: 0 },
    ...spec,
    assumed: written,
    where: `${from ? `${from.where}, else ` : ''}${source}`,
    find: (at) => {
      const own = from?.find(at);
      return own && !('missing' in own) ? own : assumed(at);
    },
  };
}

/** A cell of the rate book, by group and the words it must fit. */
export const fromBook = (group: string, words: string): From => ({
  where: `rate book, ${group} that fits "${words}"`,
  find: (at) => at.rate(group, words),
});

/** A cell of the rate book that fits the material of the part. */
export const byMaterial = (group: string): From => ({
  where: `rate book, ${group} that fits the material of the part`,
  find: (at) => at.rate(group, at.text(at.subject, 'material').text),
});

/** A number that must be given: from the record where it is kept there. */
export const given = (spec: Spec, from?: From): ScalarInput => ({
  in: 'scalar',
  bounds: { above: 0 },
  ...spec,
  where: from?.where ?? 'not in the record: measure it on the part',
  find: (at) =>
    from?.find(at) ?? at.missing(spec.meaning, 'not in the record: measure it on the part'),
});

/** A reading of the part. */
export const reading = (property: string, words: string): From => ({
  where: `${words} of the part`,
  find: (at) => at.number(at.subject, property),
});
