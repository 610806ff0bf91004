import type { Change } from './change.ts';
import { readClock } from './clock.ts';
import type { Finding } from './finding.ts';
import { type Id, ulidMs } from './ids.ts';

/** Clocks of devices that are set by the network differ by less; common practice, no source. */
const APART_MS = 5 * 60_000;

/** A device and the time on its wall when it made a change. */
interface Told {
  readonly device: Id;
  readonly ms: number;
}

/**
 * Watches the devices' clocks, change by change in the order of the fold. The order of changes
 * comes out right whatever the clocks say; their times may not, and that is a finding: a clock
 * that was put back, and one that others saw to be ahead of theirs.
 */
export class ClockWatch {
  readonly #last = new Map<Id, number>();
  /** The latest time that was a device's own, and not taken over from another. */
  #latest: Told | undefined;
  readonly #found = new Map<string, Finding>();

  constructor(private readonly study: Id) {}

  /** One finding a device and kind of jump, the first that was seen. */
  get findings(): readonly Finding[] {
    return [...this.#found.values()];
  }

  add({ id, device, clock }: Change): void {
    const [wall, logical] = [ulidMs(id), readClock(clock)?.ms];
    if (wall === undefined || logical === undefined) return;
    const before = this.#last.get(device) ?? wall;
    this.#last.set(device, wall);
    if (before - wall > APART_MS) this.#find('clock-put-back', device, putBack(before - wall));
    const ahead = this.#latest;
    if (logical - wall <= APART_MS) this.#latest = { device, ms: wall };
    else if (ahead && ahead.device !== device)
      this.#find('clock-ahead', ahead.device, isAhead(ahead.ms - wall, device));
  }

  #find(code: string, device: Id, what: string): void {
    const key = `${code} ${device}`;
    if (this.#found.has(key)) return;
    const next =
      'Set the date and time of the device by the network. The order of the changes stands; look at their times with care.';
    const place = { study: this.study };
    this.#found.set(key, { code, level: 'doubt', place, value: device, what, next });
  }
}

const putBack = (ms: number): string =>
  `the clock of this device was put back by ${spanText(ms)} between two of its changes`;

const isAhead = (ms: number, other: Id): string =>
  `the clock of this device was ahead of that of ${other} by ${spanText(ms)}`;

/** "3 h", "12 min", "40 days": to the unit that tells. */
function spanText(ms: number): string {
  const minutes = Math.round(ms / 60_000);
  if (minutes < 120) return `${minutes} min`;
  return minutes < 2 * 24 * 60
    ? `${Math.round(minutes / 60)} h`
    : `${Math.round(minutes / 1440)} days`;
}
