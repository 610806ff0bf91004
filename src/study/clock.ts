/**
 * Hybrid logical clock (after Kulkarni, Demirbas and others, 2014): wall time in milliseconds,
 * a counter for what happens within one, and the device to break ties. As text it sorts in the
 * order of happening: `0018f0a1b2c3-0000-device`.
 */
export interface Clock {
  readonly ms: number;
  readonly count: number;
  readonly device: string;
}

export const clockText = (c: Clock): string =>
  `${c.ms.toString(16).padStart(12, '0')}-${c.count.toString(16).padStart(4, '0')}-${c.device}`;

/** Reads a clock back; undefined when the text is none. */
export function readClock(text: string): Clock | undefined {
  const m = /^([0-9a-f]{12})-([0-9a-f]{4})-(.+)$/.exec(text);
  if (!m?.[1] || !m[2] || !m[3]) return undefined;
  return { ms: Number.parseInt(m[1], 16), count: Number.parseInt(m[2], 16), device: m[3] };
}

/** More would need a fifth digit, and the text would sort wrongly. */
const HIGHEST_COUNT = 0xffff;

/** The clock of the next change on `device`, later than both `last` seen and the wall time. */
export function tick(last: Clock | undefined, nowMs: number, device: string): Clock {
  if (last === undefined || nowMs > last.ms) return { ms: nowMs, count: 0, device };
  if (last.count >= HIGHEST_COUNT) return { ms: last.ms + 1, count: 0, device };
  return { ms: last.ms, count: last.count + 1, device };
}
