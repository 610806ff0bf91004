import { readClock } from '../../../src/study/index.ts';

/** ISO 8601 time of a change's clock, UTC. */
export const timeOf = (clock: string): string => {
  const read = readClock(clock);
  return read ? new Date(read.ms).toISOString() : '';
};

/** How this browser's clock stands to UTC: "UTC", "UTC+02:00". */
export function zoneText(): string {
  const minutes = -new Date().getTimezoneOffset();
  if (minutes === 0) return 'UTC';
  const two = (n: number) => String(Math.floor(n)).padStart(2, '0');
  const size = Math.abs(minutes);
  return `UTC${minutes < 0 ? '−' : '+'}${two(size / 60)}:${two(size % 60)}`;
}

/** ISO 8601 local time to the second. */
export function localTime(): string {
  const now = new Date();
  const local = new Date(now.getTime() - 60_000 * now.getTimezoneOffset());
  return local.toISOString().slice(0, 19);
}
