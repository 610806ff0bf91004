import { type Change, canonicalText, isUlid, type Place, readClock } from '../study/index.ts';
import { refusal } from './refuse.ts';

/** A change that may be stored, with the one text by which its bytes are compared. */
export interface StoredText {
  readonly change: Change;
  readonly body: string;
}

const NEXT =
  'Nothing of this call was stored. Mend the change where it was made and send it again.';

/**
 * Checks what the store itself relies on: ids, order numbers and that the text says everything.
 * What the entries mean is the fold's business.
 * @throws RefusalError `bad-change` with the change's place.
 */
export function storedText(study: string, change: Change): StoredText {
  const wrong = whatIsWrong(study, change);
  if (wrong) throw refusal('bad-change', changePlace(study, change), wrong.why, NEXT, wrong.value);
  return { change, body: canonicalText(change) };
}

/** Names a change by its words, device and order number. */
export const changePlace = (study: string, change: Change): Place => ({
  study,
  subject: `change ${change.id} (${change.words})`,
});

interface Wrong {
  readonly why: string;
  readonly value: string;
}

function whatIsWrong(study: string, c: Change): Wrong | undefined {
  if (c.study !== study)
    return { why: 'the change names another study than the call', value: `${c.study}` };
  if (!isUlid(c.id)) return { why: 'the id is no ULID', value: `${c.id}` };
  if (!isUlid(c.gesture)) return { why: 'the gesture id is no ULID', value: `${c.gesture}` };
  if (!Number.isSafeInteger(c.seq) || c.seq < 1)
    return { why: 'seq must be a whole number from 1', value: `${c.seq}` };
  if (typeof c.device !== 'string' || c.device === '')
    return { why: 'the device has no id', value: `${c.device}` };
  if (typeof c.clock !== 'string' || !readClock(c.clock))
    return { why: 'the clock can not be read', value: `${c.clock}` };
  if (!Array.isArray(c.entries)) return { why: 'entries must be a list', value: typeof c.entries };
  const path = pathWithoutText(c);
  return path === undefined
    ? undefined
    : { why: 'the value at this path can not be stored as text', value: path };
}

/**
 * Path to the first value that JSON would drop or alter (NaN, infinite, undefined in a list,
 * function …), or that databases do not keep: text with a zero character.
 */
function pathWithoutText(value: unknown, path = ''): string | undefined {
  if (typeof value === 'string') return value.includes('\0') ? path : undefined;
  if (typeof value === 'boolean' || value === null) return undefined;
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : path;
  if (typeof value !== 'object') return path;
  return Array.isArray(value) ? inList(value, path) : inRecord(value, path);
}

function inList(values: readonly unknown[], path: string): string | undefined {
  for (let i = 0; i < values.length; i++) {
    const at = pathWithoutText(values[i], `${path}[${i}]`);
    if (at !== undefined) return at;
  }
  return undefined;
}

/** Fields that are undefined count as not there, as in canonicalText. */
function inRecord(value: object, path: string): string | undefined {
  for (const [key, field] of Object.entries(value)) {
    const at = field === undefined ? undefined : pathWithoutText(field, `${path}.${key}`);
    if (at !== undefined) return at;
  }
  return undefined;
}
