import { checkSpread, type Value } from '../quantity/index.ts';
import type { Change } from './change.ts';
import { readClock } from './clock.ts';
import { ENTRY_KINDS, type Entry, type TableChunk } from './entries.ts';
import type { Place, Refusal } from './finding.ts';
import { isUlid } from './ids.ts';
import { propertyDef, propertyWords } from './properties.ts';
import type { PropertyId, Reading } from './reading.ts';
import { readCell } from './table-chunk.ts';

/**
 * What no change may carry, whichever door it comes by: the record of truth holds nothing that
 * a calculation could not read. Returns one refusal for each thing found.
 */
export function checkChange(change: Change): readonly Refusal[] {
  const place = { study: change.study };
  const bad: Refusal[] = [];
  if (!isUlid(change.id)) bad.push(refuse(place, 'the id of a change is no ULID', change.id));
  if (!readClock(change.clock))
    bad.push(refuse(place, 'the clock of a change can not be read', change.clock));
  if (!(Number.isInteger(change.seq) && change.seq >= 1))
    bad.push(refuse(place, 'the count of a change is no whole number from 1', String(change.seq)));
  if (change.entries.length === 0 && change.undoes === undefined)
    bad.push(refuse(place, 'the change changes nothing', change.words));
  return [...bad, ...change.entries.flatMap((entry) => checkEntry(entry, place))];
}

function checkEntry(entry: Entry, place: Place): Refusal[] {
  if (!(ENTRY_KINDS as readonly string[]).includes(entry.e) || entry.v !== 1)
    return [
      refuse(
        place,
        'an entry of a kind or version that this program does not know',
        `${entry.e} v${entry.v}`,
      ),
    ];
  if (entry.e === 'reading.add') return checkReading(entry.reading);
  if (entry.e === 'node.add') return checkNode(entry.node.id, entry.node.parent, entry.node.label);
  if (entry.e === 'node.move' && entry.id === entry.parent)
    return [refuse({ subject: entry.id }, 'a node can not be its own parent', entry.id)];
  if (entry.e === 'table.add') return checkTable(entry.table);
  return [];
}

function checkNode(id: string, parent: string | null, label: string): Refusal[] {
  const bad: Refusal[] = [];
  if (id === parent)
    bad.push(refuse({ subject: label }, 'a node can not be its own parent', label));
  if (label.trim() === '')
    bad.push(refuse({ subject: id }, 'a node needs a number or a name', label));
  return bad;
}

function checkReading(r: Reading): Refusal[] {
  const place = { subject: r.of.subject, property: r.of.property, reading: r.id };
  const bad: Refusal[] = [];
  if (r.how === 'measured' && !r.instrument && r.value.t !== 'absent')
    bad.push({
      code: 'bad-value',
      place,
      value: r.asWritten,
      why: 'a measured value names no instrument',
      next: 'Name the instrument, or say how else the value is known.',
    });
  const wrong = wrongValue(r.value, r.of.property);
  if (wrong) bad.push({ code: 'bad-value', place, value: r.asWritten, ...wrong });
  return bad;
}

function wrongValue(v: Value, property: PropertyId): Pick<Refusal, 'why' | 'next'> | undefined {
  const next = 'Write a finite number with its spread, e.g. 12.5 ± 0.2 kg.';
  if (v.t === 'vector')
    return v.x.every(Number.isFinite) && v.cov.every(Number.isFinite)
      ? undefined
      : { why: 'a position is not finite', next };
  if (v.t !== 'scalar' && v.t !== 'count') return undefined;
  const x = v.t === 'scalar' ? v.x : v.n;
  if (!Number.isFinite(x)) return { why: 'the value is not finite', next };
  const spread = checkSpread(v.spread, x);
  if (spread) return { why: spread, next };
  if (v.t === 'scalar' && x < 0 && propertyDef(property)?.notNegative)
    return { why: `${propertyWords(property)} is negative`, next: 'Check the sign and the tare.' };
  if (v.t === 'count' && (x < 0 || !Number.isInteger(x)))
    return { why: 'a count is no whole number from 0', next: 'Count again.' };
  return undefined;
}

function checkTable(table: TableChunk): Refusal[] {
  const bad: Refusal[] = [];
  for (const [i, row] of table.rows.entries())
    for (const [c] of table.columns.entries()) {
      const cell = readCell(row, c, table);
      if (cell.read !== 'bad') continue;
      const place = {
        file: table.file,
        row: table.firstRow + i,
        column: table.headings[cell.column] ?? '',
      };
      bad.push({
        code: 'bad-table',
        place,
        value: row[cell.column] ?? '',
        why: cell.why,
        next: cell.next,
      });
    }
  return bad;
}

const refuse = (place: Place, why: string, value: string): Refusal => ({
  code: 'bad-change',
  place,
  value,
  why,
  next: 'Send it again from a program of this version.',
});
