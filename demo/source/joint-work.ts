/**
 * What it takes to undo VAN-27's joints (invented): tools, what may be used again, what comes
 * out, lengths of weld. Sizes of sockets follow the width across flats of hexagon heads
 * (ISO 4017); the rest is made up.
 */
const SOCKETS: Readonly<Record<string, string>> = {
  M4: 'socket 7 mm',
  M5: 'socket 8 mm',
  M6: 'socket 10 mm',
  M8: 'socket 13 mm',
  M10: 'socket 16 mm',
  M12: 'socket 18 mm',
  M14: 'socket 21 mm',
  M24: 'socket 36 mm',
};

/** Joints undone with something else than a socket. */
const OTHER_TOOLS: Readonly<Record<string, string>> = {
  J108: 'hand',
  J113: 'bit TX30',
  J307: 'spring compressor',
  J407: 'hand',
  J503: 'bit TX40',
  J504: 'spanner 11 mm',
  J505: 'clip lifter',
  J602: 'hand',
  J603: 'hose connector pliers',
  J604: 'hose connector pliers',
  J605: 'bit TX30',
  J703: 'clip lifter',
  J704: 'bit TX25',
};

const WELDS: ReadonlySet<string> = new Set(['J104', 'J105', 'J106', 'J111', 'J115', 'J802']);

/** Fasteners and seals that are not used again, and their price in units of account. */
const RENEWED: Readonly<Record<string, number>> = {
  J103: 0.62,
  J201: 0.95,
  J202: 0.7,
  J209: 0.18,
  J301: 0.88,
  J306: 0.18,
  J406: 0.75,
  J605: 0.4,
};
/** Rectangular half-width of those prices. */
export const RENEWAL_HALF_WIDTH = 0.2;

const FLUIDS: Readonly<Record<string, string>> = {
  J404: 'drive unit oil',
  J504: 'brake fluid',
  J603: 'coolant',
  J604: 'coolant',
  J605: 'refrigerant',
};

/** High-voltage connectors are parted with a second person standing by. */
const BY_TWO: ReadonlySet<string> = new Set(['J407']);

/** Length of weld of one element, mm, by tape. */
const SEAMS_MM: Readonly<Record<string, number>> = {
  J104: 1460,
  J105: 1100,
  J106: 180,
  J115: 5500,
  J802: 220,
};
export const SEAM_U_MM = 5;

export interface JointWork {
  readonly tool: string;
  readonly people: number;
  readonly onRemoval: 'reusable' | 'renew fastener' | 'destroys part';
  readonly renewal?: number;
  readonly fluid: string;
  readonly seamMm?: number;
}

/** What it takes to undo a joint, from its number and specification. */
export function jointWork(joint: string, spec: string): JointWork {
  const socket = SOCKETS[/M\d+/.exec(spec)?.[0] ?? ''] ?? '';
  const renewal = RENEWED[joint];
  const seamMm = SEAMS_MM[joint];
  const destroys = WELDS.has(joint);
  return {
    tool: destroys ? 'cutter' : (OTHER_TOOLS[joint] ?? socket),
    people: BY_TWO.has(joint) ? 2 : 1,
    onRemoval: destroys ? 'destroys part' : renewal === undefined ? 'reusable' : 'renew fastener',
    ...(renewal === undefined ? {} : { renewal }),
    fluid: FLUIDS[joint] ?? '',
    ...(seamMm === undefined ? {} : { seamMm }),
  };
}
