import { fileURLToPath } from 'node:url';
import { cellText, formatTable, readTable, type TextRow } from './csv.ts';
import { ASSEMBLIES } from './source/assemblies.ts';
import { jointEnds } from './source/joint-ends.ts';
import { jointWork, RENEWAL_HALF_WIDTH, SEAM_U_MM } from './source/joint-work.ts';

/** Which of the two records of VAN-27 (invented): as it should be, or with the planted faults. */
export type RecordKind = 'clean' | 'faulty';

const source = (file: string): TextRow[] =>
  readTable(fileURLToPath(new URL(`source/${file}`, import.meta.url)));

const PART_HEADINGS = [
  'number',
  'assembly',
  'name',
  'pieces',
  'material',
  'process',
  'thickness_mm',
  'mass_kg',
  'mass_u_kg',
  'instrument',
  'x_mm',
  'y_mm',
  'z_mm',
  'position_u_mm',
] as const;

/** In the faulty record 96 cells are counted for 112, and weighed by that count. */
const MISCOUNTED: Readonly<Record<string, string>> = { '40-001': '96' };

function partRow(row: TextRow, record: RecordKind): TextRow {
  const number = cellText(row, 'id');
  const miscount = record === 'faulty' ? MISCOUNTED[number] : undefined;
  const massColumn = record === 'clean' ? 'weighed_kg' : 'recorded_kg_with_planted_faults';
  const mass = cellText(row, massColumn);
  const thickness = cellText(row, 'thickness_mm');
  return {
    number,
    assembly: cellText(row, 'assembly'),
    name: cellText(row, 'name'),
    pieces: miscount ?? cellText(row, 'qty'),
    material: cellText(row, 'material'),
    process: cellText(row, 'process'),
    // The source writes 0 for a part that has no single thickness.
    thickness_mm: Number(thickness) === 0 ? '' : thickness,
    mass_kg: mass,
    // A row that was never weighed has neither a scale nor a spread.
    mass_u_kg: mass === '' ? '' : cellText(row, 'weighed_u_kg'),
    instrument: mass === '' ? '' : cellText(row, 'instrument'),
    x_mm: cellText(row, 'x_mm'),
    y_mm: cellText(row, 'y_mm'),
    z_mm: cellText(row, 'z_mm'),
    position_u_mm: cellText(row, 'position_u_mm'),
  };
}

/** parts.csv: mass_kg is of all the row's pieces. The source's true column goes no further than here. */
export const partsTable = (record: RecordKind): string =>
  formatTable(
    PART_HEADINGS,
    source('parts.csv').map((row) => partRow(row, record)),
  );

/** What each part is called, by its number. */
export const partNames = (): ReadonlyMap<string, string> =>
  new Map(source('parts.csv').map((row) => [cellText(row, 'id'), cellText(row, 'name')]));

const JOINT_HEADINGS = [
  'number',
  'from',
  'to',
  'from_words',
  'to_words',
  'type',
  'spec',
  'count_holes',
  'count_bag',
  'torque_Nm',
  'axis',
  'side',
  'access_s',
  'drive_s',
  'tool',
  'people',
  'on_removal',
  'renewal [{u}]',
  'renewal u [{u}]',
  'fluid',
  'seam_mm',
  'seam_u_mm',
] as const;

/** The source writes a dash for what a joint does not have. */
const dashless = (text: string): string => (text === '-' ? '' : text);

function jointRow(row: TextRow, record: RecordKind): TextRow {
  const holes = cellText(row, 'count');
  const bag = cellText(row, 'count_by_bag');
  return {
    number: cellText(row, 'group'),
    from: jointEnds(cellText(row, 'from')).join(';'),
    to: jointEnds(cellText(row, 'to')).join(';'),
    from_words: cellText(row, 'from'),
    to_words: cellText(row, 'to'),
    type: cellText(row, 'type'),
    spec: dashless(cellText(row, 'spec')),
    count_holes: holes,
    // The one bag that disagrees with its holes is a planted fault.
    count_bag: record === 'clean' && bag !== '' ? holes : bag,
    torque_Nm: dashless(cellText(row, 'torque_Nm')),
    axis: dashless(cellText(row, 'axis')),
    side: cellText(row, 'side'),
    access_s: cellText(row, 'access_s'),
    drive_s: cellText(row, 'drive_s'),
    ...workCells(cellText(row, 'group'), cellText(row, 'spec')),
  };
}

function workCells(joint: string, spec: string): TextRow {
  const { tool, people, onRemoval, renewal, fluid, seamMm } = jointWork(joint, spec);
  const text = (x: number | undefined): string => (x === undefined ? '' : String(x));
  const renewalU =
    renewal && Number(((RENEWAL_HALF_WIDTH * renewal) / Math.sqrt(3)).toPrecision(2));
  return {
    tool,
    people: String(people),
    on_removal: onRemoval,
    'renewal [{u}]': text(renewal),
    'renewal u [{u}]': text(renewalU),
    fluid,
    seam_mm: text(seamMm),
    seam_u_mm: seamMm === undefined ? '' : String(SEAM_U_MM),
  };
}

/** Rows of joints.csv: ends as part or assembly numbers, several parted by semicolons, and as spoken. */
export const jointRows = (record: RecordKind): TextRow[] =>
  source('joints.csv').map((row) => jointRow(row, record));

export const jointsTable = (record: RecordKind): string =>
  formatTable(JOINT_HEADINGS, jointRows(record));

/** assemblies.csv: the two-digit numbers that parts name as their assembly. */
export const assembliesTable = (): string =>
  formatTable(
    ['number', 'name'],
    Object.entries(ASSEMBLIES)
      .sort(([a], [b]) => a.localeCompare(b))
      .map(([number, name]) => ({ number, name })),
  );
