import { gateOf } from '../data/index.ts';
import {
  checkSpread,
  type Kind,
  kindWords,
  type Spread,
  type Value,
  type VectorValue,
} from '../quantity/index.ts';
import type { Change } from './change.ts';
import { readClock } from './clock.ts';
import { ENTRY_KINDS, type Entry, type TableChunk } from './entries.ts';
import type { Place, Refusal } from './finding.ts';
import type { GateOverride, GateRecord } from './gate.ts';
import { isUlid } from './ids.ts';
import { type Instrument, wrongInstrument } from './instrument.ts';
import { propertyDef, propertyWords } from './properties.ts';
import type { PropertyId, Reading } from './reading.ts';
import type { Speech } from './spoken.ts';
import { type CellRead, firstColumn, readCell, readVector, vectorColumns } from './table-chunk.ts';

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
  if (entry.e === 'instrument.put') return checkInstrument(entry.instrument);
  if (entry.e === 'cause.put') return checkSpreadOf(entry.cause.label, entry.cause.spread, 0);
  if (entry.e === 'rates.put')
    return entry.book.cells.flatMap((c) => checkSpreadOf(c.id, c.spread, c.x));
  if (entry.e === 'claim.put' && entry.claim.how === 'measured')
    return [
      {
        code: 'bad-value',
        place: { subject: entry.claim.id },
        value: entry.claim.words,
        why: 'a claim says it is measured, but a measured value needs an instrument',
        next: 'Record what was measured as a reading with its instrument, or say how else the claim is known.',
      },
    ];
  if (entry.e === 'speech.add') return checkCues(entry.speech);
  if (entry.e === 'gate.record') return checkGate(entry.record);
  if (entry.e === 'gate.override') return checkOverride(entry.override);
  if (entry.e === 'claim.tie') return checkSpreadOf(entry.tie.id, EXACT, entry.tie.test.value);
  return [];
}

const EXACT: Spread = { s: 'exact' };
const FINITE = 'Write a finite number with its spread, e.g. 12.5 ± 0.2 kg.';

/** A number outside a reading: what a cause, a price or a claim rests on. */
function checkSpreadOf(subject: string, spread: Spread, x: number): Refusal[] {
  const why = checkSpread(spread, x);
  return why === undefined
    ? []
    : [{ code: 'bad-value', place: { subject }, value: String(x), why, next: FINITE }];
}

function checkCues({ file, cues }: Speech): Refusal[] {
  const bad = cues.findIndex((cue) => !Number.isFinite(cue.fromS) || !Number.isFinite(cue.toS));
  return bad < 0
    ? []
    : [
        {
          code: 'bad-value',
          place: { file, row: bad + 1 },
          value: cues[bad]?.text ?? '',
          why: 'the times of these words are not finite',
          next: 'Read the speech from its file again.',
        },
      ];
}

function checkInstrument(instrument: Instrument): Refusal[] {
  const why = wrongInstrument(instrument);
  const place = { subject: instrument.label };
  const next = 'Say what it measures, with finite numbers and dates like 2026-11-25.';
  return why === undefined ? [] : [{ code: 'bad-value', place, value: instrument.id, why, next }];
}

function checkGate({ gate, answers }: GateRecord): Refusal[] {
  const items = new Set(gateOf(gate)?.items.map((i) => i.id));
  return answers.flatMap(({ item, asWritten, x }) => {
    const why = !items.has(item)
      ? 'the gate has no such line'
      : x !== undefined && !Number.isFinite(x)
        ? 'the value is not finite'
        : undefined;
    const place = { subject: gate, column: item };
    return why === undefined
      ? []
      : [{ code: 'bad-value', place, value: asWritten, why, next: FINITE }];
  });
}

/** For some gates stop is the only other state; where an override is allowed it has a name and a reason. */
function checkOverride({ gate, who, why }: GateOverride): Refusal[] {
  const bad = (column: string, value: string, words: string, next: string): Refusal[] => [
    { code: 'not-allowed', place: { subject: gate, column }, value, why: words, next },
  ];
  if (!gateOf(gate)?.override)
    return bad('gate', gate, 'there is no override for this gate', 'Stop, or complete its record.');
  if (who.trim() === '') return bad('who', who, 'an override has no name', 'Name who takes it on.');
  return why.trim() === ''
    ? bad('why', why, 'an override gives no reason', 'Write the reason; it goes into the report.')
    : [];
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
  const wrong = wrongValue(r.value, r.of.property) ?? wrongShares(r);
  if (wrong) bad.push({ code: 'bad-value', place, value: r.asWritten, ...wrong });
  return bad;
}

