import {
  arc,
  box,
  circle,
  fine,
  hole,
  type Line,
  part,
  polygon,
  polyline,
  ring,
  row,
} from './line.ts';

/** What one photograph shows of VAN-27 (invented): a number, what is seen, and its lines in mm. */
export interface Outline {
  readonly subject: string;
  readonly caption: string;
  /** Length of the scale bar. */
  readonly barMm: number;
  readonly lines: readonly Line[];
}

const screw =
  (radius: number) =>
  ([x, y]: readonly [number, number]) =>
    hole(circle(x, y, radius));

const vehicle: Outline = {
  subject: 'VAN-27',
  caption: 'as received, left side, on the corner scales',
  barMm: 1000,
  lines: [
    part(
      polygon(
        [60, 1280],
        [0, 1080],
        [40, 840],
        [620, 660],
        [1150, 120],
        [1400, 0],
        [4380, 0],
        [4540, 200],
        [4540, 1330],
        [4400, 1480],
        [140, 1480],
      ),
    ),
    hole(polygon([780, 650], [1210, 190], [1820, 190], [1820, 650])),
    fine(polyline([1900, 40], [1900, 1440])),
    fine(polyline([2900, 40], [2900, 1440])),
    fine(polyline([1950, 760], [4500, 760])),
    part(circle(820, 1505, 325)),
    part(circle(3740, 1505, 325)),
    hole(circle(820, 1505, 205)),
    hole(circle(3740, 1505, 205)),
    fine(box(480, 1832, 680, 60)),
    fine(box(3400, 1832, 680, 60)),
  ],
};

const floor: Outline = {
  subject: '40-002',
  caption: 'floor from below, ten planks, nine seams',
  barMm: 200,
  lines: [
    part(box(0, 0, 1520, 1250)),
    ...row(9, [0, 125], [0, 1125], ([, y]) => fine(polyline([0, y], [1520, y]))),
    ...row(10, [30, 62], [30, 1188], ([x, y]) => hole(box(x, y - 12, 40, 24))),
    ...row(10, [1450, 62], [1450, 1188], ([x, y]) => hole(box(x, y - 12, 40, 24))),
  ],
};

/** Sixty-two screws along the flange, the corners included: 18 a long side, 13 between on each short. */
const lid: Outline = {
  subject: '40-010',
  caption: 'lid from above, 62 screws outside the cord',
  barMm: 200,
  lines: [
    part(box(0, 0, 1520, 1250)),
    fine(box(28, 28, 1464, 1194)),
    fine(box(60, 60, 1400, 1130)),
    ...row(18, [14, 14], [1506, 14], screw(7)),
    ...row(18, [14, 1236], [1506, 1236], screw(7)),
    ...row(13, [14, 101], [14, 1149], screw(7)),
    ...row(13, [1506, 101], [1506, 1149], screw(7)),
    ...row(3, [380, 120], [1140, 120], ([x, y]) => fine(box(x - 15, y, 30, 1010))),
  ],
};

const cell: Outline = {
  subject: '40-001',
  caption: 'one cell of 112, large face',
  barMm: 50,
  lines: [
    part(box(0, 12, 220, 133)),
    part(box(26, 2, 38, 10)),
    part(box(156, 2, 38, 10)),
    hole(box(98, 7, 24, 5)),
    fine(polyline([0, 20], [220, 20])),
    fine(box(30, 45, 160, 70)),
  ],
};

const crashBeam: Outline = {
  subject: '40-003',
  caption: 'side crash beam from outside, long screws at 3, 6 and 8',
  barMm: 200,
  lines: [
    part(box(0, 0, 1520, 90)),
    fine(polyline([0, 24], [1520, 24])),
    fine(polyline([0, 66], [1520, 66])),
    ...row(10, [85, 45], [1435, 45], screw(9)),
    ...[385, 835, 1135].map((x) => fine(circle(x, 45, 16))),
  ],
};

const frontCradle: Outline = {
  subject: '60-001',
  caption: 'front cradle from below, four bushes',
  barMm: 200,
  lines: [
    part(
      polygon(
        [-60, 0],
        [60, -40],
        [120, 60],
        [420, 140],
        [600, 60],
        [640, 110],
        [640, 780],
        [600, 830],
        [420, 750],
        [120, 830],
        [60, 930],
        [-60, 890],
        [20, 700],
        [20, 190],
      ),
    ),
    hole(polygon([130, 230], [420, 260], [420, 630], [130, 660])),
    ...[
      [0, 15],
      [0, 875],
      [540, 115],
      [540, 775],
    ].flatMap(([x = 0, y = 0]) => [part(circle(x, y, 46)), hole(circle(x, y, 15))]),
  ],
};

