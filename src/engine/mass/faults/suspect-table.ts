import type { DetailTable } from '../../method.ts';
import { slipWords } from './fault-words.ts';
import type { FaultsFound, Slip, Suspect } from './find-faults.ts';
import { type MassRecord, pointOf } from './mass-record.ts';

/** From this probability on what is unexplained has a line among the suspects. */
const LEAST_UNEXPLAINED = 0.02;

/** The likeliest suspects, and what stays unexplained. */
export function suspectTable(
  found: FaultsFound,
  listed: readonly Suspect[],
  record: MassRecord,
): DetailTable {
  const ranks = ranksOf(found.suspects);
  const rows = listed.map((s, i) => suspectRow(s, ranks[i] ?? i + 1, record));
  const unknown = unexplainedRow(found);
  return {
    title: 'Suspects, likeliest first; ties at their worst rank',
    columns: [
      { name: 'rank' },
      { name: 'part' },
      { name: 'what it would be' },
      { name: 'explains', kind: 'mass', unit: 'kg' },
      { name: 'in X', kind: 'massMoment', unit: 'kg.m' },
      { name: 'in Y', kind: 'massMoment', unit: 'kg.m' },
      { name: 'in Z', kind: 'massMoment', unit: 'kg.m' },
      { name: 'probability', unit: '%' },
      { name: 'or else' },
      { name: 'check of a minute' },
    ],
    rows: unknown ? [...rows, unknown] : rows,
  };
}

function suspectRow(suspect: Suspect, rank: number, record: MassRecord): (string | number)[] {
  const [slip, ...more] = suspect.slips;
  const { kind, what, check } = slipWords(slip, record);
  const others = more.slice(0, 2).map((s) => slipWords(s, record).kind);
  const [kg, x, y, z] = explainedBy(slip, record);
  const label = record.rows[suspect.row]?.label ?? '';
  const orElse = [...new Set(others.filter((k) => k !== kind))].join(', ');
  return [rank, label, `${kind}: ${what}`, kg, x, y, z, suspect.probability, orElse, check];
}

type Explained = readonly [kg: number, x: number, y: number, z: number];

/** Mass and moments about the axes of the vehicle's frame that a slip adds to the parts, kg and kg·m. */
function explainedBy({ candidate, absorbedKg }: Slip, { rows }: MassRecord): Explained {
  const moved = absorbedKg
    ? [
        { row: candidate.row, kg: absorbedKg.kg },
        { row: candidate.other ?? -1, kg: -absorbedKg.kg },
      ]
    : candidate.changes;
  const along = (axis: 0 | 1 | 2) =>
    moved.reduce((sum, { row, kg }) => sum + kg * (pointOf(rows[row])?.[axis] ?? 0), 0);
  return [moved.reduce((sum, { kg }) => sum + kg, 0), along(0), along(1), along(2)];
}

/** What is left for a fault of no known kind, as a line of the table. */
function unexplainedRow({ unexplained, left, residuals }: FaultsFound) {
  if (unexplained < LEAST_UNEXPLAINED) return undefined;
  const of = (id: string) => left[residuals.of.findIndex((r) => r.id === id)] ?? 0;
  const [kg, x, y, z] = ['mass', 'x', 'y', 'z'].map(of) as [number, number, number, number];
  return [
    '–',
    'no row for certain',
    `unexplained: ${unexplainedWords(kg, x)}`,
    ...[kg, x, y, z, unexplained],
    '',
    'Read the scales again, then look for a part in no row and for positions mistyped.',
  ];
}

/** A gap in force has a place by its moment; a missing mass has it as well. */
function unexplainedWords(kg: number, x: number): string {
  const at = Math.abs(kg) > 0.5 ? ` about X ${Math.round((1000 * x) / kg)} mm` : '';
  const what = kg < 0 ? 'a part in no row, or a fault of another kind' : 'a fault of another kind';
  return `${what}: ${kg.toPrecision(3)} kg${at}`;
}

/** Ranks with ties counted at their worst. */
function ranksOf(suspects: readonly Suspect[]): number[] {
  const shown = (s: Suspect) => s.probability.toPrecision(3);
  return suspects.map(
    (s) => suspects.filter((o) => o.probability > s.probability || shown(o) === shown(s)).length,
  );
}
