import type { Way } from '../quantity/index.ts';
import type { ColumnUse } from '../study/index.ts';
import type { CommonSpreads } from './common-spreads.ts';
import type { ColumnGuess, Mapping, Overrides } from './mapping.ts';

/** The uses of a table's columns as the fold reads them: spreads and instruments hang on their quantity. */
export const columnUses = (
  mapping: Mapping,
  overrides: Overrides,
  common: CommonSpreads,
): readonly ColumnUse[] =>
  mapping.columns.map((column) => useOf(column, mapping, overrides, common));

const WORD_USES: Readonly<Record<string, 'label' | 'name' | 'parent' | 'from' | 'to'>> = {
  number: 'label',
  name: 'name',
  parent: 'parent',
  from: 'from',
  to: 'to',
};

function useOf(
  { field, unit }: ColumnGuess,
  mapping: Mapping,
  overrides: Overrides,
  common: CommonSpreads,
): ColumnUse {
  if (!field) return { use: 'skip' };
  if (field.holds === 'word') return { use: WORD_USES[field.field] ?? 'skip' };
  if (field.holds !== 'property' || field.property === undefined) return { use: 'skip' };
  const { property, kind, component } = field;
  if (kind === undefined) return { use: 'property', property };
  const beside = (holds: 'u' | 'instrument') =>
    mapping.columns.find((c) => c.field?.holds === holds && c.field.of?.includes(field.field));
  const u = beside('u');
  const instrument = beside('instrument');
  return {
    use: 'property',
    property,
    kind,
    ...(unit === undefined ? {} : { unit }),
    ...(component === undefined ? {} : { component }),
    ...(u ? { uColumn: u.index } : {}),
    ...(u?.unit === undefined ? {} : { uUnit: u.unit }),
    ...(instrument ? { instrumentColumn: instrument.index } : {}),
    ...(overrides.instrument === undefined ? {} : { instrument: overrides.instrument }),
    ...common.of(field.field),
  };
}

/** How values are known for which the table itself does not say it. */
export interface Ways {
  readonly withInstrument: Way;
  readonly without: Way;
}

/** What was read off a part by eye is the least that a row without an instrument claims. */
const WITHOUT: Way = 'seen';

export function waysOf({ how, instrument }: Overrides): Ways {
  if (how === undefined) return { withInstrument: 'measured', without: WITHOUT };
  if (instrument !== undefined)
    return { withInstrument: how, without: how === 'measured' ? WITHOUT : how };
  return { withInstrument: 'measured', without: how };
}
