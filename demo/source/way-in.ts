/**
 * What stands in the way of what in VAN-27, the steps that are no joint of the record, and what
 * is reached in service (all invented). `instead`: alternatives share the word.
 */
export interface Blocker {
  readonly first: string;
  readonly before: string;
  readonly instead?: string;
  readonly why: string;
}

export interface Step {
  readonly number: string;
  readonly name: string;
  readonly seconds: number;
  readonly tool: string;
  readonly fluid?: string;
}

export const STEPS: readonly Step[] = [
  { number: 'S01', name: 'low-voltage plug, one lever connector', seconds: 4, tool: 'hand' },
  {
    number: 'S02',
    name: 'recover refrigerant with the station',
    seconds: 1200,
    tool: 'refrigerant station',
    fluid: 'refrigerant',
  },
  {
    number: 'S03',
    name: 'drain drive unit oil',
    seconds: 300,
    tool: 'bit TX40',
    fluid: 'drive unit oil',
  },
];
/** Relative standard uncertainty of the time of a step, as of a joint. */
export const STEP_RELATIVE_U = 0.15;

export const BLOCKERS: readonly Blocker[] = [
  { first: 'S01', before: '40', why: 'the plug holds the pack to the body harness' },
  { first: 'J604', before: '40', instead: 'coolant', why: 'line at the pack port' },
  { first: 'J603', before: '40', instead: 'coolant', why: 'or opened along the line' },
  { first: '40', before: 'J101', why: 'the lid is under the load floor' },
  { first: '40-010', before: 'J112', why: 'inside the lid' },
  { first: '40-010', before: 'J113', why: 'inside the lid' },
  { first: '62-001', before: '63-003', why: 'behind the wheel' },
  { first: '62-002', before: '63-004', why: 'behind the wheel' },
  { first: '62-005', before: '63-007', why: 'behind the wheel' },
  { first: '62-006', before: '63-008', why: 'behind the wheel' },
  { first: 'J501', before: 'J406', why: 'behind the wheel' },
  { first: 'J501', before: 'J206', why: 'behind the wheel' },
  { first: 'J501', before: 'J310', why: 'behind the wheel' },
  { first: '63-003', before: '63-001', why: 'the caliper straddles the disc' },
  { first: '63-004', before: '63-002', why: 'the caliper straddles the disc' },
  { first: 'J310', before: 'J307', why: 'the damper limits the droop of the spring link' },
  { first: '20-013', before: 'J201', why: 'undershield below the cradle' },
  { first: '20-013', before: 'J401', why: 'undershield below the mounts' },
  { first: 'J704', before: 'J701', why: 'behind the bumper cover' },
  { first: '20-001', before: 'J602', why: 'behind the bumper cover' },
  { first: 'S02', before: 'J605', why: 'refrigerant under pressure' },
  { first: 'S03', before: 'J404', why: 'oil runs out' },
];

/** What is reached in service, and why. */
export const SERVICED: Readonly<Record<string, string>> = {
  '20-015': 'washer reservoir and pump',
  '40': 'pack lowered for repair',
  '40-015': 'fuses and contactors',
  '50-007': 'power stage',
  '63-001': 'disc, left front',
  '70-002': 'compressor',
};

/** What stays on the hoist whatever comes off: rails, strut towers, torque boxes, sills and floor of the shell. */
export const STAYS: readonly string[] = [
  '10-001',
  '10-002',
  '10-006',
  '10-007',
  '10-012',
  '10-013',
  '10-014',
  '10-015',
  '10-020',
  '10-021',
  '10-027',
  '10-028',
];

/** How the work is timed (invented). */
export const WORK = {
  toolChangeS: { value: 6, u: 1.5 },
  ratingPercent: { value: 100, u: 3 },
  allowancePercent: 12,
  allowanceBase: 'normal time',
  taktS: 240,
  /** Read with a stopwatch, seconds each. */
  stopwatchS: { J103: { value: 9.6, u: 0.4 }, J501: { value: 5.4, u: 0.2 } },
  /** Elements of motion for taking up and starting one screw, then driving it. */
  elements: { J112: { codes: 'R16C G4A M10B5 RL1', engagedMm: 9, turnsAMinute: 500 } },
} as const;
