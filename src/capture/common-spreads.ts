import { parseQuantity } from '../quantity/index.ts';
import type { ColumnUse, Entry, Id } from '../study/index.ts';
import type { Setup } from './form-reader.ts';

type Shared = Pick<Extract<ColumnUse, { use: 'property' }>, 'causes' | 'spreadIfNone'>;

/** A relative spread that all values of some columns share, as one cause. */
export interface CommonSpreads {
  /** What a column of this field carries; nothing for most. */
  readonly of: (field: string) => Shared;
  readonly entries: readonly Entry[];
}

/**
 * Reads "time.access,time.drive" = "15 %": one estimator's common error, of which the values
 * have no other spread unless their own columns say so.
 */
export function commonSpreads(setup: Setup): CommonSpreads {
  const byField = new Map<string, Shared>();
  const entries: Entry[] = [];
  for (const [names, text] of Object.entries(setup.overrides.spreads ?? {})) {
    const fields = names.split(',').map((name) => name.trim());
    const u = relative(setup, fields, text);
    if (u === undefined) continue;
    const id: Id = setup.request.ids();
    const label = `${fields.join(' and ')} of ${setup.request.file}, common error`;
    entries.push({
      v: 1,
      e: 'cause.put',
      cause: { id, what: 'gain', kind: 'ratio', spread: { s: 'normal', u }, label },
    });
    const shared: Shared = {
      causes: [{ cause: id, effect: 'relative' }],
      spreadIfNone: { s: 'exact' },
    };
    for (const field of fields) byField.set(field, shared);
  }
  return { of: (field) => byField.get(field) ?? {}, entries };
}

/** The share as a number; a problem is noted where a field or the share can't be used. */
function relative(setup: Setup, fields: readonly string[], text: string): number | undefined {
  const strange = fields.find((f) => setup.mapping.column(f)?.field?.kind === undefined);
  const parsed = parseQuantity(text, 'ratio', { unit: '%' });
  const usable = parsed.ok && parsed.value.x > 0;
  if (strange === undefined && usable) return parsed.value.x;
  setup.problems.add({
    row: 1,
    column: strange ?? fields.join(','),
    value: text,
    why: strange === undefined ? 'this is no relative spread' : `no column holds ${strange}`,
    next: 'Say e.g. --spread "time.access,time.drive=15 %".',
  });
  return undefined;
}