const rearCradle: Outline = {
  subject: '61-001',
  caption: 'rear cradle from below, welded tube, hard mounted',
  barMm: 200,
  lines: [
    part(box(0, 0, 50, 960)),
    part(box(380, 0, 50, 960)),
    part(box(50, 190, 330, 50)),
    part(box(50, 720, 330, 50)),
    fine(polyline([50, 240], [380, 720])),
    fine(polyline([50, 290], [345, 720])),
    ...row(2, [25, 20], [405, 20], ([x, y]) => part(circle(x, y, 34))),
    ...row(2, [25, 940], [405, 940], ([x, y]) => part(circle(x, y, 34))),
    ...row(2, [25, 20], [405, 20], screw(8)),
    ...row(2, [25, 940], [405, 940], screw(8)),
  ],
};

const springLink: Outline = {
  subject: '61-003',
  caption: 'spring link from above, spring seat and damper eye',
  barMm: 100,
  lines: [
    part(
      polygon(
        [0, 70],
        [140, 20],
        [240, 20],
        [433, 60],
        [433, 110],
        [240, 160],
        [140, 160],
        [0, 110],
      ),
    ),
    part(circle(0, 90, 32)),
    hole(circle(0, 90, 9)),
    part(circle(433, 85, 30)),
    hole(circle(433, 85, 8)),
    fine(circle(190, 90, 56)),
    hole(circle(190, 90, 20)),
    hole(circle(365, 86, 11)),
  ],
};

const wheel: Outline = {
  subject: '62-001',
  caption: 'steel wheel from outside, five bolts',
  barMm: 100,
  lines: [
    part(circle(0, 0, 220)),
    fine(circle(0, 0, 203)),
    fine(circle(0, 0, 150)),
    ...ring(10, [0, 0], 122, screw(17)),
    ...ring(5, [0, 0], 56, screw(7.5)),
    hole(circle(0, 0, 34)),
  ],
};

const disc: Outline = {
  subject: '63-001',
  caption: 'front disc, 300 x 26',
  barMm: 50,
  lines: [
    part(circle(0, 0, 150)),
    fine(circle(0, 0, 97)),
    fine(circle(0, 0, 82)),
    ...ring(5, [0, 0], 56, screw(7.5)),
    ...ring(2, [0, 0], 46, screw(3.3)),
    hole(circle(0, 0, 34)),
  ],
};

const loadFloor: Outline = {
  subject: '10-021',
  caption: 'load floor panel from above, ribbed',
  barMm: 500,
  lines: [
    part(
      polygon(
        [0, 0],
        [980, 0],
        [1010, 130],
        [1560, 130],
        [1590, 0],
        [2100, 0],
        [2100, 1500],
        [1590, 1500],
        [1560, 1370],
        [1010, 1370],
        [980, 1500],
        [0, 1500],
      ),
    ),
    ...row(9, [0, 230], [0, 1270], ([, y]) => fine(box(60, y - 16, 1980, 32))),
    ...[60, 1440].flatMap((y) => [
      ...row(3, [120, y], [880, y], screw(14)),
      ...row(2, [1700, y], [1980, y], screw(14)),
    ]),
  ],
};

/** Outline of the gear case, `inset` within its edge: an arc about each shaft, joined by tangents. */
const gearCaseEdge = (inset: number, aroundInput: number, aroundOutput: number) => [
  ...arc(aroundInput, [130, 190], 130 - inset, 107, 253),
  ...arc(aroundOutput, [340, 190], 190 - inset, -107, 107),
];

const gearCase: Outline = {
  subject: '50-004',
  caption: 'gear case half, sealing face, 16 bolts',
  barMm: 100,
  lines: [
    part(polygon(...gearCaseEdge(0, 16, 30))),
    fine(polygon(...gearCaseEdge(28, 16, 30))),
    hole(circle(130, 190, 36)),
    hole(circle(222, 200, 24)),
    hole(circle(340, 190, 62)),
    ...gearCaseEdge(14, 6, 10).map(screw(5)),
  ],
};

/** The twelve drawn photographs, in the order of the album. */
export const OUTLINES: readonly Outline[] = [
  vehicle,
  floor,
  lid,
  cell,
  crashBeam,
  frontCradle,
  rearCradle,
  springLink,
  wheel,
  disc,
  loadFloor,
  gearCase,
];
