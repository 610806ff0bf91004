import type { Finding } from '../../../study/index.ts';
import type { BoundLook, Looked, Run } from '../../method.ts';
import type { Candidate } from './candidate.ts';
import { type Detection, detectionOf, sizeOf } from './detection.ts';
import { FAULT_WORDS, slipWords } from './fault-words.ts';
import { CLOSES_FROM, type FaultsFound, findFaults, UNEXPLAINED_FROM } from './find-faults.ts';
import { kindTable, limitTable } from './limit-tables.ts';
import { type MassRecord, massOf } from './mass-record.ts';
import { readRecord } from './read-record.ts';
import { type SetUp, setUp } from './set-up.ts';
import { suspectBars } from './suspect-bars.ts';
import { suspectTable } from './suspect-table.ts';

/** Suspects listed at most, and probability below which a row is none. */
const LISTED = 20;
const LEAST = 0.002;
/** From this probability on a suspect is also found at its row. */
const POINTED_AT = 0.3;

/** Looks for the slips in a record that would explain why it does not close. */
export function lookForFaults(bound: BoundLook, run: Run): Looked {
  const set = setUp(readRecord(bound));
  if (set.scorer.residuals.of.length === 0) return { findings: [nothingToCloseAgainst] };
  const found = findFaults(set, (share) => run.tick(share));
  const open = found.closes < CLOSES_FROM;
  const detection = detectionOf(set);
  return {
    ...(open ? suspectsOf(found, set.record) : {}),
    further: [limitTable(set), kindTable(detection, set.record)],
    findings: [
      ...(open ? openFindings(found, set) : [closed(found)]),
      ...missingFindings(found, set.record),
      ...hiddenFindings(detection, set.record),
      ...(found.complete ? [] : [cutShort]),
    ],
  };
}

/** The likeliest suspects in a table, and drawn by their probability. */
function suspectsOf(found: FaultsFound, record: MassRecord): Looked {
  const listed = found.suspects.filter((s) => s.probability >= LEAST).slice(0, LISTED);
  const unexplained = found.unexplained < UNEXPLAINED_FROM ? undefined : found.unexplained;
  const bars = suspectBars(listed, unexplained, record);
  return {
    detail: suspectTable(found, listed, record),
    ...(bars.rows.length === 0 ? {} : { figures: [bars] }),
  };
}

const finding = (
  code: string,
  level: Finding['level'],
  subject: string,
  value: string,
  what: string,
  next: string,
): Finding => ({
  code,
  level,
  place: { ...(subject ? { subject } : {}), property: 'mass' },
  value,
  what,
  next,
});

const percent = (p: number): string => `${(100 * p).toPrecision(2)} %`;

function openFindings(found: FaultsFound, { record }: SetUp): Finding[] {
  const pointed = found.suspects.filter((s) => s.probability >= POINTED_AT).slice(0, LISTED);
  return [
    ...pointed.map((s): Finding => {
      const { kind, what, check } = slipWords(s.slips[0], record);
      const row = record.rows[s.row];
      const value = `${row?.written || massOf(row)}`;
      return finding('suspect-row', 'doubt', row?.label ?? '', value, `${kind}: ${what}`, check);
    }),
    ...grossFinding(found),
    ...(found.unexplained >= UNEXPLAINED_FROM ? [unexplained(found)] : []),
  ];
}

/** Faults of opposite sign cancel in a gap: the sum of their sizes may be far larger. */
function grossFinding({ best, residuals }: FaultsFound): Finding[] {
  const gross = best.reduce((sum, c) => sum + c.changes.reduce((s, x) => s + Math.abs(x.kg), 0), 0);
  const net = residuals.of.find((r) => r.id === 'mass')?.form.x;
  if (net === undefined || gross <= Math.abs(net)) return [];
  return [
    finding(
      'gross-error-may-be-larger',
      'doubt',
      '',
      `${gross.toPrecision(3)} kg gross, ${net.toPrecision(3)} kg net`,
      'the likeliest slips add up to more than the gap, since some cancel others in it',
      'Check the suspects one by one; do not stop when the gap alone has closed.',
    ),
  ];
}

const unexplained = (found: FaultsFound): Finding =>
  finding(
    'unexplained',
    'doubt',
    '',
    percent(found.unexplained),
    'unexplained: there may be a fault here that is of no kind the search knows',
    'Read the scales and the module again, look for a part in no row and for positions mistyped; then search again.',
  );

const closed = (found: FaultsFound): Finding =>
  finding(
    'record-closes',
    'note',
    '',
    percent(found.closes),
    'the record closes within its spread in every sum that could be made: no slip has to be thought of',
    'Slips below the limit of detection may still be in it: see the table of limits.',
  );

const missingFindings = ({ missing }: FaultsFound, { rows }: MassRecord): Finding[] =>
  missing.map(({ row, kg, u }) =>
    finding(
      'mass-left-for-missing',
      'note',
      rows[row]?.label ?? '',
      `${Math.max(0, kg).toPrecision(3)} ± ${u.toPrecision(2)} kg`,
      'no reading; what the sums leave for it under the likeliest explanation is no reading either',
      'Weigh it, or look whether it is still on another part.',
    ),
  );

function hiddenFindings({ hiddenPair }: Detection, { rows }: MassRecord): Finding[] {
  if (!hiddenPair) return [];
  const [a, b] = hiddenPair;
  const name = (c: Candidate) => `${FAULT_WORDS[c.kind].kind} at ${rows[c.row]?.number ?? ''}`;
  const net = [...a.changes, ...b.changes].reduce((sum, c) => sum + c.kg, 0);
  return [
    finding(
      'gross-error-may-hide',
      'note',
      '',
      `${(sizeOf(a) + sizeOf(b)).toPrecision(3)} kg gross behind ${Math.abs(net).toPrecision(1)} kg net`,
      `two slips that no sum of this record would tell from none: ${name(a)} with ${name(b)}`,
      'A gap that closes does not prove the rows: weigh heavy rows twice, or more modules in one piece.',
    ),
  ];
}

const nothingToCloseAgainst: Finding = finding(
  'nothing-to-close-against',
  'gap',
  '',
  '',
  'neither corner loads nor a module weighed in one piece: there is no sum that could fail to close',
  'Read the corner scales, or weigh a module in one piece and list its parts.',
);

const cutShort: Finding = finding(
  'search-cut-short',
  'note',
  '',
  '',
  'the search met its limit before every promising set of slips was looked into: the order of weak suspects may change',
  'Clear the first suspects, then search again.',
);
