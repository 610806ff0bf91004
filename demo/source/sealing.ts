import { VAN_27 } from './van-27.ts';

/**
 * Zones of VAN-27's pack, the walls between them and what goes through (invented). Coordinates in
 * mm; `a` is the zone on the side of the smaller coordinate. Walls are as long as the pack's frame
 * and the lid reaches to its cord, so that the screws outside the cord meet nothing.
 */
const { spanXMm, spanZMm, lid, crashBeams, sideFrame, crossings } = VAN_27.pack;
const [xFrom, xTo] = spanXMm as readonly [number, number];
const [zFrom, zTo] = spanZMm as readonly [number, number];
const [outerIn, outerOut] = sideFrame.outerWallYMm as readonly [number, number];
const [innerIn, innerOut] = sideFrame.innerWallYMm as readonly [number, number];

export type Box = Readonly<Partial<Record<'x0' | 'x1' | 'y0' | 'y1' | 'z0' | 'z1', number>>>;

export interface DemoZone {
  readonly number: string;
  readonly name: string;
  readonly parent: string;
  readonly medium: string;
  readonly box: Box;
}
const along: Box = { x0: xFrom + 10, x1: xTo - 10, z0: zFrom + 5, z1: zTo - 5 };
export const ZONES: readonly DemoZone[] = [
  { number: 'Z-OUT', name: 'outside', parent: 'VAN-27', medium: 'wet, outside', box: {} },
  {
    ...{ number: 'Z-CAV-L', name: 'side frame cavity, left', parent: '40' },
    ...{ medium: 'drained cavity', box: { ...along, y0: -outerIn, y1: -innerOut } },
  },
  {
    ...{ number: 'Z-CAV-R', name: 'side frame cavity, right', parent: '40' },
    ...{ medium: 'drained cavity', box: { ...along, y0: innerOut, y1: outerIn } },
  },
  {
    ...{ number: 'Z-DRY', name: 'cells and electronics', parent: '40', medium: 'dry' },
    box: { x0: xFrom + 40, x1: xTo - 50, y0: -innerIn, y1: innerIn, z0: zFrom + 14, z1: zTo - 5 },
  },
];

/** A leak test of the dry volume, and the limit that its user set. */
export const LEAK_TEST = {
  zone: 'Z-DRY',
  volumeL: lid.freeVolumeL,
  volumeUL: lid.freeVolumeUL,
  ventKPa: lid.ventsOpenKPa,
  ventUKPa: lid.ventsOpenUKPa,
  dropPa: 50,
  dropUPa: 3,
  timeS: 60,
  timeUS: 0.2,
  pressureKPa: 105,
  pressureUKPa: 0.1,
  temperatureC: 20,
  temperatureUC: 0.3,
  warmingK: 0.02,
  warmingUK: 0.02,
  growthPercent: 0.004,
  growthUPercent: 0.002,
  complianceMLPerKPa: 40,
  complianceUMLPerKPa: 10,
  limitPaM3PerS: 0.15,
} as const;

export interface DemoBarrier {
  readonly number: string;
  readonly name: string;
  readonly a: string;
  readonly b: string;
  readonly by: string;
  readonly axis: 'X' | 'Y' | 'Z';
  readonly box: Box;
}
export const BARRIERS: readonly DemoBarrier[] = [
  {
    ...{ number: 'B-LID', name: 'lid', a: 'Z-DRY', b: 'Z-OUT', by: '40-010', axis: 'Z' },
    box: { x0: xFrom + 40, x1: xTo - 40, y0: -500, y1: 500, z0: zTo - lid.thicknessMm, z1: zTo },
  },
  {
    ...{ number: 'B-FLOOR', name: 'floor', a: 'Z-OUT', b: 'Z-DRY', by: '40-002', axis: 'Z' },
    box: { z0: zFrom, z1: zFrom + 14 },
  },
  {
    ...{ number: 'B-FRONT', name: 'front cross', a: 'Z-OUT', b: 'Z-DRY', by: '40-005', axis: 'X' },
    box: { x0: xFrom + 10, x1: xFrom + 40 },
  },
  {
    ...{ number: 'B-REAR', name: 'rear header', a: 'Z-DRY', b: 'Z-OUT', by: '40-006', axis: 'X' },
    box: { x0: xTo - 50, x1: xTo - 10 },
  },
  {
    ...{ number: 'B-L-OUT', name: 'side frame LH, outer wall', a: 'Z-OUT', b: 'Z-CAV-L' },
    ...{ by: '40-008', axis: 'Y', box: { ...along, y0: -outerOut, y1: -outerIn } },
  },
  {
    ...{ number: 'B-L-IN', name: 'side frame LH, inner wall', a: 'Z-CAV-L', b: 'Z-DRY' },
    ...{ by: '40-008', axis: 'Y', box: { ...along, y0: -innerOut, y1: -innerIn } },
  },
  {
    ...{ number: 'B-R-IN', name: 'side frame RH, inner wall', a: 'Z-DRY', b: 'Z-CAV-R' },
    ...{ by: '40-009', axis: 'Y', box: { ...along, y0: innerIn, y1: innerOut } },
  },
  {
    ...{ number: 'B-R-OUT', name: 'side frame RH, outer wall', a: 'Z-CAV-R', b: 'Z-OUT' },
    ...{ by: '40-009', axis: 'Y', box: { ...along, y0: outerIn, y1: outerOut } },
  },
];
/** Standard uncertainty of a face, mm. */
export const FACE_U_MM = 0.5;

