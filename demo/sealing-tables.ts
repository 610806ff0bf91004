import { formatTable, type TextRow } from './csv.ts';
import { PLACES } from './source/lines.ts';
import {
  BARRIERS,
  type Box,
  CROSSINGS,
  FACE_U_MM,
  LEAK_TEST,
  LID_SEAL,
  SEAT_U_MM,
  ZONES,
} from './source/sealing.ts';
import { VEHICLE_HEADINGS } from './vehicle-table.ts';

const ENDS = ['x0', 'x1', 'y0', 'y1', 'z0', 'z1'] as const;
const BOX_HEADINGS = ENDS.flatMap((end) => [`${end}_mm`, `${end}_u_mm`]);

const boxCells = (box: Box): TextRow =>
  Object.fromEntries(
    ENDS.flatMap((end) => [
      [`${end}_mm`, textOf(box[end])],
      [`${end}_u_mm`, box[end] === undefined ? '' : String(FACE_U_MM)],
    ]),
  );
const textOf = (x: number | undefined): string =>
  x === undefined ? '' : String(Number(x.toFixed(6)));

/** Columns of the leak test: heading, value, standard uncertainty. */
const TEST = [
  ['free_volume', 'L', LEAK_TEST.volumeL, LEAK_TEST.volumeUL],
  ['vents_open', 'kPa', LEAK_TEST.ventKPa, LEAK_TEST.ventUKPa],
  ['compliance', 'mL/kPa', LEAK_TEST.complianceMLPerKPa, LEAK_TEST.complianceUMLPerKPa],
  ['drop', 'Pa', LEAK_TEST.dropPa, LEAK_TEST.dropUPa],
  ['test_time', 's', LEAK_TEST.timeS, LEAK_TEST.timeUS],
  ['test_pressure', 'kPa', LEAK_TEST.pressureKPa, LEAK_TEST.pressureUKPa],
  ['temperature', 'Cel', LEAK_TEST.temperatureC, LEAK_TEST.temperatureUC],
  ['warming', 'K', LEAK_TEST.warmingK, LEAK_TEST.warmingUK],
  ['growth', '%', LEAK_TEST.growthPercent, LEAK_TEST.growthUPercent],
] as const;
const LIMIT = 'limit [Pa.m3/s]';
const TEST_HEADINGS = [
  ...TEST.flatMap(([name, unit]) => [`${name} [${unit}]`, `${name}_u [${unit}]`]),
  LIMIT,
];

const testCells = (zone: string): TextRow => {
  const taken = zone === LEAK_TEST.zone;
  return {
    ...Object.fromEntries(
      TEST.flatMap(([name, unit, x, u]) => [
        [`${name} [${unit}]`, taken ? String(x) : ''],
        [`${name}_u [${unit}]`, taken ? String(u) : ''],
      ]),
    ),
    [LIMIT]: taken ? `exactly ${LEAK_TEST.limitPaM3PerS}` : '',
  };
};

/** zones.csv: volumes with a medium, with the leak test of the dry one; in both records the same. */
export const zonesTable = (): string =>
  formatTable(
    ['number', 'name', 'parent', 'medium', ...TEST_HEADINGS, ...BOX_HEADINGS],
    [...ZONES, ...PLACES].map(({ box, ...zone }) => ({
      ...zone,
      ...testCells(zone.number),
      ...boxCells(box),
    })),
  );

/** barriers.csv: what parts two zones, with the coordinates of its faces. */
export const barriersTable = (): string =>
  formatTable(
    ['number', 'name', 'parent', 'a', 'b', 'by', 'axis', ...BOX_HEADINGS],
    BARRIERS.map(({ box, ...barrier }) => ({ ...barrier, parent: '40', ...boxCells(box) })),
  );

/** crossings.csv: what goes through; of the crash beams' screws only seat, direction and joint are told. */
export const crossingsTable = (): string =>
  formatTable(
    [
      ...['number', 'name', 'parent', 'crosses', 'by', 'kind', 'seal', 'count'],
      ...['seal_length_m', 'seal_length_u_m', 'direction', 'x_mm', 'y_mm', 'z_mm', 'position_u_mm'],
    ],
    CROSSINGS.map(({ sealM, direction = '', seatMm, count, ...c }): TextRow => {
      const [x, y, z] = seatMm ?? [];
      return {
        ...c,
        parent: '40',
        count: String(count),
        seal_length_m: textOf(sealM),
        seal_length_u_m: sealM === undefined ? '' : '0.01',
        direction,
        ...{ x_mm: textOf(x), y_mm: textOf(y), z_mm: textOf(z) },
        position_u_mm: seatMm ? String(SEAT_U_MM) : '',
      };
    }),
  );

const sealRow = (subject: string, kind: string, taken: Partial<TextRow>): TextRow => ({
  ...{ subject, kind, parent: '', name: '', property: '', value: '', unit: '', u: '', u_unit: '' },
  ...{ how: 'seen', instrument: '', condition: 'kerb', note: '' },
  ...(taken as TextRow),
});

/** seals.csv: flange, cord and fasteners of the lid, a reading a row; in both records the same. */
export function sealsTable(): string {
  const { joint, designs, clips, readings } = LID_SEAL;
  const rows = readings.map(([property, value, unit, u, how, instrument]) =>
    sealRow(joint, 'joint', {
      ...{ property, value: String(value), unit, u: String(u), u_unit: unit, how, instrument },
    }),
  );
  const force = {
    ...{ property: 'seal.force', value: String(clips.forceN), unit: 'N', u: String(clips.uN) },
    ...{ u_unit: 'N', how: 'measured', instrument: 'spring balance' },
  };
  return formatTable(VEHICLE_HEADINGS, [
    ...rows,
    sealRow(designs, 'alternative', { property: 'seal.joint', value: joint }),
    sealRow(clips.design, 'alternative', force),
  ]);
}
