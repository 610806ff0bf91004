import type { DemoZone } from './sealing.ts';

/** Places that lines of VAN-27 run through, and its crush zones (invented); mm. */
const place = (number: string, name: string, medium: string, box: DemoZone['box']): DemoZone => ({
  ...{ number, name, parent: 'VAN-27', medium, box },
});
export const PLACES: readonly DemoZone[] = [
  place('P-BAY', 'front bay', 'bay', { x0: -520, x1: 420, y0: -700, y1: 700, z0: 250, z1: 900 }),
  place('P-CHANNEL', 'channel over the pack, left', 'channel', {
    ...{ x0: 420, x1: 2200, y0: -320, y1: -160, z0: 356, z1: 400 },
  }),
  place('P-SILL-R', 'sill, right', 'sill', {
    ...{ x0: 420, x1: 2600, y0: 700, y1: 860, z0: 250, z1: 420 },
  }),
  place('P-REAR', 'rear underbody', 'bay', {
    ...{ x0: 2200, x1: 3500, y0: -700, y1: 700, z0: 200, z1: 600 },
  }),
  place('P-CRUSH-F', 'front crush zone', 'crush zone', {
    ...{ x0: -820, x1: -520, y0: -800, y1: 800, z0: 250, z1: 900 },
  }),
  place('P-CRUSH-L', 'side crush zone, left', 'crush zone', {
    ...{ x0: 420, x1: 2600, y0: -925, y1: -700, z0: 180, z1: 900 },
  }),
];

/** A line; lengths in m, diameters and bends in mm, by tape and calliper. */
export interface DemoLine {
  readonly number: string;
  readonly name: string;
  readonly by: string;
  readonly kind: string;
  readonly circuit: string;
  readonly through: string;
  readonly from: string;
  readonly to: string;
  readonly route: string;
  readonly replaced: string;
  readonly lengthM: number;
  readonly boreMm?: number;
  readonly outerMm: number;
  readonly clips: number;
  readonly connectors: number;
  readonly bendMm: number;
  readonly bendLimitMm: number;
  readonly fluid?: {
    readonly flowLMin: number;
    readonly density: number;
    readonly mPas: number;
    readonly losses: number;
  };
  readonly cable?: {
    readonly currentA: number;
    readonly areaMm2: number;
    readonly voltageV: number;
  };
}

export const LINES: readonly DemoLine[] = [
  {
    ...{ number: 'L-BR1', name: 'brake tubes, circuit 1', by: '63-010', kind: 'brake' },
    ...{ circuit: 'brake 1', through: 'P-BAY; P-CHANNEL; P-REAR', from: '63-009' },
    ...{ to: '63-003; 63-008', replaced: 'from union to union; pack stays in' },
    route: '300 -420 800; 340 -420 420; 480 -230 380; 2150 -230 380; 2600 -200 420; 2980 680 370',
    ...{ lengthM: 5.1, boreMm: 3.3, outerMm: 4.75, clips: 13, connectors: 4 },
    ...{ bendMm: 18, bendLimitMm: 15 },
  },
  {
    ...{ number: 'L-BR2', name: 'brake tubes, circuit 2', by: '63-010', kind: 'brake' },
    ...{ circuit: 'brake 2', through: 'P-BAY; P-CHANNEL; P-REAR', from: '63-009' },
    ...{ to: '63-004; 63-007', replaced: 'from union to union; pack stays in' },
    route: '300 -420 800; 340 -400 420; 480 -210 380; 2150 -210 380; 2600 -240 420; 2980 -680 370',
    ...{ lengthM: 4.6, boreMm: 3.3, outerMm: 4.75, clips: 12, connectors: 4 },
    ...{ bendMm: 19, bendLimitMm: 15 },
  },
  {
    ...{ number: 'L-COOL', name: 'coolant to the pack', by: '70-007', kind: 'coolant' },
    ...{ circuit: 'battery cooling', through: 'P-BAY; P-CHANNEL; P-REAR', from: '70-004' },
    ...{ to: '40-020', replaced: 'pack lowered first' },
    route: '-300 180 420; 300 -120 420; 480 -280 380; 2150 -280 380; 2180 -120 225',
    ...{ lengthM: 3.2, boreMm: 16, outerMm: 19, clips: 7, connectors: 2 },
    ...{ bendMm: 60, bendLimitMm: 50 },
    fluid: { flowLMin: 10, density: 1065, mPas: 2.6, losses: 6 },
  },
  {
    ...{ number: 'L-REF', name: 'refrigerant to the chiller', by: '70-008', kind: 'refrigerant' },
    ...{ circuit: 'refrigerant', through: 'P-BAY', from: '70-002', to: '70-005' },
    ...{ replaced: 'after draining by licensed people', route: '-190 -180 430; -250 220 460' },
    ...{ lengthM: 0.62, boreMm: 9, outerMm: 12, clips: 2, connectors: 2 },
    ...{ bendMm: 35, bendLimitMm: 30 },
  },
  {
    ...{
      number: 'L-HV',
      name: 'HV cables, pack to drive unit',
      by: '50-014',
      kind: 'high voltage',
    },
    ...{ circuit: 'traction', through: 'P-REAR; P-SILL-R; P-BAY', from: '40-018', to: '50-007' },
    ...{ replaced: 'as one with its channel; HV procedure' },
    route: '2180 120 300; 2300 700 320; 2200 780 330; 480 780 330; 430 600 320; 120 180 430',
    ...{ lengthM: 3.9, outerMm: 15.5, clips: 9, connectors: 2, bendMm: 90, bendLimitMm: 80 },
    cable: { currentA: 160, areaMm2: 50, voltageV: 358 },
  },
  {
    ...{ number: 'L-LV', name: '12 V supply', by: '80-003', kind: 'low voltage' },
    ...{ circuit: '12 V', through: 'P-BAY', from: '80-001', to: '80-007' },
    ...{ replaced: 'eyelet to eyelet', route: '-380 -330 700; -240 -340 760; -100 -350 750' },
    ...{ lengthM: 0.45, outerMm: 8, clips: 2, connectors: 2, bendMm: 30, bendLimitMm: 24 },
    cable: { currentA: 60, areaMm2: 16, voltageV: 12.8 },
  },
];