export interface DemoCrossing {
  readonly number: string;
  readonly name: string;
  readonly crosses: string;
  readonly by: string;
  readonly kind: string;
  readonly seal: string;
  readonly count: number;
  readonly sealM?: number;
  readonly direction?: string;
  readonly seatMm?: readonly [number, number, number];
}

/** Height of the row of crash beam screws, mm. */
const SCREW_Z_MM = 212;
export const SEAT_U_MM = 1;

/** The crash beams' screws, numbered from the front: which go through is for the walls to tell. */
const beamScrews = (side: 'L' | 'R'): DemoCrossing[] =>
  Array.from({ length: crashBeams.screwsASide }, (_, i): DemoCrossing => {
    const long = (crashBeams.longScrewPositions as readonly number[]).includes(i + 1);
    const x = crashBeams.firstXMm + i * crashBeams.pitchXMm;
    const y = side === 'L' ? -crashBeams.headSeatYMm : crashBeams.headSeatYMm;
    return {
      number: `X-${side}${i + 1}`,
      name: `crash beam screw ${side === 'L' ? 'LH' : 'RH'} ${i + 1}`,
      ...{ crosses: '', by: long ? 'J114' : 'J102', kind: 'fastener', seal: 'none', count: 1 },
      direction: side === 'L' ? '+Y' : '-Y',
      seatMm: [x, y, SCREW_Z_MM],
    };
  });

const rear = (
  number: string,
  name: string,
  by: string,
  kind: string,
  seal: string,
  count: number,
  sealM?: number,
): DemoCrossing => ({
  ...{ number, name, crosses: 'B-REAR', by, kind, seal, count },
  ...(sealM === undefined ? {} : { sealM }),
});

export const CROSSINGS: readonly DemoCrossing[] = [
  ...beamScrews('L'),
  ...beamScrews('R'),
  {
    ...{ number: 'X-DRAIN-L', name: 'drains LH', crosses: 'B-L-OUT', by: '40-008' },
    ...{ kind: 'drain', seal: 'open', count: 4 },
  },
  {
    ...{ number: 'X-DRAIN-R', name: 'drains RH', crosses: 'B-R-OUT', by: '40-009' },
    ...{ kind: 'drain', seal: 'open', count: 4 },
  },
  {
    ...{ number: 'X-LID', name: 'lid gasket', crosses: 'B-LID', by: '40-022' },
    ...{ kind: 'gasket', seal: 'cord', count: 1, sealM: crossings.lidGasketM },
  },
  {
    ...{ number: 'X-SEAMS', name: 'floor seams', crosses: 'B-FLOOR', by: 'J104', kind: 'seam' },
    ...{ seal: 'friction stir weld', count: crossings.floorSeams, sealM: crossings.floorSeamM },
  },
  {
    ...{ number: 'X-PERIMETER', name: 'floor to frame', crosses: 'B-FLOOR', by: 'J115' },
    ...{ kind: 'seam', seal: 'weld and sealer', count: 1, sealM: crossings.perimeterWeldM },
  },
  rear('X-J107', 'screws of HV headers', 'J107', 'fastener', 'sealant in the thread', 8),
  rear('X-J109', 'screws of coolant ports', 'J109', 'fastener', 'sealant in the thread', 4),
  rear('X-J110', 'screws of LV header', 'J110', 'fastener', 'sealant in the thread', 4),
  rear('X-HV', 'HV headers', '40-018', 'header', 'O-ring', crossings.highVoltageHeaders, 0.34),
  rear('X-LV', 'LV header', '40-019', 'header', 'gasket', crossings.lowVoltageHeaders, 0.22),
  rear('X-PORTS', 'coolant ports', '40-020', 'port', 'O-ring', crossings.coolantPorts, 0.13),
  rear('X-VENTS', 'vents', '40-021', 'vent', 'O-ring, membrane', crossings.vents, 0.11),
];

/** The lid's joint: flange, cord and fasteners; value, unit, standard uncertainty, how it is known. */
export const LID_SEAL = {
  joint: 'J101',
  /** The designs for it, and of that with clips the force of one by spring balance, N. */
  designs: 'LID',
  clips: { design: 'LID-4', forceN: 210, uN: 15 },
  readings: [
    ['seal.pitch', lid.screws.pitchMm, 'mm', 0.5, 'measured', 'calliper'],
    ['seal.cornerPitch', 104, 'mm', 0.5, 'measured', 'calliper'],
    ['seal.perimeter', lid.perimeterM, 'm', 0.01, 'measured', 'tape'],
    ['seal.area', 1.8, 'm2', 0.02, 'calculated', ''],
    ['flange.width', lid.flangeWidthMm, 'mm', 0.2, 'measured', 'calliper'],
    ['flange.thickness', lid.thicknessMm, 'mm', 0.05, 'measured', 'thickness gauge'],
    ['flange.modulus', lid.flangeModulusGPa, 'GPa', 0.5, 'supplied', ''],
    ['gasket.free', lid.cord.diameterMm, 'mm', 0.1, 'measured', 'calliper'],
    ['gasket.squeezed', lid.cord.squeezedToMm, 'mm', 0.1, 'measured', 'calliper'],
    ['gasket.lineLoad', lid.cord.lineLoadNPerMm, 'N/mm', lid.cord.lineLoadUNPerMm, 'supplied', ''],
    ['gasket.demand', lid.gasketDemandNPerMm, 'N/mm', lid.gasketDemandUNPerMm, 'supplied', ''],
    ['seal.pressure', lid.ventsOpenKPa, 'kPa', lid.ventsOpenUKPa, 'supplied', ''],
    ['seal.force', 8000, 'N', 1600, 'calculated', ''],
  ],
} as const;