export type Wrong = Pick<Refusal, 'why' | 'next'>;

const wrongShares = (r: Reading): Wrong | undefined =>
  r.causes.every((share) => Number.isFinite(share.effect))
    ? undefined
    : { why: 'the effect of a common cause is not finite', next: FINITE };

/** What makes a value impossible for its property; undefined when it may be recorded. */
export function wrongValue(v: Value, property: PropertyId): Wrong | undefined {
  if (v.t === 'vector') return wrongKind(v.kind, property) ?? wrongVector(v);
  if (v.t !== 'scalar' && v.t !== 'count') return undefined;
  const x = v.t === 'scalar' ? v.x : v.n;
  if (!Number.isFinite(x)) return { why: 'the value is not finite', next: FINITE };
  const spread = checkSpread(v.spread, x);
  if (spread) return { why: spread, next: FINITE };
  if (v.t === 'count') return wrongCount(v.n, v.spread) ?? wrongKind('count', property);
  if (x < 0 && propertyDef(property)?.notNegative)
    return { why: `${propertyWords(property)} is negative`, next: 'Check the sign and the tare.' };
  return wrongKind(v.kind, property);
}

/** A property of our own table holds one kind of quantity; kilograms in a length are a slip. */
function wrongKind(kind: Kind, property: PropertyId): Wrong | undefined {
  const wanted = propertyDef(property)?.kind;
  return wanted === undefined || wanted === kind
    ? undefined
    : {
        why: `${propertyWords(property)} is a ${kindWords(wanted)}, not a ${kindWords(kind)}`,
        next: 'Write it in a unit of that kind, or under another property.',
      };
}

/** A count is whole unless it has a spread: the middle of 9 to 10. */
const wrongCount = (n: number, spread: Spread): Wrong | undefined =>
  n >= 0 && (Number.isInteger(n) || spread.s !== 'exact')
    ? undefined
    : { why: 'a count is no whole number from 0', next: 'Count again.' };

function wrongVector({ x, cov }: VectorValue): Wrong | undefined {
  if (!x.every(Number.isFinite) || !cov.every(Number.isFinite))
    return { why: 'a position is not finite', next: FINITE };
  const n = x.length;
  const isWhole = cov.length === 0 || cov.length === n * n;
  return isWhole && x.every((_, i) => (cov[i * n + i] ?? 0) >= 0)
    ? undefined
    : { why: 'the spread of a position is no covariance matrix', next: FINITE };
}

function checkTable(table: TableChunk): Refusal[] {
  const vectors = [...vectorColumns(table.columns)];
  return table.rows.flatMap((row, i) => [
    ...table.columns.flatMap((use, c) =>
      use.use === 'property' && use.component === undefined
        ? checkCell(table, i, c, readCell(row, c, table), use.property)
        : [],
    ),
    ...vectors.flatMap(([property, columns]) =>
      checkCell(table, i, firstColumn(columns), readVector(row, columns, table), property),
    ),
  ]);
}

function checkCell(
  table: TableChunk,
  row: number,
  column: number,
  cell: CellRead,
  property: PropertyId,
): Refusal[] {
  if (cell.read === 'empty') return [];
  const [wrong, at] =
    cell.read === 'bad' ? [cell, cell.column] : [wrongValue(cell.value, property), column];
  if (!wrong) return [];
  const place = { file: table.file, row: table.firstRow + row, column: table.headings[at] ?? '' };
  const value = table.rows[row]?.[at] ?? '';
  return [{ code: 'bad-table', place, value, why: wrong.why, next: wrong.next }];
}

const refuse = (place: Place, why: string, value: string): Refusal => ({
  code: 'bad-change',
  place,
  value,
  why,
  next: 'Send it again from a program of this version.',
});
