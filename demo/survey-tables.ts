import { cellText, formatTable, type TextRow } from './csv.ts';
import { hungPoints, type PointName } from './posture/hung-posture.ts';
import { jointRows, type RecordKind } from './record-tables.ts';
import { VAN_27 } from './source/van-27.ts';
import { VEHICLE_HEADINGS } from './vehicle-table.ts';

/** A bag that nobody wrote the joint on: a planted fault. */
const STRAY_BAG: TextRow = { bag: 'B-stray', joint: '', spec: 'M6x16', count: '31' };

/** bags.csv: fasteners kept in bags, one bag a joint, as counted out of the bag. */
export function bagsTable(record: RecordKind): string {
  const bags = jointRows(record)
    .filter((joint) => cellText(joint, 'count_bag') !== '')
    .map((joint) => ({
      bag: `B-${joint.number}`,
      joint: cellText(joint, 'number'),
      spec: cellText(joint, 'spec'),
      count: cellText(joint, 'count_bag'),
    }));
  return formatTable(
    ['bag', 'joint', 'spec', 'count'],
    record === 'faulty' ? [...bags, STRAY_BAG] : bags,
  );
}

/** locators.csv: what holds the pack in place. In the faulty record the two-way slot is turned to X. */
export function locatorsTable(record: RecordKind): string {
  const rows = VAN_27.pack.locators.map((locator) => ({
    assembly: '40',
    locator: locator.words,
    x_mm: String(locator.xMm),
    y_mm: String(locator.yMm),
    holds: record === 'faulty' && locator.words === 'two-way slot' ? 'X' : locator.holds,
    clearance_mm: String(locator.clearanceMm),
  }));
  return formatTable(['assembly', 'locator', 'x_mm', 'y_mm', 'holds', 'clearance_mm'], rows);
}

/** chain.csv: tape readings between faces along X; the faulty record has one as mistyped. */
export function chainTable(record: RecordKind): string {
  const { readingsMm, typingError } = VAN_27.package;
  const rows = readingsMm.map(({ from, to, mm, u }) => {
    const mistyped = record === 'faulty' && from === typingError.from && to === typingError.to;
    return {
      from,
      to,
      value_mm: String(mistyped ? typingError.mm : mm),
      u_mm: String(u),
      instrument: 'tape',
    };
  });
  return formatTable(['from', 'to', 'value_mm', 'u_mm', 'instrument'], rows);
}

const HUNG_DROP_MM = 70;

type Points = Readonly<Record<PointName, readonly number[]>>;

/** One side's points in a posture; the left is the right mirrored in Y. */
function pointRows(points: Points, side: 'left' | 'right', posture: string): TextRow[] {
  return Object.entries(points).map(([point, [x = 0, y = 0, z = 0]]) => ({
    point,
    side,
    posture,
    x_mm: x.toFixed(1),
    y_mm: (side === 'left' ? -y : y).toFixed(1),
    z_mm: z.toFixed(1),
    u_mm: String(VAN_27.chassis.rearFiveLink.uByArmMm),
    instrument: 'measuring arm',
  }));
}

/**
 * points.csv: pick-up points of the rear suspension, both sides at kerb and the left hanging.
 * In the faulty record the hanging set stands as the left's kerb set.
 */
export function pointsTable(record: RecordKind): string {
  const kerb = VAN_27.chassis.rearFiveLink.pointsMm;
  const hung = hungPoints(HUNG_DROP_MM);
  const left =
    record === 'faulty'
      ? pointRows(hung, 'left', 'kerb')
      : [...pointRows(kerb, 'left', 'kerb'), ...pointRows(hung, 'left', 'hung')];
  return formatTable(
    ['point', 'side', 'posture', 'x_mm', 'y_mm', 'z_mm', 'u_mm', 'instrument'],
    [...pointRows(kerb, 'right', 'kerb'), ...left],
  );
}

const floorThickness = (
  given: Readonly<Record<'value' | 'u' | 'how' | 'instrument' | 'note', string>>,
) => ({
  subject: '40-002',
  kind: 'part',
  parent: '40',
  name: 'Floor, welded plank extrusions',
  property: 'thickness',
  unit: 'mm',
  u_unit: 'mm',
  condition: 'kerb',
  ...given,
});

/** readings.csv: readings beside those of the other tables; in the faulty record one is doubled by what was said. */
export function readingsTable(record: RecordKind): string {
  const gauge = floorThickness({
    value: '2.0',
    u: String(VAN_27.defaults.thicknessByGaugeUMm),
    how: 'measured',
    instrument: 'thickness gauge',
    note: 'skin of the floor, mean of three places',
  });
  const spoken = floorThickness({
    value: '2.25',
    u: '0.14',
    how: 'seen',
    instrument: '',
    note: 'said: "about two, two and a half"',
  });
  return formatTable(VEHICLE_HEADINGS, record === 'faulty' ? [gauge, spoken] : [gauge]);
}
